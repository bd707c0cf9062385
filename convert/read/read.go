// Package read turns sheets into a job: it finds the builder's tables by what
// they hold, decides how each is written, and reads every value with the cell
// it came from. What cannot be read with certainty is a finding, never a guess.
// It knows sheets and the trades' nouns, but no files.
package read

import (
	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// Options says how books are to be read.
type Options struct {
	Set      []string         // name=value, over what the book says
	Guide    []sheet.GuideRow // over what is found
	Headings string           // the words a heading may bear: templates/headings.csv
}

// reader is one reading of some books.
type reader struct {
	words     *words
	rules     calc.Rules
	pages     []*page
	job       calc.Job
	tables    []source.Table
	dropped   []source.Table
	found     finding.List
	guide     []sheet.GuideRow
	now       *sheet.GuideRow // the line of the guide being read by
	given     []givenSetting
	stated    map[string]stated // settings by name
	decided   []warned
	undecided []warned // rows of a Warnings sheet that nothing is written in
	answers   []answer
	base      calc.Rules                                // without those and what the command line sets
	boxed     []box                                     // values changed on a Settings sheet of ours
	boxUnits  []box                                     // every line of that sheet, for its unit
	madeIn    string                                    // the units that sheet was made in
	boxTold   []finding.Finding                         // what is told of those of the settings
	at        map[string]source.Reading[measure.Length] // positions of stations by name
	numbered  map[source.Cell]bool                      // headings of widths by a number alone
	outsides  map[source.Cell]string                    // what has the widths of a strake on the outside face
	oddEdges  map[source.Cell]string                    // what stands for the edge of a seam and names none
	scarfRuns map[source.Cell]measure.Length            // what strakes list for their scarfs, where that is a run
	calls     map[source.Cell]called                    // what stations are called at their names
	bare      measure.Unit                              // of a bare number, by Settings
	bared     bool                                      // some figure was read by that
	named     map[string]name                           // texts already looked at as names of stations
	sides     map[source.Cell]hull.Side                 // that tables of offsets are of
	sidings   map[source.Cell]string                    // half sidings stated in the titles of lines
	torn      map[source.Cell]bool                      // tables of offsets whose surface is stated two ways

	placings   []placing              // where the stations of each table lie
	alongSaid  map[source.Cell]bool   // first of distances along an edge that are said to be from an end of the boat
	turned     bool                   // whether any table of the book goes from aft
	placeAsked bool                   // whether positions may be from aft: no spacing places any
	fromLoad   map[source.Cell]string // lines of heights above the load waterline: the words that say so
	forward    float64                // the highest number of stations that are numbered forward; 0 where they are numbered aft

	// Of the table being read.
	bareCells []bareCell
	between   []bareCell // numbers between the marks of any rule
	twoWays   []twoWay
	doubted   []source.Cell // of two parts
}

// Books reads books as one job. It returns the tables found, those that the
// guide says to leave among them.
func Books(books []*sheet.Book, o Options) (calc.Job, []source.Table, finding.List) {
	r := &reader{words: newWords(o.Headings), rules: calc.DefaultRules(), guide: o.Guide, stated: map[string]stated{},
		at: map[string]source.Reading[measure.Length]{}, calls: map[source.Cell]called{}, numbered: map[source.Cell]bool{}, scarfRuns: map[source.Cell]measure.Length{}, oddEdges: map[source.Cell]string{}, outsides: map[source.Cell]string{}, sides: map[source.Cell]hull.Side{}, torn: map[source.Cell]bool{}, sidings: map[source.Cell]string{},
		alongSaid: map[source.Cell]bool{},
		fromLoad:  map[source.Cell]string{}}
	r.open(books)
	r.decide()
	for _, p := range r.pages {
		r.lists(p, []recordTable{guideTable()})
	}
	r.skipped()
	for _, p := range r.pages {
		r.lists(p, []recordTable{settingsTable()})
		r.settingsAside(p)
		r.loneSettings(p)
	}
	for _, p := range r.pages {
		r.namedSettings(p)
	}
	r.apply()
	r.followBoxes()
	r.set(o.Set)
	r.overBoxes()
	r.bare = r.rules.Yard.Bare
	r.byGuide()
	for _, p := range r.pages {
		r.pairs(p)
		r.lists(p, recordTables())
		r.sideways(p)
		r.grids(p, []bool{false, true}, "")
	}
	r.inBookOrder()
	r.origins()
	r.listedFromAft()
	r.twice()
	r.join()
	r.fromLoadLine()
	r.left()
	r.framesApart()
	r.followPrices()
	r.fillPositions()
	r.widthsByStation()
	r.widthsByNumber()
	r.strakesTurned()
	r.against()
	for _, p := range r.pages {
		r.namedCells(p)
		r.leftovers(p)
	}
	r.checkGuide()
	if r.stated["units"].by == "" {
		r.rules.Yard.Units = r.ownUnits()
	}
	if r.rules.Yard.Units == measure.StyleMM {
		r.rules.RoundMetric(func(name string) bool { return r.stated[name].by != "" })
	}
	r.job.Rules = r.rules
	return r.job, r.tables, r.found
}

// open takes the sheets of the books as pages, but for our own.
func (r *reader) open(books []*sheet.Book) {
	for _, b := range books {
		for _, s := range b.Sheets {
			switch {
			case b.Ours(s.Name):
				p := newPage(b, s)
				r.back(p)
				r.plan(p)
				r.boxes(p)
				r.slopes(p)
			case b.OurText():
				r.back(newPage(b, s))
				r.add(finding.Finding{Kind: SheetUnused, Cell: source.Cell{Book: b.Name, Sheet: s.Name},
					Text: "a table of ours, worked out from a builder's book: nothing on it but decisions was read"})
			default:
				p := newPage(b, s)
				r.minuted(p)
				r.pages = append(r.pages, p)
			}
		}
	}
}

func (r *reader) add(f finding.Finding) { r.found = append(r.found, f) }
