package read

import (
	"flag"
	"fmt"
	"math"
	"strings"
	"testing"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

var (
	layouts = flag.Int("layouts", 60, "how many layouts are tried")
	layout  = flag.Uint64("layout", 0, "the one layout to try and show")
)

// verdict is what came of one layout: what was read otherwise than it was
// written, and how much was not read.
type verdict struct {
	wrong []string
	lost  int
	told  bool // a finding above a note
}

// A job laid out in any of thousands of ways reads as it was written: ninety-nine in a
// hundred of the layouts that a person reads with certainty whole, the rest said.
// Reading it otherwise is never forgiven.
func TestLayouts(t *testing.T) {
	n, whole := tryLayouts(t, *layouts, false)
	if whole*100 < n*99 {
		t.Errorf("of %d layouts only %d are read whole", n, whole)
	}
}

// Where a unit is lacking, or a spreadsheet took figures for dates, what cannot be told
// is asked and nothing is misread.
func TestDamagedLayouts(t *testing.T) {
	tryLayouts(t, max(1, *layouts/3), true)
}

// tryLayouts reads so many layouts, of a clean book or a damaged one, and returns how
// many were tried and read whole.
func tryLayouts(t *testing.T, most int, damaged bool) (tried, whole int) {
	t.Helper()
	from, to := uint64(1), uint64(most)
	if *layout > 0 {
		from, to = *layout, *layout
	}
	asked, lacking, misread, silent := 0, 0, 0, 0
	for seed := from; seed <= to; seed++ {
		l := layOut(seed, damaged)
		r := read(t, []*sheet.Book{l.book}, Options{})
		v := l.judge(r)
		if l.lacking {
			lacking++
		}
		if *layout > 0 {
			t.Logf("%s\n%s", strings.Join(l.how, "; "), strings.Join(r.codes(finding.Note), " "))
			for _, table := range r.tables {
				t.Logf("%s at %s", table.Table, table.Range)
			}
			for _, s := range l.book.Sheets {
				t.Log(drawnSheet(s))
			}
		}
		switch {
		case len(v.wrong) > 0:
			misread++
			if misread <= 12 {
				t.Errorf("layout %d is misread (%s): %s", seed, strings.Join(l.how, "; "), strings.Join(v.wrong[:min(3, len(v.wrong))], "; "))
			}
		case v.lost > 0 && !v.told:
			silent++
			if silent <= 5 {
				t.Errorf("layout %d: %d figures are lost in silence (%s): %v", seed, v.lost, strings.Join(l.how, "; "), r.codes(finding.Note))
			}
		case v.lost == 0:
			whole++
		default:
			asked++
			if testing.Verbose() && !l.lacking {
				t.Logf("layout %d: %d not read (%s): %v", seed, v.lost, strings.Join(l.how, "; "), r.codes(finding.Warning))
			}
		}
	}
	tried = int(to - from + 1)
	t.Logf("of %d layouts %d lack a unit or hold dates; %d are read whole, %d asked about, %d misread, %d lost in silence", tried, lacking, whole, asked, misread, silent)
	return tried, whole
}

// judge holds a reading against what was laid out.
func (l *laidOut) judge(r reading) verdict {
	v := verdict{told: r.found.Count(finding.Warning)+r.found.Count(finding.Error) > 0}
	wrong := func(at source.Cell, what string, args ...any) {
		v.wrong = append(v.wrong, at.String()+" "+fmt.Sprintf(what, args...))
	}
	seen := map[source.Cell]bool{}
	for _, o := range r.job.Offsets {
		if o.Fractions {
			continue // pure numbers, whose unit is asked
		}
		for i, s := range o.Stations {
			if k := indexOf(l.job.stations, s.Name); s.At.OK() && (k < 0 || l.job.at == nil || s.At.Value != l.job.at[k]) {
				wrong(s.Cell, "station %q lies at %v", s.Name, s.At.Value)
			}
			for _, line := range o.Lines {
				l.judgeOffset(line, s, line.Values[i], seen, wrong)
			}
		}
		if l.job.at != nil && len(o.Stations) > 0 && !o.Stations[0].At.OK() && len(l.book.Sheets[0].Rows) > 0 && l.book.Sheets[0].Name != "Offsets list" {
			v.lost++
		}
	}
	v.lost += len(l.lengths) - len(seen)
	l.judgeBevels(r, &v, wrong)
	l.judgeLists(r, &v, wrong)
	return v
}

// judgeOffset holds one figure of the offsets against what was written.
func (l *laidOut) judgeOffset(line hull.Line, s hull.Station, got source.Reading[measure.Length], seen map[source.Cell]bool, wrong func(source.Cell, string, ...any)) {
	if !got.OK() {
		return
	}
	want, ok := l.lengths[got.Cell]
	switch {
	case !ok:
		wrong(got.Cell, "%q is read as an offset of %s", got.Text, line.Name)
	case got.Value != want.value:
		wrong(got.Cell, "%q is read as %v and not %v", got.Text, got.Value, want.value)
	case s.Name != want.station:
		wrong(got.Cell, "station %s is read as %q", want.station, s.Name)
	case line.View != want.view && line.Role != hull.OtherLine:
		wrong(got.Cell, "a %s is read as a %s", want.view, line.View)
	case line.Role != want.role && line.Role != hull.OtherLine:
		wrong(got.Cell, "a %v is read as a %v", want.role, line.Role)
	case line.At.OK() && line.At.Value != want.level:
		wrong(got.Cell, "%q is placed at %v and not %v", line.Name, line.At.Value, want.level)
	case line.Role == hull.OtherLine, !line.At.OK() && want.level != 0:
		return // read in part
	}
	seen[got.Cell] = true
}

func (l *laidOut) judgeBevels(r reading, v *verdict, wrong func(source.Cell, string, ...any)) {
	seen := map[source.Cell]bool{}
	for _, b := range r.job.Bevels {
		for _, s := range b.Seams {
			for i, got := range s.Readings {
				if !got.OK() {
					continue
				}
				want, ok := l.angles[got.Cell]
				switch {
				case !ok:
					wrong(got.Cell, "%q is read as a bevel", got.Text)
				case math.Abs(float64(got.Value)-want.value) > 1e-9:
					wrong(got.Cell, "%q is read as %v and not %v", got.Text, got.Value, want.value)
				case i >= len(b.Stations) || b.Stations[i].Name != want.station || s.Strake != want.strake:
					wrong(got.Cell, "strake %s at station %s is read as %s", want.strake, want.station, s.Strake)
				case s.Edge != map[string]bevel.Edge{"upper": bevel.Upper, "lower": bevel.Lower}[want.edge]:
					wrong(got.Cell, "%s edge is read as %v", want.edge, s.Edge)
				}
				seen[got.Cell] = true
			}
		}
	}
	v.lost += len(l.angles) - len(seen)
}

func (l *laidOut) judgeLists(r reading, v *verdict, wrong func(source.Cell, string, ...any)) {
	length := func(got source.Reading[measure.Length], want measure.Length) {
		switch {
		case !got.OK():
			v.lost++
		case got.Value != want:
			wrong(got.Cell, "%q is read as %v and not %v", got.Text, got.Value, want)
		}
	}
	if l.has("Planking") {
		v.lost += max(0, len(l.job.strakes)-len(r.job.Strakes))
		for i, s := range r.job.Strakes {
			if i >= len(l.job.strakes) || s.Name != l.job.strakes[i].name {
				wrong(s.Cell, "strake %q is none", s.Name)
				continue
			}
			want := l.job.strakes[i]
			length(s.Thickness, want.thickness)
			length(s.Width, want.width)
			length(s.Length, want.length)
			if s.Count.Value != want.count || s.Species != want.species {
				wrong(s.Cell, "%d of %s", s.Count.Value, s.Species)
			}
		}
	}
	if l.has("Rack") {
		v.lost += max(0, len(l.job.boards)-len(r.job.Rack))
		for i, s := range r.job.Rack {
			if i >= len(l.job.boards) || s.Mark != l.job.boards[i].mark {
				wrong(s.Cell, "board %q is none", s.Mark)
				continue
			}
			want := l.job.boards[i]
			length(s.Thickness, want.thickness)
			length(s.Width, want.width)
			length(s.Length, want.length)
			if s.Count.Value != want.count || s.Price.Value != want.price {
				wrong(s.Cell, "%d at %g", s.Count.Value, s.Price.Value)
			}
		}
	}
}

func (l *laidOut) has(name string) bool {
	for _, s := range l.book.Sheets {
		if s.Name == name {
			return true
		}
	}
	return false
}

func indexOf(all []string, s string) int {
	for i, a := range all {
		if a == s {
			return i
		}
	}
	return -1
}

// drawnSheet is a sheet as text, to look at.
func drawnSheet(s *sheet.Sheet) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s merged %v\n", s.Name, s.Merged)
	for r, row := range s.Rows {
		fmt.Fprintf(&b, "%3d ", r+1)
		for _, c := range row {
			fmt.Fprintf(&b, "|%s", c.Text)
		}
		b.WriteByte('\n')
	}
	return b.String()
}
