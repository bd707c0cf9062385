package write

import (
	"math"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// jsonHull is the hull as worked out. Where a seam does not cross a station, or has
// no bevel there, its figure is null.
func jsonHull(s *hull.Shape) object {
	out := object{}
	put := func(key string, all []object) {
		if len(all) > 0 {
			out[key] = all
		}
	}
	var list []object
	for _, g := range s.Stations {
		list = append(list, object{"name": g.Name, "at_mm": g.At.Millimetres(), "girth_mm": g.Girth.Millimetres()})
	}
	put("stations", list)
	put("seams", jsonSeams(s))
	list = nil
	for _, m := range s.Moulds {
		list = append(list, object{"line": m.Line, "station": m.Station, "mm": thousandth(m.Offset.Millimetres()), "view": m.View.String(), "surface": m.Surface.String()})
	}
	put("moulds", list)
	put("left", jsonLeft(s))
	list = nil
	for _, b := range s.Board {
		list = append(list, object{"line": b.Line, "station": b.Station, "level_deg": thousandth(float64(b.Level)), "square_deg": thousandth(float64(b.Square)), "face": b.Face, "stands": b.Word()})
	}
	put("bevel_board", list)
	list = nil
	for _, l := range s.Linings {
		for _, g := range l.Garboards {
			list = append(list, object{"skin": l.Skin, "side": l.Side.String(), "strake": g.Strake, "station": s.Stations[g.Place].Name, "to_keel_deg": thousandth(float64(g.ToKeel)), "edge_deg": thousandth(float64(g.Edge)),
				"rabbet_depth_mm": mm(g.Depth), "bearding_mm": mm(g.Bearding)})
		}
	}
	put("garboards", list)
	return out
}

// jsonLeft is where along the hull parallel strakes leave something below the last
// of them.
func jsonLeft(s *hull.Shape) []object {
	var list []object
	for _, l := range s.Linings {
		for _, what := range []struct {
			use string
			all []hull.Reach
		}{{"taper", l.Tapers}, {"stealer", l.Stealers}} {
			for _, r := range what.all {
				list = append(list, object{"skin": l.Skin, "side": l.Side.String(), "for": what.use, "from_mm": mm(r.From), "to_mm": mm(r.To)})
			}
		}
	}
	return list
}

// jsonSeams is the seams of every skin from the sheer down, each with the widths
// of the strake above it; the sheer has none.
func jsonSeams(s *hull.Shape) []object {
	var list []object
	for _, l := range s.Linings {
		for j, seam := range l.Seams {
			bevels, widths, girths := make([]any, len(seam.Points)), make([]any, len(seam.Points)), make([]any, len(seam.Points))
			for k, p := range seam.Points {
				if p.HasBevel {
					bevels[k] = thousandth(float64(p.Bevel))
				}
				if p.Crosses {
					girths[k] = thousandth(p.Girth.Millimetres())
				}
				if j > 0 && l.Strakes[j-1].Widths[k] > 0 {
					widths[k] = thousandth(l.Strakes[j-1].Widths[k].Millimetres())
				}
			}
			o := object{"skin": l.Skin, "side": l.Side.String(), "seam": seam.Name, "surface": l.On.String(), "length_mm": thousandth(seam.Length.Millimetres()), "bevel_deg": bevels, "girth_mm": girths}
			if j > 0 {
				o["width_mm"] = widths
			}
			list = append(list, o)
		}
	}
	return list
}

// jsonHung is how the work as hung stands.
func jsonHung(rows []hull.HungRow) []object {
	var list []object
	for _, r := range rows {
		var next []object
		for _, n := range r.Next {
			next = append(next, object{"strake": n.Strake, "width_mm": mm(n.Width), "set_out_mm": mm(n.SetOut)})
		}
		list = append(list, object{"skin": r.Skin, "strake": r.Strake, "side": r.Side.String(), "station": r.Station, "from": r.From.String(), "corner": r.Corner.String(),
			"measured_mm": mm(r.Measured), "wanted_mm": mm(r.Wanted), "ahead_mm": mm(r.Ahead), "back_after": r.Back, "next": next})
	}
	return list
}

func mm(l measure.Length) float64 { return thousandth(l.Millimetres()) }

// thousandth is a figure to the third place: what is computed is not known finer.
func thousandth(v float64) float64 { return math.Round(v*1000)/1000 + 0 }
