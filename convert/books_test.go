package convert

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// Every workbook of testdata/books is read as the text beside it says it must be:
// lines that begin with > say it.
//
//	> table offsets Lines!B3:H9 stations 6 lines 4 unit inches
//	> Lines!C4 = 1' 3 1/2"       a figure, wherever in the job it came to be
//	> Lines!C5 = unread
//	> line Lines!B4 = waterline half-breadth at 6"
//	> warns unit-open@Lines!B3   everything above a note, in any order
//	> notes convention-read      notes that must be among the rest
func TestBooks(t *testing.T) {
	texts, err := filepath.Glob("../testdata/books/*.txt")
	if err != nil || len(texts) < 25 {
		t.Fatalf("%d books, %v", len(texts), err)
	}
	for _, path := range texts {
		t.Run(strings.TrimSuffix(filepath.Base(path), ".txt"), func(t *testing.T) { bookAsSaid(t, path) })
	}
}

func bookAsSaid(t *testing.T, path string) {
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if !strings.HasPrefix(string(data), "# messy: ") {
		t.Error("the text does not say what is messy")
	}
	in, err := Read([]string{strings.TrimSuffix(path, ".txt") + ".xlsx"}, Options{})
	if err != nil {
		t.Fatal(err)
	}
	var want, got, notes []string
	figures, lines := figuresOf(in.job)
	said := 0
	for _, line := range strings.Split(string(data), "\n") {
		line, ok := strings.CutPrefix(line, "> ")
		if !ok {
			continue
		}
		said++
		words := strings.Fields(line)
		at, value, figure := strings.Cut(line, " = ")
		switch {
		case words[0] == "table":
			if !slices.ContainsFunc(in.Tables, func(t source.Table) bool { return tableIs(t, words[1:]) }) {
				t.Errorf("no %s", line)
			}
		case words[0] == "warns":
			want = append(want, words[1:]...)
		case words[0] == "notes":
			notes = append(notes, words[1:]...)
		case words[0] == "line" && figure:
			if got := lines[strings.TrimPrefix(at, "line ")]; got != value {
				t.Errorf("%s: is %q", line, got)
			}
		case figure:
			if got := figures[at]; !sameFigure(got, value) {
				t.Errorf("%s: is %q", line, got)
			}
		default:
			t.Fatalf("not known: %s", line)
		}
	}
	for _, f := range in.Findings {
		if f.Severity > finding.Note {
			got = append(got, f.Code+"@"+f.Cell.Sheet+"!"+f.Cell.Ref())
		} else if k := slices.Index(notes, f.Code); k >= 0 {
			notes = slices.Delete(notes, k, k+1)
		}
	}
	slices.Sort(want)
	slices.Sort(got)
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("above a note: %s", d)
	}
	if len(notes) > 0 {
		t.Errorf("no notes %v", notes)
	}
	if said < 3 || t.Failed() {
		for _, table := range in.Tables {
			t.Logf("table %s %s!%s stations %d lines %d unit %s (%s) %v", table.Table, table.Sheet, table.Range, table.Stations, table.Lines, table.Unit, table.Notation, table.Evidence)
		}
		for _, f := range in.Findings {
			t.Logf("%s %s [%s] %s; suggests %q", f.Severity, f.Cell, f.Code, f.Text, f.Suggests)
		}
		t.Logf("%v %v", lines, figures)
	}
	if said < 3 {
		t.Error("too little is said of the book")
	}
	guided(t, in, strings.TrimSuffix(path, ".txt")+".xlsx")
	nothingPassedOver(t, in, figures)
}

// nothingPassedOver holds that every figure of the builder's sheets came into the
// job, lies within a table that was found, or is told of with its place.
func nothingPassedOver(t *testing.T, in *Job, figures map[string]string) {
	for _, s := range in.Books[0].Theirs() {
		for r, row := range s.Rows {
			for c, cell := range row {
				at := source.Cell{Sheet: s.Name, Row: r + 1, Col: c + 1}
				key := s.Name + "!" + at.Ref()
				_, read := figures[key]
				_, named := figures[key+" station"]
				if cell.Kind != sheet.Number && cell.Kind != sheet.Date || read || named ||
					slices.ContainsFunc(in.Tables, func(t source.Table) bool { return t.Sheet == s.Name && within(at, t.Range) }) {
					continue
				}
				if !slices.ContainsFunc(in.Findings, func(f finding.Finding) bool { return tells(f, at) }) {
					t.Errorf("%s holds %q, and nothing is said of it", key, cell.Text)
				}
			}
		}
	}
}

var blockOf = regexp.MustCompile(`\b[A-Z]{1,3}[0-9]+(?::[A-Z]{1,3}[0-9]+)?\b`)

// tells says that a finding is of a cell, or names a block that holds it.
func tells(f finding.Finding, at source.Cell) bool {
	if f.Cell.Sheet != at.Sheet {
		return false
	}
	return f.Cell.Ref() == at.Ref() || slices.ContainsFunc(f.Also, func(c source.Cell) bool { return c.Ref() == at.Ref() }) ||
		slices.ContainsFunc(blockOf.FindAllString(f.Text, -1), func(b string) bool { return within(at, b) })
}

// within says that a cell lies in a block such as B3:W14.
func within(at source.Cell, block string) bool {
	from, to, ok := strings.Cut(block, ":")
	if !ok {
		to = from
	}
	var top, left, bottom, right int
	for _, end := range []struct {
		ref      string
		row, col *int
	}{{from, &top, &left}, {to, &bottom, &right}} {
		for _, c := range end.ref {
			if c >= 'A' {
				*end.col = *end.col*26 + int(c-'A') + 1
			} else {
				*end.row = *end.row*10 + int(c-'0')
			}
		}
	}
	return at.Row >= top && at.Row <= bottom && at.Col >= left && at.Col <= right
}

// guided holds that the guide written of a book, handed back as it is, changes
// nothing of what is read.
func guided(t *testing.T, in *Job, book string) {
	guide := filepath.Join(t.TempDir(), "guide.csv")
	if err := in.WriteGuide(guide, false); err != nil {
		t.Fatal(err)
	}
	again, err := Read([]string{book}, Options{Guide: guide})
	if err != nil {
		t.Fatal(err)
	}
	figures, lines := figuresOf(in.job)
	figuresAgain, linesAgain := figuresOf(again.job)
	if d := cmp.Diff(figures, figuresAgain); d != "" {
		t.Errorf("figures by the guide: %s", d)
	}
	if d := cmp.Diff(lines, linesAgain); d != "" {
		t.Errorf("lines by the guide: %s", d)
	}
}

// tableIs says that a table is as said: its kind and place, then words and values.
func tableIs(t source.Table, words []string) bool {
	if t.Table != words[0] || t.Sheet+"!"+t.Range != words[1] {
		return false
	}
	have := map[string]string{"stations": fmt.Sprint(t.Stations), "lines": fmt.Sprint(t.Lines), "unit": strings.ReplaceAll(t.Unit, " ", "-"), "notation": strings.ReplaceAll(t.Notation, " ", "-")}
	for i := 2; i+1 < len(words); i += 2 {
		if have[words[i]] != words[i+1] {
			return false
		}
	}
	return true
}

// sameFigure says that a figure as read is the one said: a length in any of the
// yard's marks, degrees, or a word.
func sameFigure(got, said string) bool {
	if got == said {
		return true
	}
	a, errA := measure.ParseLength(got, measure.NoUnit)
	b, errB := measure.ParseLength(said, measure.NoUnit)
	return errA == nil && errB == nil && a == b
}

// figuresOf is every figure of a job by its cell, and every line of the offsets.
func figuresOf(j calc.Job) (figures, lines map[string]string) {
	figures, lines = map[string]string{}, map[string]string{}
	put := func(at source.Cell, state source.State, value string) {
		if at.Row == 0 {
			return
		}
		figures[at.Sheet+"!"+at.Ref()] = map[source.State]string{source.Blank: "blank", source.Given: value, source.Dash: "dash", source.Unread: "unread"}[state]
	}
	length := func(all ...source.Reading[measure.Length]) {
		for _, v := range all {
			put(v.Cell, v.State, fmt.Sprintf("%g mm", v.Value.Millimetres()))
		}
	}
	for _, o := range j.Offsets {
		for _, s := range o.Stations {
			length(s.At)
			figures[s.Cell.Sheet+"!"+s.Cell.Ref()+" station"] = s.Name
		}
		for _, l := range o.Lines {
			length(l.Values...)
			said := fmt.Sprintf("%v %v", l.Role, l.View)
			if l.At.OK() {
				said += " at " + measure.InchesText(l.At.Value) + `"`
			}
			lines[l.Cell.Sheet+"!"+l.Cell.Ref()] = said
		}
	}
	for _, b := range j.Bevels {
		for _, s := range b.Seams {
			length(s.Along...)
			for _, v := range s.Readings {
				put(v.Cell, v.State, v.Value.Write()+" deg")
			}
			lines[s.Cell.Sheet+"!"+s.Cell.Ref()] = fmt.Sprintf("%s %s %v %v", s.Skin, s.Strake, s.Edge, s.Side)
		}
	}
	for _, s := range j.Strakes {
		length(s.Thickness, s.Width, s.Length, s.Start)
		length(s.Widths...)
		put(s.Count.Cell, s.Count.State, fmt.Sprint(s.Count.Value))
		put(s.Slope.Cell, s.Slope.State, fmt.Sprint(s.Slope.Value))
	}
	for _, b := range j.Rack {
		length(b.Thickness, b.Width, b.Length)
		put(b.Count.Cell, b.Count.State, fmt.Sprint(b.Count.Value))
		put(b.Price.Cell, b.Price.State, fmt.Sprint(b.Price.Value))
	}
	for _, m := range j.Seams {
		for _, s := range m.Seams {
			length(s.Values...)
		}
	}
	for _, h := range j.Hung {
		length(h.Girth)
	}
	return figures, lines
}
