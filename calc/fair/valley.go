package fair

// Valley is a place below both sides of its row.
type Valley struct {
	At, Left, Right int     // the lowest place, and the high places that make it a valley
	Depth           float64 // below the lower of the two
}

// Valleys finds where a row that should rise to one maximum and fall does not,
// by more than a tolerance. Each stretch below its sides is one valley.
func Valleys(row Row, tolerance float64) []Valley {
	l := newLine(row)
	var all []Valley
	open := -1
	for k := range l.y {
		left, right := peak(l.y, 0, k), peak(l.y, k+1, len(l.y))
		if left < 0 || right < 0 {
			open = -1
			continue
		}
		depth := min(l.y[left], l.y[right]) - l.y[k]
		if depth <= tolerance {
			open = -1
			continue
		}
		v := Valley{l.at[k], l.at[left], l.at[right], depth}
		switch {
		case open < 0:
			all = append(all, v)
			open = len(all) - 1
		case depth > all[open].Depth:
			all[open] = v
		}
	}
	return all
}

// peak is where the greatest of y[from:to] stands; -1 where there is none.
func peak(y []float64, from, to int) int {
	best := -1
	for i := from; i < to; i++ {
		if best < 0 || y[i] > y[best] {
			best = i
		}
	}
	return best
}
