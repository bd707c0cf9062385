package hull

import (
	"math"
	"testing"
)

// drawn is a curve through n+1 places of a formula.
func formulaCurve(n int, f func(u float64) point) *curve {
	var p []point
	for i := range n + 1 {
		p = append(p, f(float64(i)/float64(n)))
	}
	return newCurve(p, nil, math.Inf(1))
}

// swollen gives the rungs the girth of a round over its chord, for an angle at
// the axis between the edges.
func swollen(r []rung, angle func(r rung) float64) []rung {
	for i := range r {
		if a := angle(r[i]); a > 0 {
			r[i].swell = a / 2 / math.Sin(a/2)
		}
	}
	return r
}

// departures is how far places on a flat lie from the straight line between the
// first and the last, plus to the left of it going on.
func departures(p []flat) (all []float64, straight float64) {
	way := p[len(p)-1].minus(p[0])
	straight = way.length()
	way = way.times(1 / straight)
	for _, q := range p {
		all = append(all, way.across(q.minus(p[0])))
	}
	return all, straight
}

// TestDevelopCone holds the developed edge of a strake on a cone to the closed
// form: half angle 10 degrees, axis along x, its lower edge cut by the plane 8
// below the axis. Places of the cone at the slant distance rho and the angle phi
// come to (rho cos(phi sin a), rho sin(phi sin a)).
func TestDevelopCone(t *testing.T) {
	a := 10 * math.Pi / 180
	phi := func(x float64) float64 { return math.Acos(8 / (x * math.Tan(a))) }
	at := func(x, phi float64) point {
		r := x * math.Tan(a)
		return point{x, r * math.Sin(phi), -r * math.Cos(phi)}
	}
	x := func(u float64) float64 { return 60 + 100*u }
	lower := formulaCurve(100, func(u float64) point { return at(x(u), phi(x(u))) })
	upper := formulaCurve(100, func(u float64) point { return at(x(u), phi(x(u))+0.2) })
	up, low := develop(swollen(rungs(upper, lower, 4), func(rung) float64 { return 0.2 }))
	off, straight := departures(low)
	// Every 20 of x is 80 rungs. The sny of the table: 0, .359993, .370311, .281042,
	// .150699, 0; straight length 102.018551.
	near(t, "straight length", straight, 102.018551, 0.01)
	for i, want := range []float64{0, 0.359993, 0.370311, 0.281042, 0.150699, 0} {
		near(t, "sny", math.Abs(off[80*i]), want, 0.01) // 1e-4 of the length
	}
	if off[80] < 0 { // towards the upper edge
		t.Errorf("the lower edge bends the wrong way: %v", off[80])
	}
	// The developed coordinates of the table at x = 60, 80, ... 160.
	laid(t, "cut of the cone", []flat{low[0], low[80], low[160], low[240], low[320], low[400]}, []flat{{60.458759, 7.527735}, {80.089720, 13.587511},
		{99.696245, 19.276169}, {119.288879, 24.857125}, {138.872837, 30.392807}, {158.451006, 35.905619}}, 1e-4*102)
	// The upper edge, the same angle farther round: its chord by the closed form.
	flatAt := func(x, phi float64) flat {
		rho, psi := x/math.Cos(a), phi*math.Sin(a)
		return flat{rho * math.Cos(psi), rho * math.Sin(psi)}
	}
	chord := flatAt(160, phi(160)+0.2).minus(flatAt(60, phi(60)+0.2)).length()
	near(t, "upper chord", up[len(up)-1].minus(up[0]).length(), chord, 0.01)
	diagonal := flatAt(160, phi(160)+0.2).minus(flatAt(60, phi(60))).length()
	near(t, "diagonal", up[len(up)-1].minus(low[0]).length(), diagonal, 0.01)
}

// laid holds places on a flat to others, once the first and the last of them are
// laid on one another as nearly as they go.
func laid(t *testing.T, what string, got, want []flat, within float64) {
	t.Helper()
	n := len(got) - 1
	a, b := got[n].minus(got[0]), want[n].minus(want[0])
	turn := math.Atan2(b.y, b.x) - math.Atan2(a.y, a.x)
	sin, cos := math.Sincos(turn)
	for i := range got {
		p := got[i].minus(got[0])
		p = flat{p.x*cos - p.y*sin, p.x*sin + p.y*cos}
		if off := p.minus(want[i].minus(want[0])).length(); off > within {
			t.Errorf("%s: place %d lies %.6f off", what, i, off)
		}
	}
}

// TestDevelopTaper develops a strake between two generators of the cone, 20
// degrees apart at the axis: a straight-edged taper of 3.472964 degrees, 3.636322
// wide at rho 60 and 9.696859 at 160.
func TestDevelopTaper(t *testing.T) {
	a := 10 * math.Pi / 180
	edge := func(phi float64) *curve {
		return formulaCurve(50, func(u float64) point {
			rho := 60 + 100*u
			return point{rho * math.Cos(a), rho * math.Sin(a) * math.Sin(phi), -rho * math.Sin(a) * math.Cos(phi)}
		})
	}
	up, low := develop(swollen(rungs(edge(20*math.Pi/180), edge(0), 2), func(rung) float64 { return 20 * math.Pi / 180 }))
	n := len(up) - 1
	near(t, "width", up[0].minus(low[0]).length(), 3.636322, 0.01)
	near(t, "width", up[n].minus(low[n]).length(), 9.696859, 0.01)
	angle := func(p flat) float64 { return math.Atan2(p.y, p.x) * 180 / math.Pi }
	near(t, "taper", angle(up[n].minus(up[0]))-angle(low[n].minus(low[0])), 3.472964, 0.01)
	for _, edge := range [][]flat{up, low} {
		off, _ := departures(edge)
		for _, d := range off {
			near(t, "straight", d, 0, 0.01)
		}
	}
}

// TestDevelopTiltedCylinder develops a strake along a waterline of a cylinder of
// radius 36 whose axis is tilted 3 degrees, 10 from the plane: girth 36 phi, cos
// phi = (d + x sin a)/(R cos a); its sny is .043597 at x = 3.90.
func TestDevelopTiltedCylinder(t *testing.T) {
	a := 3 * math.Pi / 180
	phi := func(x float64) float64 { return math.Acos((10 + x*math.Sin(a)) / (36 * math.Cos(a))) }
	near(t, "girth of the table", 36*phi(20), 45.304876, 1e-6)
	at := func(x, phi float64) point { return point{x, 36 * math.Sin(phi), -36 * math.Cos(phi)} }
	edge := func(more float64) *curve {
		return formulaCurve(120, func(u float64) point { return at(-60+120*u, phi(-60+120*u)+more) })
	}
	up, low := develop(swollen(rungs(edge(0.15), edge(0), 2), func(rung) float64 { return 0.15 }))
	for _, e := range [][]flat{up, low} {
		off, straight := departures(e)
		most := 0.0
		for _, d := range off {
			most = max(most, math.Abs(d))
		}
		near(t, "sny", most, 0.043597, 0.004)
		near(t, "straight", straight, math.Hypot(120, 36*(phi(-60)-phi(60))), 0.01)
		// The girths of the table at x = -60, -40, ... 60.
		var got, want []flat
		for i, u := range []float64{49.637029, 48.566000, 47.487735, 46.401099, 45.304876, 44.197763, 43.078347} {
			got, want = append(got, e[40*i]), append(want, flat{float64(20*i - 60), u})
		}
		laid(t, "waterline of the tilted cylinder", got, want, 1e-4*120)
	}
	// Areas: the strip is 0.15 of a radian of the cylinder all along.
	near(t, "area", area(up, low), 120*36*0.15, 0.1)
}

// area is that between two developed edges.
func area(up, low []flat) float64 {
	sum := 0.0
	around := append(append([]flat{}, low...), reversed(up)...)
	for i := range around {
		sum += around[i].across(around[(i+1)%len(around)])
	}
	return sum / 2
}

func reversed(p []flat) []flat {
	q := make([]flat, len(p))
	for i := range p {
		q[len(p)-1-i] = p[i]
	}
	return q
}

// TestDevelopHoop develops a strake round a cylinder of radius 36, its edges cut
// by planes x = X0 + y/4: x = X0 + R/4 sin(u/R) of the girth u.
func TestDevelopHoop(t *testing.T) {
	edge := func(x0 float64) *curve {
		return formulaCurve(60, func(v float64) point {
			phi := v
			return point{x0 + 9*math.Sin(phi), 36 * math.Sin(phi), -36 * math.Cos(phi)}
		})
	}
	rungs := evenRungs(edge(6), edge(0), 240)
	up, low := develop(rungs)
	n := len(up) - 1
	want := func(x0, u float64) flat { return flat{x0 + 9*math.Sin(u/36), u} }
	near(t, "width", up[0].minus(low[0]).length(), 6, 1e-6)
	near(t, "chord", low[n].minus(low[0]).length(), want(0, 36).minus(want(0, 0)).length(), 0.004)
	near(t, "diagonal", up[n].minus(low[0]).length(), want(6, 36).minus(want(0, 0)).length(), 0.004)
	for i := range n + 1 {
		u := 36 * math.Atan2(rungs[i].lower.y, -rungs[i].lower.z)
		near(t, "place", low[i].minus(low[0]).length(), want(0, u).minus(want(0, 0)).length(), 0.004)
		near(t, "place", low[i].minus(up[n]).length(), want(0, u).minus(want(6, 36)).length(), 0.004)
	}
}

// TestDevelopHoopOnACone develops a strake round a cone of half angle 10 degrees,
// from the slant distance 100 to 108 and through 90 degrees about its axis: its
// edges are arcs of 27.276592 and 29.458719, their chords 27.192112 and 29.367481,
// their sny .928575 and 1.002861.
func TestDevelopHoopOnACone(t *testing.T) {
	a := 10 * math.Pi / 180
	edge := func(rho float64) *curve {
		return formulaCurve(60, func(v float64) point {
			s, c := math.Sincos(v * math.Pi / 2)
			return point{rho * math.Cos(a), rho * math.Sin(a) * s, -rho * math.Sin(a) * c}
		})
	}
	up, low := develop(evenRungs(edge(108), edge(100), 120))
	for _, c := range []struct {
		edge              []flat
		arc, chord, bends float64
	}{{low, 27.276592, 27.192112, 0.928575}, {up, 29.458719, 29.367481, 1.002861}} {
		sum := 0.0
		for i := 1; i < len(c.edge); i++ {
			sum += c.edge[i].minus(c.edge[i-1]).length()
		}
		near(t, "arc", sum, c.arc, 1e-4*c.arc)
		near(t, "chord", c.edge[len(c.edge)-1].minus(c.edge[0]).length(), c.chord, 1e-4*c.chord)
		near(t, "sny", math.Abs(sny(c.edge)), c.bends, 1e-4*c.chord)
	}
}

// TestTwist turns a strake 5 in wide and 120 in long half a radian about its lower
// edge, which is straight: outward going aft, and inward.
func TestTwist(t *testing.T) {
	for _, turn := range []float64{0.5, -0.5} {
		upper := formulaCurve(40, func(u float64) point {
			s, c := math.Sincos(turn * u)
			return point{120 * u, 5 * s, 5 * c}
		})
		lower := formulaCurve(40, func(u float64) point { return point{x: 120 * u} })
		near(t, "twist", twist(evenRungs(upper, lower, 120)), turn, 1e-4*5)
	}
}

// evenRungs pairs two edges by equal parts of the whole.
func evenRungs(upper, lower *curve, n int) []rung {
	var all []rung
	for i := range n + 1 {
		part := float64(i) / float64(n)
		r := rung{s: [2]float64{part * upper.length(), part * lower.length()}, swell: 1}
		r.upper, r.lower = upper.at(upper.place(r.s[0])), lower.at(lower.place(r.s[1]))
		all = append(all, r)
	}
	return all
}

// TestBoard finds the narrowest board around a straight plank lying askew, an arc
// and a taper.
func TestBoard(t *testing.T) {
	turn := func(p flat, a float64) flat {
		return flat{p.x*math.Cos(a) - p.y*math.Sin(a), p.x*math.Sin(a) + p.y*math.Cos(a)}
	}
	for _, a := range []float64{0, 0.3, -0.7} {
		var plank, arc []flat
		for i := range 41 {
			x := float64(i) * 3
			plank = append(plank, turn(flat{x, 0}, a), turn(flat{x, 5}, a))
			psi := (float64(i)/40 - 0.5) * 0.6
			arc = append(arc, turn(flat{200 * math.Sin(psi), 200 * math.Cos(psi)}, a), turn(flat{206 * math.Sin(psi), 206 * math.Cos(psi)}, a))
		}
		width, way, _ := narrowest(plank)
		near(t, "plank", width, 5, 1e-9)
		near(t, "askew", math.Atan2(way.y, way.x), a, 1e-9)
		// Sagitta of the inner edge and the width: 206 - 200 cos .3.
		width, _, _ = narrowest(arc)
		near(t, "arc", width, 206-200*math.Cos(0.3), 1e-9)
	}
}
