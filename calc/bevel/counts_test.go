package bevel

import (
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"strakebook/calc/source"
)

// One reading skipped or written twice puts every later one a station out. The
// seams beside tell, where the bevel changes enough along the plank to show it.
func TestReadingsAStationOut(t *testing.T) {
	rows := func() [][]float64 {
		var run [][]float64 // half a degree a station, on three strakes
		for i := range 3 {
			y := make([]float64, 15)
			for k := range y {
				y[k] = 0.5*float64(k) + 0.2*float64(i) - 2
			}
			run = append(run, y)
		}
		return lifted(run, 0.1, rand.New(rand.NewPCG(3, 1)))
	}
	found := func(b Readings) string {
		var all []string
		for _, f := range Check(b, DefaultRules()) {
			if f.Kind == Counted || f.Kind == Jump {
				all = append(all, f.Code+" "+f.Cell.Ref()+" "+f.Text)
			}
		}
		return strings.Join(all, "\n")
	}
	if got := found(sheet(rows())); got != "" {
		t.Errorf("clean: %s", got)
	}
	skipped := sheet(rows())
	s := &skipped.Seams[1]
	for k := 3; k < 14; k++ { // station 3 skipped, the last cell left blank
		s.Readings[k].Value = s.Readings[k+1].Value
	}
	s.Readings[14].State = source.Blank
	if got := found(skipped); !strings.HasPrefix(got, "bevel-count O2 ") || !strings.Contains(got, "one was skipped") || strings.Contains(got, "\n") {
		t.Errorf("skipped: %s", got)
	}
	twice := sheet(rows())
	s = &twice.Seams[1]
	last := s.Readings[14]
	last.Cell.Col++
	for k := 14; k > 4; k-- { // station 3 written again at station 4
		s.Readings[k].Value = s.Readings[k-1].Value
	}
	s.Readings = append(s.Readings, last)
	if got := found(twice); !strings.HasPrefix(got, "bevel-count P2 plank 3 upper edge has 16 readings for 15 stations") || !strings.Contains(got, "written twice") || strings.Contains(got, "\n") {
		t.Errorf("written twice: %s", got)
	}
}

// A station left blank at the end of one strake, where the others are read, is
// asked about; a dash says that the strake is not there.
func TestEndLeftBlank(t *testing.T) {
	rows := lifted(transom(1, 2.6, 15, 28)[4:8], 0.1, rand.New(rand.NewPCG(3, 1)))
	for state, want := range map[source.State]string{source.Blank: "bevel-count O2", source.Dash: "bevel-hood "} {
		b := sheet(rows)
		b.Seams[1].Readings = slices.Clone(b.Seams[1].Readings)
		b.Seams[1].Readings[14].State = state
		var got []string
		for _, f := range Check(b, DefaultRules()) {
			got = append(got, f.Code+" "+f.Cell.Ref())
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("state %d: %v, want %s", state, got, want)
		}
	}
}
