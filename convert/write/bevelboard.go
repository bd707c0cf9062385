package write

import (
	"cmp"

	"strakebook/calc/hull"
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
	p.note("Degrees off square to the face of the mould that stands on the station line. + standing (open), - under (closed).")
	p.note("Level: in the plane of the waterline; square: square to the mould's edge. Transfer them to a board at each station, and try the bevel on the mould before the edge is cut.")
	boardRows(p, s)
	return p
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
