package hull

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strconv"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// formHull is a hull given by formulas of our own, in inches: its plan, sheer,
// profile and sections are functions of u, the share of the length from the
// bow. half is the half-breadth at u and height z; it is asked only between the
// profile and the sheer.
type formHull struct {
	name           string
	length         float64
	sheer, profile func(u float64) float64
	half           func(u, z float64) float64
	chine          func(u float64) (y, z float64) // nil where there is none
	waters         []float64
	buttocks       []float64
	stations       []float64 // u of each
	transom        bool      // the last station is one
	resolution     measure.Length
	scatter        float64 // of a table lifted by hand, in steps of the resolution
}

// pow is the power of a number that may be a rounding below nothing.
func pow(v, p float64) float64 { return math.Pow(math.Max(0, v), p) }

func pow3(v float64) float64 { return v * v * v }

// even is n stations at even spacing, the first at the bow, the last at the stern.
func even(n int) []float64 {
	u := make([]float64, n)
	for i := range u {
		u[i] = float64(i) / float64(n-1)
	}
	return u
}

// halfEnds is even stations with half stations in the first and last two spaces.
func halfEnds(n int) []float64 {
	u := even(n)
	var all []float64
	for i, v := range u {
		if i > 0 && (i <= 2 || i >= n-2) {
			all = append(all, (u[i-1]+v)/2)
		}
		all = append(all, v)
	}
	return all
}

// steps is heights or distances from first by step to last.
func steps(first, step, last float64) []float64 {
	var all []float64
	for v := first; v <= last+1e-9; v += step {
		all = append(all, v)
	}
	return all
}

// plan is a deck line: full width b at u = m, a stem of half siding s, and a
// stern of the share stern of the full width.
func plan(b, m, s, stern, p float64) func(float64) float64 {
	return func(u float64) float64 {
		if u < m {
			return s + (b-s)*(1-pow(1-u/m, p))
		}
		return b * (1 - (1-stern)*pow((u-m)/(1-m), p+0.3))
	}
}

// rise is a profile: low amidships, up to bow at the stem over the share f of
// the length and up to aft at the stern over the share g.
func rise(low, bow, f, p, aft, g, q float64) func(float64) float64 {
	return func(u float64) float64 {
		return low + (bow-low)*pow((f-u)/f, p) + (aft-low)*pow((u-(1-g))/g, q)
	}
}

// sweep is a sheer: lowest at u = m.
func sweep(bow, low, stern, m float64) func(float64) float64 {
	// One cubic with its lowest place at m: a v^2 + b v^3, v from m.
	b := ((stern-low)/((1-m)*(1-m)) - (bow-low)/(m*m))
	a := (bow-low)/(m*m) + b*m
	return func(u float64) float64 { return low + a*(u-m)*(u-m) + b*pow3(u-m) }
}

// rounded gives sections of the form 1 - (1-t)^p of the deck's breadth, t the
// share of the depth: p of 1 is a straight side, more is a fuller bilge.
func rounded(h *formHull, deck, full func(float64) float64) func(u, z float64) float64 {
	return func(u, z float64) float64 {
		t := (z - h.profile(u)) / (h.sheer(u) - h.profile(u))
		return deck(u) * (1 - pow(1-t, full(u)))
	}
}

// between goes smoothly from a at u = 0 through b at m to c at 1.
func between(a, b, c, m float64) func(float64) float64 {
	return func(u float64) float64 {
		if u < m {
			v := u / m
			return a + (b-a)*v*v*(3-2*v)
		}
		v := (u - m) / (1 - m)
		return b + (c-b)*v*v*(3-2*v)
	}
}

func roundBilge(name string, l, beam, depth float64, n int, res measure.Length) *formHull {
	h := &formHull{name: name, length: l, stations: even(n), resolution: res,
		sheer: sweep(1.35*depth, depth, 1.1*depth, 0.65), profile: rise(0, 1.35*depth, 0.3, 3, 0.25*depth, 0.5, 3)}
	h.half = rounded(h, plan(beam, 0.55, 0.6, 0.7, 2.7), between(1.4, 2.9, 2.3, 0.55))
	h.waters, h.buttocks = steps(depth/6, depth/6, depth), steps(beam/4, beam/4, 0.76*beam)
	return h
}

func hardChine(name string, l, beam, depth float64, n int, res measure.Length) *formHull {
	h := &formHull{name: name, length: l, stations: even(n), resolution: res,
		sheer: sweep(1.5*depth, depth, 0.95*depth, 0.7), profile: rise(0, 1.1*depth, 0.35, 3, 0.1*depth, 0.55, 3)}
	deck, wide := plan(beam, 0.55, 0.5, 0.85, 2.7), plan(0.86*beam, 0.6, 0.5, 0.9, 2.6)
	high := rise(0.33*depth, 1.15*depth, 0.65, 3, 0.3*depth, 0.45, 3)
	h.chine = func(u float64) (float64, float64) { return wide(u), math.Max(high(u), h.profile(u)) }
	h.half = func(u, z float64) float64 {
		cy, cz := h.chine(u)
		if z <= cz {
			return cy * (z - h.profile(u)) / math.Max(1e-9, cz-h.profile(u))
		}
		return cy + (deck(u)-cy)*(z-cz)/(h.sheer(u)-cz)
	}
	h.waters, h.buttocks = steps(depth/5, depth/5, depth), steps(beam/3, beam/3, 0.7*beam)
	return h
}

func hollowBow(name string, l, beam, depth float64, n int, res measure.Length) *formHull {
	h := &formHull{name: name, length: l, stations: even(n), resolution: res,
		sheer: sweep(1.6*depth, depth, 1.05*depth, 0.68), profile: rise(0, 1.6*depth, 0.2, 3, 0.3*depth, 0.45, 3)}
	deck, full := plan(beam, 0.5, 0.7, 0.75, 2.6), between(1.5, 2.6, 2.2, 0.5)
	h.half = func(u, z float64) float64 {
		t := (z - h.profile(u)) / (h.sheer(u) - h.profile(u))
		a := 0.85 * pow(1-u/0.45, 2)
		return deck(u) * ((1-a)*(1-pow(1-t, full(u))) + a*pow(t, 2.3))
	}
	h.waters, h.buttocks = steps(depth/7, depth/7, depth), steps(beam/4, beam/4, 0.76*beam)
	return h
}

func tumblehome(name string, l, beam, depth float64, n int, res measure.Length) *formHull {
	h := &formHull{name: name, length: l, stations: halfEnds(n), resolution: res,
		sheer: sweep(1.25*depth, depth, 1.2*depth, 0.55), profile: rise(0, 1.0*depth, 0.16, 3, 0.35*depth, 0.4, 3)}
	deck, full, in := plan(0.9*beam, 0.5, 0.5, 0.6, 2.6), between(1.6, 3.1, 2.4, 0.5), between(0, 0.35, 0.5, 0.6)
	h.half = func(u, z float64) float64 {
		t := (z - h.profile(u)) / (h.sheer(u) - h.profile(u))
		return deck(u) * (1 - pow(1-t, full(u))) * (1 + in(u)*t*(1-t)*1.3)
	}
	h.waters, h.buttocks = steps(depth/8, depth/8, depth), steps(beam/4, beam/4, 0.76*beam)
	return h
}

func transomBoat(name string, l, beam, depth float64, n int, res measure.Length) *formHull {
	h := &formHull{name: name, length: l, stations: even(n), resolution: res, transom: true,
		sheer: sweep(1.4*depth, depth, 1.12*depth, 0.6), profile: rise(0, 0.9*depth, 0.25, 3, 0.3*depth, 0.5, 3)}
	h.half = rounded(h, plan(beam, 0.58, 0.4, 0.78, 2.6), between(1.7, 2.7, 2.5, 0.6))
	h.waters = steps(depth/5, depth/5, depth)
	return h
}

func doubleEnder(name string, l, beam, depth float64, n int, res measure.Length) *formHull {
	h := &formHull{name: name, length: l, stations: even(n), resolution: res,
		sheer: sweep(1.6*depth, depth, 1.5*depth, 0.5), profile: rise(0, 0.5*depth, 0.2, 3, 0.45*depth, 0.22, 3)}
	h.half = rounded(h, plan(beam, 0.48, 0.4, 0.5/beam, 2.5), between(1.3, 2.6, 1.4, 0.5))
	h.waters, h.buttocks = steps(depth/6, depth/6, depth), steps(beam/4, beam/4, 0.6*beam)
	return h
}

// parallelBody is a ship-like hull, part of it of one section.
func parallelBody(name string, l, beam, depth float64, n int, res measure.Length) *formHull {
	h := &formHull{name: name, length: l, stations: halfEnds(n), resolution: res,
		sheer: func(float64) float64 { return depth }, profile: func(float64) float64 { return 0 }}
	h.half = func(u, z float64) float64 {
		t := math.Min(1, z/depth+0.02)
		fore, aft := 0.32+0.1*(1-t), 0.4+0.2*(1-t)
		y := 1 - pow(1-t, 5)
		switch {
		case u < fore:
			y *= 1 - pow(1-u/fore, 2.8)
		case u > 1-aft:
			y *= 1 - pow((u-1+aft)/aft, 3)
		}
		return beam * y
	}
	h.waters = steps(0, depth/8, depth)
	return h
}

// tuned are the hulls the checks were fitted on, held are those kept apart until
// they were done: other sizes, spacings, notations and fullness, and one of a
// kind the first have none of.
func tuned() []*formHull {
	lifted := roundBilge("round bilge, lifted by hand", 396, 66, 60, 14, measure.Eighth)
	lifted.scatter = 0.7
	return []*formHull{
		roundBilge("round bilge 1/8", 360, 58, 54, 13, measure.Eighth),
		hardChine("hard chine 1/8", 288, 50, 44, 12, measure.Eighth),
		hollowBow("hollow bow 1/16", 420, 70, 62, 16, measure.Sixteenth),
		tumblehome("tumblehome mm", 480, 72, 66, 17, measure.Millimetre),
		transomBoat("transom 1/8", 168, 28, 24, 9, measure.Eighth),
		doubleEnder("double-ender 1/8", 240, 34, 26, 21, measure.Eighth),
		lifted,
	}
}

func held() []*formHull {
	lifted := doubleEnder("double-ender, lifted by hand", 300, 44, 36, 15, measure.Eighth)
	lifted.scatter = 0.7
	return []*formHull{
		roundBilge("round bilge mm", 620, 96, 88, 20, measure.Millimetre),
		hardChine("hard chine 1/16", 210, 38, 30, 10, measure.Sixteenth),
		hollowBow("hollow bow 1/8", 504, 80, 70, 24, measure.Eighth),
		tumblehome("tumblehome 1/8", 336, 52, 48, 11, measure.Eighth),
		transomBoat("transom mm", 144, 26, 21, 8, measure.Millimetre),
		doubleEnder("double-ender 1/16", 216, 30, 24, 30, measure.Sixteenth),
		parallelBody("parallel body mm", 1800, 150, 120, 21, measure.Millimetre),
		lifted,
	}
}

// offsets is the hull's table, rounded to its resolution, with what is not there
// dashed.
func (h *formHull) offsets() Offsets {
	rng := rand.New(rand.NewPCG(7, uint64(len(h.name))))
	o := Offsets{Resolution: h.resolution, Surface: OutsidePlanking, Form: measure.Form{Notation: measure.FeetInchesEighths}, Cell: source.Cell{Sheet: "S", Row: 1, Col: 1}}
	if h.resolution == measure.Millimetre {
		o.Form = measure.Form{Unit: measure.InMillimetres, Notation: measure.Decimal}
	}
	for k, u := range h.stations {
		name := strconv.Itoa(k)
		if len(h.stations) > 2 && h.stations[1]-h.stations[0] < 0.9*(h.stations[len(h.stations)/2]-h.stations[len(h.stations)/2-1]) {
			spaces := math.Round(1 / (h.stations[len(h.stations)/2] - h.stations[len(h.stations)/2-1]))
			name = strconv.FormatFloat(u*spaces, 'g', 3, 64)
		}
		at := measure.Inches(u * h.length)
		o.Stations = append(o.Stations, Station{Name: name, At: source.Reading[measure.Length]{Value: at, State: source.Given, Text: measure.InchesText(at)},
			Transom: h.transom && k == len(h.stations)-1, Cell: source.Cell{Sheet: "S", Row: 1, Col: k + 2}})
	}
	add := func(name string, view View, role Role, at float64, f func(u float64) (float64, bool)) {
		l := Line{Name: name, View: view, Role: role, Cell: source.Cell{Sheet: "S", Row: len(o.Lines) + 2, Col: 1}}
		if at >= 0 {
			l.At = source.Is(measure.Inches(at))
		}
		given := 0
		for k, u := range h.stations {
			v := source.Reading[measure.Length]{State: source.Dash, Text: "-", Cell: source.Cell{Sheet: "S", Row: len(o.Lines) + 2, Col: k + 2}}
			if y, ok := f(u); ok {
				y += h.scatter * rng.NormFloat64() * h.resolution.Inches()
				v.Value, v.State = measure.Inches(math.Max(0, y)).Round(h.resolution), source.Given
				v.Text = o.Form.Write(v.Value)
				given++
			}
			l.Values = append(l.Values, v)
		}
		if given > 0 {
			o.Lines = append(o.Lines, l)
		}
	}
	always := func(f func(float64) float64) func(float64) (float64, bool) {
		return func(u float64) (float64, bool) { return f(u), true }
	}
	add("Sheer", Height, Deck, -1, always(h.sheer))
	add("Profile", Height, Keel, -1, always(h.profile))
	if h.chine != nil {
		add("Chine height", Height, Chine, -1, func(u float64) (float64, bool) { _, z := h.chine(u); return z, true })
		add("Chine", HalfBreadth, Chine, -1, func(u float64) (float64, bool) { y, _ := h.chine(u); return y, true })
	}
	for i, b := range h.buttocks {
		add(fmt.Sprintf("Buttock %d", i+1), Height, Buttock, b, func(u float64) (float64, bool) { return h.cross(u, b) })
	}
	add("Deck", HalfBreadth, Deck, -1, func(u float64) (float64, bool) { return h.half(u, h.sheer(u)), true })
	for i, z := range h.waters {
		add(fmt.Sprintf("WL %d", i+1), HalfBreadth, Waterline, z, func(u float64) (float64, bool) {
			if z < h.profile(u) || z > h.sheer(u)+1e-9 {
				return 0, false
			}
			return h.half(u, z), true
		})
	}
	return o
}

// cross is the height at which the section at u first reaches the distance b out.
func (h *formHull) cross(u, b float64) (float64, bool) {
	low, high := h.profile(u), h.sheer(u)
	const n = 400
	for i := 1; i <= n; i++ {
		z := low + (high-low)*float64(i)/n
		if h.half(u, z) >= b {
			a, c := z-(high-low)/n, z
			for range 40 {
				if m := (a + c) / 2; h.half(u, m) >= b {
					c = m
				} else {
					a = m
				}
			}
			return c, true
		}
	}
	return 0, false
}
