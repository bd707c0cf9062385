package hull

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// TestSharedBetween gives equal shares as widths at every fourth station: between these
// each strake keeps its part of the girth, so the seams come out as those of equal
// shares at every station. Then planks of a hull whose girth bulges between three
// stations marked, in shares that change: they fill its girth at every station; with
// the last left out they leave bare what it had, and every station is named; and one
// left blank where the others are marked is drawn by its own marks.
func TestSharedBetween(t *testing.T) {
	o := wigley(measure.Metre, measure.Millimetre/100)
	whole, _ := Work(o, []Strake{{Name: "1-6", Skin: Planks, Count: source.Is(6)}}, DefaultRules())
	widths := func(at []int, n int, width func(j, k int) measure.Length) (list []Strake) {
		for j := range n {
			one := Strake{Name: fmt.Sprint(j + 1), Skin: Planks, Cell: source.Cell{Row: j + 1}}
			for _, k := range at {
				one.Widths, one.WidthAt = append(one.Widths, source.Is(width(j, k))), append(one.WidthAt, Station{Name: o.Stations[k].Name})
			}
			list = append(list, one)
		}
		return list
	}
	said := func(found finding.List, kind *finding.Kind) (all []string) {
		for _, f := range found {
			if f.Kind == kind {
				all = append(all, f.Text)
			}
		}
		return all
	}
	// As girths from the sheer they are as fair.
	girths := SeamMarks{Skin: Planks, Kind: MarkFromSheer}
	for j := range 5 {
		one := SeamMark{Strake: fmt.Sprint(j + 1)}
		for _, k := range []int{2, 6, 10, 14, 18} {
			if one.Values = append(one.Values, source.Is(whole.Linings[0].Seams[j+1].Points[k].Girth)); j == 0 {
				girths.Stations = append(girths.Stations, Station{Name: o.Stations[k].Name})
			}
		}
		girths.Seams = append(girths.Seams, one)
	}
	_, found := Work(o, []Strake{{Name: "1-6", Skin: Planks, Count: source.Is(6)}}, DefaultRules(), girths)
	if humps := said(found, SeamHollow); len(humps) > 0 {
		t.Errorf("equal shares as girths: %q", humps)
	}
	s, found := Work(o, widths([]int{2, 6, 10, 14, 18}, 6, func(j, k int) measure.Length { return whole.Linings[0].Strakes[j].Widths[k] }), DefaultRules())
	if sums := said(found, LiningSum); len(sums) > 0 {
		t.Errorf("equal shares: %q", sums)
	}
	for j, want := range whole.Linings[0].Strakes {
		got := s.Linings[0].Strakes[j]
		near(t, "length of "+want.Name, got.Length.Millimetres()/1000, want.Length.Millimetres()/1000, 1e-4)
		for k := range want.Widths {
			near(t, fmt.Sprintf("width of %s at station %d", want.Name, k), got.Widths[k].Millimetres()/1000, want.Widths[k].Millimetres()/1000, 1e-6)
		}
	}

	// Six planks on a quarter round of a radius that bulges by 9 in amidships; their
	// shares run from as 1 to 6 at the one end to as 6 to 1 at the other.
	radius := func(x float64) float64 { return 36 - (x-60)*(x-60)/400 }
	o = roundOffsets(radius)
	o.Surface = InsidePlanking
	last := len(o.Stations) - 1
	share := func(j, k int) float64 {
		x := float64(k) / float64(last)
		return (float64(j+1)*(1-x) + float64(6-j)*x) / 21
	}
	girth := func(k int) float64 { return radius(12*float64(k)) * math.Pi / 2 }
	width := func(j, k int) measure.Length { return measure.Inches(share(j, k) * girth(k)) }
	list := widths([]int{0, 5, last}, 6, width)
	s, found = Work(o, list, DefaultRules())
	if sums := said(found, LiningSum); len(sums) > 0 {
		t.Errorf("the whole girth: %q", sums)
	}
	for j, one := range s.Linings[0].Strakes {
		for k, w := range one.Widths {
			near(t, fmt.Sprintf("plank %d at station %d", j+1, k), w.Inches(), share(j, k)*girth(k), 0.02)
		}
	}
	// Without the last, at station 1, between those marked: (36 - 48*48/400) pi/2 =
	// 47.50 in of girth less 5.5/21 of it; at station 0 it is 6/21 of 42.41, 12.12.
	_, found = Work(o, list[:5], DefaultRules())
	sums := said(found, LiningSum)
	if len(sums) != 1 || !strings.HasPrefix(sums[0], "the plank widths as drawn at station 1 add up to 35.0625 in, 12.4375 in less ") || strings.Count(sums[0], "at station ") != len(o.Stations) {
		t.Errorf("the last plank left out: %q", sums)
	}
	list[2].Widths[1] = source.Reading[measure.Length]{}
	s, found = Work(o, list, DefaultRules())
	gaps, sums := said(found, WidthGap), said(found, LiningSum)
	own := (width(2, 0) + width(2, last)) / 2
	near(t, "a plank by its own marks", s.Linings[0].Strakes[2].Widths[5].Inches(), own.Inches(), 0.02)
	if len(gaps) != 1 || !strings.HasPrefix(gaps[0], "strake 3 has no width at station 5: ") || len(sums) != 1 || !strings.HasPrefix(sums[0], "the plank widths at station 5 ") {
		t.Errorf("a width left out: %q, %q", gaps, sums)
	}
}
