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
const printWide, printHigh, lineHigh, titleHigh, headHigh, saidHigh, calledHigh = 540.0, 615.0, 12.75, 30.0, 54.0, 18.0, 25.0

// mostStretch is how far columns are widened for a card to come on one paper.
const mostStretch = 1.25

// cardHigh is how high the lines of a card are together, in points: its title, what
// is said below it, and the marks, as they are printed.
func (p *page) cardHigh(rows [][]sheet.Cell) float64 {
	high := 0.0
	for _, row := range rows {
		line := lineHigh
		for _, c := range row {
			switch c.Style {
			case sheet.Large, sheet.Called:
				line = calledHigh
			case sheet.Title:
				line = max(line, titleHigh)
			case sheet.CardLine, sheet.CardDoubt:
				line = max(line, saidHigh)
			}
		}
		high += line
	}
	return high
}

// marksAPaper is how many marks of a card go on each paper, as evenly as may be, where
// so many stand below lines of so many points; all of them where one paper holds them.
func (p *page) marksAPaper(marks int, said float64) int {
	room := printHigh*mostStretch/p.shrunk() - headHigh
	papers := 1
	for said+calledHigh*float64(marks) > room*float64(papers) {
		papers++
	}
	return (marks + papers - 1) / papers
}

// shrunk is by how much a page's columns are made smaller to go across the paper.
func (p *page) shrunk() float64 {
	wide := 0.0
	for _, c := range p.printed() {
		wide += (7*c.width + 5) * 0.75
	}
	return min(1, printWide/wide)
}

// stretch is by how much the columns are widened, and so the print made smaller,
// for the longest of a page's cards to come on one paper rather than leave a few
// lines for the next.
func (p *page) stretch() float64 {
	if len(p.breaks) == 0 || p.wide {
		return 1
	}
	longest, from := 0.0, 0
	for i := range p.rows {
		if i+1 == len(p.rows) || slices.Contains(p.breaks, i+2) {
			longest = max(longest, headHigh+p.cardHigh(p.rows[from:i+1]))
			from = i + 1
		}
	}
	over := longest * p.shrunk() / printHigh
	if over <= 1 || over > mostStretch {
		return 1
	}
	return over
}
