package read

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"strakebook/calc"
)

// pricePrefix begins the name of a board's price on our Settings sheet.
const pricePrefix = "price "

// followPrices sets the prices that were changed on a Settings sheet of ours, over
// what the rack says.
func (r *reader) followPrices() {
	for _, b := range r.boxed {
		i, why := r.boardOf(b)
		if i < 0 {
			r.boxLeft(b, why)
			continue
		}
		price := &r.job.Rack[i].Price
		was := plainNumber(price.Value)
		now, err := strconv.ParseFloat(b.value, 64)
		switch {
		case b.value == "":
			r.boxEmptied(b, was, price.Cell)
		case b.changed() && !strings.EqualFold(b.unit, b.pricedBy()):
			r.boxLeft(b, fmt.Sprintf("its unit was changed from %q to %q as well, and what a price is of stands on your rack", b.pricedBy(), b.unit))
		case err != nil || now < 0:
			r.boxLeft(b, "a price is a number")
		case !b.changed() && !sameFigure(was, b.before):
			r.boxOld(b, was, price.Cell)
		case !sameFigure(b.value, was):
			price.Value = now
			r.add(r.boxHolds(b, b.value, was, price.Cell, sameFigure(was, b.stood())))
			r.job.SetInBook = append(r.job.SetInBook, calc.SetInBook{Name: b.name, Before: was, Cell: r.job.Rack[i].Cell})
		}
	}
}

// boardOf is the line of the rack that a price is of; -1 and why where none is, or
// more than one may be.
func (r *reader) boardOf(b box) (int, string) {
	var all []int
	for i, one := range r.job.Rack {
		if one.Price.OK() && b.name == pricePrefix+one.Called(i) && b.of == one.PriceOf() {
			all = append(all, i)
		}
	}
	if len(all) > 1 {
		all = slices.DeleteFunc(all, func(i int) bool { return b.rack != r.job.Rack[i].PricedAt() })
	}
	switch len(all) {
	case 1:
		return all[0], ""
	case 0:
		return -1, "the rack has no such board with a price in that measure"
	}
	return -1, "several boards of the rack are called so"
}

// pricedBy is the unit that a price stood in when the book was made.
func (b box) pricedBy() string {
	if strings.HasPrefix(b.of, "of a board foot") {
		return "a board foot"
	}
	return "a board"
}
