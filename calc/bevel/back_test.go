package bevel

import (
	"fmt"
	"math"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// hollow is the offsets of a hull whose sections are those of roundOf turned about the
// line from the keel to the sheer: the planking is hollow, and each plank turns from
// the next as much the other way.
func hollow(o hull.Offsets) hull.Offsets {
	for i, l := range o.Lines {
		if l.Role == hull.Waterline || l.Role == hull.Buttock {
			at, value := l.Values[0].Value, l.At.Value
			o.Lines[i].Name, o.Lines[i].At = fmt.Sprint(l.Role, " ", at), source.Is(at)
			for k := range l.Values {
				o.Lines[i].Values[k] = source.Is(value)
			}
		}
	}
	return o
}

// A back is worked after the plank is sawn. Six planks an inch thick on a quarter round
// of 36 in are chords of 72 sin 7.5 = 9.398 in, along which their boards are marked out,
// hollow or round by 36 - 36 cos 7.5 = .308 in, 5/16 to be worked, and turn by 15
// degrees: a hollowed back leaves its corners on a board of 1 5/16 in, whose outside
// face is wider by 1.3125 tan 15; of a rounded one the corners lie 5/16 off it, an inch
// from the outside face, which is narrower by tan 15 (plain geometry). A back that is
// let be stands so far off the hull, and its plank is as wide as the arc of 15 degrees.
func TestSawnBeforeTheBackIsWorked(t *testing.T) {
	chord, tan := 72*math.Sin(7.5*math.Pi/180), math.Tan(15*math.Pi/180)
	o, strakes := roundOf(9, 6)
	bent, _ := roundOf(9, 6)
	for i := range strakes {
		strakes[i].Width = source.Reading[measure.Length]{} // equal shares
	}
	for _, c := range []struct {
		name           string
		offsets        hull.Offsets
		rounded, faces float64
	}{{"round", o, 0, 1.3125 * tan}, {"hollow", hollow(bent), 0.3125, -tan}} {
		let := hull.DefaultRules()
		let.HollowFrom = measure.Foot
		shape, _ := hull.Work(c.offsets, strakes, let)
		made, _ := Computed(shape, strakes, nil, nil, DefaultRules())
		off := math.Copysign(36-36*math.Cos(7.5*math.Pi/180), c.faces)
		for _, s := range made {
			if m := s.Marks[0]; math.Abs(s.LetBe.Inches()-off) > 0.005 || s.Worked != 0 || s.Thickness != measure.Inch || math.Abs(m.Width.Inches()-36*15*math.Pi/180) > 0.005 {
				t.Errorf("%s, plank %s: stands %v off, %v thick and %v wide; want %.4f", c.name, s.Strake, s.LetBe, s.Thickness, m.Width, off)
			}
		}
		shape, _ = hull.Work(c.offsets, strakes, hull.DefaultRules())
		made, _ = Computed(shape, strakes, nil, nil, DefaultRules())
		if len(made) != 5 {
			t.Fatalf("%s: %d cards", c.name, len(made))
		}
		for _, s := range made {
			if s.Thickness != measure.Inches(1.3125) || s.Rounded != measure.Inches(c.rounded) {
				t.Errorf("%s, plank %s: %v thick, corners %v off", c.name, s.Strake, s.Thickness, s.Rounded)
			}
			for _, m := range s.Marks {
				if math.Abs(m.Width.Inches()-chord) > 0.005 || math.Abs(m.Faces.Inches()-c.faces) > 0.005 {
					t.Errorf("%s, plank %s at %v: %v wide and the outside %v wider, want %.4f and %.4f", c.name, s.Strake, m.At, m.Width, m.Faces, chord, c.faces)
				}
			}
		}
	}
	// A shutter's gap is measured straight across: its width is the gap.
	shape, _ := hull.Work(o, strakes, hull.DefaultRules())
	var rows []hull.ShutterRow
	for _, k := range []string{"2", "3", "4"} {
		rows = append(rows, hull.ShutterRow{Skin: hull.Planks, Strake: "6", Station: k, Inside: measure.Inches(chord), Bevel: 7.5})
	}
	made, _ := OfShutters(rows, strakes, o.Stations, shape, DefaultRules())
	for _, s := range made {
		for _, m := range s.Marks {
			if m.Width != measure.Inches(chord) {
				t.Errorf("shutter at %v: %v wide in a gap of %.4f", m.At, m.Width, chord)
			}
		}
	}
	if len(made) != 2 {
		t.Errorf("%d cards of the shutter", len(made))
	}
}

// The lower edge of a plank is the upper edge of the next: marks lie as far along the
// one as along the other, and on a hull with sheer not so along the plank's own upper
// edge.
func TestMarksAlongTheirOwnEdge(t *testing.T) {
	o, strakes := roundOf(9, 12)
	for i, l := range o.Lines {
		if l.Role == hull.Deck && l.View == hull.Height {
			for k := range l.Values {
				o.Lines[i].Values[k].Value += measure.Inches(1.5 * float64((k-4)*(k-4)))
			}
		}
	}
	shape, _ := hull.Work(o, strakes, hull.DefaultRules())
	last := func(strake string, edge Edge) measure.Length {
		b := onRound(func([][]float64) {})
		b.Seams = b.Seams[:1]
		b.Seams[0].Strake, b.Seams[0].Edge = strake, edge
		s, _ := Schedules(b, strakes, nil, shape, DefaultRules())
		if s[0].AlongFrom != AlongHull {
			t.Fatalf("plank %s: distances %s", strake, s[0].Distances())
		}
		return s[0].Marks[len(s[0].Marks)-1].At
	}
	if low, next, up := last("2", Lower), last("3", Upper), last("2", Upper); low != next || up-low < measure.Eighth {
		t.Errorf("2's lower edge %v long, 3's upper %v, 2's upper %v", low, next, up)
	}
}
