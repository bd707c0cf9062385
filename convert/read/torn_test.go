package read

import (
	"math/rand/v2"
	"strings"
	"testing"

	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// tear blanks some of the words of a book, or writes others over them.
func tear(l *laidOut, rnd *rand.Rand) {
	for range 1 + rnd.IntN(3) {
		s := l.book.Sheets[rnd.IntN(len(l.book.Sheets))]
		row := 1 + rnd.IntN(len(s.Rows))
		if len(s.Rows[row-1]) == 0 {
			continue
		}
		col := 1 + rnd.IntN(len(s.Rows[row-1]))
		c := s.At(row, col)
		if c.Kind != sheet.Text || figure(c.Text) {
			continue
		}
		switch rnd.IntN(3) {
		case 0:
			c = sheet.Cell{}
		case 1:
			c.Text = "as before"
		case 2:
			c.Text = strings.ToUpper(c.Text)
		}
		l.book.Sheets[indexOfSheet(l.book, s.Name)].Set(row, col, c)
	}
}

func indexOfSheet(b *sheet.Book, name string) int {
	for i, s := range b.Sheets {
		if s.Name == name {
			return i
		}
	}
	return 0
}

// A book that has lost some of its words may be read less, and a line may pass
// for another of its view; no figure is read as another figure, in another unit,
// or at another station.
func TestTornLayouts(t *testing.T) {
	bad := 0
	from, to := uint64(1), uint64(*layouts)
	if *layout > 0 {
		from, to = *layout, *layout
	}
	for seed := from; seed <= to; seed++ {
		l := layOut(seed, false)
		tear(l, rand.New(rand.NewPCG(seed, 11)))
		r := read(t, []*sheet.Book{l.book}, Options{})
		if *layout > 0 {
			for _, s := range l.book.Sheets {
				t.Log(drawnSheet(s))
			}
			for _, f := range r.found {
				t.Log(f.Severity, f.Cell, f.Code, f.Text)
			}
		}
		if wrong := l.torn(r); len(wrong) > 0 {
			if bad++; bad <= 8 {
				t.Errorf("layout %d, torn (%s): %s", seed, strings.Join(l.how, "; "), strings.Join(wrong[:min(3, len(wrong))], "; "))
			}
		}
	}
	t.Logf("%d of %d torn layouts are misread", bad, *layouts)
}

// torn is the figures of the offsets that were read as others than they are.
func (l *laidOut) torn(r reading) []string {
	var wrong []string
	say := func(at source.Cell, what, got string) { wrong = append(wrong, at.String()+" "+what+": "+got) }
	for _, o := range r.job.Offsets {
		if o.Fractions {
			continue
		}
		for _, line := range o.Lines {
			for i, v := range line.Values {
				want, ok := l.lengths[v.Cell]
				switch {
				case !v.OK() || !ok:
				case v.Value != want.value:
					say(v.Cell, "read as "+v.Value.String(), v.Text)
				case !strings.EqualFold(o.Stations[i].Name, want.station) && o.Stations[i].Name != "" && o.Stations[i].Name != "as before": // its own name was torn
					say(v.Cell, "station "+want.station+" is read as "+o.Stations[i].Name, v.Text)
				case line.At.OK() && want.level != 0 && line.At.Value != want.level:
					say(v.Cell, "placed at "+line.At.Value.String(), line.Name)
				}
			}
		}
		for _, s := range o.Stations {
			if k := indexOf(l.job.stations, s.Name); k >= 0 && s.At.OK() && l.job.at != nil && s.At.Value != l.job.at[k] {
				say(s.Cell, "station "+s.Name+" lies at "+s.At.Value.String(), s.At.Text)
			}
		}
	}
	return wrong
}
