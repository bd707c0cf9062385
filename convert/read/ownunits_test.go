package read

import (
	"testing"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
	"strakebook/templates"
)

// The new book is written in the units of the builder's own, unless they are set.
func TestOwnUnits(t *testing.T) {
	list := func(rows ...[]string) *sheet.Sheet {
		s := &sheet.Sheet{Name: "List"}
		for r, row := range rows {
			for c, v := range row {
				s.Set(r+1, c+1, sheet.Cell{Kind: sheet.Text, Text: v})
			}
		}
		return s
	}
	metric := list([]string{"Strake", "Thickness (mm)", "Width (mm)", "Length (mm)"}, []string{"1", "22", "120", "9850"}, []string{"2", "22", "115", "9800"})
	inches := list([]string{"Strake", "Thickness (in)", "Width (in)", "Length (in)"}, []string{"1", "1", "5", "480.5"}, []string{"2", "1", "5", "478"})
	feet := list([]string{"Strake", "Thickness (in)", "Width (in)", "Length"}, []string{"1", "1", "5", "40-6-0"}, []string{"2", "1", "5", "40-2-4"})
	boards := list([]string{"Board", "Species", "Thickness (in)", "Width (in)", "Length (ft)", "Count"}, []string{"A", "fir", "1 1/4", "6", "16", "3"})
	boards.Name = "Rack"
	for _, c := range []struct {
		sheets []*sheet.Sheet
		set    []string
		want   measure.Style
	}{
		{[]*sheet.Sheet{metric}, nil, measure.StyleMM},
		{[]*sheet.Sheet{inches}, nil, measure.StyleInches},
		{[]*sheet.Sheet{feet}, nil, measure.StyleFeet},
		{[]*sheet.Sheet{metric, boards}, nil, measure.StyleMM}, // more of its lines are metric
		{[]*sheet.Sheet{inches, boards}, nil, measure.StyleFeet},
		{[]*sheet.Sheet{metric}, []string{"units=feet"}, measure.StyleFeet},
	} {
		job, _, _ := Books([]*sheet.Book{{Path: "list.xlsx", Name: "list.xlsx", Sheets: c.sheets}}, Options{Headings: templates.Headings, Set: c.set})
		if got := job.Rules.Yard.Units; got != c.want {
			t.Errorf("%s, set %v: written in %s, want %s", c.sheets[0].At(1, 4).Text, c.set, got, c.want)
		}
	}
}
