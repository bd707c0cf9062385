package read

import (
	"fmt"
	"math"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// length reads one cell as a length in the form. Unread says why it could not
// be; the reading's state is then Unread.
func length(c sheet.Cell, form measure.Form, at source.Cell) (r source.Reading[measure.Length], unread *measure.ReadError) {
	r = source.Reading[measure.Length]{Text: text(c), Cell: at}
	fail := func(err error) {
		r.State = source.Unread
		unread, _ = err.(*measure.ReadError)
	}
	take := func(v measure.Length, err error) {
		if err != nil {
			fail(err)
			return
		}
		r.Value, r.State = v, source.Given
	}
	switch c.Kind {
	case sheet.Number:
		switch {
		case c.Number == 0:
			r.State = source.Given
		case form.Notation == measure.OldPrint && form.Unit == measure.NoUnit && c.Number == math.Trunc(c.Number):
			take(form.Length(plainNumber(c.Number))) // 103, which the spreadsheet took for a number
		default:
			v, _, err := form.Number(c.Number)
			take(v, err)
		}
	case sheet.Text:
		if measure.IsDash(c.Text) {
			r.State = source.Dash
			break
		}
		take(form.Length(c.Text))
	case sheet.Date, sheet.Time, sheet.Fault, sheet.Bool:
		fail(&measure.ReadError{Text: text(c), Expected: "a length"})
	default:
		switch {
		case c.Formula != "":
			fail(&measure.ReadError{Text: "=" + c.Formula, Expected: "a value: open the book and save it so that its formulas are worked out"})
		case c.Struck != "":
			r.Text = c.Struck
		}
	}
	return r, unread
}

// lengthAt reads one cell of a table as a length, as is settled for the table,
// and says what is amiss with it. What names the figure in findings. Bare numbers
// of a table whose unit is open are unread, and the table has been reported.
func (r *reader) lengthAt(c sheet.Cell, d decision, at source.Cell, what string) source.Reading[measure.Length] {
	if c.Kind == sheet.Date || c.Kind == sheet.Time {
		return r.dateAt(c, at, d, what)
	}
	v, unread := length(c, d.form, at)
	switch {
	case unread == nil && d.parted && c.Kind == sheet.Text && strings.HasPrefix(measure.Fold(c.Text), "-") && v.OK():
		v.State = source.Unread
		r.add(finding.Finding{Kind: LengthUnread, Cell: at, Reads: v.Text,
			Text: fmt.Sprintf("%s reads %q: the hyphen may part feet from inches or be a minus", what, v.Text)})
	case unread == nil && c.Kind == sheet.Text && footParts.MatchString(strings.ToLower(measure.Fold(c.Text))):
		v.State = source.Unread
		r.add(finding.Finding{Kind: LengthUnread, Cell: at, Reads: v.Text,
			Text: fmt.Sprintf("%s reads %q: a part of a foot, or so many of so many feet each", what, v.Text)})
	case unread == nil && d.bared && c.Kind == sheet.Text && noughtInches.MatchString(measure.Fold(c.Text)):
		v.State = source.Unread
		r.add(finding.Finding{Kind: LengthUnread, Cell: at, Reads: v.Text,
			Text: fmt.Sprintf("%s reads %q: a nought stands before the inches as nowhere else, and may be the inches of a lost fraction", what, v.Text)})
	case unread == nil:
	case d.doubted && twoPartText.MatchString(measure.Fold(c.Text)):
		r.doubted = append(r.doubted, at)
	case unread.Fault == measure.UnitOpen && d.open:
	case unread.Fault == measure.UnitOpen:
		r.bareCells = append(r.bareCells, bareCell{at, v.Text, what})
	case unread.Fault == measure.TwoWays:
		r.twoWays = append(r.twoWays, twoWay{v, unread, what})
	default:
		r.unreadable(what, v, unread)
	}
	r.struck(c, at)
	r.disguised(&v, c, d.form, what)
	return v
}

// bareCell is a number whose unit is open among figures that hold their own, or one
// finer than any rule.
type bareCell struct {
	at         source.Cell
	text, what string
}

// tableRead reports what was kept back while a table was read: figures that read
// two ways, and its bare numbers together, since there may be hundreds.
func (r *reader) tableRead() {
	for _, w := range r.twoWays {
		r.unreadable(w.what, w.v, w.err)
	}
	r.twoWays = nil
	if n := len(r.doubted); n > 0 {
		r.add(finding.Finding{Kind: LengthTwoWays, Cell: r.doubted[0], Also: r.doubted[1:],
			Text: fmt.Sprintf("%s of two parts may be feet and inches, or inches and eighths or sixteenths: nothing says which", plural(n, "figure", "figures"))})
		r.doubted = nil
	}
	if n := len(r.between); n > 0 {
		f := finding.Finding{Kind: NumberKept, Cell: r.between[0].at, Reads: r.between[0].text,
			Text: fmt.Sprintf("%s no whole sixty-fourths of an inch nor hundredths of a millimetre and kept as stored, the first %q", plural(n, "figure is", "figures are"), r.between[0].text)}
		for _, b := range r.between[1:] {
			f.Also = append(f.Also, b.at)
		}
		r.add(f)
		r.between = nil
	}
	switch n := len(r.bareCells); {
	case n == 0:
		return
	case n <= 3:
		for _, b := range r.bareCells {
			r.add(finding.Finding{Kind: LengthUnread, Cell: b.at, Reads: b.text,
				Text: fmt.Sprintf("%s reads %q: a bare number, whose unit nothing says", b.what, b.text)})
		}
	default:
		f := finding.Finding{Kind: LengthUnread, Cell: r.bareCells[0].at, Reads: r.bareCells[0].text,
			Text: fmt.Sprintf("%d figures are bare numbers, whose unit nothing says; the first reads %q", n, r.bareCells[0].text)}
		for _, b := range r.bareCells[1:] {
			f.Also = append(f.Also, b.at)
		}
		r.add(f)
	}
	r.bareCells = nil
}

// struck reports what is struck out in a cell.
func (r *reader) struck(c sheet.Cell, at source.Cell) {
	if c.Struck != "" {
		r.add(finding.Finding{Kind: TextStruck, Cell: at, Reads: c.Struck, Text: fmt.Sprintf("%q is struck out and was taken as withdrawn", c.Struck)})
	}
}

// disguised looks for numbers that are not what they seem: those shown otherwise
// than they are stored, and those finer than any rule.
func (r *reader) disguised(v *source.Reading[measure.Length], c sheet.Cell, form measure.Form, what string) {
	if c.Kind != sheet.Number || !v.OK() {
		return
	}
	if _, whole, err := form.Number(c.Number); err == nil && !whole {
		r.between = append(r.between, bareCell{v.Cell, v.Text, what})
	}
	if shown, ok := shownLength(c, form); ok && (shown-v.Value).Abs() > max(measure.Inch/24, v.Value.Abs().Times(1e-4)) {
		suggests := plainNumber(c.Number)
		if measure.MarkedUnit(c.Text) != measure.NoUnit {
			suggests = strings.TrimSpace(c.Text) + ", as shown" // the same number, of another unit than the column's
		}
		r.add(finding.Finding{Kind: ShownOtherwise, Cell: v.Cell, Reads: v.Text, Suggests: suggests,
			Text: fmt.Sprintf("%s is shown as %q, and the number stored is %s", what, v.Text, plainNumber(c.Number))})
	}
}

// shownLength is what a number's cell shows, read in the form.
func shownLength(c sheet.Cell, form measure.Form) (measure.Length, bool) {
	if c.Format == "" || c.Text == "" {
		return 0, false
	}
	if strings.HasSuffix(c.Text, "%") && form.Unit == measure.Fractions {
		return 0, false // of a table of fractions that is as it should be
	}
	if v, ok := shownNumber(c.Text); ok {
		l, _, err := form.Number(v)
		return l, err == nil
	}
	if measure.MarkedUnit(c.Text) == measure.NoUnit {
		return 0, false
	}
	l, err := measure.ParseLength(c.Text, measure.NoUnit)
	return l, err == nil
}

// shownNumber is the figure a number's cell shows, one with a per cent sign among them,
// and a fraction as coarse as its format makes it: 4/4 of 0.875.
func shownNumber(text string) (float64, bool) {
	text = strings.TrimSuffix(strings.Join(strings.Fields(text), " "), "%")
	if v, err := measure.ParseNumber(text); err == nil {
		return v, true
	}
	var whole, part, of float64
	if n, err := fmt.Sscanf(text, "%f %f/%f", &whole, &part, &of); n == 3 && err == nil && of > 0 {
		return whole + part/of, true
	}
	n, err := fmt.Sscanf(text, "%f/%f", &part, &of)
	return part / max(of, 1), n == 2 && err == nil && of > 0
}

// unreadable reports a length that could not be read.
func (r *reader) unreadable(what string, v source.Reading[measure.Length], err *measure.ReadError) {
	kind := LengthUnread
	suggests := ""
	switch err.Fault {
	case measure.InchesOver, measure.EighthsOver, measure.TooFar:
		kind = LengthImpossible
	case measure.DateSeen:
		kind = LengthDateAsked
	case measure.TwoWays:
		kind = LengthTwoWays
		for i, w := range err.Ways {
			if i > 0 {
				suggests += " or "
			}
			suggests += measure.FeetInchesText(w)
		}
	}
	r.add(finding.Finding{Kind: kind, Cell: v.Cell, Reads: v.Text, Suggests: suggests,
		Text: fmt.Sprintf("%s reads %q: expected %s", what, err.Text, err.Expected)})
}

// places is how many figures a number has after the point, six at most.
func places(v float64) int {
	for n := range 6 {
		if s := math.Abs(v) * math.Pow10(n); math.Abs(s-math.Round(s)) < 1e-6*max(1, s) {
			return n
		}
	}
	return 6
}
