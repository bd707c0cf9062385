package templates_test

import (
	"math"
	"sort"
)

// form is the lines of an invented motor vessel: a plumb stem, a round bilge,
// hollow flare forward and a tuck at the garboards aft, ending on a flat
// transom. It is a formula of our own and no boat that was ever built. Lengths
// are in inches: x aft of the stem, y out from the middle, z up from the base.
// Offsets from it are to the outside of planking.
type form struct {
	length float64 // stem to transom
	scale  float64 // of breadths and heights
	ease   float64 // how gently its lines turn from the bow's shape to the middle's
}

// siding is half the thickness of the stem and keel at the rabbet.
const siding = 3.0

// swell is a bell: 1 at the stem, falling away over a share of the length.
func swell(t, over float64) float64 { return math.Exp(-t * t / over / over) }

// sheer is the height of the deck at the side.
func (f form) sheer(x float64) float64 {
	t := x / f.length
	return f.scale * (145 - 83*t + 55*t*t)
}

// rabbet is the height of the rabbet.
func (f form) rabbet(x float64) float64 {
	t := x / f.length
	return f.scale * (15 + 15.6*swell(t, 0.16*f.ease) + 10.8*t*t*t)
}

// deck is the half-breadth of the deck.
func (f form) deck(x float64) float64 {
	t := x / f.length
	return f.half() + f.scale*106*((1-math.Exp(-3.3*t))-0.16*t*t*t)
}

func (f form) half() float64 { return f.scale * siding }

// frame is what a section's outline follows from.
type frame struct{ low, high, half, deck, round, flat, flare, tuck float64 }

func (f form) frame(x float64) frame {
	t := x / f.length
	return frame{
		low: f.rabbet(x), high: f.sheer(x), half: f.half(), deck: f.deck(x),
		round: 2.55 - 0.75*swell(t, 0.3*f.ease),     // how full the bilge is
		flat:  0.12 + 0.55*swell(t, 0.28*f.ease),    // how straight the side
		flare: 0.75 * swell(t, 0.26*f.ease),         // how hollow the bow
		tuck:  0.7 / (1 + math.Exp(-(t-0.74)/0.09)), // how hollow the garboards
	}
}

// at is the point of a section a share u of the way up it.
func (f frame) at(u float64) (y, z float64) {
	v := 1 - u
	out := f.flat*u + (1-f.flat)*(1-math.Pow(v, f.round)) + f.flare*(u*u*u-u) - f.tuck*u*v*v*v
	return f.half + (f.deck-f.half)*out, f.low + u*(f.high-f.low)
}

// breadth is the half-breadth at a height; ok is false where the section does
// not reach it.
func (f form) breadth(x, z float64) (y float64, ok bool) {
	low, high := f.rabbet(x), f.sheer(x)
	if z < low || z > high {
		return 0, false
	}
	y, _ = f.frame(x).at((z - low) / (high - low))
	return y, true
}

// height is the height at a distance out; ok is false where the section does not
// reach so far.
func (f form) height(x, y float64) (z float64, ok bool) {
	if y <= f.half() || y >= f.deck(x) {
		return 0, false
	}
	low, high := 0.0, 1.0
	for range 60 {
		mid := (low + high) / 2
		if at, _ := f.frame(x).at(mid); at < y {
			low = mid
		} else {
			high = mid
		}
	}
	_, z = f.frame(x).at(low)
	return z, true
}

// outline is a section on a surface so far inside the offsets', from the sheer
// down: the depth is laid square to the skin, which in the station's plane is
// more where the skin runs at an angle to it.
type outline struct{ y, z, girth []float64 }

const steps = 240

func (f form) outline(x, depth float64) outline {
	const h, hx = 1e-4, 1e-3
	here, fore, aft := f.frame(x), f.frame(x-hx), f.frame(x+hx)
	var ys, zs []float64
	for i := range steps + 1 {
		u := 1 - float64(i)/steps
		y, z := here.at(u)
		ya, za := here.at(max(0, u-h))
		yb, zb := here.at(min(1, u+h))
		up := math.Hypot(yb-ya, zb-za)
		ny, nz := (zb-za)/up, -(yb-ya)/up // out of the hull, in the station's plane
		// How the skin runs to the station's plane: what it moves along x, square to the outline.
		yf, zf := fore.at(u)
		yr, zr := aft.at(u)
		runs := ((yr-yf)*ny + (zr-zf)*nz) / (2 * hx)
		d := depth * math.Sqrt(1+runs*runs)
		y, z = y-ny*d, z-nz*d
		ys, zs = append(ys, y), append(zs, z)
	}
	return cutAt(here.high, ys, zs)
}

// cutAt is an outline from the height of the sheer down: a surface inside a flare
// would go on above it, and inside tumblehome stop short of it.
func cutAt(high float64, y, z []float64) outline {
	first := 0
	for first+2 < len(z) && z[first+1] >= high {
		first++
	}
	s := (z[first] - high) / (z[first] - z[first+1]) // below nothing where it is drawn on straight
	y, z = y[first:], z[first:]
	y[0], z[0] = y[0]+s*(y[1]-y[0]), high
	o := outline{y: y, z: z, girth: make([]float64, len(y))}
	for i := 1; i < len(y); i++ {
		o.girth[i] = o.girth[i-1] + math.Hypot(y[i]-y[i-1], z[i]-z[i-1])
	}
	return o
}

// whole is the girth from sheer to rabbet.
func (o outline) whole() float64 { return o.girth[len(o.girth)-1] }

// down is the point so far down the girth from the sheer.
func (o outline) down(girth float64) (y, z float64) {
	i := max(1, min(sort.SearchFloat64s(o.girth, girth), len(o.girth)-1))
	s := (girth - o.girth[i-1]) / (o.girth[i] - o.girth[i-1])
	return o.y[i-1] + s*(o.y[i]-o.y[i-1]), o.z[i-1] + s*(o.z[i]-o.z[i-1])
}
