package read

import (
	"slices"
	"strings"

	"strakebook/convert/sheet"
)

// labelColumns is the columns before the names that hold labels: those filled
// beside the figures, up to two empty ones.
func (t *stationTable) labelColumns() []int {
	rows, _ := t.size()
	first := 1
	if edge, ok := t.edgeOf(t.head, t.left); ok {
		rows, first = min(rows, edge.Bottom), edge.Left
	}
	last, blank := t.head, 0
	for row := t.head + 1; row <= rows && blank <= gapRows; row++ {
		if figures, others, units := t.count(row); figures+others+units > 0 {
			last, blank = row, 0
		} else {
			blank++
		}
	}
	other := grid{t.page, !t.turned}
	var all []int
	empty := 0
	for col := t.labelsEnd(); col >= first && empty < 2 && len(all) < 6 && (empty == 0 || len(all) == 0); col-- {
		here := 0
		for _, row := range other.between(col, t.head+1, last) {
			if c := t.see(row, col); c.Kind == sheet.Text && len(c.Text) <= 60 && !sentence(c.Text) || c.Kind == sheet.Number {
				here++
			}
		}
		if here == 0 || here == 1 && last > t.head+2 && !t.spans(col, last) {
			empty++
			continue
		}
		empty = 0
		all = append(all, col)
	}
	slices.Reverse(all)
	return all
}

// sentence says that a text is a remark, and longer than any label.
func sentence(text string) bool {
	return strings.HasPrefix(text, "# ") || len(strings.Fields(text)) > 8
}

// spans says that a column of labels holds a merged heading over several lines.
func (t *stationTable) spans(col, last int) bool {
	for row := t.head + 1; row <= last; row++ {
		if _, under := t.covered[pair(t.swap(row, col))]; under {
			return true
		}
	}
	return false
}

func pair(a, b int) [2]int { return [2]int{a, b} }

// words is every text of a row without figures: a title may stand over the
// figures as well as before them.
func (t *stationTable) words(row int) string {
	all := t.label(row)
	for _, col := range t.between(row, t.left, t.right) {
		if c := t.see(row, col); c.Kind == sheet.Text {
			all += " " + text(c)
		}
	}
	return strings.TrimSpace(all)
}

// label is the words before the figures of a row, all its label cells together.
func (t *stationTable) label(row int) string {
	var all []string
	for _, col := range t.labels {
		if c := t.see(row, col); c.Kind == sheet.Text || c.Kind == sheet.Number {
			all = append(all, text(c))
		}
	}
	return strings.Join(all, " ")
}
