package write

import (
	"fmt"
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
	p.opened = []string{"Card", "Card says"}
	p.empty = "No bevels: a table of bevels (strake, edge, degrees by station) is needed."
	p.note("Degrees off square, + where the outside face is the wider. Marks along the sawn edge from the " + in.places().String() + " named; the free edge is straight and square. Read: as lifted, or measured from a gap; what is worked out from the hull stands under Hull's own. Nothing is said beyond the first and last reading: the hood ends are fitted.")
	p.note(fmt.Sprintf("Set to %s degree. Change: of the saw's scale from the mark before. Batten: its edge from the plank's free edge; set out: beyond a batten parallel at the bevel named, + out. Battens and the blade follow the batten's thickness, the saw's offset and the spare depth on the Settings sheet; tilts, and which face lies up, are as worked out.", r.Readout.Write()))
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
	if len(p.rows) > 0 {
		p.breaks = append(p.breaks, len(p.rows)+1)
	}
	start := len(p.rows)
	doubtful, rests := doubted(s)
	p.aside(sheet.Cell{Kind: sheet.Text, Text: fmt.Sprintf("%s, %s: %s edge%s", strings.TrimSpace(fmt.Sprintf("%s %s", s.Skin, s.Strake)), s.Side, s.Edge, doubtful), Style: sheet.Title})
	for _, line := range rests {
		p.aside(sheet.Cell{Kind: sheet.Text, Text: line, Style: sheet.CardDoubt})
	}
	for _, line := range cardSays(in, s, both) {
		p.aside(sheet.Cell{Kind: sheet.Text, Text: line, Style: sheet.CardLine})
	}
	if on := battenOf(in, s); on != "" {
		p.aside(asMade(in, sheet.Cell{Kind: sheet.Text, Text: on, Style: sheet.CardLine}))
	}
	first := p.next() + 1
	last := first + len(s.Marks) - 1
	p.aside(blade(in, p, s, first, last)...)
	p.groups = append(p.groups, sheet.Range{Top: first + 2, Bottom: last + 2})
	each := p.marksAPaper(len(s.Marks), p.cardHigh(p.rows[start:]))
	for at := each; at < len(s.Marks); at += each {
		p.breaks = append(p.breaks, p.next()+at+1)
	}
	p.lines(len(s.Marks), func(p *page, i int) []sheet.Cell {
		row := markLine(in, p, s, i)
		if note := &row[p.index("Note")-1]; i > 0 && i%each == 0 {
			note.Text = strings.TrimSuffix("card continued; "+note.Text, "; ")
		}
		return row
	})
}

// cardSays is the lines at the head of a card: where its marks and bevels come from,
// how it lies on the bench, and what to mind.
func cardSays(in Input, s bevel.Schedule, both bool) []string {
	r := in.Result.Rules.Bevel
	face := "Outside"
	if r.FaceUp == bevel.Inside {
		face = "Inside"
	}
	all := []string{fmt.Sprintf("%s face up. Marks from %s aft to %s; distances along the edge: %s.", face, s.Places.Named(s.From), s.To, s.Distances())}
	if len(s.Past) > 0 {
		past := s.Places.Named(strings.Join(s.Past, ", "))
		all = append(all, fmt.Sprintf("%s lies past the seam as drawn: its mark goes by the %s spacing, see Warnings.", strings.ToUpper(past[:1])+past[1:], s.Places))
	}
	switch {
	case s.AsOther && s.Shutter:
		all = append(all, fmt.Sprintf("Sawn as %s, mirrored: the gap was measured there only; measure it here first.", s.Side.Other()))
	case s.AsOther:
		all = append(all, fmt.Sprintf("Sawn as %s, mirrored: bevels lifted there only; same distances from the same %s.", s.Side.Other(), s.Places))
	case s.Unused:
		all = append(all, "Worked out from the hull: bevels were handed in for it and could not be laid out; see Warnings.")
	case s.Computed:
		all = append(all, "Worked out from the hull: none was lifted.")
	}
	if line := loose(s, in); line != "" {
		all = append(all, line)
	}
	if both {
		all = append(all, "Both edges are sawn: width and batten are from the corner of the other edge on the inside face.")
	}
	all = append(all, atSaw(s, in.units())...)
	all = append(all, bench(s, r), mind)
	return all
}

// asMade is words that hold for a batten of the thickness that the book was made with;
// for any other they give way to what is to be done.
func asMade(in Input, c sheet.Cell) sheet.Cell {
	thick := set("batten thickness")
	return livef(c, `IF(ABS(%s-%s)<0.000001,"%s","Which planks one batten serves wants strakebook run again: the batten's thickness was changed.")`,
		thick, figure(inUnits(in.Result.Rules.Bevel.Batten, in.units())), strings.ReplaceAll(c.Text, `"`, `""`))
}

// blade is the line of a card with the blade, the parallel batten's bevel and the
// plank's size, or which of these is not known.
func blade(in Input, p *page, s bevel.Schedule, first, last int) []sheet.Cell {
	if s.Depth == 0 {
		return one(sheet.Cell{Kind: sheet.Text, Text: noBatten(s), Style: sheet.CardLine})
	}
	u := in.units()
	steepest := fmt.Sprintf("MAX(MAX(%s:%s),-MIN(%s:%s))", p.at("Set", first), p.at("Set", last), p.at("Set", first), p.at("Set", last))
	depth := livef(small(s.Depth, u), "(%s+%s)/COS(RADIANS(%s))+%s", p.at("Thickness", first), set("batten thickness"), steepest, set("spare depth"))
	parallel := number(float64(s.Parallel), sheet.Degrees)
	parallel.Formula = p.at("Parallel", first)
	if s.Sure() == 0 {
		parallel = queried(parallel, bevel.Doubtful)
	}
	return cardLine(text("Blade, "+unit(u)), depth, sheet.Cell{}, text("Parallel, degrees"), sheet.Cell{}, parallel, text(lying(s)+", "+unit(u)), text(thickByWide(s, u)))
}

// thickByWide is a plank's two sizes, as a yard writes them together.
func thickByWide(s bevel.Schedule, u measure.Style) string {
	places := 3
	if u == measure.StyleMM {
		places = 1
	}
	return fmt.Sprintf("%.*f x %.*f", places, inUnits(s.Thickness, u), places, inUnits(s.Width, u))
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

// inUnits is a length as a figure in inches or millimetres.
func inUnits(l measure.Length, u measure.Style) float64 {
	if u == measure.StyleMM {
		return l.Millimetres()
	}
	return l.Inches()
}
