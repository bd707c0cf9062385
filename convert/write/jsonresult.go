package write

import (
	"strakebook/calc/bevel"
	"strakebook/calc/lay"
	"strakebook/calc/scarf"
	"strakebook/calc/stock"
)

// jsonResult is what was worked out.
func jsonResult(in Input) object {
	r := in.Result
	out := object{}
	put := func(key string, all []object) {
		if len(all) > 0 {
			out[key] = all
		}
	}
	put("strakes", jsonStrakes(r.Runs))
	put("pieces", jsonPieces(r.Plan))
	put("boards", jsonBoards(r.Plan.Cuts))
	put("scarfs", jsonScarfs(r.Scarfs))
	if r.Plan.Summary.Boards > 0 {
		out["stock"] = jsonStock(r.Plan)
	}
	put("bevels", jsonBevels(r.Bevels))
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

func jsonStrakes(runs []lay.Run) []object {
	var list []object
	for _, s := range runs {
		if s.Given {
			continue
		}
		list = append(list, object{"name": s.Name, "side": s.Side.String(), "skin": s.Skin, "length_mm": s.Length.Millimetres(), "joints_mm": mms(s.Joints), "pieces_mm": mms(s.Pieces)})
	}
	return list
}

func jsonPieces(plan stock.Plan) []object {
	var list []object
	for _, p := range plan.Pieces {
		board := ""
		if p.Board >= 0 {
			board = plan.Cuts[p.Board].Mark
		}
		fore, after := p.Fore.String(), p.Aft.String()
		if p.Given {
			fore, after = square, square
		}
		list = append(list, object{"mark": p.Mark, "strake": p.Strake, "side": sideOf(p), "skin": p.Skin, "length_mm": p.Length.Millimetres(), "width_mm": p.Width.Millimetres(),
			"thickness_mm": p.Thickness.Millimetres(), "dressed_mm": p.Dressed().Millimetres(), "fore": fore, "after": after, "board": board})
	}
	return list
}

func jsonBoards(cuts []stock.Cut) []object {
	var list []object
	for _, c := range cuts {
		list = append(list, object{"mark": c.Mark, "source": c.Board.Source, "length_mm": c.Board.Length.Value.Millimetres(), "width_mm": c.Board.Width.Value.Millimetres(),
			"thickness_mm": c.Board.Thickness.Value.Millimetres(), "used_mm": c.Used.Millimetres()})
	}
	return list
}

func jsonScarfs(rows []scarf.Row) []object {
	var list []object
	for _, s := range rows {
		list = append(list, object{"skin": s.Skin, "thickness_mm": s.Thickness.Millimetres(), "slope": s.Slope, "length_mm": s.Run.Millimetres(), "angle_deg": float64(s.Angle), "count": s.Joints})
	}
	return list
}

// jsonStock is what the boards come to, and the least they could where that is known.
func jsonStock(plan stock.Plan) object {
	s := plan.Summary
	out := object{"pieces": s.Pieces, "boards": s.Boards, "bought_mm": s.Bought.Millimetres(), "used_mm": s.Used.Millimetres(), "board_feet": float64(s.BoardFeet), "cost": s.Cost, "waste_pct": s.WasteOfBought}
	if s.Unserved > 0 {
		out["no_board"], out["no_board_mm"] = s.Unserved, s.Lacking.Millimetres()
	}
	if s.Bound > 0 {
		out["bound"], out["bound_pct"] = s.Bound, 100*(s.Spent-s.Bound)/s.Bound
	}
	if stays := jsonStays(plan.Stay); len(stays) > 0 {
		out["stay"] = stays
	}
	if longer := jsonLonger(plan.Longer); len(longer) > 0 {
		out["longer"] = longer
	}
	return out
}

func jsonBevels(schedules []bevel.Schedule) []object {
	var list []object
	for _, s := range schedules {
		var marks []object
		for _, m := range s.Marks {
			marks = append(marks, jsonMark(m, s))
		}
		edge := object{"strake": s.Strake, "side": s.Side.String(), "edge": s.Edge.String(), "computed": s.Computed, "marks": marks}
		if s.AsOther {
			edge["as_side"] = s.Side.Other().String()
		}
		list = append(list, edge)
	}
	return list
}

func jsonMark(m bevel.Mark, s bevel.Schedule) object {
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
	return mark
}
