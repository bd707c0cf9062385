package hull

import (
	"fmt"
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// byShares gives every strake its share of the girth at each station; where the
// sections are cut short by the stem or the stern post, of the girth as far as the
// strakes that end on these have not yet ended.
func (h *hull) byShares(l *lined, strakes []Strake) finding.List {
	found := append(h.mixed(l, strakes), h.share(l, strakes)...)
	l.down = make([][]float64, len(l.share))
	for j := range l.down {
		l.down[j] = make([]float64, len(l.girth))
	}
	for k := range l.girth {
		l.drawShares(k, l.share)
	}
	return found
}

// mixed finds the strakes without widths by station in a skin whose others have
// them: the widths of these are then not gone by.
func (h *hull) mixed(l *lined, strakes []Strake) finding.List {
	var lacking []Strake
	for _, s := range strakes {
		if len(s.WidthAt) < 2 {
			lacking = append(lacking, s)
		}
	}
	if len(lacking) == 0 || len(lacking) == len(strakes) || h.r.LiningPlanks == ByShares {
		return nil
	}
	f := finding.Finding{Kind: WidthGap, Cell: lacking[0].Cell, Do: fmt.Sprintf("write its widths at the %ss, or in one column the greatest of each", h.o.Places),
		Text: fmt.Sprintf("%s %s has no widths by %s where %d others have: the skin is lined off in shares of the girth, and their widths by %[3]s are not gone by", l.skin, lacking[0].Name, h.o.Places, len(strakes)-len(lacking))}
	for _, s := range lacking[1:] {
		f.Also = append(f.Also, s.Cell)
	}
	return finding.List{f}
}

// share is each strake's share of the girth: as its greatest width is listed, at
// the fullest station, tapering as the girth does; equal shares where no width is
// listed or the setting asks for them. The builder's widths are his word: those
// that leave girth bare are drawn so, those that are more than it are narrowed
// together, and either is found.
func (h *hull) share(l *lined, strakes []Strake) finding.List {
	n := len(l.names)
	l.share = make([]float64, n+1)
	for j := range l.share {
		l.share[j] = float64(j) / float64(n)
	}
	full := fullest(l.girth)
	widths, cells := greatest(strakes)
	if len(cells) == 0 || l.girth[full] == 0 {
		return nil
	}
	g := girthShared{h: h, l: l, full: full, cells: cells}
	g.fillBlanks(widths)
	if h.r.LiningPlanks == ByShares {
		return g.bare(fmt.Sprintf("they are lined off in equal shares of %s, as %q has it, and their boards chosen so", g.mean(), "planks lined off"))
	}
	if r := g.sum / l.girth[full]; r > notMeant || r < 1/notMeant {
		return g.unlikely()
	}
	whole := g.sum
	found := g.over()
	if g.sum < l.girth[full]-g.within() {
		whole = l.girth[full]
		found = g.bare("they are drawn as wide as listed")
	}
	if whole == g.sum && slices.Max(widths) == slices.Min(widths) {
		return found // equal shares are what is listed
	}
	l.by = ByGreatest
	for j, w := range widths {
		l.share[j+1] = l.share[j] + w/whole
	}
	if whole == g.sum {
		l.share[n] = 1 // to the last figure
	}
	return found
}

// fullest is the station of the greatest girth.
func fullest(girth []float64) int {
	k := 0
	for i, g := range girth {
		if g > girth[k] {
			k = i
		}
	}
	return k
}

// greatest is the greatest width listed of every strake by its name, in inches, 0
// where there is none or it cannot be meant, and the cells of those that hold.
func greatest(strakes []Strake) ([]float64, []source.Cell) {
	usual := usualWidth(strakes)
	var widths []float64
	var cells []source.Cell
	for _, s := range strakes {
		w := s.Widest()
		if absurd(w, usual) {
			w = 0
		}
		if w > 0 {
			cells = append(cells, s.Width.Cell)
		}
		for range s.Names() {
			widths = append(widths, w.Inches())
		}
	}
	return widths, cells
}

// girthShared is what the widths listed come to against the girth at the fullest
// station.
type girthShared struct {
	h     *hull
	l     *lined
	full  int
	sum   float64 // of the widths, in inches
	taken string  // of those that are blank or cannot be meant
	cells []source.Cell
}

// fillBlanks gives the strakes without a width what the others leave of the
// girth, where that is about as wide as the rest of them, else an equal share.
func (g *girthShared) fillBlanks(widths []float64) {
	blanks := 0
	for _, w := range widths {
		g.sum += w
		if w == 0 {
			blanks++
		}
	}
	if blanks == 0 {
		return
	}
	mean := g.l.girth[g.full] / float64(len(widths))
	left := (g.l.girth[g.full] - g.sum) / float64(blanks)
	if left < mean/1.5 || left > mean*1.5 {
		left = mean
	}
	for j, w := range widths {
		if w == 0 {
			widths[j] = left
			g.sum += left
		}
	}
	g.taken = fmt.Sprintf(" with %d not known and taken as %s", blanks, g.h.write(measure.Inches(left)))
}

// within is how far the widths together may be off the girth: what a skin takes
// up, and a sixteenth a strake, since widths are listed to an eighth. Our choice.
func (g *girthShared) within() float64 {
	return g.h.r.SumWithin.Inches() + float64(len(g.l.names))/16
}

// bare finds that the widths listed leave girth bare; done is what is made of
// them.
func (g *girthShared) bare(done string) finding.List {
	short := g.l.girth[g.full] - g.sum
	if short <= g.within() {
		return nil
	}
	return g.found(fmt.Sprintf("leave %s of it bare: %s", g.h.write(measure.Inches(short)), done),
		"list more strakes or write them wider; leave the widths blank to have the girth shared out")
}

// notMeant is how many times the girth, or what part of it, the widths of a whole
// skin are not meant to be: our choice.
const notMeant = 3.0

// unlikely finds that the widths listed are nothing like the girth.
func (g *girthShared) unlikely() finding.List {
	what := "cannot be meant"
	if reason := slipTo(g.sum, g.l.girth[g.full], 1.5); reason != "" {
		what += " (" + reason + "?)"
	}
	return g.found(fmt.Sprintf("%s: equal shares of %s are drawn", what, g.mean()), "check the widths and their unit, and how many strakes there are")
}

// over finds that the widths listed are more than the girth.
func (g *girthShared) over() finding.List {
	over := g.sum - g.l.girth[g.full]
	if over <= g.within() {
		return nil
	}
	return g.found(fmt.Sprintf("come to %s too much: they are drawn narrower in proportion, and their boards chosen as wide as listed", g.h.write(measure.Inches(over))),
		"list fewer strakes or write them narrower; leave the widths blank to have the girth shared out")
}

func (g *girthShared) found(what, do string) finding.List {
	return finding.List{{Kind: LiningSum, Cell: g.cells[0], Also: g.cells[1:], Reads: g.h.write(measure.Inches(g.sum)) + " together", Suggests: "about " + g.mean() + " each", Do: do,
		Text: fmt.Sprintf("the widths of the %s skin's %d strakes%s, %s together where they are widest against a girth of %s %s at %s, %s", g.l.skin, len(g.l.names),
			g.taken, g.h.write(measure.Inches(g.sum)), g.h.write(measure.Inches(g.l.girth[g.full])), g.l.where(), g.h.o.called(g.full), what)}}
}

// mean is an equal share of the girth at the fullest station.
func (g *girthShared) mean() string {
	return g.h.write(measure.Inches(g.l.girth[g.full] / float64(len(g.l.names))))
}

// where is the surface a skin is lined off on, in words.
func (l *lined) where() string {
	switch l.on {
	case SurfaceUnstated:
		return "on the surface of the offsets"
	case BetweenSkins:
		return l.on.String()
	}
	return "on the " + l.on.String()
}
