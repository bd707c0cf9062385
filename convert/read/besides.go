package read

import "slices"

// Tables of the same stations often stand side by side under one column of labels:
// half-breadths and heights, port and starboard. Their stations' names begin again.

// alone leaves a run of names that is the same names over again with the first of
// them, and says how many it left out.
func (t *stationTable) alone() int {
	n := len(t.names)
	k := period(t.names)
	t.names = t.names[:k]
	return n - k
}

// period is after how many names a run of them begins again; all of them where it
// does not.
func period(names []name) int {
	for k := fewestNames; 2*k <= len(names); k++ {
		if len(names)%k != 0 {
			continue
		}
		same := true
		for i := k; i < len(names) && same; i++ {
			same = names[i].text == names[i-k].text
		}
		if same {
			return k
		}
	}
	return len(names)
}

// group is the first columns of the tables that stand side by side with one, its
// own among them: the same names stand in the same row, read or not, next to one
// another or with an empty column between.
func (r *reader) group(t *stationTable) []int {
	all := []int{t.left}
	if len(t.names) < fewestNames {
		return all
	}
	width := t.right - t.left + 1
	for _, way := range []int{-1, 1} {
		for at := t.left; ; {
			next := at + way*width
			if !r.namesAgain(t, next) {
				if next += way; !r.namesAgain(t, next) || !t.empty(max(at, next)-1) {
					break
				}
			}
			all, at = append(all, next), next
		}
	}
	slices.Sort(all)
	return all
}

// namesAgain says that the names of a table stand in its row again from a column on.
func (r *reader) namesAgain(t *stationTable, left int) bool {
	if left < 1 {
		return false
	}
	for _, n := range t.names {
		m, ok := r.stationName(t.raw(t.swap(t.head, n.col-t.left+left)))
		if !ok || m.text != n.text {
			return false
		}
	}
	return true
}

// empty says that a column of the grid holds nothing.
func (g grid) empty(col int) bool { return len(grid{g.page, !g.turned}.along(col)) == 0 }

// others says that a table beside this one, under the same labels, is yet to be
// read.
func (t *stationTable) others() bool {
	return slices.ContainsFunc(t.group, func(left int) bool { return left != t.left && !t.used[pair(t.swap(t.head, left))] })
}

// labelsEnd is the last column in which labels of a table's lines may stand.
func (t *stationTable) labelsEnd() int { return t.first() - 1 }

// first is the first column of the first of the tables that stand side by side.
func (t *stationTable) first() int {
	if len(t.group) == 0 {
		return t.left
	}
	return t.group[0]
}

// labelAt is the column that stands for a line or a table where it is told of: that
// of its labels, or its own first where it has none to itself.
func (t *stationTable) labelAt() int {
	if t.first() != t.left {
		return t.left
	}
	return max(1, t.left-1)
}

// showLabels lets the labels be seen of a table that the guide gives without them,
// since they stand before another beside it.
func (t *stationTable) showLabels() {
	if t.within == nil || t.first() == t.left {
		return
	}
	if t.page.labels == nil {
		t.page.labels = map[[2]int]bool{}
	}
	rows, _ := t.size()
	for row := t.head; row <= rows; row++ {
		for col := 1; col < t.first(); col++ {
			if r, c := t.swap(row, col); r >= t.within.Top && r <= t.within.Bottom || t.turned && c >= t.within.Left && c <= t.within.Right {
				t.page.labels[pair(r, c)] = true
			}
		}
	}
}
