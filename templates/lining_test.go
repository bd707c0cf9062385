package templates_test

import "math"

// vector is a point or a way in space.
type vector struct{ x, y, z float64 }

func (a vector) minus(b vector) vector  { return vector{a.x - b.x, a.y - b.y, a.z - b.z} }
func (a vector) dot(b vector) float64   { return a.x*b.x + a.y*b.y + a.z*b.z }
func (a vector) long() float64          { return math.Sqrt(a.dot(a)) }
func (a vector) times(s float64) vector { return vector{a.x * s, a.y * s, a.z * s} }
func (a vector) cross(b vector) vector {
	return vector{a.y*b.z - a.z*b.y, a.z*b.x - a.x*b.z, a.x*b.y - a.y*b.x}
}

// planking is a skin lined off on a form: so many strakes in equal shares of the
// girth on the surface their inside faces lie on.
type planking struct {
	form
	depth   float64 // of that surface inside the offsets'
	strakes int
}

// seam is where a seam lies at x: 0 is the sheer.
func (p planking) seam(x float64, k int) vector {
	o := p.outline(x, p.depth)
	y, z := o.down(o.whole() * float64(k) / float64(p.strakes))
	return vector{x, y, z}
}

// way is the direction of a seam.
func (p planking) way(x float64, k int) vector {
	const h = 0.5
	a, b := p.seam(max(0, x-h), k), p.seam(min(p.length, x+h), k)
	d := b.minus(a)
	return d.times(1 / d.long())
}

// bevel is the whole turn between the planks above and below a seam, in degrees,
// in the plane square to the seam; + on a round.
func (p planking) bevel(x float64, k int) float64 {
	at, way := p.seam(x, k), p.way(x, k)
	above := p.square(at, way, k-1).minus(at)
	below := p.square(at, way, k+1).minus(at)
	// Down along the plank above, then down along the one below: on a round the second turns in towards the middle.
	a := above.times(-1)
	return math.Atan2(below.cross(a).dot(way), a.dot(below)) * 180 / math.Pi
}

// square is where another seam passes the plane square to a seam at a point.
func (p planking) square(at, way vector, k int) vector {
	x := at.x
	w := p.way(x, k)
	for range 3 {
		x -= p.seam(x, k).minus(at).dot(way) / w.dot(way)
	}
	// At the hood ends the plane may pass the end of the hull by a little: the lines run on by their formula.
	return p.seam(x, k)
}

// long is the length of the longer edge of a strake, from one.
func (p planking) long(k int) float64 { return max(p.run(k-1), p.run(k)) }

func (p planking) run(k int) float64 {
	share := float64(k) / float64(p.strakes)
	return p.drawn(p.depth).run(func(o outline) float64 { return share * o.whole() })
}

// wide is the greatest width of a strake.
func (p planking) wide() float64 { return p.drawn(p.depth).girth() / float64(p.strakes) }

// strips is a skin of parallel strips from the sheer down on a form.
type strips struct {
	form
	depth, width float64
}

// count is how many strips cover the hull where its girth is greatest.
func (s strips) count() int { return int(math.Ceil(s.drawn(s.depth).girth() / s.width)) }

// long is the length of a strip's upper edge, from one: it ends at the rabbet
// where the girth is used up.
func (s strips) long(j int) float64 {
	down := float64(j-1) * s.width
	return s.drawn(s.depth).run(func(outline) float64 { return down })
}

// surface is a form's outlines close together along it.
type surface struct {
	x    []float64
	line []outline
}

// surfaces is those drawn already: each is asked for many times.
var surfaces = map[form]map[float64]surface{}

func (f form) drawn(depth float64) surface {
	if s, ok := surfaces[f][depth]; ok {
		return s
	}
	const step = 2
	var s surface
	for x := 0.0; x <= f.length; x += step {
		s.x, s.line = append(s.x, x), append(s.line, f.outline(x, depth))
	}
	if surfaces[f] == nil {
		surfaces[f] = map[float64]surface{}
	}
	surfaces[f][depth] = s
	return s
}

// girth is the greatest girth.
func (s surface) girth() float64 {
	most := 0.0
	for _, o := range s.line {
		most = max(most, o.whole())
	}
	return most
}

// run is the length of the line that lies so far down the girth from the sheer,
// as far as there is so much: between two outlines the girth runs straight.
func (s surface) run(down func(outline) float64) float64 {
	at := func(i int) vector {
		y, z := s.line[i].down(down(s.line[i]))
		return vector{s.x[i], y, z}
	}
	left := func(i int) float64 { return s.line[i].whole() - down(s.line[i]) }
	sum := 0.0
	for i := 1; i < len(s.line); i++ {
		a, b := left(i-1), left(i)
		switch {
		case a >= 0 && b >= 0:
			sum += at(i).minus(at(i - 1)).long()
		case a >= 0 || b >= 0:
			sum += at(i).minus(at(i-1)).long() * max(a, b) / math.Abs(a-b)
		}
	}
	return sum
}
