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
	wide, narrow := extreme{}, extreme{}
	for j, s := range l.Strakes {
		over, under := false, false
		for k, w := range s.Widths {
			if w <= 0 {
				continue
			}
			if most, zone := h.limit(l, j, k, from); most > 0 && w > most {
				over = true
				wide.see(w-most, w, most, s.Name, zone, k)
			}
			if w < h.r.NarrowestPlank {
				under = true
				narrow.see(h.r.NarrowestPlank-w, w, h.r.NarrowestPlank, s.Name, "", k)
			}
		}
		wide.count(over)
		narrow.count(under)
	}
	var found finding.List
	if wide.strakes > 0 {
		found = append(found, finding.Finding{Kind: StrakeWide, Cell: from.cell, Reads: h.write(wide.width),
			Text: fmt.Sprintf("%d of the %s skin's strakes are wider than the limit of their zone: %s, in the %s at station %s, is %s against %s", wide.strakes, l.Skin,
				wide.name, wide.zone, h.o.Stations[wide.at].Name, h.write(wide.width), h.write(wide.limit))})
	}
	if narrow.strakes > 0 {
		found = append(found, finding.Finding{Kind: StrakeNarrow, Cell: from.cell, Reads: h.write(narrow.width),
			Text: fmt.Sprintf("%d of the %s skin's strakes are narrower than %s: %s at station %s is %s", narrow.strakes, l.Skin,
				h.write(narrow.limit), narrow.name, h.o.Stations[narrow.at].Name, h.write(narrow.width))})
	}
	return append(found, h.remains(l, from)...)
}

// extreme is the strake farthest beyond a limit and how many are beyond it.
type extreme struct {
	beyond, width, limit measure.Length
	name, zone           string
	at, strakes          int
}

func (e *extreme) see(beyond, width, limit measure.Length, name, zone string, at int) {
	if beyond > e.beyond {
		e.beyond, e.width, e.limit, e.name, e.zone, e.at = beyond, width, limit, name, zone, at
	}
}

func (e *extreme) count(is bool) {
	if is {
		e.strakes++
	}
}

// write is a length as the offsets are written, to a sixteenth.
func (h *hull) write(l measure.Length) string { return h.o.Form.Write(l.Round(measure.Sixteenth)) }

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
