package hull

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/interp"
)

// markedAt is the stations of the hull, in order, at which some seam is marked.
func (h *hull) markedAt(m SeamMarks) []int {
	var all []int
	for k, st := range h.o.Stations {
		if i := m.place(st.Name); i >= 0 && st.Name != "" && m.any(i) {
			all = append(all, k)
		}
	}
	return all
}

// any says that some seam is marked at a station of the marks.
func (m SeamMarks) any(i int) bool {
	for _, s := range m.Seams {
		if i < len(s.Values) && s.Values[i].OK() {
			return true
		}
	}
	return false
}

// shareBetween draws the seams between the stations marked: each strake's part of the
// girth runs smoothly from what it is at one to what it is at the next, so that the
// strakes together fill the girth there as they do at the marks. Drawn each by its own
// width they would not: the girth between is no such curve. Where a seam does not cross
// both of two stations marked, they are left between them as they are.
func (h *hull) shareBetween(l *lined, at []int) {
	planks := make([]*interp.FritschButland, len(l.names))
	for j := range planks {
		planks[j] = h.through(l, at, func(k int) float64 { return l.down[j+1][k] - l.down[j][k] })
	}
	whole := h.through(l, at, func(k int) float64 { return l.down[len(planks)][k] })
	if whole == nil || slices.Contains(planks, nil) {
		return
	}
	for i := 1; i < len(at); i++ {
		if !l.crossed(at[i-1]) || !l.crossed(at[i]) {
			continue
		}
		for k := at[i-1] + 1; k < at[i]; k++ {
			if l.sections[k] == nil {
				continue
			}
			var sum float64
			for _, c := range planks {
				sum += c.Predict(h.x[k])
			}
			down, part := 0.0, l.girth[k]*min(1, whole.Predict(h.x[k]))/sum
			for j, c := range planks {
				down += c.Predict(h.x[k]) * part
				l.down[j+1][k] = down
			}
			l.shared[k] = true
		}
	}
}

// through is the curve along the hull of a girth's part of the whole, through where
// every seam crosses a station marked; nil where these are fewer than two.
func (h *hull) through(l *lined, at []int, girth func(k int) float64) *interp.FritschButland {
	var x, v []float64
	for _, k := range at {
		if l.crossed(k) {
			x, v = append(x, h.x[k]), append(v, girth(k)/l.girth[k])
		}
	}
	var c interp.FritschButland
	if len(x) < 2 || !increasing(x) || c.Fit(x, v) != nil {
		return nil
	}
	return &c
}

// crossed says that every seam crosses a station, and the strakes have some width there.
func (l *lined) crossed(k int) bool {
	for _, row := range l.down {
		if math.IsNaN(row[k]) {
			return false
		}
	}
	return l.girth[k] > 0 && l.down[len(l.down)-1][k] > 0
}

// markShared sets the marks to what is drawn at the stations at which each strake has
// its part of the girth.
func (l *lined) markShared(kind MarkKind) {
	for j := range l.marked {
		for k := range l.girth {
			switch {
			case !l.shared[k]:
			case kind == MarkWidths:
				l.marked[j][k] = l.down[j+1][k] - l.down[j][k]
			case kind == MarkFromRabbet:
				l.marked[j][k] = l.girth[k] - l.down[j+1][k]
			default:
				l.marked[j][k] = l.down[j+1][k]
			}
		}
	}
}
