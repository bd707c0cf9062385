package hull

import (
	"cmp"
	"fmt"
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// StrakeUnlike is a strake that stands far from those beside it.
var StrakeUnlike = &finding.Kind{
	Code: "strake-unlike", Severity: finding.Warning, Title: "strake unlike those beside it",
	Why:    "Strakes of a skin change little from one to the next: one that stands far from those beside it is more often a slip of the pen than a plank.",
	Remedy: "check the figure; if the strake is meant so, leave it",
}

// eachSide is so many strakes on each side that a strake is held against: our choice.
const eachSide = 2

// likeness is one figure of a list of strakes and how far it may stand from those
// beside it, as a ratio: our choices. A sheer strake, a garboard or another at the
// edge of a skin may stand farther.
type likeness struct {
	what            string
	inside, atEdge  float64
	alike           bool // asked about only where those beside it are of one size
	shorterIsNormal bool
	of              func(Strake) source.Reading[float64]
}

var likenesses = []likeness{
	{what: "thickness", inside: 1.25, atEdge: 1.6, alike: true, of: func(s Strake) source.Reading[float64] { return inInches(s.Thickness) }},
	{what: "width", inside: 1.5, atEdge: 2, of: func(s Strake) source.Reading[float64] { return inInches(s.Width) }},
	{what: "length", inside: 1.1, atEdge: 1.5, shorterIsNormal: true, of: func(s Strake) source.Reading[float64] { return inInches(s.Length) }},
	{what: "scarf", inside: 1.25, atEdge: 1.6, alike: true, of: func(s Strake) source.Reading[float64] { return s.Slope }},
}

func inInches(r source.Reading[measure.Length]) source.Reading[float64] {
	return source.Reading[float64]{Value: r.Value.Inches(), State: r.State, Text: r.Text, Cell: r.Cell}
}

// CheckAlike finds the figures of a list of strakes that stand far from those of
// the strakes beside them in their skin. It goes by the list as the builder has it.
func CheckAlike(strakes []Strake) finding.List {
	var found finding.List
	for _, g := range groups(strakes, nil) {
		for _, like := range likenesses {
			found = append(found, like.check(g)...)
		}
	}
	return found
}

func (like likeness) check(g group) finding.List {
	var all []source.Reading[float64]
	var names []string
	for _, s := range g.strakes {
		if r := like.of(s); r.OK() && r.Value > 0 && r.Text != "" {
			all, names = append(all, r), append(names, s.Name)
		}
	}
	var found finding.List
	for i, r := range all {
		near := slices.Concat(all[max(0, i-eachSide):i], all[i+1:min(len(all), i+1+eachSide)])
		if len(near) < eachSide {
			continue
		}
		edge := i == 0 || i == len(all)-1
		middle, unlike := like.far(r, near, edge)
		if !unlike || g.side == Port && sameRow(found, r.Cell) {
			continue
		}
		found = append(found, finding.Finding{Kind: StrakeUnlike, Cell: r.Cell, Reads: r.Text, Suggests: suggestSlip(r.Value, middle),
			Text: fmt.Sprintf("%s %q has a %s of %q, the strakes beside it %q", g.skin, names[i], like.what, r.Text, middle.Text)})
	}
	return found
}

// far says whether a figure stands too far from all those beside it, and which of
// them is the middle one.
func (like likeness) far(r source.Reading[float64], near []source.Reading[float64], edge bool) (middle source.Reading[float64], is bool) {
	slices.SortStableFunc(near, func(a, b source.Reading[float64]) int { return cmp.Compare(a.Value, b.Value) })
	least, most, middle := near[0].Value, near[len(near)-1].Value, near[len(near)/2]
	if like.alike && most > least*1.01 {
		return middle, false
	}
	allowed := like.inside
	if edge {
		allowed = like.atEdge
	}
	switch {
	case r.Value > most*allowed:
		return middle, true
	case like.shorterIsNormal:
		return middle, r.Value < least/unmeant && !edge
	}
	return middle, r.Value < least/allowed
}

func sameRow(found finding.List, at source.Cell) bool {
	return slices.ContainsFunc(found, func(f finding.Finding) bool { return f.Cell == at })
}

// suggestSlip is what the strakes beside it read, with the slip that would make the
// figure of about that.
func suggestSlip(v float64, nearest source.Reading[float64]) string {
	if reason := slipTo(v, nearest.Value, 1.05); reason != "" {
		return fmt.Sprintf("about %s (%s)", nearest.Text, reason)
	}
	return "about " + nearest.Text
}

// slipTo is the slip that makes a figure of about one other, within a ratio; ""
// where none does.
func slipTo(v, other, within float64) string {
	near := func(c float64) bool { return c > 0 && c < other*within && c > other/within }
	for _, s := range []struct {
		by     float64
		reason string
	}{{10, "the decimal point"}, {100, "the decimal point"}, {25.4, "inches and millimetres"}, {12, "feet and inches"}} {
		if near(v*s.by) || near(v/s.by) {
			return s.reason
		}
	}
	for _, s := range []struct {
		off    float64
		reason string
	}{{1, "one inch"}, {10, "ten inches"}, {12, "one foot"}, {120, "ten feet"}} {
		if near(v-s.off) || near(v+s.off) {
			return s.reason
		}
	}
	return ""
}

// unmeant is how many times what is usual, or what part of it, no figure is meant
// to be: our choice.
const unmeant = 5

// absurd says that a width cannot be meant beside what is usual.
func absurd(w, usual measure.Length) bool {
	return w > 0 && usual > 0 && (w > unmeant*usual || w < usual/unmeant)
}

// usualWidth is the middle one of the greatest widths listed; 0 where there are
// fewer than three.
func usualWidth(strakes []Strake) measure.Length {
	var all []measure.Length
	for _, s := range strakes {
		if w := s.Widest(); w > 0 {
			all = append(all, w)
		}
	}
	if len(all) < 3 {
		return 0
	}
	slices.Sort(all)
	return all[len(all)/2]
}
