package write

import (
	"fmt"
	"math"

	"strakebook/calc/bevel"
	"strakebook/convert/sheet"
)

// mostCurves is how many planks' bevels are drawn: more make a book slow to open.
const mostCurves = 120

// curves is every plank's bevels along its sawn edge, drawn from the Bevels sheet
// and so following the settings: readings, faired, and what is set.
func curves(in Input, cards *page) *page {
	p := table("Bevel curves", "bevel curves", col("Plank", 16), col("Drawing", 84))
	p.wide = false
	p.empty = "No bevels to draw."
	p.note("Diamonds: as read, or as the hull turns where none was lifted. Dashes: faired. Line: what is set. All planks are drawn to one scale of degrees; doubtful readings beyond it are not shown.")
	if n := len(in.Result.Bevels); n > mostCurves {
		p.note(fmt.Sprintf("The first %d of %d planks are drawn.", mostCurves, n))
	}
	up := degrees(in)
	for i, s := range in.Result.Bevels {
		if i == mostCurves {
			break
		}
		marks := cards.groups[i]
		if len(s.Marks) < 2 {
			continue
		}
		u := in.units()
		name := fmt.Sprintf("%s %s, %s", s.Skin, s.Strake, s.Side)
		c := sheet.Chart{Title: name, Width: 438, Height: 160, Y: up, Legend: false}
		c.X = axis(fmt.Sprintf("along the sawn edge from %s, %s", s.Places.Named(s.From), unit(u)), 0, inUnits(s.Marks[len(s.Marks)-1].At, u))
		from := "Read"
		if s.Computed {
			from = "Hull's own"
		}
		for _, l := range []struct {
			name, key string
			pen       sheet.Pen
		}{{"set", "Set", sheet.Solid}, {"faired", "Faired", sheet.Dashed}, {"read", from, sheet.Dots}} {
			c.Lines = append(c.Lines, cards.drawn(l.name, l.pen, "At", l.key, marks.Top, marks.Bottom))
		}
		p.draw(picture{name: name, shows: fmt.Sprintf("%s edge, from %s aft to %s", s.Edge, s.Places.Named(s.From), s.To), chart: c})
	}
	return p
}

// degrees is one scale for all planks, of the marks in no doubt: one wrong reading
// would flatten every curve.
func degrees(in Input) sheet.Axis {
	low, high := 0.0, 0.0
	for _, s := range in.Result.Bevels {
		for _, m := range s.Marks {
			if m.Doubt != bevel.Sure {
				continue
			}
			low, high = min(low, float64(m.Set)), max(high, float64(m.Set))
		}
	}
	a := axis("degrees", low-0.25, high+0.25)
	if step := even((a.To - a.From) / 5); step > 0 {
		a.Step = step
		a.From, a.To = math.Floor(a.From/step)*step, math.Ceil(a.To/step)*step
	}
	return a
}
