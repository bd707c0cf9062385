package stock

import (
	"cmp"
	"slices"
	"strings"

	"strakebook/calc/lay"
	"strakebook/calc/measure"
)

// Before is a piece as a plan made before has it. The search for a new plan
// begins from the old one where it still stands, so that a rule loosened or a
// board added never makes the lumber dearer, and little moves that need not.
type Before struct {
	Mark  string
	Of    int            // pieces of its strake
	Joint measure.Length // the middle of the scarf at its after end, from the strake's fore end; nothing for the last piece
	Board string         // the mark of the very board it is cut from; "" for none
	Stick int            // of that board: pieces of one number come off one stick
}

// wasOf is the pieces of a run in an old plan, fore to aft; nil where it has not
// the whole of it.
func wasOf(run *lay.Run, by map[string]Before) []Before {
	var all []Before
	for place := 1; ; place++ {
		b, ok := by[mark(run, place)]
		if !ok || place > 1 && b.Of != all[0].Of {
			return nil
		}
		if all = append(all, b); place == b.Of {
			return all
		}
	}
}

// again is a part's timbers laid as an old plan has them.
type again struct {
	*search
	shop *shop
	rack []Board
	runs []lay.Run
	was  [][]Before // by timber, copy by copy, the copies of a piece beside each other
}

// old makes a layout that begins from a plan made before: every strake that
// still may be jointed as it was, every board that is still there cut as it was,
// and the rest laid where it costs least. It is false where they do not go
// together, or nothing of the part was in that plan.
func (a *answer) old(s *search, to *layout, by map[string]Before) bool {
	g := again{s, a.shop, a.rack, a.runs, make([][]Before, len(s.timbers))}
	s.empty()
	some := false
	for i := range s.timbers {
		some = g.recall(i, by) || some
	}
	if !some {
		return false
	}
	g.boards()
	for i := range s.timbers {
		if g.was[i] != nil && !g.rest(i) {
			return false
		}
	}
	for i := range s.timbers {
		if g.was[i] != nil {
			continue
		}
		s.shake(i, 0)
		if !s.lay(i, 0.9, 30*s.dear()) {
			return false
		}
	}
	s.keep(to)
	return true
}

// recall takes a timber's joints from the old plan; false where it has not the
// whole of it, or a piece or a joint would not do any more.
func (g *again) recall(i int, by map[string]Before) bool {
	t, p := &g.timbers[i], &g.plans[i]
	first := wasOf(&g.runs[t.runs[0]], by)
	if first == nil {
		return false
	}
	p.joints = p.joints[:0]
	for _, b := range first[:len(first)-1] {
		p.joints = append(p.joints, int32((int64(b.Joint)+g.grid/2)/g.grid))
	}
	if !g.stands(t, p) {
		p.joints = p.joints[:0]
		return false
	}
	n := t.copies()
	g.was[i] = make([]Before, len(first)*n)
	p.bins = slices.Repeat([]int32{-1}, len(first)*n)
	for copy, run := range t.runs {
		pieces := wasOf(&g.runs[run], by)
		for j := range pieces[:min(len(pieces), len(first))] {
			g.was[i][j*n+copy] = pieces[j]
		}
	}
	return true
}

// stands says that a timber may be jointed so, by itself.
func (s *search) stands(t *timber, p *laying) bool {
	c := &s.classes[t.class]
	for k, at := range p.joints {
		x := int64(at) * s.grid
		if t.given || at < 1 || int(at) > t.steps || x < t.zone || t.length-x < t.zone || t.shut != nil && t.shut[at] || k > 0 && at <= p.joints[k-1] {
			return false
		}
	}
	for j := range len(p.joints) + 1 {
		if l := s.piece(t, p, j); l > c.longest || len(p.joints) > 0 && l < c.least {
			return false
		}
	}
	return true
}

// held is the pieces of one old stick: timbers and places in their bins.
type held struct {
	bin    bin
	pieces [][2]int
	pool   int
	board  string
}

// boards begins every board of the old plan that is still there and lays its
// sticks again.
func (g *again) boards() {
	var sticks []held
	at := map[[2]int]int{} // of pool and stick
	for i := range g.was {
		t, p := &g.timbers[i], &g.plans[i]
		c := &g.classes[t.class]
		for k, b := range g.was[i] {
			if b.Board == "" {
				continue
			}
			n, ok := at[[2]int{c.pool, b.Stick}]
			if !ok {
				n = len(sticks)
				at[[2]int{c.pool, b.Stick}] = n
				sticks = append(sticks, held{pool: c.pool, board: b.Board, bin: bin{shared: c.shared}})
			}
			h := &sticks[n]
			h.bin.add(g.piece(t, p, k/t.copies())+g.kerf, p.slants(k/t.copies()), c)
			h.pieces = append(h.pieces, [2]int{i, k})
		}
	}
	var names []string
	of := map[string][]held{}
	for _, h := range sticks {
		if of[h.board] == nil {
			names = append(names, h.board)
		}
		of[h.board] = append(of[h.board], h)
	}
	kinds := g.marks()
	for _, name := range names {
		if kind, ok := kinds(name); ok && g.taken[kind] < g.counts[kind] {
			g.board(kind, of[name])
		}
	}
}

// marks gives the kind of a board by its mark. The boards supposed where the book has no
// rack have none.
func (g *again) marks() func(mark string) (kind int, ok bool) {
	of := map[string]int{}
	for kind, rows := range g.shop.kinds {
		for _, row := range rows {
			if row >= len(g.rack) {
				continue
			}
			of[Stay{Row: row, Board: g.rack[row]}.Name()] = kind
		}
	}
	return func(mark string) (int, bool) {
		kind, ok := of[mark]
		if at := strings.LastIndexByte(mark, '/'); !ok && at >= 0 {
			kind, ok = of[mark[:at]]
		}
		return kind, ok
	}
}

// board lays the sticks of one old board in a board of the same kind, ripped in
// as few lanes as will do; not at all where none will.
func (g *again) board(kind int, sticks []held) {
	slices.SortStableFunc(sticks, func(x, y held) int { return cmp.Compare(y.bin.used(), x.bin.used()) })
	for i := range g.sizes {
		if z := &g.sizes[i]; z.kind == kind {
			if in := g.fits(z, sticks); in != nil {
				for n, h := range sticks {
					g.lies(in[n], h)
				}
				return
			}
		}
	}
}

// fits is a lane for each of the sticks, the longest first; nil where a board
// ripped so does not hold them.
func (g *again) fits(z *size, sticks []held) []int {
	in, lanes := make([]int, len(sticks)), make([]int, len(z.sticks))
	for n, h := range sticks {
		at := slices.IndexFunc(z.sticks, func(k int) bool {
			st := &g.sticks[k]
			return lanes[slices.Index(z.sticks, k)] < z.lanes && st.hold >= h.bin.used() && st.serves(&h.bin.form) && slices.Contains(g.pools[h.pool].sticks, k)
		})
		if at < 0 {
			return nil
		}
		lanes[at]++
		in[n] = z.sticks[at]
	}
	return in
}

// lies begins a stick with the pieces it had.
func (g *again) lies(k int, h held) {
	at := g.hole(h.pool)
	g.begin(k)
	b := h.bin
	b.stick = int32(k)
	g.bins[h.pool][at] = b
	g.mark(h.pool, at)
	for _, p := range h.pieces {
		g.plans[p[0]].bins[p[1]] = at
	}
}

// rest cuts the pieces of a timber whose boards are not there any more, and
// counts it as laid; false where no stick will give one.
func (g *again) rest(i int) bool {
	s, t, p := g.search, &g.timbers[i], &g.plans[i]
	c := &g.classes[t.class]
	for k, at := range p.bins {
		if at >= 0 {
			continue
		}
		j := k / t.copies()
		if p.bins[k] = s.put(s.piece(t, p, j), p.slants(j), c, 0.9); p.bins[k] < 0 {
			return false
		}
	}
	s.broken += s.breaks(i)
	s.laid[i] = true
	s.joints += len(p.joints) * t.copies()
	return true
}

// byMark is pieces by their marks, but for marks borne by two.
func byMark(before []Before) map[string]Before {
	by, twice := map[string]Before{}, map[string]bool{}
	for _, b := range before {
		_, twice[b.Mark] = by[b.Mark]
		by[b.Mark] = b
	}
	for mark, two := range twice {
		if two {
			delete(by, mark)
		}
	}
	return by
}
