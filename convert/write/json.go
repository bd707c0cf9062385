package write

import (
	"encoding/json"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

type object = map[string]any

// JSON is the job as one object; with its result only where it was cut. Keys are
// added, never renamed; parts that could not be worked out are absent.
func JSON(in Input) ([]byte, error) {
	books := []string{}
	for _, b := range in.Books {
		books = append(books, b.Path)
	}
	out := object{"version": in.Version, "books": books, "tables": jsonTables(in.Tables), "findings": jsonFindings(in.Findings),
		"counts": object{"note": in.Findings.Count(finding.Note), "warning": in.Findings.Count(finding.Warning), "error": in.Findings.Count(finding.Error)}}
	if in.Cut {
		out["result"] = jsonResult(in)
	}
	return json.Marshal(out)
}

func jsonTables(tables []source.Table) []object {
	all := []object{}
	for _, t := range tables {
		o := object{"table": t.Table, "book": t.Book, "sheet": t.Sheet, "range": t.Range, "stations": t.Stations, "lines": t.Lines, "unit": t.Unit, "notation": t.Notation}
		if t.Skip {
			o["skip"] = true
		}
		all = append(all, o)
	}
	return all
}

func jsonFindings(l finding.List) []object {
	all := []object{}
	for _, f := range l {
		also := []string{}
		for _, c := range f.Also {
			also = append(also, c.Ref())
		}
		all = append(all, object{"code": f.Code, "severity": f.Severity.String(), "book": f.Cell.Book, "sheet": f.Cell.Sheet, "cell": f.Cell.Ref(),
			"also": also, "text": f.Text, "reads": f.Reads, "suggests": f.Suggests, "remedy": f.ToDo()})
	}
	return all
}

func mms(lengths []measure.Length) []float64 {
	all := make([]float64, len(lengths))
	for i, l := range lengths {
		all[i] = l.Millimetres()
	}
	return all
}

func jsonResult(in Input) object {
	r := in.Result
	out := object{}
	put := func(key string, all []object) {
		if len(all) > 0 {
			out[key] = all
		}
	}
	var list []object
	for _, s := range r.Runs {
		if s.Given {
			continue
		}
		list = append(list, object{"name": s.Name, "side": s.Side.String(), "skin": s.Skin, "length_mm": s.Length.Millimetres(), "joints_mm": mms(s.Joints), "pieces_mm": mms(s.Pieces)})
	}
	put("strakes", list)
	list = nil
	for _, p := range r.Plan.Pieces {
		board := ""
		if p.Board >= 0 {
			board = r.Plan.Cuts[p.Board].Mark
		}
		fore, after := p.Fore.String(), p.Aft.String()
		if p.Given {
			fore, after = square, square
		}
		list = append(list, object{"mark": p.Mark, "strake": p.Strake, "side": sideOf(p), "skin": p.Skin, "length_mm": p.Length.Millimetres(), "width_mm": p.Width.Millimetres(),
			"thickness_mm": p.Thickness.Millimetres(), "fore": fore, "after": after, "board": board})
	}
	put("pieces", list)
	list = nil
	for _, c := range r.Plan.Cuts {
		list = append(list, object{"mark": c.Mark, "source": c.Board.Source, "length_mm": c.Board.Length.Value.Millimetres(), "width_mm": c.Board.Width.Value.Millimetres(),
			"thickness_mm": c.Board.Thickness.Value.Millimetres(), "used_mm": c.Used.Millimetres()})
	}
	put("boards", list)
	list = nil
	for _, s := range r.Scarfs {
		list = append(list, object{"skin": s.Skin, "thickness_mm": s.Thickness.Millimetres(), "slope": s.Slope, "length_mm": s.Run.Millimetres(), "angle_deg": float64(s.Angle), "count": s.Joints})
	}
	put("scarfs", list)
	if s := r.Plan.Summary; s.Boards > 0 {
		stock := object{"pieces": s.Pieces, "boards": s.Boards, "bought_mm": s.Bought.Millimetres(), "used_mm": s.Used.Millimetres(), "board_feet": float64(s.BoardFeet), "cost": s.Cost, "waste_pct": s.WasteOfBought}
		if s.Unserved > 0 {
			stock["no_board"], stock["no_board_mm"] = s.Unserved, s.Lacking.Millimetres()
		}
		if s.Bound > 0 {
			stock["bound"], stock["bound_pct"] = s.Bound, 100*(s.Spent-s.Bound)/s.Bound
		}
		if stays := jsonStays(r.Plan.Stay); len(stays) > 0 {
			stock["stay"] = stays
		}
		if longer := jsonLonger(r.Plan.Longer); len(longer) > 0 {
			stock["longer"] = longer
		}
		out["stock"] = stock
	}
	list = nil
	for _, s := range r.Bevels {
		var marks []object
		for _, m := range s.Marks {
			mark := object{"at_mm": m.At.Millimetres(), "station": m.Station, "set_deg": float64(m.Set), "tilt_deg": float64(m.Tilt)}
			if m.Batten != 0 {
				mark["batten_mm"] = mm(m.Batten)
			}
			if m.Read.OK() {
				mark["reads_deg"] = float64(m.Read.Value)
			}
			if m.Hull.OK() && !s.Computed {
				mark["hull_deg"] = thousandth(float64(m.Hull.Value))
			}
			if m.Doubt != bevel.Sure || s.Doubt != "" {
				mark["doubtful"] = true
			}
			marks = append(marks, mark)
		}
		edge := object{"strake": s.Strake, "side": s.Side.String(), "edge": s.Edge.String(), "computed": s.Computed, "marks": marks}
		if s.AsOther {
			edge["as_side"] = s.Side.Other().String()
		}
		list = append(list, edge)
	}
	put("bevels", list)
	if r.Hull != nil {
		shape := jsonHull(r.Hull)
		if spiled := jsonSpiled(r.Spiled); len(spiled) > 0 {
			shape["spiled"] = spiled
		}
		out["hull"] = shape
	}
	put("as_hung", jsonHung(r.Hung))
	put("queries", jsonQueries(in))
	put("corrected", jsonCorrected(in))
	return out
}
