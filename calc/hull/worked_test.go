package hull

import (
	"bufio"
	"encoding/csv"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// worked reads a published table of testdata/worked/offsets: stations across,
// or down and then turned. Its source stands in the file.
func worked(t testing.TB, name string, form measure.Form, resolution measure.Length, down bool) Offsets {
	t.Helper()
	files, _ := filepath.Glob("../../testdata/worked/offsets/" + name + "*")
	if len(files) != 1 {
		t.Fatalf("%s: %d files", name, len(files))
	}
	file, err := os.Open(files[0])
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	var text strings.Builder
	for scan := bufio.NewScanner(file); scan.Scan(); {
		if !strings.HasPrefix(scan.Text(), "#") {
			text.WriteString(scan.Text() + "\n")
		}
	}
	r := csv.NewReader(strings.NewReader(text.String()))
	r.FieldsPerRecord = -1
	grid, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	at := func(row, col int) string {
		if down {
			row, col = col, row
		}
		if row < len(grid) && col < len(grid[row]) {
			return strings.TrimSpace(grid[row][col])
		}
		return ""
	}
	rows, cols := len(grid), len(grid[0])
	if down {
		rows, cols = cols, rows
	}
	o := Offsets{Form: form, Resolution: resolution, Surface: OutsidePlanking}
	for c := 1; c < cols; c++ {
		o.Stations = append(o.Stations, Station{Name: at(0, c), Cell: source.Cell{Sheet: "S", Row: 1, Col: c + 1}})
	}
	for row := 1; row < rows; row++ {
		label := at(row, 0)
		l := Line{Name: label}
		switch low := strings.ToLower(label); {
		case strings.HasPrefix(low, "ht") || strings.HasPrefix(low, "depth"):
			l.View, l.Role = Height, Rabbet
		case low == "sar":
			continue
		case strings.Contains(low, "deck"):
			l.Role = Deck
		default:
			l.Role = Waterline
			if w, err := (measure.Form{Unit: measure.InInches, Notation: measure.Decimal}).Length(strings.Trim(low, "hb in.")); err == nil {
				l.At = source.Is(w)
			} else if w, err := form.Length(low); err == nil {
				l.At = source.Is(w)
			}
		}
		for c := 1; c < cols; c++ {
			text := at(row, c)
			v := source.Reading[measure.Length]{Text: text, Cell: source.Cell{Sheet: "S", Row: row + 1, Col: c + 1}}
			switch {
			case text == "":
			case measure.IsDash(text):
				v.State = source.Dash
			default:
				value, err := form.Length(text)
				if e, ok := err.(*measure.ReadError); ok && e.Fault == measure.TwoWays {
					// 0-11 stands for 1 1/8 in where the line comes down to the stem, else for 11 in.
					value, err = e.Ways[0], nil
					if strings.Contains(label, "rabbet") {
						value = e.Ways[1]
					}
				}
				if err != nil {
					v.State = source.Unread
					break
				}
				v.Value, v.State = value, source.Given
			}
			l.Values = append(l.Values, v)
		}
		o.Lines = append(o.Lines, l)
	}
	return o
}

// dropRow takes a summary row or station out of a table.
func dropStation(o Offsets, name string) Offsets {
	for k, s := range o.Stations {
		if s.Name == name {
			o.Stations = append(o.Stations[:k:k], o.Stations[k+1:]...)
			for i := range o.Lines {
				v := o.Lines[i].Values
				o.Lines[i].Values = append(v[:k:k], v[k+1:]...)
			}
			break
		}
	}
	return o
}
