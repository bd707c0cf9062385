package convert

import (
	"strings"
	"testing"
)

// A book of frames is told of in frames throughout: in what is to be done and on the
// cards too.
func TestABookOfFramesIsToldOfInFrames(t *testing.T) {
	d := worked(t, nil, `Strake,Edge,Frame 0,Frame 1,Frame 2,Frame 3,Frame 4,Frame 5
2,upper,0,1,2,3,3.5,3
3,upper,0,1,2,3,3.5,3
4,upper,0,1,2,3,3.5,3
5,upper,0,2,3,3.5,3,
`, "Strake,Thickness (in),Width (in)\n2,1,5\n3,1,5\n4,1,5\n5,1,5\n", "Setting,Value,Unit\nstation spacing,4,ft\n")
	counted, cards := false, false
	for _, f := range d.Findings {
		counted = counted || f.Code == "bevel-count"
		if strings.Contains(f.Text+f.ToDo(), "station") && !strings.Contains(f.Text+f.ToDo(), `"station spacing"`) {
			t.Errorf("%s: %s: %s", f.Code, f.Text, f.ToDo())
		}
	}
	for _, s := range newBook(d).Sheets {
		for _, row := range s.Rows {
			for _, c := range row {
				cards = cards || s.Name == "Bevels" && strings.Contains(c.Text, "readings do not match the frames")
				if s.Name != "Settings" && strings.Contains(c.Text, "the stations") {
					t.Errorf("%s: %s", s.Name, c.Text)
				}
			}
		}
	}
	if !counted || !cards {
		t.Errorf("told %v, on the card %v", counted, cards)
	}
}
