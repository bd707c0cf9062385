package stock

// watch tells whoever asked how far the search is. It counts the moves made and
// knows no clock: when to say something is the asker's to know.
type watch struct {
	told             func(part float64)
	made, end, whole int // moves: so far, of the part in hand, of all
}

// every is how many moves go by between two tellings.
const every = 64

// expect adds the moves of one more part to the whole.
func (w *watch) expect(moves int) { w.whole += moves }

// begin takes a part in hand, of so many moves.
func (w *watch) begin(moves int) { w.end = w.made + moves }

// moved counts a move; a part that takes more than were expected waits at its end.
func (w *watch) moved() {
	if w == nil || w.told == nil || w.made >= w.end {
		return
	}
	if w.made++; w.made%every == 0 {
		w.told(float64(w.made) / float64(max(1, w.whole)))
	}
}

// finish ends the part in hand, whatever it took.
func (w *watch) finish() {
	if w.made = w.end; w.told != nil {
		w.told(float64(w.made) / float64(max(1, w.whole)))
	}
}
