package templates_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strconv"

	"strakebook/calc/measure"
)

// rows is a sheet as text.
type rows [][]string

// line adds a row of cells.
func (r *rows) line(cells ...string) { *r = append(*r, cells) }

// station is one of a boat's stations.
type station struct {
	name string
	at   float64 // inches aft of the stem
}

// boat is a form with its stations and the two skins laid on it.
type boat struct {
	form
	stations  []station // of the offsets
	bevelled  []station // at which bevels are lifted
	buttocks  []float64
	levels    []float64 // of the waterlines
	outer     planking
	inner     strips
	thick     string // of the planks, inches
	stripWide string
	seed      uint64
	scatter   float64 // of the bevel readings, degrees
}

func eighths(inches float64) string {
	return measure.EighthsText(measure.Inches(inches).Round(measure.Eighth))
}

// offsets is the designer's table.
func (b boat) offsets(title, remark string) rows {
	var r rows
	r.line(title)
	r.line(remark)
	r.line()
	head, from := []string{"Station"}, []string{"Distance from FP"}
	for _, s := range b.stations {
		head, from = append(head, s.name), append(from, eighths(s.at))
	}
	r.line(head...)
	r.line(from...)
	add := func(label string, value func(x float64) (float64, bool)) {
		row := []string{label}
		for _, s := range b.stations {
			v, ok := value(s.at)
			if ok {
				row = append(row, eighths(v))
			} else {
				row = append(row, "-")
			}
		}
		r.line(row...)
	}
	always := func(f func(float64) float64) func(float64) (float64, bool) {
		return func(x float64) (float64, bool) { return f(x), true }
	}
	r.line("Heights above base")
	add("Sheer", always(b.sheer))
	for _, y := range b.buttocks {
		add("Buttock "+eighths(y), func(x float64) (float64, bool) { return b.height(x, y) })
	}
	add("Rabbet", always(b.rabbet))
	r.line("Half-breadths")
	add("Sheer", always(b.deck))
	for _, z := range b.levels {
		add("WL "+eighths(z), func(x float64) (float64, bool) { return b.breadth(x, z) })
	}
	add("Rabbet", always(func(float64) float64 { return b.half() }))
	return r
}

// degrees writes a reading as the gauge shows it.
func degrees(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// bevels is the bevels lifted at each station off planks of each side, read to a
// quarter of a degree with the scatter of a hand-held gauge.
func (b boat) bevels(title, remark string, starboard, port int) rows {
	var r rows
	r.line(title)
	r.line(remark)
	r.line()
	head, from := []string{"Strake", "Edge", "Side"}, []string{"Distance from FP", "", ""}
	for _, s := range b.bevelled {
		head, from = append(head, s.name), append(from, eighths(s.at))
	}
	r.line(head...)
	r.line(from...)
	chance := rand.New(rand.NewPCG(b.seed, 1))
	add := func(k int, side string) {
		row := []string{fmt.Sprint(k), "upper", side}
		for _, s := range b.bevelled {
			v := b.outer.bevel(s.at, k-1) + b.scatter*chance.NormFloat64()
			row = append(row, degrees(math.Round(v*4)/4+0))
		}
		r.line(row...)
	}
	for k := 2; k <= starboard; k++ {
		add(k, "S")
	}
	for k := 2; k <= port; k++ {
		add(k, "P")
	}
	return r
}

// strakes is the list of both skins. Strips that run the whole length are one
// row; those that run out on the rabbet have a row each.
func (b boat) strakes(title, remark, stripSpecies, plankSpecies string) rows {
	var r rows
	r.line(title)
	r.line(remark)
	r.line()
	r.line("Skin", "Strake", "How many", "Thickness", "Width", "Length", "Species", "Scarf", "Remarks")
	r.line("", "", "a side", "in", "in", "ft-in-8ths", "", "to 1", "")
	if b.inner.width > 0 {
		b.strips(&r, stripSpecies)
		r.line()
	}
	wide := measure.InchesText(measure.Inches(b.outer.wide()).RoundUp(measure.Eighth))
	for k := 1; k <= b.outer.strakes; k++ {
		note := ""
		switch k {
		case 1:
			note = "sheer strake"
		case b.outer.strakes:
			note = "garboard"
		}
		r.line("plank", fmt.Sprint(k), "", b.thick, wide, eighths(b.outer.long(k)), plankSpecies, "12", note)
	}
	return r
}

// strips is the rows of the strip skin.
func (b boat) strips(r *rows, species string) {
	count, full := b.inner.count(), 0
	for full < count && b.inner.long(full+1) > b.length {
		full++
	}
	r.line("strip", fmt.Sprintf("1-%d", full), fmt.Sprint(full), "5/8", b.stripWide, eighths(b.inner.long(1)), species, "7", "from the sheer down")
	for j := full + 1; j <= count; j++ {
		r.line("strip", fmt.Sprint(j), "", "5/8", b.stripWide, eighths(b.inner.long(j)), species, "7", "runs out on the rabbet")
	}
}
