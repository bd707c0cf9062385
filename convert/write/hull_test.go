package write_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
	"strakebook/convert/write"
)

// sheetOf is one sheet of the new book, each row as text.
func sheetOf(t *testing.T, in write.Input, name string) (rows [][]string) {
	t.Helper()
	book, _ := write.Lay(in).Book()
	for _, s := range book.Sheets {
		if s.Name != name && s.Name != name+" (checked)" {
			continue
		}
		for _, cells := range s.Each() {
			var row []string
			for _, c := range cells {
				row = append(row, c.Text)
			}
			rows = append(rows, row)
		}
	}
	if len(rows) == 0 {
		t.Fatalf("no sheet %s", name)
	}
	return rows
}

// Computed shapes are for planning: the sheets of the hull say so.
func TestHullSheetsCaution(t *testing.T) {
	in := demo()
	for _, name := range []string{"Hull", "Moulds"} {
		said := false
		for _, row := range sheetOf(t, in, name) {
			line := strings.Join(row, " ")
			said = said || strings.Contains(line, "for planning and checking") && strings.Contains(line, "batten rule") && strings.Contains(line, "surveyor")
		}
		if !said {
			t.Errorf("%s does not say that the batten and the surveyor rule", name)
		}
	}
}

// The moulds to the surface the offsets are to give the offsets back to the
// table's step, an eighth: of two figures close together on a section one is left
// to the curve. Figures not believed are aside.
func TestMouldsGiveTheOffsetsBack(t *testing.T) {
	in := demo()
	o, count := in.Result.Offsets[0], 0
	doubted := map[[2]string]bool{}
	for _, f := range in.Findings {
		for _, l := range o.Lines {
			for k, v := range l.Values {
				if v.Cell == f.Cell {
					doubted[[2]string{l.Name, o.Stations[k].Name}] = true
				}
			}
		}
	}
	for _, row := range sheetOf(t, in, "Moulds") {
		if len(row) < 5 || row[0] != hull.OutsidePlanking.String() || row[2] != "half-breadth" {
			continue
		}
		for _, l := range o.Lines {
			if l.Name != row[1] || l.View != hull.HalfBreadth || l.Role != hull.Waterline {
				continue
			}
			for k, v := range l.Values {
				if !v.OK() || row[4+k] == "" || doubted[[2]string{l.Name, o.Stations[k].Name}] {
					continue
				}
				got, err := measure.Form{Notation: measure.FeetInchesEighths}.Length(row[4+k])
				if err != nil || (got-v.Value).Abs() > o.Resolution {
					t.Errorf("%s at station %s: %q for %q (%v)", l.Name, o.Stations[k].Name, row[4+k], v.Text, err)
				}
				count++
			}
		}
	}
	if count < 90 {
		t.Errorf("%d figures held", count)
	}
}

// Every shape of a plank names the thickness that its outside face is drawn for.
func TestShapesNameTheirThickness(t *testing.T) {
	in := demo()
	want, said := 0, 0
	for _, s := range in.Result.Spiled {
		if s.Skin != hull.Strips && s.Thick > 0 {
			want++
		}
	}
	for _, row := range sheetOf(t, in, "Ordinates") {
		if strings.Contains(strings.Join(row, " "), " in thick as dressed") {
			said++
		}
	}
	if want == 0 || said != want {
		t.Errorf("%d of %d shapes say how thick", said, want)
	}
}

// A plank is marked out by what stands under a heading: every figure of the shapes is
// the one its heading names.
func TestShapesStandUnderTheirHeadings(t *testing.T) {
	in := demo()
	held := func(name string, lines []map[string]float64) {
		rows := cellsOf(t, in, name)
		n := 0
		for _, row := range rows[1:] {
			if len(row) < len(rows[0])-1 { // a card's head, or a remark
				continue
			}
			if n == len(lines) {
				t.Fatalf("%s: more than %d lines", name, n)
			}
			for head, want := range lines[n] {
				c := slices.IndexFunc(rows[0], func(c sheet.Cell) bool { return c.Text == head })
				if c < 0 {
					t.Fatalf("%s: nothing headed %q", name, head)
				}
				if got := row[c].Number; math.Abs(got-want) > 0.03 {
					t.Fatalf("%s line %d, %s: %v, want %v", name, n+1, head, got, want)
				}
			}
			n++
		}
		if n != len(lines) || n < 20 {
			t.Errorf("%s: %d lines, want %d", name, n, len(lines))
		}
	}
	var shapes, places []map[string]float64
	for _, s := range in.Result.Spiled {
		if s.Skin == hull.Strips {
			continue
		}
		shapes = append(shapes, map[string]float64{"Sny, in": s.Sny.Inches(), "Board to the sweep, in": s.Board.Inches(), "Board sprung, in": s.Straight.Inches(), "Hollow of back, in": s.Hollow.Inches(),
			"Thickness needed, in": s.Thick.Inches(), "Fore end off square, degrees": float64(s.Fore.Off), "Fore end bevel, degrees": float64(s.Fore.Bevel),
			"After end off square, degrees": float64(s.After.Off), "After end bevel, degrees": float64(s.After.Bevel), "Twist, degrees": float64(s.Twist)})
		for _, o := range s.Ordinates {
			places = append(places, map[string]float64{"Lower edge inside, in": o.Lower.Inches(), "Upper edge inside, in": o.Upper.Inches(), "Lower edge outside, in": o.LowerO.Inches(), "Upper edge outside, in": o.UpperO.Inches(),
				"Bevel of upper edge, degrees": float64(o.BevelU), "Bevel of lower edge, degrees": float64(o.BevelLo)})
		}
	}
	held("Spiling", shapes)
	held("Ordinates", places)
}
