package write

import (
	"cmp"
	"fmt"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// bevelBoard is the bevels of the moulds' edges at every line of the table and
// every station.
func bevelBoard(in Input) *page {
	p := table("Bevel board", "bevel board", col("Line", 16), col("Bevel", 15))
	p.csv = true
	p.empty = "No bevel board: a table of offsets is needed."
	s := in.Result.Hull
	if s == nil || len(s.Board) == 0 {
		return p
	}
	p.stations(s)
	p.note("Degrees off square to the face of the mould that stands on the " + in.places().String() + " line. + standing (open), - under (closed).")
	p.note("Level: in the plane of the waterline; square: square to the mould's edge. Transfer them to a board at each " + in.places().String() + ", and try the bevel on the mould before the edge is cut.")
	boardRows(p, s)
	garboardRows(p, s, in.units())
	return p
}

// garboardRows is how the plank next to the keel meets it, where that is known.
func garboardRows(p *page, s *hull.Shape, u measure.Style) {
	for _, l := range s.Linings {
		if len(l.Garboards) == 0 {
			continue
		}
		p.aside(opens(fmt.Sprintf("%s %s on the keel, %s: square to the rabbet", l.Skin, l.Garboards[0].Strake, l.Side)))
		p.aside(text("A rabbet cut square to the plank takes a square edge: its depth into the keel, and how far above the rabbet line the bearding line lies, square to it. Where no rabbet is cut the edge is bevelled to the keel's side, + where the outside face is the wider."))
		degrees := func(a measure.Angle) sheet.Cell { return number(float64(a.Round(0.05)), sheet.Degrees) }
		listed := func(g hull.Garboard, l measure.Length) sheet.Cell {
			if g.Bearding == 0 { // its thickness is not listed
				return sheet.Cell{}
			}
			return small(l, u)
		}
		for _, what := range []struct {
			name string
			cell func(hull.Garboard) sheet.Cell
		}{
			{"plank to keel's side", func(g hull.Garboard) sheet.Cell { return degrees(g.ToKeel) }},
			{"edge on keel's side", func(g hull.Garboard) sheet.Cell { return degrees(g.Edge) }},
			{"depth, " + unit(u), func(g hull.Garboard) sheet.Cell { return listed(g, g.Depth) }},
			{"bearding line, " + unit(u), func(g hull.Garboard) sheet.Cell { return listed(g, g.Bearding) }},
		} {
			row := make([]sheet.Cell, 2+len(s.Stations))
			row[0], row[1] = text(string(l.Skin)+" "+l.Garboards[0].Strake), text(what.name)
			for _, g := range l.Garboards {
				row[2+g.Place] = what.cell(g)
			}
			p.line(row...)
		}
	}
}

// boardRows is the bevel board: of each line the level bevel, the square one, and
// which way it stands.
func boardRows(p *page, s *hull.Shape) {
	var order []string
	lines := map[string]map[int]hull.BoardBevel{}
	faces := map[int]string{}
	for _, b := range s.Board {
		key := b.Role.String() + b.Line
		if lines[key] == nil {
			lines[key] = map[int]hull.BoardBevel{}
			order = append(order, key)
		}
		lines[key][b.Place], faces[b.Place] = b, b.Face
	}
	face := []sheet.Cell{text(""), text("face on the line")}
	for k, g := range s.Stations {
		face = append(face, text(cmp.Or(faces[k], g.Lacks)))
	}
	p.line(face...)
	for _, key := range order {
		for _, what := range []string{"level", "square", "stands"} {
			p.line(boardRow(s, lines[key], what)...)
		}
	}
}

// boardRow is one line's bevels of one kind.
func boardRow(s *hull.Shape, line map[int]hull.BoardBevel, what string) []sheet.Cell {
	row := []sheet.Cell{{}, text(what)}
	for k := range s.Stations {
		b, ok := line[k]
		c := sheet.Cell{}
		switch {
		case !ok:
		case what == "level":
			c = number(float64(b.Level.Round(0.05)), sheet.Degrees)
		case what == "square":
			c = number(float64(b.Square.Round(0.05)), sheet.Degrees)
		default:
			c = text(b.Word())
		}
		if ok {
			row[0] = text(b.Line)
		}
		row = append(row, c)
	}
	return row
}
