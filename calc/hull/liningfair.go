package hull

import (
	"fmt"
	"math"

	"strakebook/calc/fair"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// SeamUneven is seams in shares of the girth that a batten would not follow.
var SeamUneven = &finding.Kind{
	Code: "seam-uneven", Severity: finding.Note, Title: "shares of the girth leave a hollow or a hump",
	Why:    "A share of the girth at each station is a mark and not a line: where the girth changes quickly, as above a raked stem's heel, a batten does not touch every mark.",
	Remedy: "spring a batten through the marks, shift those it does not touch, and give the seams' marks",
}

// uneven finds the seams in shares of the girth that have a hollow or a hump of more
// than a mark may be off its neighbours, and names the greatest.
func (h *hull) uneven(l Lining, from *lined) finding.List {
	if from.share == nil {
		return nil
	}
	count, most, text := 0, 0.0, ""
	for j := 1; j < len(l.Seams)-1; j++ {
		at, off := h.offNeighbours(l.Seams[j])
		if off == 0 {
			continue
		}
		if count++; math.Abs(off) > most {
			word := "hump"
			if off < 0 {
				word = "hollow"
			}
			most = math.Abs(off)
			text = fmt.Sprintf("the seam below %s has a %s of %s at %s", l.Strakes[j-1].Name, word, h.write(measure.Inches(most)), h.o.called(at))
		}
	}
	if count == 0 {
		return nil
	}
	return finding.List{{Kind: SeamUneven, Cell: from.cell,
		Text: fmt.Sprintf("%d of the %s skin's seams in shares of the girth %s not fair: %s", count, l.Skin, is(count), text)}}
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
	if at, off = farthest(row, h.r.SeamWithin); len(stations) > 0 {
		at = stations[at]
	}
	return at, off
}

// farthest is the value that lies farthest off the curve of its neighbours, and how
// far above it; nothing where none that has two others on both sides lies off by
// more than is allowed. Nearer the ends a seam that runs to the stem bends more
// between two stations than a batten can tell from a hump, but one that shows
// farther in may stand there.
func farthest(row fair.Row, allowed measure.Length) (at int, off float64) {
	shows := false
	for i := range row.Y {
		want, ok := fair.Fill(without(row, i), i)
		if !ok {
			continue
		}
		d := row.Y[i] - want
		shows = shows || i > 1 && i < len(row.Y)-2 && math.Abs(d) > allowed.Inches()
		if math.Abs(d) > math.Abs(off) {
			at, off = i, d
		}
	}
	if !shows {
		return 0, 0
	}
	return at, off
}
