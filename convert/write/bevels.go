package write

import (
	"fmt"
	"math"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// bevels is the sawyer's schedule, a card a plank, each on paper of its own: what
// is called out stands first and large, what it comes from beside it, unprinted.
func bevels(in Input) *page {
	u, r := in.units(), in.Result.Rules.Bevel
	p := table("Bevels", "bevels to saw", col("Strake", 10), col("Side", 13), col("Edge", 9), col(in.stationHead(), 11), col("At, "+longUnit(u), 17), col("Set, degrees", 16), col("Saw's scale, degrees", 15), col("Change, degrees", 12),
		col("Batten, "+unit(u), 11), col("Set out, "+unit(u), 11), col("Read, degrees", 10), col("Note", 26))
	at := []column{}
	if u == measure.StyleFeet {
		p.cols[p.index("At")-1].key = "At text"
		at = append(at, col("At, in", 10))
	}
	p.worked(append(at, col("Hull's own, degrees", 10), col("Off the hull, degrees", 10), col("Between readings, degrees", 10), col("Faired, degrees", 10), col("Sawn, degrees", 10), col(turnHead(u), 10), col("Faces differ, "+unit(u), 10),
		col("Width, "+unit(u), 10), col("Thickness, "+unit(u), 10), col("Parallel, degrees", 10))...)
	p.csv, p.wide, p.cards = true, false, true
	p.empty = "No bevels: a table of bevels (strake, edge, degrees by station) is needed."
	p.note("Degrees off square, + where the outside face is the wider. Marks along the sawn edge from the " + in.places().String() + " named; the free edge is straight and square. Nothing is said beyond the first and last reading: the hood ends are fitted.")
	p.note(fmt.Sprintf("Set to %s degree. Change: of the saw's scale from the mark before. Batten: its edge from the plank's free edge; set out: beyond a batten parallel at the bevel named, + out. Tilts and battens follow the Settings sheet.", r.Readout.Write()))
	type plank struct {
		strake string
		skin   hull.Skin
		side   hull.Side
	}
	of := func(s bevel.Schedule) plank { return plank{s.Strake, s.Skin, s.Side} }
	edges := map[plank]int{}
	for _, s := range in.Result.Bevels {
		edges[of(s)] |= 1 << s.Edge
	}
	for _, s := range in.Result.Bevels {
		card(in, p, s, edges[of(s)] != 1<<s.Edge)
	}
	return p
}

// card is one plank's card. Where both of its edges are sawn neither is square to
// measure from.
func card(in Input, p *page, s bevel.Schedule, both bool) {
	r := in.Result.Rules.Bevel
	if len(p.rows) > 0 {
		p.breaks = append(p.breaks, len(p.rows)+1)
	}
	start := len(p.rows)
	name := strings.TrimSpace(fmt.Sprintf("%s %s", s.Skin, s.Strake))
	doubtful, rests := doubted(s)
	p.aside(sheet.Cell{Kind: sheet.Text, Text: fmt.Sprintf("%s, %s: %s edge%s", name, s.Side, s.Edge, doubtful), Style: sheet.Title})
	for _, line := range rests {
		p.aside(sheet.Cell{Kind: sheet.Text, Text: line, Style: sheet.CardDoubt})
	}
	face := "outside"
	if r.FaceUp == bevel.Inside {
		face = "inside"
	}
	said := func(line string) { p.aside(sheet.Cell{Kind: sheet.Text, Text: line, Style: sheet.CardLine}) }
	said(fmt.Sprintf("%s face up. Marks from %s aft to %s; distances along the edge: %s.", strings.ToUpper(face[:1])+face[1:], s.Places.Named(s.From), s.To, s.Distances()))
	if len(s.Past) > 0 {
		said(fmt.Sprintf("%s %s lies past the seam as drawn: its mark goes by the %s spacing, see Warnings.", stationHeads[s.Places], strings.Join(s.Past, ", "), s.Places))
	}
	switch {
	case s.AsOther && s.Shutter:
		said(fmt.Sprintf("Sawn as %s, mirrored: the gap was measured there only; measure it here first.", s.Side.Other()))
	case s.AsOther:
		said(fmt.Sprintf("Sawn as %s, mirrored: bevels lifted there only; same distances from the same %s.", s.Side.Other(), s.Places))
	case s.Unused:
		said("Worked out from the hull: bevels were handed in for it and could not be laid out; see Warnings.")
	case s.Computed:
		said("Worked out from the hull: none was lifted.")
	}
	if both {
		said("Both edges are sawn: width and batten are from the corner of the other edge on the inside face.")
	}
	for _, line := range atSaw(s, in.units()) {
		said(line)
	}
	said(bench(s, r))
	said(mind)
	if on := battenOf(in, s); on != "" {
		said(on)
	}
	first := p.next() + 1
	last := first + len(s.Marks) - 1
	if s.Thickness > 0 && s.Width > 0 && len(s.Marks) > 0 {
		u := in.units()
		steepest := fmt.Sprintf("MAX(MAX(%s:%s),-MIN(%s:%s))", p.at("Set", first), p.at("Set", last), p.at("Set", first), p.at("Set", last))
		blade := livef(small(s.Depth, u), "(%s+%s)/COS(RADIANS(%s))+%s", p.at("Thickness", first), set("batten thickness"), steepest, set("spare depth"))
		parallel := number(float64(s.Parallel), sheet.Degrees)
		parallel.Formula = p.at("Parallel", first)
		if len(s.Marks) > 0 && s.Sure() == 0 {
			parallel = queried(parallel, bevel.Doubtful)
		}
		p.aside(cardLine(text("Blade, "+unit(u)), blade, sheet.Cell{}, text("Parallel, degrees"), sheet.Cell{}, parallel, text(lying(s)+", "+unit(u)), small(s.Thickness, u), small(s.Width, u))...)
	} else {
		said(noBatten(s))
	}
	p.groups = append(p.groups, sheet.Range{Top: first + 2, Bottom: last + 2})
	parallel := parallels(p, s, first)
	each := p.marksAPaper(len(s.Marks), p.cardHigh(p.rows[start:]))
	for at := each; at < len(s.Marks); at += each {
		p.breaks = append(p.breaks, p.next()+at+1)
	}
	p.lines(len(s.Marks), func(p *page, i int) []sheet.Cell {
		row := markLine(in, p, s, i, parallel)
		if note := &row[p.index("Note")-1]; i > 0 && i%each == 0 {
			note.Text = strings.TrimSuffix("card continued; "+note.Text, "; ")
		}
		return row
	})
}

// noBatten says which size of the plank is lacking to set a batten by.
func noBatten(s bevel.Schedule) string {
	switch {
	case s.Thickness > 0:
		return "Width of the plank is not known: no batten."
	case s.Width > 0:
		return "Thickness of the plank is not known: no batten."
	}
	return "Thickness and width of the plank are not known: no batten."
}

// markLine is one mark of a card.
func markLine(in Input, p *page, s bevel.Schedule, i int, parallel string) []sheet.Cell {
	u, r, m := in.units(), in.Result.Rules.Bevel, s.Marks[i]
	read := sheet.Cell{}
	if m.Read.OK() {
		read = number(float64(m.Read.Value), sheet.Degrees)
	}
	round := func(of string) string {
		return fmt.Sprintf("ROUND((%s)/%s,0)*%s", of, set("saw readout"), set("saw readout"))
	}
	sawn := m.Between
	if r.SawFaired {
		sawn = m.Faired
	}
	tilt := livef(number(float64(m.Tilt), sheet.Large), "%s", round(scale(r, p.here("Sawn"))))
	own, off := sheet.Cell{}, sheet.Cell{}
	if m.Hull.OK() && !s.Computed {
		own = number(float64(m.Hull.Value.Round(0.01)), sheet.Degrees)
		if !m.Filled {
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
	batten, out, width, faces, thick, even := battens(in, p, s, m, parallel)
	row := append(make([]sheet.Cell, 0, len(p.cols)), text(s.Strake), text(s.Side.String()), text(s.Edge.String()), station, shown, queried(livef(number(float64(m.Set), sheet.Large), "%s", round(p.here("Sawn"))), m.Doubt), queried(tilt, m.Doubt), change,
		queried(batten, m.Doubt), queried(out, m.Doubt), queried(read, m.Doubt), remark(s, m))
	cardLine(row...)
	row = append(row, figures...)
	return append(row, own, off, number(float64(m.Between), sheet.Degrees), number(float64(m.Faired), sheet.Degrees),
		livef(number(float64(sawn), sheet.Degrees), `IF(%s="yes",%s,%s)`, set("saw faired bevels"), p.here("Faired"), p.here("Between readings")), perFoot, faces, width, thick, even)
}

// scale is the formula of what the saw's scale must read to cut a bevel, before it is
// rounded: by the trial cuts listed, or by the one of the Settings sheet.
func scale(r bevel.Rules, of string) string {
	if len(r.Trials) == 0 {
		return fmt.Sprintf("IF(OR(%[2]s=0,%[3]s=0),%[1]s,%[1]s*%[2]s/%[3]s)", of, set("trial cut reads"), set("trial cut cuts"))
	}
	parts := r.Scale()
	formula, closing := "", ""
	for i, part := range parts {
		at := fmt.Sprintf("%s+(%s-%s)*%s", figure(float64(part.Reads)), of, figure(float64(part.Cuts)), figure(float64(part.Slope)))
		if i < len(parts)-1 {
			at, closing = fmt.Sprintf("IF(%s<=%s,%s,", of, figure(float64(part.To)), at), closing+")"
		}
		formula += at
	}
	return formula + closing
}

// battens is the cells that need the plank's thickness and width, blank without.
func battens(in Input, p *page, s bevel.Schedule, m bevel.Mark, middle string) (batten, out, width, faces, thick, parallel sheet.Cell) {
	if s.Thickness == 0 || s.Width == 0 {
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
		return fmt.Sprintf(`IF(%s="inside",-%s*%s,(%s+%s)*%s)`, set("face up"), under, tan(of), set("batten thickness"), through, tan(of))
	}
	faces = livef(small(m.Faces, u), "%s*%s", through, tan(p.here("Set")))
	width, thick = small(m.Width, u), small(s.Thickness, u)
	batten, out = small(m.Batten, u), small(m.SetOut, u)
	if follows(m, s, r) {
		batten = livef(batten, "%s-%s+%s", p.here("Width"), set("saw offset"), rides(p.here("Set")))
		out = livef(out, "%s-(%s-%s+%s)", p.here("Batten"), p.here("Width"), set("saw offset"), rides(p.here("Parallel")))
	}
	parallel = live(number(float64(s.Parallel), sheet.Degrees), middle)
	return
}

// parallels is the formula of the bevel at which a card's parallel batten is right.
func parallels(p *page, s bevel.Schedule, first int) string {
	marks := sure(p, "Set", first, s)
	return fmt.Sprintf("ROUND((MIN(%s)+MAX(%s))/2/%s,0)*%s", marks, marks, set("saw readout"), set("saw readout"))
}

// follows says that a mark's batten is what the formula on the sheet makes of it:
// where the saw is set otherwise, the figure stands without one.
func follows(m bevel.Mark, s bevel.Schedule, r bevel.Rules) bool {
	b := float64(m.Width-r.Offset) + float64(r.Batten+s.Thickness-s.Rounded)*m.Set.Tan()
	if r.FaceUp == bevel.Inside {
		b = float64(m.Width-r.Offset) - float64(r.Batten+s.Rounded)*m.Set.Tan()
	}
	return math.Abs(b-float64(m.Batten)) < 1000
}

// remark is what there is to say at a mark.
func remark(s bevel.Schedule, m bevel.Mark) sheet.Cell {
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
	if m.Crossing {
		notes = append(notes, "passes through square: the other hand from here")
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

// cardLine has the small words and figures of a card's row large enough to be read
// from the saw.
func cardLine(row ...sheet.Cell) []sheet.Cell {
	for i := range row {
		c := &row[i]
		switch c.Style {
		case sheet.Entry:
			c.Style = sheet.CardLine
		case sheet.Inch, sheet.MM, sheet.Degrees:
			if c.Format == "" {
				c.Format = map[sheet.Style]string{sheet.Inch: "0.000", sheet.MM: "0.0", sheet.Degrees: "+0.00;-0.00;0.00"}[c.Style]
			}
			c.Style = sheet.CardFigure
		}
	}
	return row
}

// turnHead heads how fast the bevel changes.
func turnHead(u measure.Style) string {
	if u == measure.StyleMM {
		return "Degrees a metre"
	}
	return "Degrees a foot"
}

// inUnits is a length as a figure in inches or millimetres.
func inUnits(l measure.Length, u measure.Style) float64 {
	if u == measure.StyleMM {
		return l.Millimetres()
	}
	return l.Inches()
}
