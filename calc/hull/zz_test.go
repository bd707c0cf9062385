package hull
import ("testing";"strings")
func TestZZ(t *testing.T) {
	for _, apart := range []bool{false,true} {
	for _, tb := range tables(t, apart) {
		e := Examine(tb.o, DefaultRules())
		t.Logf("== %s S=%.2f stations %d lines %d", tb.name, e.Scale, len(tb.o.Stations), len(tb.o.Lines))
		for _, f := range e.Found { if f.Severity>0 { t.Logf("   %s: %s | %s", f.Code, f.Text, f.Suggests) } }
		if testing.Verbose() { for _, l := range tb.o.Lines { var w []string; for _, v := range l.Values { w=append(w, v.Text)}; t.Logf("      %-12s %v", l.Name, strings.Join(w," ")) } }
	}}
}
