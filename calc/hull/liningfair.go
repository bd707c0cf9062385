package hull

import (
	"fmt"
	"math"

	"strakebook/calc/fair"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// SeamUneven is seams in equal shares that a batten would not follow.
var SeamUneven = &finding.Kind{
	Code: "seam-uneven", Severity: finding.Note, Title: "equal shares leave a hollow or a hump",
	Why:    "A share of the girth at each station is a mark and not a line: where the girth changes quickly, as above a raked stem's heel, a batten does not touch every mark.",
	Remedy: "spring a batten through the marks, shift those it does not touch, and give the seams' marks",
}

// uneven finds the seams in equal shares that have a hollow or a hump of more
// than a mark may be off its neighbours, and names the greatest. Looked at are the
// stations with two others of the seam before and abaft them.
func (h *hull) uneven(l Lining, from *lined) finding.List {
	if l.By != ByShares {
		return nil
	}
	count, most, text := 0, 0.0, ""
	for j := 1; j < len(l.Seams)-1; j++ {
		at, off := h.offNeighbours(l.Seams[j])
		if math.Abs(off) <= h.r.SeamWithin.Inches() {
			continue
		}
		if count++; math.Abs(off) > most {
			word := "hump"
			if off < 0 {
				word = "hollow"
			}
			most = math.Abs(off)
			text = fmt.Sprintf("the seam below %s has a %s of %s at station %s", l.Strakes[j-1].Name, word, h.write(measure.Inches(most)), h.o.Stations[at].Name)
		}
	}
	if count == 0 {
		return nil
	}
	return finding.List{{Kind: SeamUneven, Cell: from.cell,
		Text: fmt.Sprintf("%d of the %s skin's seams in equal shares are not fair: %s", count, l.Skin, text)}}
}

// offNeighbours is the station at which a seam lies farthest off the curve of its
// neighbours, and how far down from it.
func (h *hull) offNeighbours(s Seam) (at int, off float64) {
	row := fair.Row{}
	var stations []int
	for k, p := range s.Points {
		if p.Crosses {
			row.X, row.Y, row.Given = append(row.X, h.x[k]), append(row.Y, p.Girth.Inches()), append(row.Given, true)
			stations = append(stations, k)
		}
	}
	for i := 2; i < len(stations)-2; i++ {
		if want, ok := fair.Fill(without(row, i), i); ok && math.Abs(row.Y[i]-want) > math.Abs(off) {
			at, off = stations[i], row.Y[i]-want
		}
	}
	return at, off
}
