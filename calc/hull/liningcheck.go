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

// widths looks at a skin's widths: those over the limit in each zone, those too
// narrow, and where something remains below the last strake. Strips are as wide
// as they are ripped.
func (h *hull) widths(l Lining, from *lined) finding.List {
	if l.Skin == Strips || len(l.Strakes) == 0 {
		return nil
	}
	var wide [len(zones)]extreme
	var narrow extreme
	for j, s := range l.Strakes {
		var over [len(zones)]bool
		under := false
		for k, w := range s.Widths {
			if w <= 0 {
				continue
			}
			if most, zone := h.limit(j, k, from); most > 0 && w > most {
				over[zone] = true
				wide[zone].see(w-most, w, most, s.Name, k)
			}
			if w < h.r.NarrowestPlank {
				under = true
				narrow.see(h.r.NarrowestPlank-w, w, h.r.NarrowestPlank, s.Name, k)
			}
		}
		for z := range wide {
			wide[z].count(over[z])
		}
		narrow.count(under)
	}
	var found finding.List
	for z, w := range wide {
		if w.strakes > 0 {
			found = append(found, finding.Finding{Kind: StrakeWide, Cell: from.cell, Reads: h.write(w.width),
				Text: fmt.Sprintf("%d of the %s skin's strakes %s wider than %s in the %s: %s at %s is %s", w.strakes, l.Skin, is(w.strakes),
					h.write(w.limit), zones[z], w.name, h.o.called(w.at), h.write(w.width))})
		}
	}
	if narrow.strakes > 0 {
		found = append(found, finding.Finding{Kind: StrakeNarrow, Cell: from.cell, Reads: h.write(narrow.width),
			Text: fmt.Sprintf("%d of the %s skin's strakes %s narrower than %s: %s at %s is %s", narrow.strakes, l.Skin, is(narrow.strakes),
				h.write(narrow.limit), narrow.name, h.o.called(narrow.at), h.write(narrow.width))})
	}
	return append(found, h.remains(l, from)...)
}

// is is the word for one or for several.
func is(n int) string {
	if n == 1 {
		return "is"
	}
	return "are"
}

// extreme is the strake farthest beyond a limit and how many are beyond it.
type extreme struct {
	beyond, width, limit measure.Length
	name                 string
	at, strakes          int
}

func (e *extreme) see(beyond, width, limit measure.Length, name string, at int) {
	if beyond > e.beyond {
		e.beyond, e.width, e.limit, e.name, e.at = beyond, width, limit, name, at
	}
}

func (e *extreme) count(is bool) {
	if is {
		e.strakes++
	}
}

// write is a length in the words of a finding, as near as the rule of the offsets is
// read.
func (h *hull) write(l measure.Length) string {
	return h.r.Units.As(h.o.Form, l.Round(h.o.Form.Finest()))
}

// zones is where limits of width differ: the topsides above the light waterline,
// the bottom where the section is flatter than 45 degrees, the bilge between them.
var zones = [...]string{"topsides", "bilge", "bottom"}

// limit is the widest a strake may be at a station and which of the zones it lies
// in there.
func (h *hull) limit(j, k int, from *lined) (measure.Length, int) {
	c := from.sections[k]
	upper, lower := from.down[j][k], from.down[j+1][k]
	if c == nil || !(upper <= lower) {
		return 0, 0
	}
	t := c.place(c.length() - (upper+lower)/2)
	p, way := c.at(t), c.along(t)
	switch {
	case h.r.LightWater > 0 && p.z > h.r.LightWater.Inches():
		return h.r.WidestTopside, 0
	case way.z < way.y:
		return h.r.WidestBottom, 2
	}
	return h.r.WidestBilge, 1
}
