package hull

import (
	"fmt"
	"math/rand/v2"
	"strings"

	"strakebook/calc/measure"
)

// place is one value of a table: its line and its station.
type place struct{ line, station int }

// fault is what was done to a table: the values made wrong and what they were.
type fault struct {
	kind string
	at   []place
	was  []measure.Length
}

// words is the fault for a list of those not well told.
func (f fault) words(o Offsets) string {
	text := f.kind
	for i, p := range f.at {
		text += fmt.Sprintf(", %s at %s: %s for %s", o.Lines[p.line].words(), o.Stations[p.station].Name, o.Lines[p.line].Values[p.station].Text, o.Form.Write(f.was[i]))
	}
	return text
}

// faultKind makes one kind of fault at a place; ok is false where it cannot be
// made there or changes nothing.
type faultKind struct {
	name string
	copy bool // no figure can be proposed for it: the right one is nowhere to be seen
	make func(o Offsets, p place, rng *rand.Rand) (map[place]measure.Length, bool)
}

// one is a fault of a single value.
func one(f func(v measure.Length, rng *rand.Rand) (measure.Length, bool)) func(Offsets, place, *rand.Rand) (map[place]measure.Length, bool) {
	return func(o Offsets, p place, rng *rand.Rand) (map[place]measure.Length, bool) {
		w, ok := f(o.Lines[p.line].Values[p.station].Value, rng)
		return map[place]measure.Length{p: w}, ok
	}
}

// off is a fault of a fixed size, either way.
func off(size measure.Length) func(Offsets, place, *rand.Rand) (map[place]measure.Length, bool) {
	return one(func(v measure.Length, rng *rand.Rand) (measure.Length, bool) {
		if rng.IntN(2) == 0 || v < size {
			return v + size, true
		}
		return v - size, true
	})
}

// figures is a fault in feet, inches and eighths.
func figures(f func(feet, inches, eighths int) (int, int, int)) func(Offsets, place, *rand.Rand) (map[place]measure.Length, bool) {
	return one(func(v measure.Length, _ *rand.Rand) (measure.Length, bool) {
		feet, inches, eighths, rest := parts(v)
		feet, inches, eighths = f(feet, inches, eighths)
		return join(feet, inches, eighths) + rest, inches <= 11 && eighths <= 7
	})
}

// alike are the figures most often taken for one another in print and hand. From
// memory.
var alike = map[byte]string{'0': "68", '1': "7", '3': "85", '4': "9", '5': "63", '6': "50", '7': "1", '8': "30", '9': "4"}

// misreadText changes one figure of the text for one like it.
func misreadText(o Offsets, p place, rng *rand.Rand) (map[place]measure.Length, bool) {
	text := []byte(o.Form.Write(o.Lines[p.line].Values[p.station].Value))
	i := rng.IntN(len(text))
	like := alike[text[i]]
	if like == "" {
		return nil, false
	}
	text[i] = like[rng.IntN(len(like))]
	v, err := o.Form.Length(string(text))
	return map[place]measure.Length{p: v}, err == nil
}

// beside is a value's neighbour in the given direction, with a value of its own.
func beside(o Offsets, p place, lines, stations int) (place, bool) {
	q := place{p.line + lines, p.station + stations}
	if q.line < 0 || q.line >= len(o.Lines) || q.station < 0 || q.station >= len(o.Stations) || o.Stations[q.station].Transom {
		return q, false
	}
	a, b := o.Lines[p.line], o.Lines[q.line]
	return q, a.View == b.View && a.Role == b.Role && b.Values[q.station].OK() || lines == 0 && b.Values[q.station].OK()
}

func swapWith(lines, stations int) func(Offsets, place, *rand.Rand) (map[place]measure.Length, bool) {
	return func(o Offsets, p place, _ *rand.Rand) (map[place]measure.Length, bool) {
		q, ok := beside(o, p, lines, stations)
		if !ok {
			return nil, false
		}
		return map[place]measure.Length{p: o.Lines[q.line].Values[q.station].Value, q: o.Lines[p.line].Values[p.station].Value}, true
	}
}

func copyOf(lines, stations int) func(Offsets, place, *rand.Rand) (map[place]measure.Length, bool) {
	return func(o Offsets, p place, rng *rand.Rand) (map[place]measure.Length, bool) {
		d := 1 - 2*rng.IntN(2)
		q, ok := beside(o, p, lines*d, stations*d)
		if !ok {
			return nil, false
		}
		return map[place]measure.Length{p: o.Lines[q.line].Values[q.station].Value}, true
	}
}

var negated = one(func(v measure.Length, _ *rand.Rand) (measure.Length, bool) { return -v, true })

// imperialFaults are the kinds in feet, inches and eighths. The first two are
// left out of the mix: they are the rounding.
func imperialFaults() []faultKind {
	return []faultKind{
		{"1/8 in", false, off(measure.Eighth)},
		{"1/4 in", false, off(2 * measure.Eighth)},
		{"1/2 in", false, off(measure.Inch / 2)},
		{"1 in", false, off(measure.Inch)},
		{"1 ft", false, off(measure.Foot)},
		{"in/8ths swapped", false, figures(func(f, i, e int) (int, int, int) { return f, e, i })},
		{"figure misread", false, misreadText},
		{"inches dropped", false, figures(func(f, i, e int) (int, int, int) { return f, 0, e })},
		{"eighths dropped", false, figures(func(f, i, e int) (int, int, int) { return f, i, 0 })},
		{"slipped a place", false, func(o Offsets, p place, rng *rand.Rand) (map[place]measure.Length, bool) {
			feet, inches, eighths, rest := parts(o.Lines[p.line].Values[p.station].Value)
			if eighths == 0 {
				return map[place]measure.Length{p: join(0, feet, inches) + rest}, inches <= 7
			}
			return map[place]measure.Length{p: join(inches, eighths, 0) + rest}, feet == 0 && inches < 7
		}},
		{"stations swapped", false, swapWith(0, 1)},
		{"copied station", true, copyOf(0, 1)},
		{"sign", false, negated},
		{"wrong waterline", true, copyOf(1, 0)},
		{"waterlines swapped", false, swapWith(1, 0)},
	}
}

// decimalFaults are the kinds in millimetres.
func decimalFaults() []faultKind {
	return []faultKind{
		{"times ten", false, one(func(v measure.Length, _ *rand.Rand) (measure.Length, bool) { return v * 10, true })},
		{"a tenth", false, one(func(v measure.Length, _ *rand.Rand) (measure.Length, bool) {
			return (v / 10).Round(measure.Millimetre), true
		})},
		{"one figure", false, func(o Offsets, p place, rng *rand.Rand) (map[place]measure.Length, bool) {
			text := []byte(o.Form.Write(o.Lines[p.line].Values[p.station].Value))
			i := rng.IntN(len(text))
			if text[i] < '0' || text[i] > '9' {
				return nil, false
			}
			text[i] = byte('0' + rng.IntN(10))
			v, err := o.Form.Length(string(text))
			return map[place]measure.Length{p: v}, err == nil
		}},
		{"figures swapped", false, func(o Offsets, p place, rng *rand.Rand) (map[place]measure.Length, bool) {
			text := []byte(o.Form.Write(o.Lines[p.line].Values[p.station].Value))
			if len(text) < 2 {
				return nil, false
			}
			i := rng.IntN(len(text) - 1)
			text[i], text[i+1] = text[i+1], text[i]
			v, err := o.Form.Length(strings.TrimLeft(string(text), "0"))
			return map[place]measure.Length{p: v}, err == nil
		}},
		{"stations swapped", false, swapWith(0, 1)},
		{"copied station", true, copyOf(0, 1)},
		{"sign", false, negated},
		{"wrong waterline", true, copyOf(1, 0)},
		{"waterlines swapped", false, swapWith(1, 0)},
	}
}

// clone is the table with values of its own.
func clone(o Offsets) Offsets {
	lines := make([]Line, len(o.Lines))
	for i, l := range o.Lines {
		l.Values = append(l.Values[:0:0], l.Values...)
		lines[i] = l
	}
	o.Lines = lines
	o.Stations = append(o.Stations[:0:0], o.Stations...)
	return o
}

// seed makes one fault of the kind somewhere in the table, changed in place,
// away from the places already spoilt.
func seed(o Offsets, kind faultKind, rng *rand.Rand, spoilt map[place]bool) (fault, bool) {
	for range 200 {
		p := place{rng.IntN(len(o.Lines)), rng.IntN(len(o.Stations))}
		if !o.Lines[p.line].Values[p.station].OK() || o.Stations[p.station].Transom {
			continue
		}
		wrong, ok := kind.make(o, p, rng)
		if !ok {
			continue
		}
		f := fault{kind: kind.name}
		for line := range o.Lines { // in order, for the sake of the same result every time
			for k := range o.Stations {
				q := place{line, k}
				v, changed := wrong[q]
				if was := o.Lines[line].Values[k].Value; changed && v != was && !spoilt[q] {
					f.at, f.was = append(f.at, q), append(f.was, was)
				}
			}
		}
		if len(f.at) == 0 || len(f.at) != len(wrong) {
			continue
		}
		for _, q := range f.at {
			v := &o.Lines[q.line].Values[q.station]
			v.Value = wrong[q]
			v.Text = o.Form.Write(v.Value)
			spoilt[q] = true
		}
		return f, true
	}
	return fault{}, false
}
