// Package convert is the way in and the way out: the builder's books to a job,
// and a job's result to a new workbook. It knows nothing of the command line.
package convert

import (
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/source"
	"strakebook/convert/csv"
	"strakebook/convert/read"
	"strakebook/convert/sheet"
	"strakebook/convert/write"
	"strakebook/convert/xlsx"
	"strakebook/templates"
)

// Options says how books are to be read.
type Options struct {
	Set     []string // name=value, over what the book says
	Guide   string   // path of a guide file; "" for none
	Version string   // of the program, for the JSON

	TakeProposals bool // take the likeliest reading of every offset that one is proposed of
}

// Job is books as read: the tables found in them and what there is to say.
type Job struct {
	Books    []*sheet.Book
	Tables   []source.Table
	Findings finding.List

	Told func(part float64) // is told how far the plan of joints and boards is, from 0 to 1

	job     calc.Job
	options Options
}

// Read opens the books and reads them as one job. Its errors stop the work: a
// file that is not there, is not a workbook, or holds nothing.
func Read(paths []string, o Options) (*Job, error) {
	books, err := open(paths)
	if err != nil {
		return nil, err
	}
	job, err := readBooks(books, o)
	if err != nil {
		return nil, err
	}
	for _, p := range openElsewhere(paths) {
		job.Findings = append(job.Findings, finding.Finding{Kind: read.FileLocked, Cell: source.Cell{Book: filepath.Base(p)},
			Text: "the book is open in a spreadsheet: changes not yet saved are not read"})
	}
	return job, nil
}

// readBooks reads books already open.
func readBooks(books []*sheet.Book, o Options) (*Job, error) {
	how := read.Options{Set: o.Set, Headings: templates.Headings}
	if o.Guide != "" {
		rows, err := csv.ReadGuide(o.Guide)
		if err != nil {
			return nil, err
		}
		how.Guide = rows
	}
	job, tables, findings := read.Books(books, how)
	job.TakeProposals = o.TakeProposals
	if !usable(tables) {
		return nil, &Unusable{Books: paths(books), Findings: findings}
	}
	return &Job{Books: books, Tables: tables, Findings: findings, job: job, options: o}, nil
}

// Work checks and works out the job.
func (j *Job) Work() *Done {
	job := j.job
	job.Rules.Stock.Told = j.Told
	result, found := calc.Work(job)
	all := append(append(finding.List{}, j.Findings...), found...)
	hull.Keep(all, job.Decisions)
	all.Sort()
	for i, f := range all {
		if do := job.Places().Speak(f.ToDo()); do != f.ToDo() {
			all[i].Do = do
		}
	}
	return &Done{Job: j, Result: result, Findings: all}
}

// Done is a job worked out.
type Done struct {
	*Job
	Result   calc.Result
	Findings finding.List
}

// input is the job as the writing stage takes it.
func (d *Done) input(cut bool) write.Input {
	return write.Input{
		Books: d.Books, Job: d.job, Result: d.Result, Tables: d.Tables,
		Findings: d.Findings, Version: d.options.Version, Cut: cut,
	}
}

// JSON is the job as one JSON object; with its result only where it was cut.
func (d *Done) JSON(cut bool) ([]byte, error) { return write.JSON(d.input(cut)) }

// Summary is the few figures that matter, a line each.
func (d *Done) Summary() []string {
	var all []string
	for _, l := range write.Lines(d.input(true)) {
		all = append(all, l[0]+": "+l[1])
	}
	return all
}

// JSON is what was found in the books as one JSON object.
func (j *Job) JSON() ([]byte, error) {
	return write.JSON(write.Input{Books: j.Books, Job: j.job, Tables: j.Tables, Findings: j.Findings, Version: j.options.Version})
}

// usable says that a table to work by was found: settings alone are none.
func usable(tables []source.Table) bool {
	for _, t := range tables {
		if t.Table != "settings" && t.Table != "guide" && !t.Skip {
			return true
		}
	}
	return false
}

// CheckSet says what is wrong with settings given on the command line: an
// unknown name, or a value that cannot be read.
func CheckSet(o Options) error {
	rules := calc.DefaultRules()
	for _, s := range o.Set {
		name, value, _ := strings.Cut(s, "=")
		if err := read.Apply(rules.Settings(), name, value, ""); err != nil {
			return fmt.Errorf("--set %s: %w", s, err)
		}
	}
	return nil
}

// WriteGuide writes what was found as a guide that the builder may correct.
func (j *Job) WriteGuide(path string, force bool) error {
	if err := mayWrite(path, force, j.Books); err != nil {
		return err
	}
	var rows []sheet.GuideRow
	for _, t := range j.Tables {
		g := sheet.GuideRow{Table: t.Table, Sheet: t.Sheet, Range: t.Range}
		if t.Skip {
			g.Skip = "yes"
		}
		if !t.Mixed {
			g.Unit, g.Notation = t.Unit, t.Notation
		}
		for _, e := range t.Evidence {
			if across, ok := strings.CutPrefix(e, "stations run "); ok {
				g.Stations = across
			}
		}
		rows = append(rows, g)
	}
	return xlsx.Replace(path, force, func(w io.Writer) error { return csv.WriteGuide(w, rows) })
}

// Kinds is every kind of finding there is, in the order of the work.
func Kinds() []*finding.Kind { return append(read.Kinds(), calc.Kinds()...) }

func paths(books []*sheet.Book) []string {
	var all []string
	for _, b := range books {
		all = append(all, b.Path)
	}
	return all
}
