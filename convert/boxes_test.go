package convert

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/calc/setting"
	"strakebook/convert/sheet"
	"strakebook/convert/write"
)

// What is changed on the Settings sheet of the new book, any value of it and the
// prices, is followed when that is handed back, and told; it stands in the book that
// comes of it, and holds when that is handed back in its turn.
func TestEverySettingChangedInTheNewBookIsFollowed(t *testing.T) {
	for _, set := range [][]string{nil, {"units=mm"}} {
		first := worked(t, set, boxedStrakes, boxedRack)
		want := map[string]string{}
		book := newBook(first)
		eachSetting(book, func(row []sheet.Cell) {
			if now, changed := otherValue(row[0].Text, row[1], row[2].Text); changed != "" {
				row[1], want[row[0].Text] = now, changed
			}
		})
		for _, s := range first.Result.Rules.Settings() {
			if want[s.Name] == "" && s.Name != "tries" {
				t.Errorf("%s was not changed", s.Name)
			}
		}
		for _, generation := range []string{"handed back", "and again"} {
			job, err := readBooks([]*sheet.Book{book}, Options{})
			if err != nil {
				t.Fatal(err)
			}
			told := map[string]bool{}
			for _, f := range job.Findings {
				if f.Code == "box-followed" {
					told[strings.Split(f.Text, `"`)[1]] = true
				} else if f.Severity > finding.Note {
					t.Errorf("%s: %s %s", generation, f.Code, f.Text)
				}
			}
			for name, value := range want {
				own := name == "paper" && generation == "and again" // that goes with feet without being set
				if got := valueOf(&job.job, name); got != value || !told[name] && !own {
					t.Errorf("%s: %s is %q and told %v, want %q", generation, name, got, told[name], value)
				}
			}
			job.job.Rules.Stock.Tries = 1
			book = newBook(job.Work())
			eachSetting(book, func(row []sheet.Cell) {
				if strings.HasPrefix(row[0].Text, "price ") && (row[1].Number != 55 || row[4].Number != 55) {
					t.Errorf("%s: the price in the new book is %v, made with %v", generation, row[1].Number, row[4].Number)
				}
			})
		}
	}
}

const (
	boxedStrakes = "Strake,Thickness (in),Width (in),Length (ft)\n1,1,5,24\n"
	boxedRack    = "Board,Species,Thickness (in),Width (in),Length (ft),Count,Price each\nA,Larch,1.25,6,16,,40\n"
)

// newBook is the book that comes of a job, with the builder's own sheets in it.
func newBook(d *Done) *sheet.Book {
	book, _ := write.Lay(d.input(true)).Book()
	book.Name, book.Kind = "new.xlsx", "xlsx"
	for _, b := range d.Books {
		book.Sheets = append(book.Sheets, values(b.Theirs(), nil, false)...)
	}
	for _, s := range book.Sheets { // as they are read: rows that are made later too, and texts of figures
		var rows [][]sheet.Cell
		for _, row := range s.Each() {
			rows = append(rows, slices.Clone(row))
		}
		s.Rows, s.Out = rows, sheet.Layout{}
	}
	return book
}

// eachSetting shows every line of a book's Settings sheet.
func eachSetting(book *sheet.Book, show func(row []sheet.Cell)) {
	for _, s := range book.Sheets {
		for i, row := range s.Rows {
			if s.Name == "Settings" && i > 0 && len(row) > 5 {
				show(row)
			}
		}
	}
}

// otherValue is another value than a box holds, and how the setting then writes it.
func otherValue(name string, c sheet.Cell, unit string) (now sheet.Cell, written string) {
	if strings.HasPrefix(name, "price ") {
		return sheet.Cell{Kind: sheet.Number, Number: 55}, "55"
	}
	rules := calc.DefaultRules()
	s := settingOf(&rules, name)
	if s == nil || name == "tries" { // how long is searched: once does here
		return c, ""
	}
	if held := c.Text; c.Kind == sheet.Text && held != "" && held != "not stated" {
		if err := s.SetIn(held, unit); err != nil {
			return c, ""
		}
	}
	was := s.Written()
	if c.Kind == sheet.Number {
		for _, v := range []float64{c.Number + 1, c.Number * 0.9, c.Number / 2, c.Number + 0.01} {
			v, _ = strconv.ParseFloat(strconv.FormatFloat(v, 'g', 12, 64), 64)
			if s.SetIn(plain(v), unit) == nil && s.Written() != was {
				return sheet.Cell{Kind: sheet.Number, Number: v}, s.Written()
			}
		}
	}
	for _, word := range append(s.Words(), "10 cuts 9.75; 0 cuts 0.25", "in", "letter", "spring tide", "4 to 6") {
		if word != c.Text && word != "not stated" && s.SetIn(word, unit) == nil && s.Written() != was {
			return sheet.Cell{Kind: sheet.Text, Text: word}, s.Written()
		}
	}
	return c, ""
}

func valueOf(job *calc.Job, name string) string {
	if strings.HasPrefix(name, "price ") {
		return plain(job.Rack[0].Price.Value)
	}
	return settingOf(&job.Rules, name).Written()
}

func settingOf(rules *calc.Rules, name string) *setting.Setting {
	all := rules.Settings()
	if i := slices.IndexFunc(all, func(s setting.Setting) bool { return s.Name == name }); i >= 0 {
		return &all[i]
	}
	return nil
}

func plain(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
