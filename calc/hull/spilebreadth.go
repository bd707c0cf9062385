package hull

import (
	"sort"

	"strakebook/calc/measure"
)

// Breadth is how wide a strake is on its inside face, square to its run, at a
// place along its middle from the fore end.
type Breadth struct{ At, Wide measure.Length }

// Breadths is the breadth of a strake from end to end, along the length it is said
// to have where that differs from the one laid out flat.
func (s Spiled) Breadths(length measure.Length) []Breadth {
	d, at := &s.shape, 0.0
	all := make([]Breadth, len(d.upper))
	for i := range d.upper {
		if i > 0 {
			step := d.upper[i].plus(d.lower[i]).minus(d.upper[i-1].plus(d.lower[i-1]))
			at += step.length() / 2
		}
		wide := max(0, d.way(float64(i)).across(d.upper[i].minus(d.lower[i])))
		if d.straight {
			wide *= d.rungs[i].swell // along the back as it will be
		}
		all[i] = Breadth{measure.Inches(at), measure.Inches(wide)}
	}
	for i := range all {
		if at > 0 {
			all[i].At = measure.Length(float64(all[i].At) / measure.Inches(at).Inches() * length.Inches())
		}
	}
	return all
}

// BreadthAt is the breadth at a place along a strake, straight between the places
// known and level beyond them.
func BreadthAt(all []Breadth, at measure.Length) measure.Length {
	i := sort.Search(len(all), func(i int) bool { return all[i].At >= at })
	switch {
	case i == 0:
		return all[0].Wide
	case i == len(all):
		return all[i-1].Wide
	}
	a, b := all[i-1], all[i]
	return a.Wide + measure.Length(float64(b.Wide-a.Wide)*float64(at-a.At)/float64(b.At-a.At))
}

// MeanBreadth is the breadth between two places along a strake, on the whole: its
// area over its length.
func MeanBreadth(all []Breadth, from, to measure.Length) measure.Length {
	if to <= from {
		return BreadthAt(all, from)
	}
	last := Breadth{from, BreadthAt(all, from)}
	area := 0.0
	add := func(b Breadth) {
		area += float64(b.At-last.At) * (float64(b.Wide) + float64(last.Wide)) / 2
		last = b
	}
	for _, b := range all {
		if b.At > from && b.At < to {
			add(b)
		}
	}
	add(Breadth{to, BreadthAt(all, to)})
	return measure.Length(area / float64(to-from))
}
