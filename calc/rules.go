package calc

import (
	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
	"strakebook/calc/setting"
	"strakebook/calc/stock"
)

// Rules is every trade's rules and the yard's own.
type Rules struct {
	Yard  Yard
	Hull  hull.Rules
	Scarf scarf.Rules
	Bevel bevel.Rules
	Lay   lay.Rules
	Stock stock.Rules
}

// Yard is what is set about the job and the books, and belongs to no trade.
type Yard struct {
	Job   string        // name of the job, for the headings and footers
	Date  string        // the book's own date as written; never the clock's
	Units measure.Style // of what is written
	Bare  measure.Unit  // of a bare number whose heading and caption say nothing
	Paper Paper

	FramesAreStations bool // frame 4 is what the offsets have at station 4
}

// Paper is the yard's paper.
type Paper uint8

// The two papers.
const (
	Letter Paper = iota
	A4
)

// inUnits is the rules with every trade's findings in the yard's own units.
func (r Rules) inUnits() Rules {
	u := r.Yard.Units
	r.Hull.Units, r.Scarf.Units, r.Bevel.Units, r.Lay.Units, r.Stock.Units = u, u, u, u, u
	return r
}

// DefaultRules is what holds where the book and the command line say nothing.
func DefaultRules() Rules {
	return Rules{
		Hull:  hull.DefaultRules(),
		Scarf: scarf.DefaultRules(),
		Bevel: bevel.DefaultRules(),
		Lay:   lay.DefaultRules(),
		Stock: stock.DefaultRules(),
	}
}

// Settings lists every rule under the name the Settings sheet gives it, in the
// order of the work. Setting a value changes r.
func (r *Rules) Settings() []setting.Setting {
	all := []setting.Setting{
		{Name: "job", Meaning: "name of the job, for headings and footers", Source: "the builder's", Value: setting.Text(&r.Yard.Job)},
		{Name: "date", Meaning: "date of the book, for the footers; the clock is never asked", Source: "the builder's", Value: setting.Text(&r.Yard.Date)},
		{Name: "units", Meaning: "how lengths are written: feet (feet-inches-eighths beside decimal inches), inches (decimal) or mm", Source: "the builder's own where not set: as most of the tables are", Value: setting.Choice(&r.Yard.Units, "feet", "inches", "mm")},
		{Name: "bare numbers", Meaning: "the unit of a number whose heading and caption say nothing", Source: "the builder's: asked, never assumed", Value: setting.Choice(&r.Yard.Bare, "not known", "feet", "inches", "mm", "cm", "m", "fractions")},
		{Name: "frames are stations", Meaning: "what is given at frame 4 is at station 4 of the offsets", Source: "the builder's: asked, never assumed", Value: setting.YesNo(&r.Yard.FramesAreStations)},
		{Name: "paper", Meaning: "the paper the sheets are set up for", Source: "our choice: A4 where the yard works in mm", Value: setting.Choice(&r.Yard.Paper, "letter", "a4")},
	}
	all = append(all, r.Hull.Settings()...)
	all = append(all, r.Scarf.Settings()...)
	all = append(all, r.Bevel.Settings()...)
	all = append(all, r.Lay.Settings()...)
	return append(all, r.Stock.Settings()...)
}

// Kinds is every kind of finding the trades make, in the order of the work.
func Kinds() []*finding.Kind {
	var all []*finding.Kind
	for _, kinds := range [][]*finding.Kind{hull.Kinds(), scarf.Kinds(), bevel.Kinds(), lay.Kinds(), stock.Kinds()} {
		all = append(all, kinds...)
	}
	return all
}
