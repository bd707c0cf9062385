package write

import (
	"math"
	"slices"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// picture is one drawing with what it shows.
type picture struct {
	name, shows string
	chart       sheet.Chart
}

// pictures is the drawings a boatbuilder looks at before reading, one a page.
// The figures they are drawn from go on the page given.
func pictures(in Input, figures, jointed *page) *page {
	p := table("Pictures", "pictures", col("Picture", 20), col("Drawing", 107))
	p.wide = true
	p.note("What is drawn stands on the hidden sheet Figures, and the pictures follow it.")
	p.empty = "Nothing to draw: a table of offsets, or a list of strakes, is needed."
	var all []picture
	for _, draw := range []func(Input, *page) []picture{bodyPlan, halfBreadthPlan, sheerPlan, departures} {
		all = append(all, draw(in, figures)...)
	}
	all = append(all, jointsFlat(in, figures, jointed)...)
	for _, d := range all {
		d.chart.Title, d.chart.Width, d.chart.Height = d.name, 552, 396
		p.draw(d)
	}
	return p
}

// draw puts a picture on the page, what it shows beside it.
func (p *page) draw(d picture) {
	row := len(p.rows) + 2
	if p.wide && row > 2 {
		p.breaks = append(p.breaks, row-1)
	}
	d.chart.Row, d.chart.Col = row, 2
	p.charts = append(p.charts, d.chart)
	if p.heights == nil {
		p.heights = map[int]float64{}
	}
	p.heights[row] = d.chart.Height + 8
	p.line(words(d.name + ". " + d.shows))
}

// figures is what the pictures are drawn from: a line of a picture after another.
func figures(in Input) *page {
	p := table("Figures", "figures that the pictures are drawn from", col("Picture", 22), col("Line", 22), col("Point", 8), col("Along", 12), col("Up", 12))
	p.hidden = true
	p.empty = "Nothing is drawn."
	return p
}

// point is a place on a picture; one that is not anywhere breaks the line.
type point struct {
	x, y  float64
	along string // the formula that x follows from; "" for none
}

var gap = point{x: math.NaN(), y: math.NaN()}

// points writes a line's points and is the line.
func (p *page) points(of, line string, pen sheet.Pen, all []point) sheet.ChartLine {
	top := len(p.rows) + 2
	for i, at := range all {
		cells := []sheet.Cell{text(of), text(line), whole(i + 1)}
		if !math.IsNaN(at.x) {
			along := number(fourPlaces(at.x), sheet.Given)
			if at.along != "" {
				along = live(number(at.x, sheet.Given), at.along)
			}
			cells = append(cells, along, number(fourPlaces(at.y), sheet.Given))
		}
		p.line(cells...)
	}
	return p.drawn(line, pen, "Along", "Up", top, len(p.rows)+1)
}

// drawn is a line of a picture through rows of the sheet.
func (p *page) drawn(line string, pen sheet.Pen, x, y string, top, bottom int) sheet.ChartLine {
	column := func(key string) sheet.Range {
		c := p.index(key)
		return sheet.Range{Top: top, Left: c, Bottom: bottom, Right: c}
	}
	return sheet.ChartLine{Name: line, Sheet: p.called, X: column(x), Y: column(y), Pen: pen}
}

func fourPlaces(v float64) float64 { return math.Round(v*1e4) / 1e4 }

// far is a length on a picture: feet, or metres where the yard writes
// millimetres.
func far(l measure.Length, u measure.Style) float64 {
	if u == measure.StyleMM {
		return l.Millimetres() / 1000
	}
	return l.Feet()
}

func farUnit(u measure.Style) string {
	if u == measure.StyleMM {
		return "m"
	}
	return "ft"
}

// axis is an axis that takes in all the values, at even figures.
func axis(title string, values ...float64) sheet.Axis {
	low, high := math.Inf(1), math.Inf(-1)
	for _, v := range values {
		if !math.IsNaN(v) {
			low, high = min(low, v), max(high, v)
		}
	}
	if low >= high {
		low, high = low-1, low+1
	}
	step := even((high - low) / 8)
	return sheet.Axis{Title: title, From: fourPlaces(math.Floor(low/step+1e-9) * step), To: fourPlaces(math.Ceil(high/step-1e-9) * step), Step: step}
}

// beyond is how many times farther out than three quarters of a picture's points
// one may lie and still set its axes: our choice.
const beyond = 3

// bulk is the points that a picture's axes are set by: all but those that lie far
// beyond the rest, as where a comma was lost, which the picture tells of.
func (d *picture) bulk(all []point) []point {
	limit := func(of func(point) float64) float64 {
		var v []float64
		for _, p := range all {
			if a := math.Abs(of(p)); !math.IsNaN(a) {
				v = append(v, a)
			}
		}
		slices.Sort(v)
		if len(v) == 0 || v[len(v)*3/4] == 0 {
			return math.Inf(1)
		}
		return beyond * v[len(v)*3/4]
	}
	x, y := limit(func(p point) float64 { return p.x }), limit(func(p point) float64 { return p.y })
	var within []point
	for _, p := range all {
		if math.IsNaN(p.x) || math.Abs(p.x) <= x && math.Abs(p.y) <= y {
			within = append(within, p)
		}
	}
	if len(within) < len(all) {
		d.shows += " What lies far beyond the rest is not in the picture: see Warnings."
	}
	return within
}

// roomy is an axis with room for names at the ends of its lines.
func roomy(a sheet.Axis) sheet.Axis {
	a.To += math.Ceil((a.To-a.From)/7/a.Step) * a.Step
	return a
}

// even is the least even step no smaller than v: 1, 2 or 5 of a power of ten.
func even(v float64) float64 {
	power := math.Pow(10, math.Floor(math.Log10(v)))
	for _, n := range []float64{1, 2, 5} {
		if n*power >= v*0.999 {
			return n * power
		}
	}
	return 10 * power
}

func values(all []point) (x, y []float64) {
	for _, p := range all {
		x, y = append(x, p.x), append(y, p.y)
	}
	return x, y
}
