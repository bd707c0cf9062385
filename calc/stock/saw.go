package stock

import (
	"fmt"

	"strakebook/calc/measure"
)

// sawyer puts lanes side by side into boards, in the order of hanging of the
// first piece of each.
type sawyer struct {
	shop   *shop
	rack   []Board
	rules  Rules
	priced bool
	plan   *Plan
	open   map[int]int // size -> index of its board not yet full
	taken  []int       // boards of each kind so far
	laneOf [][]int     // of each cut, lanes begun by stretch
}

// saw puts one lane into a board.
func (w *sawyer) saw(l *lane, at []int) {
	h := w.shop
	st := &h.sticks[l.stick]
	z := &h.sizes[st.size]
	stretch := 0
	for k, o := range z.sticks {
		if o == l.stick {
			stretch = k
		}
	}
	cut := w.board(st.size, stretch)
	c := &w.plan.Cuts[cut]
	number := w.laneOf[cut][stretch] + 1
	w.laneOf[cut][stretch] = number
	var all []int
	run := map[int]int{}
	for _, k := range l.pieces {
		p := at[k.run] + k.place
		all = append(all, p)
		run[p] = k.run
	}
	var lies row
	if h.classes[h.of[l.pieces[0].run]].shared > 0 {
		lies = arrange(w.plan.Pieces, all)
	} else {
		lies.add(false, all...)
	}
	var shared []measure.Length
	for _, p := range lies.pieces {
		c.Pieces, c.Lane = append(c.Pieces, p), append(c.Lane, number)
		shared = append(shared, measure.Length(h.classes[h.of[run[p]]].shared))
		w.plan.Pieces[p].Board = cut
	}
	takes := c.place(measure.Length(h.sound[z.kind][stretch].from), w.plan.Pieces, lies, shared, w.rules)
	c.Left = max(c.Left, measure.Length(st.hold)-takes)
}

// board is the cut that has room for one more lane in a stretch of a size.
func (w *sawyer) board(size, stretch int) int {
	z := &w.shop.sizes[size]
	for i := w.open[size]; i < len(w.plan.Cuts); i++ {
		if w.plan.Cuts[i].size == size && w.laneOf[i][stretch] < z.lanes {
			return i
		}
	}
	n := w.taken[z.kind]
	w.taken[z.kind]++
	row := w.shop.rowOf(z.kind, n, w.rack)
	b := w.rack[row]
	number := n + 1
	for _, o := range w.shop.kinds[z.kind] {
		if o == row {
			break
		}
		number -= w.rack[o].Count.Value
	}
	at := len(w.plan.Cuts)
	w.plan.Cuts = append(w.plan.Cuts, Cut{Mark: boardMark(b, row, number), Board: b, Row: row, Lanes: z.lanes, Cost: b.Cost(w.rules, w.priced), size: size})
	w.laneOf = append(w.laneOf, make([]int, len(z.sticks)))
	if _, ok := w.open[size]; !ok {
		w.open[size] = at
	}
	return at
}

// rowOf is the row of the rack that the n-th board of a kind is of.
func (h *shop) rowOf(kind, n int, rack []Board) int {
	rows := h.kinds[kind]
	for _, row := range rows {
		if rack[row].Free() || n < rack[row].Count.Value {
			return row
		}
		n -= rack[row].Count.Value
	}
	return rows[len(rows)-1]
}

// finish says of every board what is left of it: a whole lane where one is over.
func (w *sawyer) finish() {
	for i := range w.plan.Cuts {
		c := &w.plan.Cuts[i]
		z := &w.shop.sizes[c.size]
		for k, o := range z.sticks {
			if w.laneOf[i][k] < z.lanes {
				c.Left = max(c.Left, measure.Length(w.shop.sticks[o].hold-w.shop.kerf))
			}
		}
		c.Left = max(0, c.Left)
	}
}

// boardMark is one board's own mark: the rack's, numbered where it stands for
// several.
func boardMark(b Board, row, n int) string {
	name := Stay{Row: row, Board: b}.Name()
	if b.Count.OK() && b.Count.Value == 1 {
		return name
	}
	return fmt.Sprintf("%s/%d", name, n)
}
