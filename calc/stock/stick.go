package stock

import (
	"math"
	"strings"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
)

// class is pieces that the same boards serve alike.
type class struct {
	species          string
	skin             hull.Skin
	thick, wide      measure.Length
	scarf            measure.Length
	sticks           []stick
	prices           []float64 // of a piece, by whole inches rounded up
	longest, shorter measure.Length
}

// stick is what one lane of one row of the rack gives a class.
type stick struct {
	row    int // of the rack
	lanes  int
	usable measure.Length // board less its end trim
	cost   float64        // the board's, shared by its lanes
}

func classOf(run *lay.Run) class {
	return class{species: run.Species, skin: run.Skin, thick: run.Thick, wide: run.Wide, scarf: run.Scarf}
}

func (c class) same(o class) bool {
	return c.skin == o.skin && strings.EqualFold(c.species, o.species) && c.thick == o.thick && c.wide == o.wide && c.scarf == o.scarf
}

// suits says that a board's species serves: where either names none, any does.
func (c class) suits(b Board) bool {
	return c.species == "" || b.Species == "" || strings.EqualFold(strings.TrimSpace(c.species), strings.TrimSpace(b.Species))
}

// across is the class's size in a board's thickness and in its width. Strips are
// ripped off the edge of a board, whose thickness becomes their width, unless
// the yard rips them flat.
func (c class) across(r Rules) (thick, wide measure.Length) {
	if c.skin == hull.Strips && !r.StripsFlat {
		return c.wide, c.thick
	}
	return c.thick, c.wide
}

// lanes is how many of the class lie side by side in a board; 0 where it is too
// thin or too narrow. A sawn strip needs the same allowance to dress on both of
// its sawn faces that a plank needs on its two faces.
func (c class) lanes(b Board, r Rules) int {
	thick, wide := c.across(r)
	if b.Thickness.Value < thick+r.Dressing {
		return 0
	}
	return int((b.Width.Value - r.Edging + r.RipKerf) / (wide + r.RipKerf))
}

// offer fills in the sticks the rack gives a class and the price of a piece of
// every length.
func (c *class) offer(rack []Board, r Rules, priced bool, least measure.Length) {
	for i, b := range rack {
		if !b.whole() || !c.suits(b) {
			continue
		}
		lanes, usable := c.lanes(b, r), b.Length.Value-r.EndTrim
		if lanes < 1 || usable <= 0 {
			continue
		}
		c.sticks = append(c.sticks, stick{i, lanes, usable, b.Cost(r, priced) / float64(lanes)})
		c.longest = max(c.longest, usable)
	}
	c.shorter = least
	c.prices = make([]float64, int(c.longest/measure.Inch)+2)
	for inches := range c.prices {
		c.prices[inches] = c.priceOf(measure.Length(inches)*measure.Inch, r)
	}
}

// priceOf is the least that a piece of a length can add to the bill: a whole
// stick where nothing else would fit beside it, else its share of one. The
// prices of the pieces of any stick then never come to more than the stick, so
// that a plan's least cost is known from them (a dual of the cutting problem).
func (c *class) priceOf(l measure.Length, r Rules) float64 {
	best := math.Inf(1)
	for _, s := range c.sticks {
		switch {
		case s.usable < l:
		case s.usable-r.CrossKerf-l < c.shorter:
			best = min(best, s.cost)
		default:
			best = min(best, s.cost*float64(l)/float64(s.usable-r.CrossKerf))
		}
	}
	return best
}

// price is priceOf from the table, its length rounded up to the inch.
func (c *class) price(l measure.Length) float64 {
	i := int((l + measure.Inch - 1) / measure.Inch)
	if i < len(c.prices) {
		if p := c.prices[i]; !math.IsInf(p, 1) {
			return p
		}
	}
	if l <= c.longest {
		return c.prices[int(l/measure.Inch)]
	}
	return math.Inf(1)
}
