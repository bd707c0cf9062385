package read

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// What a list of strakes says of its figures that makes them others than those asked
// for: they are not read as if it had not been said.

// otherSize is words that make a size of a plank not its finished one, or not its
// greatest.
var otherSize = regexp.MustCompile(`\b(?:rough|nominal|sawn|unplaned|undressed|mean|average|avg|av)\b|\bstock (?:thickness|width|length|sizes?)\b`)

// otherSizes asks of the sizes of strakes and pieces that are headed as rough, nominal
// or mean ones, and leaves them.
func (r *reader) otherSizes(t *records) {
	for _, field := range []string{"thickness", "width", "length"} {
		col, ok := t.cols[field]
		if !ok || !otherSize.MatchString(strings.ToLower(t.heads[col])) {
			continue
		}
		delete(t.cols, field)
		for _, row := range t.rows {
			t.page.use(row, col)
		}
		asked := map[string]string{"thickness": "as planed and hung", "width": "the greatest", "length": "each its own"}[field]
		r.add(finding.Finding{Kind: ConventionOpen, Cell: t.page.cell(t.head, col), Reads: t.heads[col],
			Text: fmt.Sprintf("%q is not the %s that the %s are to have, %s: the figures were left", t.heads[col], field, t.kind.name, asked),
			Do:   fmt.Sprintf("give the finished %s, %s, under %q", field, asked, strings.ToUpper(field[:1])+field[1:])})
	}
}

// outsideWidths is words that have widths measured on the outside face.
var outsideWidths = regexp.MustCompile(`\bwidths?\b[^.;]*\b(?:outside|outer|outboard)\b|\b(?:outside|outer|outboard) (?:face )?widths?\b`)

// ofOffsets is words between the two that the outside is said of.
var ofOffsets = regexp.MustCompile(`\b(?:offsets?|lines?|hull|drawn|girths?)\b`)

// outside is the words that have some widths on the outside face; "" for none.
func outside(words []string) string {
	i := slices.IndexFunc(words, func(w string) bool {
		said := outsideWidths.FindString(denied.ReplaceAllString(strings.ToLower(measure.Fold(w)), " "))
		return said != "" && !ofOffsets.MatchString(said)
	})
	if i < 0 {
		return ""
	}
	return words[i]
}

// outsideAsked asks of widths on the outside face from which those on the inside face
// do not follow: that is narrower by as much as the edges lean.
func (r *reader) outsideAsked(words string, at source.Cell) {
	r.add(finding.Finding{Kind: ConventionOpen, Cell: at, Reads: words,
		Text: fmt.Sprintf("%q: planks are sawn and lined off by their widths on the inside face, and these were left", words),
		Do:   "give widths on the inside face: that on the outside less the thickness times the tangent of the bevel, for each edge that is bevelled"})
}

// outsideWorked tells that widths on the outside face were taken as such. Where the hull
// is lined off, or both edges are sawn, they are asked about and left.
func (r *reader) outsideWorked() {
	told := ""
	for i := range r.job.Strakes {
		s := &r.job.Strakes[i]
		words := r.outsides[s.Cell]
		switch {
		case words == "":
			continue
		case len(r.job.Offsets) > 0 || len(r.job.Gaps) > 0 || r.rules.Bevel.Shared:
			s.Width.State, s.Widths, s.WidthAt = source.Unread, nil, nil
			if told != words {
				r.outsideAsked(words, s.Cell)
			}
		default:
			s.Outside = true
			if told != words {
				r.add(finding.Finding{Kind: ConventionRead, Cell: s.Cell, Reads: words,
					Text: fmt.Sprintf("the widths are on the outside face, as %q says: on the cards of bevels those on the inside face are less by the thickness times the tangent of the bevel sawn", words)})
			}
		}
		told = words
	}
}

// noneText is a count of nothing in words.
var noneText = regexp.MustCompile(`^(?:none|nil|no|nought|naught|zero)$`)

// StrakeNone is a row of strakes that counts none.
var StrakeNone = &finding.Kind{
	Code: "strake-none", Severity: finding.Warning, Title: "row of strakes that counts none",
	Why:    "It is left out: no piece is cut and no board chosen for it.",
	Remedy: "write how many there are, or leave the count blank where it is one",
}

// countsNone says that a row counts none of its strakes, and tells of it.
func (r *reader) countsNone(t *records, row int, what string) bool {
	c, at, ok := t.cell(row, "count")
	none := c.Kind == sheet.Number && c.Number == 0 || c.Kind == sheet.Text && (measure.IsDash(c.Text) || noneText.MatchString(plainWords(c.Text)) || plainWords(c.Text) == "0")
	if !ok || !none {
		return false
	}
	r.add(finding.Finding{Kind: StrakeNone, Cell: at, Reads: text(c), Text: fmt.Sprintf("%s has a count of %q and was left out", what, text(c))})
	return true
}

var (
	countsBoth = regexp.MustCompile(`\b(?:counts?|numbers? (?:off|of|is|are|for)|nos?\.? (?:off|of)|qty|quantit(?:y|ies))\b[^.;]*\b(?:both sides|port and starboard|whole|boat|hull)\b`)
	bothSides  = regexp.MustCompile(`\bboth sides\b|\bport and starboard\b|\bwhole (?:boat|hull)\b|\b(?:per|a|of the|for the|to the) (?:boat|hull)\b`)
	eachSide   = regexp.MustCompile(`\balike\b|\beach\b|\ba side\b|\bper side\b`)
)

// ofBothSides is the words that have a list's counts for both sides of the hull
// together; "" for none, where they are a side.
func (r *reader) ofBothSides(t *records) string {
	col, ok := t.cols["count"]
	if !ok {
		return ""
	}
	remarks, _ := t.page.sheetWords()
	for _, w := range append(append([]string{t.heads[col]}, t.caption...), remarks...) {
		low := strings.ToLower(measure.Fold(w))
		if (countsBoth.MatchString(low) || w == t.heads[col]) && bothSides.MatchString(low) && !eachSide.MatchString(low) {
			r.add(finding.Finding{Kind: ConventionRead, Cell: t.page.cell(t.head, col), Reads: w,
				Text: fmt.Sprintf("the counts are read as of both sides together, half of them a side, as %q says", w)})
			return w
		}
	}
	return ""
}

// aSide is a count of both sides together as one a side: half of it.
func (r *reader) aSide(v source.Reading[int], side hull.Side, what string) source.Reading[int] {
	switch {
	case side != hull.BothSides || !v.OK():
	case v.Value%2 != 0:
		v.State = source.Unread
		r.add(finding.Finding{Kind: NumberUnread, Cell: v.Cell, Reads: v.Text,
			Text: fmt.Sprintf("%s reads %q for both sides together, and is odd: how many are of each side is not said", what, v.Text),
			Do:   "give each side a row of its own"})
	default:
		v.Value /= 2
	}
	return v
}

// ofStrake reads a size of a strake, which is more than nothing.
func (r *reader) ofStrake(v source.Reading[measure.Length], what string) source.Reading[measure.Length] {
	if v.OK() && v.Value <= 0 {
		v.State = source.Unread
		r.add(finding.Finding{Kind: LengthImpossible, Cell: v.Cell, Reads: v.Text,
			Text: fmt.Sprintf("%s reads %q: no plank can be cut to it", what, v.Text), Do: "write the size it is to have"})
	}
	return v
}
