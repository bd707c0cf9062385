package read

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// surely is how much evidence a table of stations must give for what it is, and
// how much more than for anything else.
const surely = 1.5

// classify tells what a table of stations holds, by its caption, its labels and
// how its figures are written. Its kind is left empty where nothing says.
func (r *reader) classify(t *stationTable) {
	scores := map[string]float64{}
	r.byCaption(t, scores)
	r.byLabels(t, scores)
	r.byFigures(t, scores)
	kinds := []string{"offsets", "bevels", "widths", "marks"}
	slices.SortStableFunc(kinds, func(a, b string) int {
		switch d := scores[a] - scores[b]; {
		case d > 0:
			return -1
		case d < 0:
			return 1
		}
		return 0
	})
	t.kind = ""
	switch best := scores[kinds[0]]; {
	case len(t.lines) == 0:
		t.kind = "positions"
	case best >= surely && best-scores[kinds[1]] >= 0.5:
		t.kind = kinds[0]
	}
}

// byCaption weighs the words over a table: its own caption more than what the
// book and its sheet are called.
func (r *reader) byCaption(t *stationTable, scores map[string]float64) {
	words, titles := t.caption, t.titles
	for _, c := range t.corner() {
		words = append([]string{text(c)}, words...)
		titles++
	}
	said := map[string]float64{}
	for i, w := range words {
		weight := 3.0
		if i >= titles {
			weight = 2
		}
		for kind, meanings := range map[string][]string{"offsets": {"offsets", "breadths", "heights"}, "bevels": {"bevels"}, "widths": {"width"}, "marks": {"girths"}} {
			if r.words.has(w, meanings...) {
				said[kind] = max(said[kind], weight)
			}
		}
	}
	for kind, weight := range said {
		scores[kind] += weight
	}
}

// byLabels weighs the labels of the lines and the headings over the labels.
func (r *reader) byLabels(t *stationTable, scores map[string]float64) {
	lines, strakes := 0, 0
	for _, row := range t.lines {
		label := t.label(row)
		switch {
		case r.words.has(label, "strake", "edge", "along"):
			strakes++
		case r.lineMeaning(label) != "":
			lines++
		case edgeIn(label) != bevel.EdgeUnstated:
			strakes++
		}
	}
	n := max(1, float64(len(t.lines)))
	scores["offsets"] += 3 * float64(lines) / n
	for _, kind := range []string{"bevels", "widths", "marks"} {
		scores[kind] += 1.5 * float64(strakes) / n
	}
	for _, c := range t.corner() {
		switch {
		case r.words.has(c.Text, "edge"):
			scores["bevels"] += 2
		case r.words.has(c.Text, "strake", "skin", "side"):
			scores["bevels"]++
			scores["widths"]++
			scores["marks"]++
		case r.words.has(c.Text, lineMeanings...):
			scores["offsets"] += 2
		}
	}
	if len(t.blocks) > 0 {
		scores["offsets"] += 2
	}
}

// byFigures weighs how the figures are written.
func (r *reader) byFigures(t *stationTable, scores map[string]float64) {
	lengths, degrees, all := 0, 0, 0
	for _, row := range t.lines {
		for _, col := range t.between(row, t.left, t.right) {
			c := t.see(row, col)
			all++
			switch {
			case strings.Contains(c.Format, "°"):
				degrees++
			case c.Kind != sheet.Text:
			case strings.Contains(measure.Fold(c.Text), "°"):
				degrees++
			default:
				if n := measure.Notations(c.Text); len(n) > 0 && (n[0] == measure.FeetInchesEighths || n[0] == measure.FeetInchesFractions || n[0] == measure.OldPrint || measure.MarkedUnit(c.Text) != measure.NoUnit) {
					lengths++
				}
			}
		}
	}
	n := max(1, float64(all))
	scores["bevels"] += 3 * float64(degrees) / n
	if share := float64(lengths) / n; share > 0.5 {
		scores["bevels"] -= 6
		scores["offsets"] += 1.5 * share
		scores["widths"] += 1.5 * share
		scores["marks"] += 1.5 * share
	}
}

// lineMeaning is what a line's label makes it, "" where it says nothing.
func (r *reader) lineMeaning(label string) string {
	for _, m := range []string{"diagonal", "rabbet", "keel", "chine", "buttock", "waterline", "sheer", "deck", "breadths", "heights"} {
		if r.words.has(label, m) {
			return m
		}
	}
	return ""
}

// layoutAsked reports figures that could be read with lines and stations changed
// about, and leaves them.
func (r *reader) layoutAsked(t, other *stationTable) {
	top, left, bottom, right := t.bounds()
	r.add(finding.Finding{Kind: LayoutOpen, Cell: t.cell(top, left),
		Text: fmt.Sprintf("at %s stations may run across or down: nothing says which names are stations", t.cell(top, left).Ref()+":"+t.cell(bottom, right).Ref())})
	t.useBlock(top, left, bottom, right)
	top, left, bottom, right = other.bounds()
	t.useBlock(top, left, bottom, right)
}

// kindAsked reports figures by station that nothing says what they are, and
// leaves them.
func (r *reader) kindAsked(t *stationTable) {
	top, left, bottom, right := t.bounds()
	r.add(finding.Finding{Kind: TableUnknown, Cell: t.cell(top, left),
		Text: fmt.Sprintf("figures by station at %s were left: nothing says what they are", t.cell(top, left).Ref()+":"+t.cell(bottom, right).Ref())})
	t.useBlock(top, left, bottom, right)
}
