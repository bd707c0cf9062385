package convert

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"strakebook/calc/finding"
	"strakebook/convert/csv"
	"strakebook/convert/sheet"
	"strakebook/convert/write"
)

const (
	halves   = "WL 12 in,20,28,30,29,26\nWL 24 in,24,32,34,33,30\n"
	readings = "Strake,Edge,0,1,2,3,4\nPosition (ft),,0,4,8,12,16\n1,upper,88,89,90,91,92\n2,upper,88,89,90,91,92\n"
)

// titled is a table under a title, the setting that the title is about, and two
// values of it: what the title says, and the other.
type titled struct {
	what, table          string
	setting, says, other string
	words                string // what the title is for it to say so; in place of TITLE
	used                 func(*Done) string
}

// The order in which a convention is settled is one for all: the default, the words
// over a table, the book's Settings, the command line. What is set is what is used,
// it is what the Settings sheet shows, and words that say otherwise are told of.
func TestWhatIsSetHoldsOverWords(t *testing.T) {
	gauge := func(d *Done) string {
		if len(d.Result.Bevels) == 0 {
			return "none"
		}
		return map[bool]string{true: "gauge on the inside face", false: "gauge on the outside face"}[d.Result.Bevels[0].Marks[0].Set < 0]
	}
	lifted := func(d *Done) string {
		return map[bool]string{true: "yes", false: "no"}[d.job.Bevels[0].Lifted(d.Result.Rules.Bevel)]
	}
	surface := func(d *Done) string { return d.Result.Hull.Surface.String() }
	for _, c := range []titled{
		{"a table of bevels", "TITLE\n" + readings, "bevels read", "gauge on the inside face", "gauge on the outside face", "Bevels; stock of the gauge on the skin", gauge},
		{"a list of bevels", "TITLE\nStrake,Edge,Station,Bevel\n1,upper,0,88\n1,upper,1,89\n1,upper,2,90\n", "bevels read", "gauge on the inside face", "gauge on the outside face", "Bevels; stock of the gauge on the skin", gauge},
		{"bevels in the station plane", "TITLE\n" + readings, "lifted in station plane", "yes", "no", "Bevels, lifted in the station plane", lifted},
		{"bevels square to the edge", "TITLE\n" + readings, "lifted in station plane", "no", "yes", "Bevels, lifted square to the edge", lifted},
		{"offsets", "TITLE\nStation,0,1,2,3,4\nPosition,0,48,96,144,192\n" + halves, "offsets are to", "outside of planking", "inside of planking", "Offsets, inches, to outside of planking", surface},
		{"a list of offsets", "TITLE\nStation,Position (in),Line,Half-breadth (in)\n" + listed("%d,%d,WL 12 in,%d\n%[1]d,%[2]d,WL 24 in,%[4]d\n"), "offsets are to", "inside of planking", "outside of planking", "Offsets to inside of planking", surface},
		{"sections point by point", "TITLE\nStation,Position (in),Half-breadth (in),Height (in)\n" + listed("%d,%d,%d,12\n%[1]d,%[2]d,%[4]d,24\n"), "offsets are to", "between the skins", "outside of planking", "Offsets between the skins", surface},
	} {
		table := strings.Replace(c.table, "TITLE", `"`+c.words+`"`, 1)
		for _, by := range []struct {
			way, want, settings string
			set                 []string
		}{
			{"words alone", c.says, "", nil},
			{"Settings", c.other, c.other, nil},
			{"the command line", c.other, "", []string{c.other}},
			{"the command line over Settings", c.other, c.says, []string{c.other}},
			{"Settings as the words", c.says, c.says, nil},
		} {
			files := []string{table, "Strake,Skin,Thickness (in),Width (in),Length (ft)\n1,plank,1,5,16\n"}
			if by.settings != "" {
				files = append(files, "Setting,Value\n"+c.setting+","+by.settings+"\n")
			}
			set := []string{"station spacing=48"}
			for _, v := range by.set {
				set = append(set, c.setting+"="+v)
			}
			d := worked(t, set, files...)
			if got := c.used(d); got != by.want {
				t.Errorf("%s, %s: read by %q, want %q", c.what, by.way, got, by.want)
			}
			if got := settingsRow(d, c.setting); got != by.want {
				t.Errorf("%s, %s: the Settings sheet shows %q, want %q", c.what, by.way, got, by.want)
			}
			told := slices.ContainsFunc(d.Findings, func(f finding.Finding) bool {
				return f.Code == "convention-two" && strings.Contains(f.Text, c.setting) && strings.Contains(f.Text, by.want) && f.Reads == c.words
			})
			if told != (by.want != c.says) {
				t.Errorf("%s, %s: told %v: %v", c.what, by.way, told, d.Findings)
			}
		}
	}
}

// listed is a row or more for each of five stations: its name, its position and a
// half-breadth at each of two heights.
func listed(row string) string {
	var all strings.Builder
	for i, y := range []int{20, 28, 30, 29, 26} {
		fmt.Fprintf(&all, row, i, 48*i, y, y+4)
	}
	return all.String()
}

// worked is a job of some tables kept as text.
func worked(t *testing.T, set []string, files ...string) *Done {
	t.Helper()
	var books []*sheet.Book
	for i, text := range files {
		b, err := csv.Read(fmt.Sprintf("book%d.csv", i), []byte(text))
		if err != nil {
			t.Fatal(err)
		}
		books = append(books, b)
	}
	job, err := readBooks(books, Options{Set: append(set, "tries=1")})
	if err != nil {
		t.Fatal(err)
	}
	return job.Work()
}

// settingsRow is the value that the new book's Settings sheet shows.
func settingsRow(d *Done, name string) string {
	book, _ := write.Lay(d.input(true)).Book()
	for _, s := range book.Sheets {
		if s.Name != "Settings" {
			continue
		}
		for row := range s.Rows {
			if s.At(row+1, 1).Text == name {
				return s.At(row+1, 2).Text
			}
		}
	}
	return ""
}

// What a table lists of its own holds over Settings, and the command line over both
// where it is about the same; where the one passed over is not that, it is told.
func TestWhatIsListedAgainstWhatIsSet(t *testing.T) {
	const (
		sloped   = "Strake,Skin,Thickness (in),Width (in),Length (ft),Scarf slope\n1,plank,1,5,30,8\n2,plank,1,5,30,\n"
		placed   = "Offsets to outside of planking\nStation,0,1,2,3,4\nPosition (in),0,48,96,144,192\nHB WL 12 in,20 in,28 in,30 in,29 in,26 in\nHB WL 24 in,24 in,32 in,34 in,33 in,30 in\n"
		captions = "\"Offsets, inches, to outside of planking\"\nStation,0,1,2,3,4\nPosition,0,48,96,144,192\n" + halves
		lower    = "Bevels\nStrake,Edge,0,1,2,3,4\nPosition (ft),,0,4,8,12,16\n1,lower,1,2,2,1,1\n2,lower,1,2,2,1,1\n"
	)
	slopes := func(d *Done) string { return fmt.Sprint(d.Result.Runs[0].Slope, d.Result.Runs[1].Slope) }
	apart := func(d *Done) string { return d.Result.Hull.Stations[1].At.String() }
	sawn := func(d *Done) string { return d.Result.Bevels[0].Edge.String() + d.Result.Rules.Bevel.Sawn.String() }
	for _, c := range []struct {
		what, table, settings, set string
		used                       func(*Done) string
		want, told                 string
	}{
		{"slopes listed", sloped, "", "", slopes, "8 12", ""},
		{"slopes listed over Settings", sloped, "plank scarf slope,10", "", slopes, "8 10", ""},
		{"slopes by the command line", sloped, "plank scarf slope,9", "plank scarf slope=10", slopes, "10 10", "convention-two"},
		{"positions given", placed, "", "station spacing=36", apart, "48 in", "convention-two"},
		{"a caption's unit", captions, "bare numbers,mm", "", apart, "48 in", ""},
		{"a caption's unit and the command line", captions, "", "bare numbers=mm", apart, "48 in", "convention-read"},
		{"lifted along the other edge", lower, "", "", sawn, "lowerupper", "bevel-edge"},
		{"lifted along the other edge than is set", lower, "sawn edge,upper", "", sawn, "lowerupper", "bevel-edge"},
	} {
		files := []string{c.table}
		if c.settings != "" {
			files = append(files, "Setting,Value\n"+c.settings+"\n")
		}
		var set []string
		if c.set != "" {
			set = []string{c.set}
		}
		d := worked(t, set, files...)
		if got := c.used(d); got != c.want {
			t.Errorf("%s: %q was used, want %q: %v", c.what, got, c.want, d.Findings)
		}
		name, _, _ := strings.Cut(c.settings+c.set, "=")
		name, _, _ = strings.Cut(name, ",")
		told := ""
		for _, f := range d.Findings {
			if f.Code == "bevel-edge" || strings.HasPrefix(f.Code, "convention-") && strings.Contains(f.Text, name) && name != "" {
				told = f.Code
			}
		}
		if told != c.told {
			t.Errorf("%s: told by %q, want %q: %v", c.what, told, c.told, d.Findings)
		}
	}
}
