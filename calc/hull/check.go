package hull

import (
	"slices"

	"strakebook/calc/finding"
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
	e := checkFairness(o, r)
	found := checkStations(o, r)
	found = append(found, checkGaps(o, r)...)
	e.Found = append(found, e.Found...)
	if o.Surface == SurfaceUnstated && r.OffsetsTo == SurfaceUnstated {
		e.Found = append(e.Found, finding.Finding{Kind: OffsetsSurface, Cell: o.Cell,
			Text: "the book does not say whether the offsets are to the outside or the inside of planking"})
	}
	e.countFindings(o)
	return e
}

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

// words is the line as findings name it: "half-breadth of WL 3".
func (l Line) words() string { return l.View.String() + " of " + l.Name }
