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

// tallyText is one part of a lumber tally, so many boards of one length: 3/16' is three
// of sixteen feet (common practice, no source).
var tallyText = regexp.MustCompile(`^(\d+) ?/ ?(\d+(?:[.,]\d+)? ?(?:'|ft\.?|feet|m|metres))$`)

// tallySplit parts a tally.
var tallySplit = regexp.MustCompile(` *(?:[;+&\n]|, ) *| and `)

// tallyPart is boards of one length, and how many of them.
type tallyPart struct {
	length source.Reading[measure.Length]
	count  source.Reading[int]
	of     int // boards in the whole tally; 0 where it is none
}

// tally is the boards that a cell tallies; nil where it is no tally.
func tally(c sheet.Cell, at source.Cell) []tallyPart {
	if c.Kind != sheet.Text {
		return nil
	}
	var all []tallyPart
	for _, part := range tallySplit.Split(strings.Trim(strings.ToLower(measure.Fold(c.Text)), " ,;"), -1) {
		m := tallyText.FindStringSubmatch(part)
		if m == nil {
			return nil
		}
		n, err := strconv.Atoi(m[1])
		l, err2 := measure.ParseLength(m[2], measure.NoUnit)
		if err != nil || err2 != nil || n == 0 || n > 100_000 || l < measure.Foot {
			return nil
		}
		all = append(all, tallyPart{
			length: source.Reading[measure.Length]{Value: l, State: source.Given, Text: m[2], Cell: at},
			count:  source.Reading[int]{Value: n, State: source.Given, Text: m[1], Cell: at},
		})
	}
	return all
}

// lengthsOf is the lengths in which a row's boards come, each with its count: one, or
// those of a tally, which a count beside it must agree with.
func (r *reader) lengthsOf(t *records, row int, cols map[string]column, what func(string) string) []tallyPart {
	c, at, _ := t.cell(row, "length")
	count := r.count(t, row, "count", what("count"))
	all := tally(c, at)
	if all == nil && r.lengthRange(t, c) {
		r.add(finding.Finding{Kind: LengthTwoWays, Cell: at, Reads: text(c),
			Text: fmt.Sprintf("%s reads %q: boards of all lengths from the one to the other, or feet and inches", what("length"), text(c)),
			Do:   "give each length that may be bought a row of its own; feet and inches as 12' 6\""})
		return []tallyPart{{length: source.Reading[measure.Length]{State: source.Unread, Text: text(c), Cell: at}, count: count}}
	}
	if all == nil {
		return []tallyPart{{length: r.length(t, row, "length", cols, what("length")), count: count}}
	}
	sum := 0
	for _, one := range all {
		sum += one.count.Value
	}
	if count.State != source.Blank && count.Value != sum {
		r.add(finding.Finding{Kind: LengthUnread, Cell: at, Also: []source.Cell{count.Cell}, Reads: text(c), Text: fmt.Sprintf("%s reads %q, a tally of %d, and its count %q", what("length"), text(c), sum, count.Text)})
		return []tallyPart{{length: source.Reading[measure.Length]{State: source.Unread, Text: text(c), Cell: at}, count: count}}
	}
	for i := range all {
		all[i].of = sum
	}
	r.add(finding.Finding{Kind: ConventionRead, Cell: at, Reads: text(c),
		Text: fmt.Sprintf("%q is read as a tally: %d of %s, %s in all", text(c), all[0].count.Value, all[0].length.Text, plural(sum, "board", "boards"))})
	return all
}

// rangeOfLengths is two numbers of feet or metres with a dash between them.
var rangeOfLengths = regexp.MustCompile(`^(\d+(?:\.\d+)?) ?(?:'|ft\.?|m)? ?(?:-|to|\.\.+) ?(\d+(?:\.\d+)?) ?(?:'|ft\.?|feet|m)?$`)

// lengthRange says that a board's length may be a range of lengths, 12-16: the second is
// the longer, as in every such text of its column, and no word says feet and inches.
func (r *reader) lengthRange(t *records, c sheet.Cell) bool {
	ranged := func(c sheet.Cell) (is, other bool) {
		m := rangeOfLengths.FindStringSubmatch(strings.ToLower(measure.Fold(c.Text)))
		if c.Kind != sheet.Text || m == nil {
			return false, false
		}
		a, _ := strconv.ParseFloat(m[1], 64)
		b, _ := strconv.ParseFloat(m[2], 64)
		return a >= 2 && b > a, b <= a
	}
	is, _ := ranged(c)
	if n := t.said["length"].Notation; !is || n != measure.NoNotation && n != measure.Decimal {
		return false
	}
	cells, _ := t.column("length")
	return !slices.ContainsFunc(cells, func(c sheet.Cell) bool { _, other := ranged(c); return other })
}

// footParts is a part of a foot that no rule shows, and a tally may be meant by.
var footParts = regexp.MustCompile(`^\d+ ?/ ?(?:[5-9]|\d\d+) ?(?:'|ft\.?|feet)$`)
