package write_test

import (
	"encoding/json"
	"math"
	"testing"

	"strakebook/calc/finding"
	"strakebook/convert/write"
)

// held is one key and what its values are: s text, n number, b list of numbers,
// t list of text, o object, l list of objects.
type held struct {
	key, kind string
}

func wants(keys ...string) []held {
	var all []held
	for i := 0; i < len(keys); i += 2 {
		all = append(all, held{keys[i], keys[i+1]})
	}
	return all
}

// Every key that people script against is there with its own kind of value, all
// through the demo.
func TestJSONKeys(t *testing.T) {
	data, err := write.JSON(demo())
	if err != nil {
		t.Fatal(err)
	}
	var top map[string]any
	if err := json.Unmarshal(data, &top); err != nil {
		t.Fatal(err)
	}
	check(t, "", top, wants("version", "s", "books", "t", "tables", "l", "findings", "l", "counts", "o", "result", "o"))
	each(t, top, "tables", wants("table", "s", "book", "s", "sheet", "s", "range", "s", "stations", "n", "lines", "n", "unit", "s", "notation", "s"))
	each(t, top, "findings", wants("code", "s", "severity", "s", "book", "s", "sheet", "s", "cell", "s", "also", "t", "text", "s", "reads", "s", "suggests", "s", "remedy", "s"))
	check(t, "counts", top["counts"], wants("note", "n", "warning", "n", "error", "n"))
	result := top["result"].(map[string]any)
	each(t, result, "strakes", wants("name", "s", "side", "s", "skin", "s", "length_mm", "n", "joints_mm", "b", "pieces_mm", "b"))
	each(t, result, "pieces", wants("mark", "s", "strake", "s", "side", "s", "skin", "s", "length_mm", "n", "width_mm", "n", "thickness_mm", "n", "fore", "s", "after", "s", "board", "s"))
	each(t, result, "boards", wants("mark", "s", "source", "s", "length_mm", "n", "width_mm", "n", "thickness_mm", "n", "used_mm", "n"))
	each(t, result, "scarfs", wants("skin", "s", "thickness_mm", "n", "slope", "n", "length_mm", "n", "angle_deg", "n", "count", "n"))
	check(t, "stock", result["stock"], wants("pieces", "n", "boards", "n", "bought_mm", "n", "used_mm", "n", "board_feet", "n", "cost", "n", "bound", "n", "waste_pct", "n", "bound_pct", "n"))
	each(t, result, "bevels", wants("strake", "s", "side", "s", "edge", "s", "marks", "l"))
	for _, b := range result["bevels"].([]any) {
		each(t, b.(map[string]any), "marks", wants("at_mm", "n", "station", "s", "set_deg", "n"))
	}
	hull := result["hull"].(map[string]any)
	each(t, hull, "stations", wants("name", "s", "at_mm", "n", "girth_mm", "n"))
	each(t, hull, "seams", wants("skin", "s", "seam", "s", "length_mm", "n"))
	each(t, hull, "moulds", wants("line", "s", "station", "s", "mm", "n"))
	each(t, hull, "spiled", wants("strake", "s", "side", "s", "piece", "n", "sny_mm", "n", "board_width_mm", "n"))
	each(t, hull, "bevel_board", wants("line", "s", "station", "s", "level_deg", "n", "square_deg", "n"))
}

// each holds every object of a list to its keys; the list is not empty.
func each(t *testing.T, in map[string]any, key string, want []held) {
	t.Helper()
	list, _ := in[key].([]any)
	if len(list) == 0 {
		t.Errorf("%s: nothing in it", key)
	}
	for _, v := range list {
		check(t, key, v, want)
	}
}

func check(t *testing.T, where string, v any, want []held) {
	t.Helper()
	object, ok := v.(map[string]any)
	if !ok {
		t.Errorf("%s: %T is no object", where, v)
		return
	}
	for _, w := range want {
		if got := kind(object[w.key]); got != w.kind && (got != "" || w.kind != "t" && w.kind != "b" && w.kind != "l") {
			t.Errorf("%s: key %q holds %v, kind %q, want %q", where, w.key, object[w.key], got, w.kind)
		}
	}
}

// kind is what a value is; an empty list is "" and may be any list.
func kind(v any) string {
	switch v := v.(type) {
	case string:
		return "s"
	case float64:
		return "n"
	case map[string]any:
		return "o"
	case []any:
		if len(v) == 0 {
			return ""
		}
		return map[string]string{"s": "t", "n": "b", "o": "l"}[kind(v[0])]
	}
	return "no value"
}

// The figures are in the units their keys say: against the result itself.
func TestJSONUnits(t *testing.T) {
	in := demo()
	data, err := write.JSON(in)
	if err != nil {
		t.Fatal(err)
	}
	var got struct {
		Counts map[string]int
		Result struct {
			Strakes []struct {
				LengthMM float64   `json:"length_mm"`
				JointsMM []float64 `json:"joints_mm"`
				PiecesMM []float64 `json:"pieces_mm"`
			}
			Scarfs []struct {
				ThicknessMM float64 `json:"thickness_mm"`
				Slope       float64
				LengthMM    float64 `json:"length_mm"`
				AngleDeg    float64 `json:"angle_deg"`
			}
			Stock struct {
				UsedMM   float64 `json:"used_mm"`
				WastePct float64 `json:"waste_pct"`
			}
			Bevels []struct {
				Marks []struct {
					AtMM   float64 `json:"at_mm"`
					SetDeg float64 `json:"set_deg"`
				}
			}
		}
	}
	if err := json.Unmarshal(data, &got); err != nil {
		t.Fatal(err)
	}
	near := func(what string, got, want float64) {
		t.Helper()
		if math.Abs(got-want) > 1e-6 {
			t.Errorf("%s: %v, want %v", what, got, want)
		}
	}
	near("errors", float64(got.Counts["error"]), float64(in.Findings.Count(finding.Error)))
	for i, s := range got.Result.Strakes {
		r := in.Result.Runs[i]
		near("strake", s.LengthMM, r.Length.Inches()*25.4)
		sum := 0.0
		for _, p := range s.PiecesMM {
			sum += p
		}
		// Pieces less their scarfs add up to the strake (trade rule: sum of pieces = strake + (k-1) runs).
		if k := len(s.PiecesMM); k > 0 {
			near("pieces of "+r.Name, sum-float64(k-1)*r.Scarf.Millimetres(), s.LengthMM)
		}
	}
	for _, s := range got.Result.Scarfs {
		near("scarf run", s.LengthMM, s.ThicknessMM*s.Slope)
		near("fence", math.Tan(s.AngleDeg*math.Pi/180), 1/s.Slope)
	}
	near("used", got.Result.Stock.UsedMM, in.Result.Plan.Summary.Used.Inches()*25.4)
	for i, b := range got.Result.Bevels {
		for k, m := range b.Marks {
			near("mark", m.AtMM, in.Result.Bevels[i].Marks[k].At.Inches()*25.4)
			near("set", m.SetDeg, float64(in.Result.Bevels[i].Marks[k].Set))
		}
	}
}
