package write

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// moulds is the table the moulds are laid down from, to each surface of the
// planking, in the notation of the offsets, and the bevel board.
func moulds(in Input) *page {
	p := table("Moulds", "moulds to lay down", col("To the", 20), col("Line", 14), col("View", 12), col("At", 9))
	p.csv = true
	p.empty = "No moulds: a table of offsets, and the surface it is to, are needed."
	s := in.Result.Hull
	if s == nil || len(s.Moulds) == 0 {
		return p
	}
	p.stations(s)
	mouldNotes(in, p)
	rakeNote(in, p)
	down := in.Result.Rules.Hull.FloorToBase > 0
	pastNote(s, p, down)
	for _, on := range []hull.Surface{hull.InsidePlanking, hull.BetweenSkins, hull.OutsidePlanking} {
		rows := mouldRows(s, on)
		if len(rows) == 0 {
			continue
		}
		p.aside(opens(mouldHead(on)))
		for _, row := range rows {
			p.line(row.cells(s, past(s, row, down))...)
		}
		if none, ok := withoutMould(s, on, rows); ok {
			p.line(none...)
		}
	}
	return p
}

// past is the stations at which a waterline crosses the planking outside of a surface
// and runs below the foot of the surface itself. Down says that heights are down from
// the floor.
func past(s *hull.Shape, row *mouldRow, down bool) map[int]bool {
	at := map[int]bool{}
	for _, m := range s.Moulds {
		if _, has := row.by[m.Place]; has || m.Line != row.line || m.View != row.view || m.Role != hull.Waterline || m.Surface >= row.on {
			continue
		}
		if slices.ContainsFunc(s.Moulds, func(o hull.Mould) bool {
			return o.Surface == row.on && o.Place == m.Place && o.View == hull.Height && (o.Role == hull.Rabbet || o.Role == hull.Keel) && o.Offset != row.at && (o.Offset < row.at) == down
		}) {
			at[m.Place] = true
		}
	}
	return at
}

// pastNote says what a dash among the figures is.
func pastNote(s *hull.Shape, p *page, down bool) {
	for _, on := range []hull.Surface{hull.BetweenSkins, hull.InsidePlanking} {
		if slices.ContainsFunc(mouldRows(s, on), func(r *mouldRow) bool { return len(past(s, r, down)) > 0 }) {
			p.note("-: the line crosses the planking outside of this surface only: the mould starts above it. Where the planking of the two sides meets at the middle line the rabbet's figures are of that place.")
			return
		}
	}
}

// withoutMould is why stations have no figure to a surface; not ok where all have.
func withoutMould(s *hull.Shape, on hull.Surface, rows []*mouldRow) (none []sheet.Cell, ok bool) {
	none = []sheet.Cell{text(on.String()), text(""), text("none, since"), {}}
	for k, g := range s.Stations {
		if slices.ContainsFunc(rows, func(r *mouldRow) bool { _, ok := r.by[k]; return ok }) {
			none = append(none, sheet.Cell{})
			continue
		}
		// Where there is a section the planking meets its fellow at the middle line.
		none, ok = append(none, text(cmp.Or(g.Lacks, "all planking"))), true
	}
	return none, ok
}

// mouldNotes is the conventions the moulds are laid down by.
func mouldNotes(in Input, p *page) {
	r := in.Result.Rules.Hull
	p.note("Computed shapes are for planning and checking. The hull on the stocks and the batten rule: fair every mould with a batten before it is cut. Scantlings are the designer's and the surveyor's.")
	edge := "bevelled to the planking"
	if r.MouldSquare {
		edge = "left square, and laid in so far that the face away from the " + in.places().String() + " line clears the planking"
	}
	p.note(fmt.Sprintf("Moulds are %s thick, edges %s. Face on the %s line: %s (standing: the fore face forward of the widest %[3]s and the after face abaft it).", in.units().Small(r.MouldThickness), edge, in.places(), r.MouldFace))
	if skins := in.Result.Hull.Skins; len(skins) > 0 {
		var each []string
		for _, t := range skins {
			each = append(each, string(t.Skin)+" "+in.units().Small(t.Thickness))
		}
		p.note("The surfaces are drawn for a planking of one thickness in each skin: " + strings.Join(each, ", ") + ". Behind a strake that is thicker the mould is dressed down by the difference, behind a thinner one packed out, unless it is to stand proud or shy outside.")
	}
	if r.FloorToBase > 0 {
		p.note("Heights are down to the hull from the floor, which lies " + in.units().Long(r.FloorToBase) + " from the base line: the hull is built upside down.")
	} else {
		p.note("Heights are above the base line. The planking is taken off square to the section, over the cosine of the square bevel; deck and buttocks by their own intersections.")
	}
}

// rakeNote is how a leaning transom is laid down.
func rakeNote(in Input, p *page) {
	rake := in.Result.Rules.Hull.TransomRake
	if s := in.Result.Hull; rake == 0 || !s.Raked {
		return
	}
	p.note(fmt.Sprintf("The transom leans %s degrees off plumb: its heights are up plumb; along its face they are %.4f as long. Its girth is along its face; the widths of strakes there are across them.", rake.Write(), 1/rake.Cos()))
}

// mouldHead opens the figures to one surface.
func mouldHead(on hull.Surface) string {
	if on == hull.InsidePlanking {
		return "To the inside of planking: the moulds"
	}
	return "To the surface " + on.String()
}

// mouldRow is one line of the moulds at every station.
type mouldRow struct {
	on   hull.Surface
	line string
	view hull.View
	at   measure.Length
	has  bool // at is a height or a distance out
	role hull.Role
	by   map[int]measure.Length
}

// mouldRows is the figures to one surface, line by line: the edges of the hull, the
// waterlines from the lowest up and the buttocks from the innermost out, whichever
// station the first of them crosses.
func mouldRows(s *hull.Shape, on hull.Surface) []*mouldRow {
	type key struct {
		line string
		role hull.Role
		view hull.View
	}
	var all []*mouldRow
	rows := map[key]*mouldRow{}
	for _, m := range s.Moulds {
		if m.Surface != on {
			continue
		}
		k := key{m.Line, m.Role, m.View}
		r := rows[k]
		if r == nil {
			r = &mouldRow{on: on, line: m.Line, view: m.View, at: m.At, has: m.Role == hull.Waterline || m.Role == hull.Buttock, role: m.Role, by: map[int]measure.Length{}}
			rows[k] = r
			all = append(all, r)
		}
		r.by[m.Place] = m.Offset
	}
	slices.SortStableFunc(all, func(a, b *mouldRow) int { return cmp.Or(cmp.Compare(a.rank(), b.rank()), cmp.Compare(a.at, b.at)) })
	return all
}

// rank is where a row stands among the others of its surface.
func (r *mouldRow) rank() int {
	switch {
	case !r.has:
		return 0
	case r.role == hull.Waterline:
		return 1
	}
	return 2
}

// cells is the row, with a dash at the stations where its line lies past the middle.
func (r *mouldRow) cells(s *hull.Shape, past map[int]bool) []sheet.Cell {
	row := []sheet.Cell{text(r.on.String()), text(r.line), text(r.view.String()), {}}
	if r.has {
		row[3] = notation(r.at, s.Form)
	}
	for k := range s.Stations {
		c := sheet.Cell{}
		if v, ok := r.by[k]; ok {
			c = notation(v, s.Form)
		} else if past[k] {
			c = text("-")
		}
		row = append(row, c)
	}
	return row
}

// notation is a length as the table of offsets is written, to a sixteenth or a
// tenth of a millimetre; of a table of fractions in feet-inches-eighths.
func notation(l measure.Length, form measure.Form) sheet.Cell {
	switch {
	case form.Metric():
		return text(form.Write(l.Round(measure.Millimetre / 10)))
	case form.Unit == measure.Fractions:
		form = measure.Form{Notation: measure.FeetInchesEighths}
	}
	return sheet.Cell{Kind: sheet.Text, Text: form.Write(l.Round(measure.Sixteenth)), Style: sheet.Feet}
}
