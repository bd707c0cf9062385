package hull

import (
	"fmt"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// What lining off finds.
var (
	LiningSum = &finding.Kind{
		Code: "lining-sum", Severity: finding.Warning, Title: "widths do not add up to the girth",
		Why:    "What the widths are over or short of the girth comes out of the last plank hung.",
		Remedy: "share the difference out among the strakes, or plan a stealer",
	}
	SeamHollow = &finding.Kind{
		Code: "seam-hollow", Severity: finding.Warning, Title: "hollow or hump in a seam",
		Why:    "A seam that is not fair shows for the life of the boat, and the planks along it will not lie.",
		Remedy: "spring a batten through the marks before lining off",
	}
	StrakeWide = &finding.Kind{
		Code: "strake-wide", Severity: finding.Note, Title: "strake wider than the limit",
		Why:    "Wide planks cup and open their seams; where the hull is round they must be hollowed deeper.",
		Remedy: "line off more strakes, or set the limit for the zone",
	}
	StrakeNarrow = &finding.Kind{
		Code: "strake-narrow", Severity: finding.Note, Title: "strake narrower than the limit",
		Why:    "A plank too narrow at its end holds no fastening and splits.",
		Remedy: "line off fewer strakes there, or stop one short with a stealer",
	}
)

// widths looks at a skin's widths: those over the limit of their zone, those too
// narrow, and where something remains below the last strake. Strips are as wide
// as they are ripped.
func (h *hull) widths(l Lining, from *lined) finding.List {
	if l.Skin == Strips || len(l.Strakes) == 0 {
		return nil
	}
	var found finding.List
	for j, s := range l.Strakes {
		wide, at, limit, zone := measure.Length(0), -1, measure.Length(0), ""
		narrow, thin := measure.Length(0), -1
		for k, w := range s.Widths {
			if w <= 0 {
				continue
			}
			most, z := h.limit(l, j, k, from)
			if most > 0 && w > most && w-most > wide-limit {
				wide, at, limit, zone = w, k, most, z
			}
			if h.r.NarrowestPlank > 0 && w < h.r.NarrowestPlank && (thin < 0 || w < narrow) {
				narrow, thin = w, k
			}
		}
		if at >= 0 {
			found = append(found, finding.Finding{Kind: StrakeWide, Cell: from.cell, Reads: h.o.Form.Write(wide.Round(measure.Sixteenth)),
				Text: fmt.Sprintf("%s %s is %s wide at station %s, more than %s in the %s", l.Skin, s.Name,
					h.o.Form.Write(wide.Round(measure.Sixteenth)), h.o.Stations[at].Name, h.o.Form.Write(limit), zone)})
		}
		if thin >= 0 {
			found = append(found, finding.Finding{Kind: StrakeNarrow, Cell: from.cell, Reads: h.o.Form.Write(narrow.Round(measure.Sixteenth)),
				Text: fmt.Sprintf("%s %s is only %s wide at station %s", l.Skin, s.Name,
					h.o.Form.Write(narrow.Round(measure.Sixteenth)), h.o.Stations[thin].Name)})
		}
	}
	return append(found, h.remains(l, from)...)
}

// limit is the widest a strake may be at a station and the zone it lies in
// there: the topsides above the light waterline, the bottom where the section is
// flatter than 45 degrees, the bilge between them.
func (h *hull) limit(l Lining, j, k int, from *lined) (measure.Length, string) {
	c := from.sections[k]
	upper, lower := from.down[j][k], from.down[j+1][k]
	if c == nil || !(upper <= lower) {
		return 0, ""
	}
	t := c.place(c.length() - (upper+lower)/2)
	p, way := c.at(t), c.along(t)
	switch {
	case h.r.LightWater > 0 && p.z > h.r.LightWater.Inches():
		return h.r.WidestTopside, "topsides"
	case way.z < way.y:
		return h.r.WidestBottom, "bottom"
	}
	return h.r.WidestBilge, "bilge"
}

// remains says where girth is left below the last strake, for a stealer or a
// taper.
func (h *hull) remains(l Lining, from *lined) finding.List {
	first, last, most := -1, -1, measure.Length(0)
	for k, left := range l.Left {
		if left > h.r.SumWithin {
			if first < 0 {
				first = k
			}
			last, most = k, max(most, left)
		}
	}
	if first < 0 || l.By == ByMarks {
		return nil
	}
	return finding.List{{Kind: LiningSum, Cell: from.cell,
		Text: fmt.Sprintf("below the last %s as much as %s remains, from station %s to station %s: stealers or tapering strakes must take it up", l.Skin,
			h.o.Form.Write(most.Round(measure.Sixteenth)), h.o.Stations[first].Name, h.o.Stations[last].Name)}}
}
