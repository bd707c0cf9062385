package hull

import (
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/source"
)

// Report is what the checks of a table of offsets have to say.
type Report struct {
	Lines  []LineReport
	Scale  float64 // the scatter of the whole table, in its resolution
	Doubts []Doubt // the single values that are not believed
	Found  finding.List
}

// Examine says what is missing or doubtful in a table of offsets, and how fair
// each of its lines is; the doubtful values also as data, for queries to the
// designer and for the builder's decisions. Values are used as read: nothing is
// corrected.
func Examine(o Offsets, r Rules) Report {
	e := checkKept(o, r)
	found := checkStations(o, r)
	found = append(found, checkGaps(o, r)...)
	e.Found = append(found, e.Found...)
	if o.To(r) == SurfaceUnstated {
		e.Found = append(e.Found, finding.Finding{Kind: OffsetsSurface, Cell: o.Cell,
			Text: "the book does not say whether the offsets are to the outside or the inside of planking"})
	}
	e.countFindings(o)
	return e
}

// checkKept is checkFairness of a table some of whose figures are to stand. Those
// that would be doubted are told as kept, and no other is judged by them.
func checkKept(o Offsets, r Rules) Report {
	trusted := o.Kept
	o.Kept = nil
	e := checkFairness(o, r)
	var kept finding.List
	for {
		was := len(kept)
		for _, f := range e.Found {
			if isDoubt(f.Code) && slices.Contains(trusted, f.Cell) {
				kept, o.Kept = append(kept, f.Kept()), append(o.Kept, f.Cell)
			}
		}
		if len(kept) == was {
			e.Found = append(kept, e.Found...)
			return e
		}
		e = checkFairness(o, r)
	}
}

// kept says that a figure stands because the builder said so, and that no other is
// judged by it.
func (o Offsets) kept(c source.Cell) bool { return slices.Contains(o.Kept, c) }

// countFindings is what is found above a note on each line: at its figures, or of
// the line itself.
func (e *Report) countFindings(o Offsets) {
	for _, f := range e.Found {
		if f.Severity == finding.Note {
			continue
		}
		if i, _, ok := o.find(f.Cell); ok {
			e.Lines[i].Findings++
		} else if i := slices.IndexFunc(o.Lines, func(l Line) bool { return l.Cell == f.Cell }); i >= 0 {
			e.Lines[i].Findings++
		}
	}
}

// ends is the first and last station at which a line has more than nothing.
func ends(l Line) (first, last int) {
	first, last = len(l.Values), -1
	for i, v := range l.Values {
		if v.OK() && v.Value != 0 {
			first, last = min(first, i), i
		}
	}
	return first, last
}

// words is the line as findings name it: "half-breadth of WL 3", "diagonal A".
func (l Line) words() string {
	if l.View == Diagonal {
		return l.View.String() + " " + l.bare()
	}
	return l.View.String() + " of " + l.bare()
}

// bare is the line's name without the heading it stands under, where it begins with that.
func (l Line) bare() string {
	for _, heading := range headings {
		if rest, is := strings.CutPrefix(strings.ToLower(l.Name), heading+" "); is && strings.TrimSpace(rest) != "" {
			return strings.TrimPrefix(strings.TrimSpace(l.Name[len(l.Name)-len(rest):]), "of ")
		}
	}
	return l.Name
}

// headings are those that names of lines begin with, the longer first.
var headings = []string{"half-breadths", "half-breadth", "half breadths", "half breadth", "heights above base line", "heights above base", "heights above baseline",
	"heights", "height", "diagonals", "diagonal"}
