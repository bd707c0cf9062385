package hull

import (
	"fmt"
	"math"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// hungAt is the girths to strake 3 at eleven stations, off its line by so many
// inches at each.
func hungAt(line float64, off func(k int) float64, from HungFrom, corner Corner) []Hung {
	var all []Hung
	for k := range 11 {
		all = append(all, Hung{Skin: Planks, Strake: "3", Side: Port, Station: fmt.Sprint(k), From: from, Corner: corner,
			Girth: source.Is(measure.Inches(line + off(k)))})
	}
	return all
}

// TestAsHung hangs planks 1 in thick on a quarter of a cylinder of radius 36 to
// the inside of planking, eight a side: the inner corner of the third lies
// 3/8 of the quarter down, the outer as much of a quarter of radius 37.
func TestAsHung(t *testing.T) {
	o := roundOffsets(func(float64) float64 { return 36 })
	o.Surface = InsidePlanking
	list := []Strake{{Name: "1-8", Skin: Planks, Count: source.Is(8), Thickness: source.Is(measure.Inch)}}
	r := DefaultRules()
	s, _ := Work(o, list, r)
	behind := func(k int) float64 { return -0.02 * float64(k) } // 0.2 in at the last
	for _, c := range []struct {
		from   HungFrom
		corner Corner
		line   float64
		sign   float64
	}{
		{FromSheer, InsideCorner, 36 * math.Pi / 2 * 3 / 8, 1},
		{FromSheer, OutsideCorner, 37 * math.Pi / 2 * 3 / 8, 1},
		{FromRabbet, InsideCorner, 36 * math.Pi / 2 * 5 / 8, -1},
		{FromRabbet, OutsideCorner, 37 * math.Pi / 2 * 5 / 8, -1},
	} {
		rows, found := s.AsHung(hungAt(c.line, func(k int) float64 { return c.sign * behind(k) }, c.from, c.corner), list, nil, r)
		if len(rows) != 11 || len(found) > 0 {
			t.Fatalf("%d rows, found %v", len(rows), found)
		}
		for k, row := range rows {
			near(t, "ahead", row.Ahead.Inches(), behind(k), 2e-3)
		}
		last := rows[10]
		if len(last.Next) != 3 || last.Next[0].Strake != "4" || last.Back != 3 {
			t.Fatalf("next %v, back after %d", last.Next, last.Back)
		}
		near(t, "set out", last.Next[0].SetOut.Inches(), 0.2/3, 1e-3)
		near(t, "width", last.Next[0].Width.Inches(), 36*math.Pi/2/8+0.2/3, 2e-3)
	}
	// Six planks to starboard and eight to port: each side has its own line.
	sided := []Strake{{Name: "1-6", Skin: Planks, Side: Starboard, Count: source.Is(6), Thickness: source.Is(measure.Inch)},
		{Name: "1-8", Skin: Planks, Side: Port, Count: source.Is(8), Thickness: source.Is(measure.Inch)}}
	apart, _ := Work(o, sided, r)
	for strake, parts := range map[string]float64{"3": 3, "7": 7} {
		hung := hungAt(36*math.Pi/2*parts/8, func(int) float64 { return 0 }, FromSheer, InsideCorner)
		for i := range hung {
			hung[i].Strake = strake
		}
		rows, _ := apart.AsHung(hung, sided, nil, r)
		if len(rows) != 11 {
			t.Fatalf("strake %s to port: %d rows", strake, len(rows))
		}
		near(t, "to port", rows[5].Ahead.Inches(), 0, 2e-3)
	}
	// Three eighths behind and a limit of 1/16 a plank: six planks, not three.
	r.MostAPlank = measure.Sixteenth
	rows, found := s.AsHung(hungAt(36*math.Pi/2*3/8, func(int) float64 { return -0.374 }, FromSheer, InsideCorner), list, nil, r)
	if rows[5].Back != 6 || len(found) != 1 || found[0].Kind != HungOff {
		t.Errorf("back after %d, found %v", rows[5].Back, found)
	}
	_, found = s.AsHung(hungAt(36*math.Pi/2*3/8, func(k int) float64 { return map[bool]float64{true: 1}[k == 5] }, FromSheer, InsideCorner), list, nil, DefaultRules())
	if len(found) != 2 || found[1].Kind != HungOdd {
		t.Errorf("found %v", found)
	}
}

// TestAsHungWithoutOffsets goes by the widths in the list of strakes, and by the
// builder's marks.
func TestAsHungWithoutOffsets(t *testing.T) {
	var s *Shape
	list := []Strake{{Name: "1-8", Skin: Planks, Count: source.Is(8), Width: source.Is(4 * measure.Inch)}}
	rows, found := s.AsHung(hungAt(12, func(int) float64 { return 0.25 }, FromSheer, InsideCorner), list, nil, DefaultRules())
	if len(rows) != 11 || len(found) != 0 || rows[0].Ahead != measure.Inch/4 || rows[0].Next[0].Width >= 4*measure.Inch || rows[0].Back != 3 {
		t.Errorf("rows %v, found %v", rows[0], found)
	}
	// Listed row by row for either side, under a skin of strips, and hung on a side that is
	// not said: still three planks of 4 in.
	sided := []Strake{{Name: "1-9", Skin: Strips, Count: source.Is(9), Width: source.Is(measure.Inch)}}
	for j := range 8 {
		for _, side := range []Side{Starboard, Port} {
			sided = append(sided, Strake{Name: fmt.Sprint(j + 1), Skin: Planks, Side: side, Width: source.Is(4 * measure.Inch)})
		}
	}
	for _, side := range []Side{BothSides, Port} {
		hung := hungAt(12, func(int) float64 { return 0 }, FromSheer, InsideCorner)[:1]
		hung[0].Side = side
		rows, _ = s.AsHung(hung, sided, nil, DefaultRules())
		if len(rows) != 1 || rows[0].Wanted != 12*measure.Inch || rows[0].Next[0].Strake != "4" || rows[0].Next[1].Strake != "5" {
			t.Errorf("listed by sides, hung on %s: %+v", side, rows)
		}
	}
	marks := SeamMarks{Skin: Planks, Kind: MarkFromSheer, Stations: []Station{{Name: "4"}}}
	for j := range 5 {
		marks.Seams = append(marks.Seams, SeamMark{Strake: fmt.Sprint(j + 1), Values: []source.Reading[measure.Length]{source.Is(measure.Length(j+1) * 5 * measure.Inch)}})
	}
	rows, found = s.AsHung(hungAt(15, func(int) float64 { return 0 }, FromSheer, InsideCorner), nil, []SeamMarks{marks}, DefaultRules())
	if len(rows) != 1 || rows[0].Ahead != 0 || rows[0].Next[0].Width != 5*measure.Inch || len(found) != 1 || found[0].Kind != HungOpen {
		t.Errorf("rows %v, found %v", rows, found)
	}
	// The same edge by marks that are the strakes' widths, and from the rabbet up, 25 in
	// less 15 of five.
	for j := range marks.Seams {
		marks.Seams[j].Values[0].Value = 5 * measure.Inch
	}
	marks.Kind = MarkWidths
	rows, _ = s.AsHung(hungAt(15, func(int) float64 { return 0 }, FromSheer, InsideCorner), nil, []SeamMarks{marks}, DefaultRules())
	if len(rows) != 1 || rows[0].Wanted != 15*measure.Inch || rows[0].Next[0].Width != 5*measure.Inch {
		t.Errorf("by widths: %v", rows)
	}
	for j := range marks.Seams {
		marks.Seams[j].Values[0].Value = measure.Length(4-j) * 5 * measure.Inch
	}
	marks.Kind = MarkFromRabbet
	rows, _ = s.AsHung(hungAt(10.3, func(int) float64 { return 0 }, FromRabbet, InsideCorner), nil, []SeamMarks{marks}, DefaultRules())
	if len(rows) != 1 || rows[0].Ahead != -3*measure.Inch/10 || rows[0].Next[0].Width != 5*measure.Inch+measure.Inch/10 {
		t.Errorf("from the rabbet: %v", rows)
	}
}
