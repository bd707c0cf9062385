package write

import (
	"cmp"
	"maps"
	"math"
	"slices"

	"strakebook/convert/sheet"
)

// label writes the names of lines on a picture whose axes are set, each beside its
// line's end, or below that so far that it lies clear of the names above it.
func (d *picture) label(figures *page, of string, lines map[int][]point) {
	across, up := d.scales()
	ends := map[int]point{}
	for i, all := range lines {
		ends[i] = all[lastPoint(all)-1]
	}
	order := slices.SortedFunc(maps.Keys(ends), func(a, b int) int { return cmp.Or(-cmp.Compare(ends[a].y, ends[b].y), a-b) })
	var taken []box
	for _, i := range order {
		l, at := &d.chart.Lines[i], ends[i]
		b := boxOf(at.x*across, at.y*up, l.Name, true)
		for !b.clear(taken) {
			b.bottom, b.top, at.y = b.bottom-1, b.top-1, at.y-1/up
		}
		taken = append(taken, b)
		if at == ends[i] {
			l.End, l.Beside = lastPoint(lines[i]), true
			continue
		}
		name := figures.points(of, l.Name, sheet.NoPen, []point{at})
		name.End, name.Beside = 1, true
		d.chart.Lines = append(d.chart.Lines, name)
	}
}

// spread writes the names of lines that end near one another over their ends; where
// they would lie over one another, in a row above, a thin line from each to its end.
func (d *picture) spread(figures *page, of string, lines map[int][]point) {
	across, up := d.scales()
	ends := map[int]point{}
	for i, all := range lines {
		ends[i] = all[len(all)-1]
	}
	order := slices.SortedFunc(maps.Keys(ends), func(a, b int) int { return cmp.Or(cmp.Compare(ends[a].x, ends[b].x), a-b) })
	var taken []box
	free, total, middle, top := true, 0.0, 0.0, math.Inf(-1)
	for _, i := range order {
		b := boxOf(ends[i].x*across, ends[i].y*up, d.chart.Lines[i].Name, false)
		free = free && b.clear(taken)
		taken = append(taken, b)
		total, middle, top = total+b.right-b.left+4, middle+ends[i].x*across/float64(len(order)), max(top, ends[i].y*up)
	}
	left := max(d.chart.X.From*across, min(d.chart.X.To*across-total, middle-total/2))
	for k, i := range order {
		l := &d.chart.Lines[i]
		if free {
			l.End = len(lines[i])
			continue
		}
		wide := taken[k].right - taken[k].left + 4
		at := point{x: (left + wide/2) / across, y: min(d.chart.Y.To*up-12, top+26) / up}
		left += wide
		leader := figures.points(of, "to "+l.Name, sheet.Grey, []point{ends[i], at})
		name := figures.points(of, l.Name, sheet.NoPen, []point{at})
		name.End = 1
		d.chart.Lines = append(d.chart.Lines, leader, name)
	}
}

// scales is how many points a unit takes along and up.
func (d *picture) scales() (across, up float64) {
	across, up = wideOf/(d.chart.X.To-d.chart.X.From), highOf/(d.chart.Y.To-d.chart.Y.From)
	if d.chart.Equal {
		across = min(across, up)
		up = across
	}
	return across, up
}

// wideOf and highOf are how large a picture's plot is, in points.
const wideOf, highOf = 476.0, 324.0

// box is the place that a name takes, in points.
type box struct{ left, right, bottom, top float64 }

// boxOf is the box of a name beside a point or above it.
func boxOf(x, y float64, name string, beside bool) box {
	wide := 5 * float64(len([]rune(name)))
	if beside {
		return box{x + 2, x + 6 + wide, y - 5, y + 5}
	}
	return box{x - wide/2 - 2, x + wide/2 + 2, y + 2, y + 13}
}

// clear says that a box lies over none of those taken.
func (b box) clear(taken []box) bool {
	for _, t := range taken {
		if math.Min(b.right, t.right) > math.Max(b.left, t.left) && math.Min(b.top, t.top) > math.Max(b.bottom, t.bottom) {
			return false
		}
	}
	return true
}

// lastPoint is the last point that is anywhere, from one.
func lastPoint(all []point) int {
	for i := len(all); i > 0; i-- {
		if all[i-1].x == all[i-1].x {
			return i
		}
	}
	return 0
}
