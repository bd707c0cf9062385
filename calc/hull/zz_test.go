package hull

import (
	"strakebook/calc/fair"
	"strconv"
	"strings"
	"testing"
)

func TestZZ(t *testing.T) {
	for _, apart := range []bool{false, true} {
		for _, tb := range tables(t, apart) {
			o := tb.o
			x := positions(o)
			rows := make([]fair.Row, len(o.Lines))
			for i := range rows {
				rows[i] = o.row(i, x)
			}
			s := newSections(o, rows)
			e := Examine(tb.o, DefaultRules())
			t.Logf("== %s S=%.2f stations %d lines %d", tb.name, e.Scale, len(tb.o.Stations), len(tb.o.Lines))
			for _, d := range e.Doubts {
				op, ok := s.look(rows, e.Scale, d.Line, d.Station)
				a, oka := fair.AlongForTest(rows[d.Line], d.Station, e.Scale, DefaultRules().Fair)
				y := rows[d.Line].Y[d.Station]
				var w []string
				for k := max(0, d.Station-3); k <= min(len(o.Stations)-1, d.Station+3); k++ {
					w = append(w, strconv.Itoa(int(rows[d.Line].Y[k])))
				}
				t.Logf("   z %.1f %s st %d/%d: y=%v  along %v %.1f sd %.1f z %.1f | section %v %.1f sd %.1f z %.1f  [%s]", d.Z, o.Lines[d.Line].Name, d.Station, len(o.Stations)-1, y, oka, a.Value, a.Sd, (y-a.Value)/a.Sd, ok, op.Value, op.Sd, (y-op.Value)/op.Sd, strings.Join(w, " "))
			}
		}
	}
}
