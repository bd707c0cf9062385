package write_test

import (
	"strings"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
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
