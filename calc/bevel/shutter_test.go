package bevel

import (
	"fmt"
	"math"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// On a round of radius R a plank between two others of its own width w has both
// edges off square by asin(w/2R) (plain geometry: R 36, w 5, t 1.25 shared 3.982079
// degrees, shaved off each edge .087016 in).
func TestShutterOnARound(t *testing.T) {
	var gaps []hull.Gap
	var places []hull.Station
	for k := range 4 {
		name := fmt.Sprint(k)
		places = append(places, hull.Station{Name: name, At: source.Is(measure.Feet(float64(3 * k)))})
		gaps = append(gaps, hull.Gap{Skin: hull.Planks, Strake: "14", Station: name,
			Inside: source.Is(measure.Inches(5)), Outside: source.Is(measure.Inches(5 + 2*0.087016))})
	}
	strakes := []hull.Strake{{Name: "10-20", Count: source.Is(11), Skin: hull.Planks, Thickness: source.Is(measure.Inches(1.25)), Width: source.Is(measure.Inches(4.5))}}
	rows, _ := (*hull.Shape)(nil).Shutter(gaps, strakes)
	r := DefaultRules()
	s, _ := OfShutters(rows, strakes, places, nil, r)
	if len(s) != 2 || s[0].Edge != Upper || s[1].Edge != Lower || len(s[0].Marks) != 4+6 {
		t.Fatalf("%+v", s)
	}
	for _, edge := range s {
		for _, m := range edge.Marks {
			if math.Abs(float64(m.Between)-3.982079) > 1e-4 || m.Width != 5*measure.Inch || m.Set != 4 {
				t.Errorf("%s edge: %+v", edge.Edge, m)
			}
		}
	}
}
