package read

import (
	"testing"

	"strakebook/calc/source"
)

// A count with the word that lists put after it is that count; pairs, sets and
// guesses are asked.
func TestCountWords(t *testing.T) {
	for text, want := range map[string]int{"12 off": 12, "12off": 12, "4 pcs.": 4, "4 pieces": 4, "3 No.": 3, "x2": 2, "2 x": 2, "6 ea": 6, "7": 7} {
		if v := counted(t, text); v.Value != want || !v.OK() {
			t.Errorf("%q is %d (%d), want %d", text, v.Value, v.State, want)
		}
	}
	for _, text := range []string{"2 pr", "3 pairs", "about 6", "6?", "2-3", "12 ft", "2 x 3", "1 set", "off", "99999999999 off", "dozen"} {
		if v := counted(t, text); v.State != source.Unread {
			t.Errorf("%q is read as %d", text, v.Value)
		}
	}
}

// counted is a count as a list of strakes reads it.
func counted(t *testing.T, text string) source.Reading[int] {
	t.Helper()
	r := read(t, bookOf(sheetOf("Planks", "Plank|Thickness (in)|Width (in)|Length (ft)|Count\n1|1|5|20|text:"+text)), Options{})
	if len(r.job.Strakes) != 1 {
		t.Fatalf("%d strakes", len(r.job.Strakes))
	}
	return r.job.Strakes[0].Count
}
