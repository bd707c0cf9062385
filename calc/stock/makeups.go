package stock

import "slices"

// makeups is the ways of making up each timber that the search has tried: what
// one plan found for a strake may go well with what another found for those
// beside it.
type makeups struct {
	like  []int // of each timber, the first of its shape, under which its ways are kept
	tried [][][]int32
	known []map[string]bool
}

func (y *yard) makeups() *makeups {
	n := len(y.timbers)
	m := &makeups{like: y.likes(), tried: make([][][]int32, n), known: make([]map[string]bool, n)}
	for i := range m.known {
		m.known[i] = map[string]bool{}
	}
	return m
}

// likes is, of each timber, the first of its shape.
func (y *yard) likes() []int {
	like := make([]int, len(y.timbers))
	for i := range like {
		for !y.timbers[like[i]].shaped(&y.timbers[i]) {
			like[i]++
		}
	}
	return like
}

// shaped says that what makes up one timber makes up another as well, in the same
// places along the side: port's strake and starboard's.
func (t *timber) shaped(o *timber) bool {
	return t.class == o.class && t.length == o.length && t.start == o.start && t.zone == o.zone && t.given == o.given &&
		len(t.runs) == len(o.runs) && slices.Equal(t.clear, o.clear) && slices.Equal(t.shut, o.shut)
}

// add keeps a way of making up a timber, once.
func (m *makeups) add(i int, joints []int32) {
	i = m.like[i]
	var room [64]byte
	key := room[:0]
	for _, p := range joints {
		key = append(key, byte(p), byte(p>>8), byte(p>>16))
	}
	if !m.known[i][string(key)] {
		m.known[i][string(key)] = true
		m.tried[i] = append(m.tried[i], slices.Clone(joints))
	}
}

// of is the ways known of a timber.
func (m *makeups) of(i int) [][]int32 { return m.tried[m.like[i]] }
