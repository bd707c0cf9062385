package stock

import (
	"encoding/json"
	"fmt"
	"os"
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
	"strakebook/calc/source"
)

// instance is a planking job as the files in testdata/worked/stock hold it, in
// inches. A width class is told apart as a species: a piece must come from its
// own.
type instance struct {
	Name     string
	Kerf     float64 `json:"kerf_eighths"`
	Scarf    float64
	Trim     float64 `json:"end_trim_per_board"`
	Least    float64 `json:"min_piece"`
	Adjacent float64 `json:"stagger_adjacent"`
	Between  float64 `json:"stagger_one_between"`
	Frames   float64 `json:"frame_spacing"`
	EndZone  float64 `json:"end_zone"`
	Joint    float64 `json:"joint_cost"`
	Strakes  []struct {
		Side, Idx, Cls int
		Start, Length  float64
		Forbid         [][2]float64
	}
	Stock []struct {
		Cls    int
		Length float64
		Cost   float64
		Avail  int
		Src    string
	}
}

func open(t testing.TB, name string) instance {
	t.Helper()
	b, err := os.ReadFile("../../testdata/worked/stock/plank_" + name + ".json")
	if err != nil {
		t.Fatal(err)
	}
	var in instance
	if err := json.Unmarshal(b, &in); err != nil {
		t.Fatal(err)
	}
	return in
}

// job is an instance as the trade has it: butts' distances, 5 ft and 4 ft and
// three strakes between in a bay, are those of the files.
func (in instance) job(grid float64) job {
	lr, r := lay.DefaultRules(), DefaultRules()
	lr.Plank, lr.Frames = lay.Butts, measure.Inches(in.Frames)
	lr.EndZone, lr.LeastPlank, lr.Grid, lr.Unlike = measure.Inches(in.EndZone), measure.Inches(in.Least), measure.Inches(grid), true
	r.Dressing, r.Edging, r.EndTrim, r.JointCost = 0, 0, measure.Inches(in.Trim), in.Joint
	r.CrossKerf = measure.Inches(in.Kerf / 8)
	var runs []lay.Run
	for _, s := range in.Strakes {
		run := lay.Run{Side: hull.Starboard, Order: s.Idx + 1, Thick: measure.Inch, Wide: measure.Inches(float64(s.Cls)), Length: measure.Inches(s.Length),
			Start: measure.Inches(s.Start), Scarf: measure.Inches(in.Scarf), Slope: 8, Feather: scarf.DefaultRules().Feathers}
		run.Name, run.Skin, run.Species = fmt.Sprint(s.Idx+1), hull.Planks, fmt.Sprint("width ", s.Cls)
		if s.Side == 1 {
			run.Side = hull.Port
		}
		for _, z := range s.Forbid {
			run.Clear = append(run.Clear, hull.Reach{From: measure.Inches(z[0]), To: measure.Inches(z[1])})
		}
		runs = append(runs, run)
	}
	var rack []Board
	for i, s := range in.Stock {
		b := board(fmt.Sprint("B", i), fmt.Sprint("width ", s.Cls), 1, float64(s.Cls), s.Length/12, max(0, s.Avail))
		b.Price = source.Is(s.Cost)
		rack = append(rack, b)
	}
	return job{runs, rack, lr, r}
}
