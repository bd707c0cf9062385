package hull

// net is the surface of the offsets as a net: along every section the same
// number of points at the same shares of its girth between corners, and through
// each share a line along the hull. From the two directions at each knot follows
// the square of the surface there.
type net struct {
	knots [][]knot // by station, empty where there is no section
	parts int      // runs between corners
	each  int      // knots a run
}

// knot is a place on the surface with its directions.
type knot struct {
	at     point
	up     point // along the section, from the rabbet up
	aft    point // along the hull
	square point // square to the surface, outward, of length one
}

// How many knots a run between corners has, where there is one run and where
// there are more.
const (
	knotsAlone   = 25
	knotsBetween = 17
)

// newNet lays the net over the sections; nil where fewer than two stations have
// one or their places are not known.
func (h *hull) newNet() *net {
	if !h.placed {
		return nil
	}
	n := &net{parts: h.parts()}
	n.each = knotsBetween
	if n.parts == 1 {
		n.each = knotsAlone
	}
	live := 0
	for _, s := range h.sections {
		var knots []knot
		if s.line != nil {
			knots = s.knots(n.parts, n.each)
			live++
		}
		n.knots = append(n.knots, knots)
	}
	if live < 2 {
		return nil
	}
	for i := range n.parts * n.each {
		n.aft(i, h.step)
	}
	for _, knots := range n.knots {
		for i := range knots {
			knots[i].square = outward(knots[i].up, knots[i].aft)
		}
	}
	return n
}

// outward is the direction square to two directions in a surface, the first up a
// section and the second aft.
func outward(up, aft point) point {
	n := up.cross(aft)
	if n.length() == 0 {
		return point{0, up.z, -up.y}.unit()
	}
	return n.unit()
}

// parts is how many runs between corners every section has; one where they have
// not all as many.
func (h *hull) parts() int {
	parts := 0
	for _, s := range h.sections {
		if s.line == nil {
			continue
		}
		runs := len(s.corners()) - 1
		if parts != 0 && runs != parts {
			return 1
		}
		parts = runs
	}
	return max(1, parts)
}

// corners is the first and last point of a section and its corners between.
func (s section) corners() []int {
	all := []int{0}
	for i, c := range s.points {
		if c.corner && i > 0 && i < len(s.points)-1 {
			all = append(all, i)
		}
	}
	return append(all, len(s.points)-1)
}

// knots is the places at even shares of the girth of each run between corners,
// both ends of the run among them.
func (s section) knots(parts, each int) []knot {
	ends := []int{0, len(s.points) - 1}
	if parts > 1 {
		ends = s.corners()
	}
	var all []knot
	for r := range parts {
		a, b := ends[r], ends[r+1]
		from, to := s.line.s[a], s.line.s[b]
		for i := range each {
			t := s.line.place(from + (to-from)*float64(i)/float64(each-1))
			k := knot{}
			switch i {
			case 0:
				k.at, k.up = s.line.p[a], s.line.out[a]
			case each - 1:
				k.at, k.up = s.line.p[b], s.line.in[b]
			default:
				k.at, k.up = s.line.at(t), s.line.along(t)
			}
			all = append(all, k)
		}
	}
	return all
}

// aft finds the direction along the hull at one share of the girth at every
// station.
func (n *net) aft(i int, step float64) {
	var p []point
	var at []int
	for k, knots := range n.knots {
		if len(knots) > 0 {
			p, at = append(p, knots[i].at), append(at, k)
		}
	}
	c := newCurve(p, nil, step)
	for j, k := range at {
		n.knots[k][i].aft = c.out[j]
	}
}
