package hull

import (
	"fmt"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// checkGaps looks for blanks inside lines and for stations left empty.
func checkGaps(o Offsets, r Rules) finding.List {
	var found finding.List
	gaps := make([][]int, len(o.Lines)) // places blank inside each line
	at := make([]int, len(o.Stations))  // lines that are blank inside at each station
	for i, l := range o.Lines {
		blank, onBase := inside(l, r)
		gaps[i] = blank
		for _, k := range blank {
			at[k]++
		}
		if onBase != nil {
			found = append(found, finding.Finding{Kind: OffsetOnBase, Cell: onBase[0].Cell, Also: cells(onBase[1:]),
				Text: fmt.Sprintf("%s is left blank at %d %ss where the line lies on the base", l.words(), len(onBase), o.Places)})
		}
	}
	empty := make([]bool, len(o.Stations))
	for k, s := range o.Stations {
		given := 0
		for _, l := range o.Lines {
			if l.Values[k].State != source.Blank {
				given++
			}
		}
		if at[k] >= 3 && at[k] > 2*given {
			empty[k] = true
			text := fmt.Sprintf("%s has no offsets and gets no mould", o.called(k))
			if given > 0 {
				text = fmt.Sprintf("%s has only %d of %d offsets", o.called(k), given, given+at[k])
			}
			found = append(found, finding.Finding{Kind: StationBlank, Cell: s.Cell, Text: text})
		}
	}
	for i, l := range o.Lines {
		for _, k := range gaps[i] {
			if !empty[k] {
				found = append(found, gap(o, i, k, l))
			}
		}
	}
	return found
}

func gap(o Offsets, i, k int, l Line) finding.Finding {
	f := finding.Finding{Kind: OffsetGap, Cell: l.Values[k].Cell,
		Text: fmt.Sprintf("%s has no figure at %s", l.words(), o.called(k))}
	if v, ok := o.fill(i, k); ok {
		f.Suggests = "about " + o.Form.Write(v)
	}
	return f
}

// inside is the blanks between a line's first and last figures; those of a run
// of heights that starts and ends near the base are apart.
func inside(l Line, r Rules) (blank []int, onBase []source.Reading[measure.Length]) {
	last := -1 // the last figure before
	for k, v := range l.Values {
		if v.State == source.Blank {
			continue
		}
		if last >= 0 && k-last > 1 {
			low := l.View == Height && v.OK() && l.Values[last].OK() &&
				v.Value <= r.NearBase && l.Values[last].Value <= r.NearBase
			for b := last + 1; b < k; b++ {
				if low {
					onBase = append(onBase, l.Values[b])
				} else {
					blank = append(blank, b)
				}
			}
		}
		last = k
	}
	return blank, onBase
}

func cells(readings []source.Reading[measure.Length]) []source.Cell {
	var all []source.Cell
	for _, v := range readings {
		all = append(all, v.Cell)
	}
	return all
}
