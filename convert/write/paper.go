package write

import "math"

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
