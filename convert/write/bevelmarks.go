package write

import (
	"fmt"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// markLine is one mark of a card.
func markLine(in Input, p *page, s bevel.Schedule, i int) []sheet.Cell {
	u, r, m := in.units(), in.Result.Rules.Bevel, s.Marks[i]
	read := sheet.Cell{}
	if m.Read.OK() && !s.Computed {
		read = number(float64(m.Read.Value), sheet.Degrees)
		if m.Read.Value > 45 { // of a gauge: no bevel off square, and without a sign
			read.Format = "0.00"
		}
	}
	sawn := m.Between
	if r.SawFaired {
		sawn = m.Faired
	}
	tilt := number(float64(m.Tilt), sheet.Large)
	own, off := sheet.Cell{}, sheet.Cell{}
	if m.Hull.OK() {
		own = number(float64(m.Hull.Value.Round(0.01)), sheet.Degrees)
		if !m.Filled && !s.Computed {
			off = livef(number(float64(m.Between-m.Hull.Value.Round(0.01)), sheet.Degrees), "%s-%s", p.here("Between readings"), p.here("Hull's own"))
		}
	}
	change, perFoot := sheet.Cell{}, sheet.Cell{}
	if i > 0 {
		before := s.Marks[i-1]
		row := p.next() - 1
		change = livef(number(float64(m.Tilt-before.Tilt), sheet.Degrees), "%s-%s", p.here("Saw's scale"), p.at("Saw's scale", row))
		turn, in := m.PerFoot, measure.Foot
		if u == measure.StyleMM {
			turn, in = turn.PerMetre(), 1000*measure.Millimetre
		}
		perFoot = livef(number(float64(turn), sheet.Degrees), "(%s-%s)/(%s-%s)*%s", p.here("Sawn"), p.at("Sawn", row), p.here("At"), p.at("At", row), figure(inUnits(in, u)))
	}
	shown, figures := small(m.At, u), []sheet.Cell{}
	if u == measure.StyleFeet {
		shown, figures = long(m.At, u), one(small(m.At, u))
	}
	shown.Style = sheet.Called
	if shown.Kind == sheet.Number {
		shown.Format = "0.0"
	}
	station := text(m.Station)
	station.Style = sheet.Called
	batten, out, width, faces, thick, even := battens(in, p, s, m)
	row := append(make([]sheet.Cell, 0, len(p.cols)), text(s.Strake), text(s.Side.String()), text(s.Edge.String()), station, shown, queried(number(float64(m.Set), sheet.Large), m.Doubt), queried(tilt, m.Doubt), change,
		queried(batten, m.Doubt), queried(out, m.Doubt), queried(read, m.Doubt), remark(s, m, r))
	cardLine(row...)
	row = append(row, figures...)
	return append(row, own, off, number(float64(m.Between), sheet.Degrees), number(float64(m.Faired), sheet.Degrees),
		number(float64(sawn), sheet.Degrees), perFoot, faces, width, thick, even)
}

// battens is the cells that need the plank's thickness and width, blank without.
func battens(in Input, p *page, s bevel.Schedule, m bevel.Mark) (batten, out, width, faces, thick, parallel sheet.Cell) {
	if s.Depth == 0 {
		return
	}
	u, r := in.units(), in.Result.Rules.Bevel
	tan := func(of string) string { return "TAN(RADIANS(" + of + "))" }
	through, under := p.here("Thickness"), set("batten thickness")
	if s.Rounded > 0 { // to the corners of a back still to be rounded
		off := figure(inUnits(s.Rounded, u))
		through, under = "("+through+"-"+off+")", "("+under+"+"+off+")"
	}
	rides := func(of string) string {
		if r.FaceUp == bevel.Inside {
			return fmt.Sprintf("-%s*%s", under, tan(of))
		}
		return fmt.Sprintf("+(%s+%s)*%s", set("batten thickness"), through, tan(of))
	}
	faces = livef(small(m.Faces, u), "%s*%s", through, tan(p.here("Set")))
	width, thick = small(m.Width, u), small(s.Thickness, u)
	parallelWidth := p.here("Width")
	if s.Outside { // as listed, and by what the faces differ less on the inside one
		listed := figure(inUnits(m.Width+m.Faces, u))
		width = livef(width, "%s-%s", listed, p.here("Faces differ"))
		parallelWidth = fmt.Sprintf("(%s-%s*%s)", listed, through, tan(p.here("Parallel")))
	}
	batten = livef(small(m.Batten, u), "%s-%s%s", p.here("Width"), offset(r), rides(p.here("Set")))
	out = livef(small(m.SetOut, u), "%s-(%s-%s%s)", p.here("Batten"), parallelWidth, offset(r), rides(p.here("Parallel")))
	parallel = number(float64(s.Parallel), sheet.Degrees)
	return
}

// offset is the saw's offset to the plank's side of the kerf, by the part of the kerf
// that it is measured to.
func offset(r bevel.Rules) string {
	switch r.OffsetTo {
	case bevel.KerfMiddle:
		return fmt.Sprintf("(%s-%s/2)", set("saw offset"), set("bevel kerf"))
	case bevel.KerfFarSide:
		return fmt.Sprintf("(%s-%s)", set("saw offset"), set("bevel kerf"))
	}
	return set("saw offset")
}

// remark is what there is to say at a mark.
func remark(s bevel.Schedule, m bevel.Mark, r bevel.Rules) sheet.Cell {
	var notes []string
	switch m.Doubt {
	case bevel.Doubtful:
		notes = append(notes, "DOUBTFUL, lift again")
	case bevel.Leaning:
		notes = append(notes, "rests on the doubtful reading")
	}
	if m.Unseen {
		notes = append(notes, "not drawn: placed along the seam")
	}
	if c := crossing(s, m, r); c != "" {
		notes = append(notes, c)
	}
	if r.Beyond(m.Tilt) {
		notes = append(notes, "beyond the saw's tilt: plane the rest")
	}
	switch {
	case !m.Filled || s.Computed:
	case m.Read.OK():
		notes = append(notes, "reading not used, see Warnings: from its neighbours")
	default:
		notes = append(notes, "no reading: from its neighbours")
	}
	c := words(strings.Join(notes, "; "))
	if m.Doubt == bevel.Doubtful {
		c.Style = sheet.Doubt
	}
	return c
}

// turnHead heads how fast the bevel changes.
func turnHead(u measure.Style) string {
	if u == measure.StyleMM {
		return "Degrees a metre"
	}
	return "Degrees a foot"
}
