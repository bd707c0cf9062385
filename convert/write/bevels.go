package write

import (
	"fmt"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// bevels is the sawyer's schedule, a card a seam.
func bevels(in Input) *page {
	r := in.Result.Rules
	u := r.Yard.Units
	p := table("Bevels", "bevels to saw", col("Strake", 12), col("Side", 11), col("Edge", 9), col("At, "+longUnit(u), 12), col("Station", 9), col("Read", 9), col("Between readings", 10), col("Faired", 9), col("Set", 9),
		col("Saw's scale", 9), col("Degrees a foot", 10), col("Faces differ, "+unit(u), 11), col("Batten, "+unit(u), 10), col("Set out, "+unit(u), 10), col("Note", 30))
	p.csv = true
	p.empty = "No bevels: a table of bevels (strake, edge, degrees by station) is needed."
	p.note("Degrees off square, + where the outside face is the wider. Marks along the sawn edge from the station named. The free edge is square.")
	p.note(fmt.Sprintf("Set to %s degree. Batten: from the free edge; set out: beyond a batten parallel at the bevel named. Nothing is said beyond the first and last reading.", r.Bevel.Readout.Write()))
	for _, s := range in.Result.Bevels {
		known := ""
		if s.Thickness > 0 {
			known = fmt.Sprintf(", %s in thick, %s in wide, blade %s in", measure.InchesText(s.Thickness), measure.InchesText(s.Width), measure.InchesText(s.Depth.RoundUp(measure.Sixteenth)))
		}
		p.aside(opens(fmt.Sprintf("%s %s, %s edge, %s: from station %s aft to %s; distances from %s%s; parallel batten at %s", s.Skin, s.Strake, s.Edge, s.Side, s.From, s.To, s.AlongFrom, known, s.Parallel.Write())))
		for _, m := range s.Marks {
			var notes []string
			if m.Crossing {
				notes = append(notes, "passes through square to the other hand")
			}
			if m.Filled {
				notes = append(notes, "no reading: from its neighbours")
			}
			read := sheet.Cell{}
			if m.Read.OK() {
				read = number(float64(m.Read.Value), sheet.Degrees)
			}
			row := []sheet.Cell{text(s.Strake), text(s.Side.String()), text(s.Edge.String()), long(m.At, u), text(m.Station), read,
				number(float64(m.Between), sheet.Degrees), number(float64(m.Faired), sheet.Degrees), number(float64(m.Set), sheet.Large), number(float64(m.Tilt), sheet.Degrees), number(float64(m.PerFoot), sheet.Degrees)}
			if s.Thickness > 0 && s.Width > 0 {
				row = append(row, small(m.Faces, u), small(m.Batten, u), small(m.SetOut, u))
			} else {
				row = append(row, sheet.Cell{}, sheet.Cell{}, sheet.Cell{})
			}
			p.line(append(row, words(strings.Join(notes, "; ")))...)
		}
	}
	return p
}
