package hull

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"encoding/csv"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// lost is a fraction that the copy shows as one letter or figure: 41" for 4 and
// something over. It is taken as a half.
var lost = regexp.MustCompile(`^(0|[2-9]|1[01]?)[1f|*i]$`)

// unscanned is a length of the tables of C. H. Clark as printed, the misreadings
// of the copy undone: l and V for 1, letters for fractions.
func unscanned(text string) string {
	t := strings.NewReplacer("l", "1", "V ", "1' ", "O", "0", `"`, "", "3/3", "3/8", "3/8|", "3/8").Replace(strings.TrimSpace(text))
	feet, inches, ok := strings.Cut(t, "'")
	if !ok {
		feet, inches = "0", t
	}
	inches = strings.Trim(inches, "- ")
	if m := lost.FindStringSubmatch(inches); m != nil {
		inches = m[1] + " 1/2"
	}
	return strings.TrimSpace(feet) + "' " + inches + `"`
}

// clark is one of his tables, its moulds across and the stern left out; levels is
// the height of each waterline.
func clark(t *testing.T, name string, levels map[string]float64) Offsets {
	t.Helper()
	files, _ := filepath.Glob("../../testdata/worked/offsets/" + name + "*")
	if len(files) != 1 {
		t.Fatalf("%s: %d files", name, len(files))
	}
	data, err := os.ReadFile(files[0])
	if err != nil {
		t.Fatal(err)
	}
	r := csv.NewReader(strings.NewReader(string(data)))
	r.Comment, r.FieldsPerRecord = '#', -1
	grid, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	o := Offsets{Form: measure.Form{Notation: measure.FeetInchesFractions}, Resolution: measure.Eighth, Surface: OutsidePlanking}
	for c, name := range grid[0][1:] {
		if name != "Stern" {
			o.Stations = append(o.Stations, Station{Name: name, Cell: source.Cell{Sheet: "S", Row: 1, Col: c + 2}})
		}
	}
	for n, row := range grid[1:] {
		l := Line{Name: row[0], Role: Waterline}
		switch label := strings.ToLower(row[0]); {
		case strings.Contains(label, "rabbet"):
			l.View, l.Role = Height, Rabbet
		case strings.Contains(label, "keel"):
			l.View, l.Role = Height, Keel
		case strings.HasPrefix(label, "ht"):
			l.View, l.Role = Height, Deck
		case strings.Contains(label, "gunwale") || strings.Contains(label, "deck"):
			l.Role = Deck
		}
		if level, ok := levels[row[0]]; ok {
			l.At = source.Is(measure.Inches(level))
		}
		for k := range o.Stations {
			v := source.Reading[measure.Length]{Cell: source.Cell{Sheet: "S", Row: n + 2, Col: k + 2}}
			if k+1 < len(row) && row[k+1] != "" {
				v.Text = unscanned(row[k+1])
				if value, err := o.Form.Length(v.Text); err == nil {
					v.Value, v.State = value, source.Given
				} else {
					v.State = source.Unread
				}
			}
			l.Values = append(l.Values, v)
		}
		o.Lines = append(o.Lines, l)
	}
	return o
}

func named(o Offsets, e Report) []string {
	var all []string
	for _, d := range e.Doubts {
		name := o.Lines[d.Line].Name + " at " + o.Stations[d.Station].Name
		for _, k := range d.Or {
			name += " or " + o.Lines[k.Row].Name + " at " + o.Stations[k.At].Name
		}
		all = append(all, name)
	}
	return all
}

// C. H. Clark, How to Build a Power Launch, Amateur Work vol. 4: the rabbet at
// mould 6 reads 1' 11 1/4" between 0' 10 and 1' 4: one foot too much. The
// fractions that the copy lost are taken as halves.
func TestClarkLaunchRabbet(t *testing.T) {
	o := clark(t, "04", map[string]float64{"Half breadth on w. 1. 2a": 35, "Half breadth w. 1. la": 31, "Half breadth 1. w. 1.": 27, "Half breadth w. 1. 16": 23, "Half breadth w. 1. 26": 19, "Half breadth w. 1. 36": 15})
	got := named(o, Examine(o, DefaultRules()))
	if !slices.ContainsFunc(got, func(s string) bool { return strings.HasPrefix(s, "Ht. of rabbet line above base line at 6") }) {
		t.Errorf("named: %v", got)
	}
	t.Logf("named: %v", got)
}

// C. H. Clark, How to Build a 12-Foot Row Boat, Amateur Work vol. 3: W.L. 3 at
// mould 1 of the copy reads l'-8 5/8, for 1'-3 5/8. There are three moulds.
func TestClarkRowBoatWaterline(t *testing.T) {
	o := clark(t, "03", map[string]float64{"1/2 breadth W. L. 6": 18, "1/2 breadth W. L. 5": 15, "1/2 breadth W. L. 4": 12, "1/2 breadth W. L. 3": 9, "1/2 breadth W. L. 2": 6})
	e := Examine(o, DefaultRules())
	got := named(o, e)
	if len(got) != 1 || !strings.HasPrefix(got[0], "1/2 breadth W. L. 3 at 1") {
		t.Errorf("named: %v", got)
	}
	for _, d := range e.Doubts {
		t.Logf("%+v", d.Finding(o))
	}
}
