package xlsx

import (
	"encoding/xml"
	"io"
	"math"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// A chart of equal scales has a plot as many times wider than high as its axes
// are longer, whatever its frame; its part is well formed.
func TestEqualScale(t *testing.T) {
	for _, size := range [][2]float64{{552, 396}, {300, 700}} {
		c := sheet.Chart{Title: "Body & plan", Width: size[0], Height: size[1], Equal: true, X: sheet.Axis{From: -8, To: 8, Step: 2}, Y: sheet.Axis{From: 0, To: 12, Step: 2},
			Lines: []sheet.ChartLine{{Name: `"0"`, Sheet: "Bob's", X: sheet.Range{Top: 2, Left: 4, Bottom: 9, Right: 4}, Y: sheet.Range{Top: 2, Left: 5, Bottom: 9, Right: 5}, End: 8}}}
		x, y, wide, high := frame(c)
		if got := (wide * c.Width) / (high * c.Height); math.Abs(got-16.0/12) > 1e-9 {
			t.Errorf("%v: the plot is %v times wider than high", size, got)
		}
		if x < 0 || y < 0 || x+wide > 1 || y+high > 1 {
			t.Errorf("%v: the plot is at %v %v %v %v of its frame", size, x, y, wide, high)
		}
		part := chartPart(c)
		d := xml.NewDecoder(strings.NewReader(part))
		for {
			if _, err := d.Token(); err == io.EOF {
				break
			} else if err != nil {
				t.Fatal(err)
			}
		}
		if !strings.Contains(part, "&apos;Bob") && !strings.Contains(part, "'Bob''s'!$D$2:$D$9") {
			t.Error("the cells are not named")
		}
	}
}

// The builder's own charts are not written over where their numbers have gaps.
func TestChartsOfTheBuilderAreKept(t *testing.T) {
	f := excelize.NewFile()
	defer f.Close()
	for _, name := range []string{"xl/charts/chart2.xml", "xl/charts/chart4.xml", "xl/drawings/drawing2.xml"} {
		f.Pkg.Store(name, []byte("the builder's"))
	}
	w := writer{file: f, styles: map[look]int{}}
	for range 3 {
		if err := w.chart(&sheet.Sheet{Name: "Sheet1"}, sheet.Chart{Title: "x", Row: 1, Col: 1, Width: 300, Height: 200, X: sheet.Axis{To: 1, Step: 1}, Y: sheet.Axis{To: 1, Step: 1}}); err != nil {
			t.Fatal(err)
		}
	}
	charts := 0
	f.Pkg.Range(func(name, data any) bool {
		if strings.HasPrefix(name.(string), "xl/charts/chart") {
			charts++
		}
		return true
	})
	if charts != 5 {
		t.Errorf("%d charts, want the builder's 2 and 3 of ours", charts)
	}
	for _, name := range []string{"xl/charts/chart2.xml", "xl/charts/chart4.xml", "xl/drawings/drawing2.xml"} {
		if data, _ := f.Pkg.Load(name); string(data.([]byte)) != "the builder's" {
			t.Errorf("%s was written over", name)
		}
	}
}
