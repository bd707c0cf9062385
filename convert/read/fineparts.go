package read

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// Where the words over figures say that these end in sixteenths, or that they are
// inches and eighths, 3-4-6 is no feet-inches-eighths and 18-8 no feet and inches.

// finePart is words that name the last part of figures, after inches.
var finePart = regexp.MustCompile(`\b(?:in|ins|inch|inches)\b[ .,&/-]+(?:and )?(?:1/)?(8|16|32|eighth|sixteenth)(?:ths?|nds?|s)?\b`)

// denominators is how many of each part make an inch.
var denominators = map[string]int{"8": 8, "eighth": 8, "16": 16, "sixteenth": 16, "32": 32}

// fineFigure is a figure of two parts or three.
var fineFigure = regexp.MustCompile(`^(?:(\d+)-)?(\d+)-(\d+)$`)

// fineWords is the part that the nearest words name, as how many make an inch, and
// whether feet stand before; 0 for none, and for the eighths behind feet that need
// no words.
func fineWords(words []string) (parts int, feet bool) {
	for _, w := range words {
		low := strings.ToLower(measure.Fold(w))
		if m := finePart.FindStringSubmatch(low); m != nil {
			parts, feet = denominators[m[1]], feetWords.MatchString(low)
			if parts == 8 && feet {
				return 0, false
			}
			return parts, feet
		}
		if _, ok, two := says(w); ok || two {
			return 0, false // the nearest words hold
		}
	}
	return 0, false
}

// fineText is a figure with the marks that words say it has; not ok where it is none
// such.
func fineText(c sheet.Cell, parts int, feet bool) (sheet.Cell, bool) {
	m := fineFigure.FindStringSubmatch(strings.ReplaceAll(measure.Fold(c.Text), " ", ""))
	if c.Kind != sheet.Text || m == nil || feet != (m[1] != "") {
		return c, false
	}
	if n, _ := strconv.Atoi(m[3]); n >= parts {
		return c, false
	}
	c.Text = fmt.Sprintf(`%s %s/%d"`, m[2], m[3], parts)
	if feet {
		c.Text = m[1] + "' " + c.Text
	}
	return c, true
}

// fine writes the figures of a table with the marks that its words say they have.
func (r *reader) fine(t *stationTable) {
	remarks, titles := t.sheetWords()
	all := slices.DeleteFunc(append(remarks, titles...), func(w string) bool { return !ofAll(w) })
	parts, feet := fineWords(append(t.wordsAbout(), all...))
	if parts == 0 || t.kind == "bevels" {
		return
	}
	n := 0
	for _, row := range append([]int{t.position, t.spacing}, t.lines...) {
		for _, col := range t.between(row, t.left, t.right) {
			if c, ok := fineText(t.see(row, col), parts, feet); ok {
				t.put[pair(t.swap(row, col))] = c
				n++
			}
		}
	}
	r.fineSaid(t.place(t.head, t.labelAt()), n, parts)
}

// fineColumn does the same for a column of a list.
func (r *reader) fineColumn(t *records, col int) {
	parts, feet := fineWords(append([]string{t.heads[col]}, t.caption...))
	if parts == 0 {
		return
	}
	n := 0
	for _, row := range t.rows {
		if c, ok := fineText(t.page.raw(row, col), parts, feet); ok {
			t.page.put[[2]int{row, col}] = c
			n++
		}
	}
	r.fineSaid(t.page.cell(t.head, col), n, parts)
}

// fineSaid tells how many figures were read so.
func (r *reader) fineSaid(at source.Cell, n, parts int) {
	if n > 0 {
		r.add(finding.Finding{Kind: ConventionRead, Cell: at,
			Text: fmt.Sprintf("the last part of %s is read as parts of which %d make an inch, as the words over them say", plural(n, "figure", "figures"), parts)})
	}
}
