package write

import (
	"math"
	"slices"

	"strakebook/convert/sheet"
)

// downPaper is how many letters go across a sheet of paper held upright.
const downPaper = 95

// acrossPaper is how many letters go across a sheet of paper held lengthways and
// can still be read.
const acrossPaper = 195

// papers is how many sheets of paper side by side a page takes.
func (p *page) papers() int {
	keys, all := across(p.cols[:p.keys]), across(p.printed())
	if p.keys == 0 || all <= acrossPaper {
		return 1
	}
	return int(math.Ceil((all - keys) / (acrossPaper - keys)))
}

// onFirstPaper is how many columns come on the first of them.
func (p *page) onFirstPaper() int {
	cols, n := p.printed(), float64(p.papers())
	keys := across(cols[:min(p.keys, len(cols))])
	each := (across(cols) + (n-1)*keys) / n
	for n > 1 && across(cols) > 0.9*each {
		cols = cols[:len(cols)-1]
	}
	return len(cols)
}

// printed is the columns that are printed.
func (p *page) printed() []column {
	if p.prints > 0 {
		return p.cols[:p.prints]
	}
	return p.cols
}

// across is how many letters go across columns.
func across(cols []column) float64 {
	sum := 0.0
	for _, c := range cols {
		sum += c.width
	}
	return sum
}

// Of a sheet of letter paper held upright, in points: what is printed across and
// down, and how high a line, a title and the headings are.
const printWide, printHigh, lineHigh, titleHigh, headHigh = 540.0, 615.0, 12.75, 30.0, 42.0

// mostStretch is how far columns are widened for a card to come on one paper.
const mostStretch = 1.45

// stretch is by how much the columns are widened, and so the print made smaller,
// for the longest of a page's cards to come on one paper rather than leave a few
// lines for the next.
func (p *page) stretch() float64 {
	if len(p.breaks) == 0 || p.wide {
		return 1
	}
	longest, high := 0.0, headHigh
	for i, row := range p.rows {
		if slices.Contains(p.breaks, i+1) {
			longest, high = max(longest, high), headHigh
		}
		high += lineHigh
		for _, c := range row {
			if c.Style == sheet.Title || c.Style == sheet.Large {
				high += titleHigh - lineHigh
				break
			}
		}
	}
	longest = max(longest, high)
	wide := 0.0
	for _, c := range p.printed() {
		wide += (7*c.width + 5) * 0.75
	}
	over := longest * min(1, printWide/wide) / printHigh
	if over <= 1 || over > mostStretch {
		return 1
	}
	return over
}
