package read

import (
	"cmp"
	"fmt"
	"math"
	"strconv"
	"strings"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// What a builder changes on the Settings sheet of a book of ours, and hands back,
// is followed: beside each value stands what the book was made with, by which a
// change is known. It is carried into the next book, with what it stands in place
// of, and holds there until it or that is changed.

// box is a line of a Settings sheet of ours whose value was changed, in this book or
// in one before it.
type box struct {
	givenSetting
	made   string // what the book was made with
	held   bool   // changed in a book before
	before string // what it was set in place of then
	asked  bool   // by the command line, and unchanged since
	of     string // the board a price is of, and where the rack has it
	rack   string
}

// boxes takes from a Settings sheet of ours the values that were changed on it.
func (r *reader) boxes(p *page) {
	head, cols := heads(p, "Name", "Value", "Unit", "Made with", "Meaning", "Source")
	if head == 0 {
		return
	}
	for row := head + 1; row <= p.rows; row++ {
		name := text(p.sheet.At(row, cols["Name"]))
		now, made := p.sheet.At(row, cols["Value"]), p.sheet.At(row, cols["Made with"])
		if name == "" || !filled(now) && !filled(made) {
			continue
		}
		b := box{made: settingText(made), of: text(p.sheet.At(row, cols["Meaning"])), rack: text(p.sheet.At(row, cols["Source"]))}
		b.givenSetting = givenSetting{name: name, unit: text(p.sheet.At(row, cols["Unit"])), nameAt: p.cell(row, cols["Name"]), valueAt: p.cell(row, cols["Value"])}
		if filled(now) {
			b.value = settingText(now)
		}
		if m := sheet.HeldByBox.FindStringSubmatch(b.rack); m != nil {
			b.held, b.before, b.rack = true, m[1], m[2]
			b.asked = strings.HasPrefix(text(p.sheet.At(row, cols["Source"])), sheet.ByCommand) && !b.changed()
		}
		if name == "units" {
			r.madeIn = b.made
		}
		r.boxUnits = append(r.boxUnits, b)
		if b.changed() || b.held {
			r.boxed = append(r.boxed, b)
		}
	}
}

// slopes tells of the slopes changed on a Scarfs sheet of ours, which is for trying
// one: where it is to hold, in the settings or for some strakes, only the builder knows.
func (r *reader) slopes(p *page) {
	head, cols := heads(p, "Skin", "Thickness", "Slope", "Fence", "Made with")
	for row := head + 1; head > 0 && row <= p.rows; row++ {
		now, made := p.sheet.At(row, cols["Slope"]), p.sheet.At(row, cols["Made with"])
		if !filled(made) || now.Formula != "" || sameFigure(settingText(now), settingText(made)) {
			continue
		}
		skin := text(p.sheet.At(row, cols["Skin"]))
		r.boxLeft(box{givenSetting: givenSetting{name: "slope of " + skin + "s", value: settingText(now), valueAt: p.cell(row, cols["Slope"])}, made: settingText(made)},
			fmt.Sprintf("set %q on the Settings sheet, or write the slope beside the strakes it is for", skin+" scarf slope"))
	}
}

func (b box) changed() bool { return !sameFigure(b.value, b.made) }

// sameFigure says that two values are one, but for the last places of a figure that
// a spreadsheet may have rounded.
func sameFigure(a, b string) bool {
	x, unitX, _ := strings.Cut(a, " ")
	y, unitY, _ := strings.Cut(b, " ")
	u, err := strconv.ParseFloat(x, 64)
	v, err2 := strconv.ParseFloat(y, 64)
	if err != nil || err2 != nil {
		return strings.EqualFold(strings.TrimSpace(a), strings.TrimSpace(b))
	}
	return math.Abs(u-v) <= 1e-9*max(1, math.Abs(u)) && unitX == unitY
}

// followBoxes sets what was changed on a Settings sheet of ours, over the builder's
// own tables, from which it was last written. Where those were changed too both
// are told; where they alone were since, they hold.
func (r *reader) followBoxes() {
	r.leftUnits()
	var prices []box
	base := r.withoutBoxes()
	r.base = base
	first := map[string]box{}
	for _, b := range r.boxed {
		if strings.HasPrefix(b.name, pricePrefix) {
			prices = append(prices, b)
			continue
		}
		s := settingNamed(r.rules.Settings(), b.name)
		if s == nil {
			r.boxLeft(b, "it is no setting but what one table was read by: change the words over that table, or set that for all of them")
			continue
		}
		if b.value == "" {
			r.boxEmptied(b, settingNamed(base.Settings(), s.Name).Told(r.metric(b)), r.stated[s.Name].at)
			continue
		}
		if f, again := first[s.Name]; again {
			if !sameFigure(f.value, b.value) || f.unit != b.unit {
				r.add(finding.Finding{Kind: SettingTwice, Cell: b.valueAt, Also: []source.Cell{f.valueAt}, Reads: b.value, Suggests: f.value,
					Text: fmt.Sprintf("setting %q is %q in this box and %q in another: the first holds", s.Name, b.value, f.value)})
			}
			continue
		}
		first[s.Name] = b
		before, tables := settingNamed(base.Settings(), s.Name), r.stated[s.Name]
		was, told := before.Written(), before.Told(r.metric(b))
		if b.changed() {
			if err := s.SetIn(b.value, b.unit); err != nil {
				r.badSetting(err, b.name, b.value, b.valueAt, b.nameAt)
				continue
			}
		} else if tables.by == bySettings && !r.sameAs(b, was, b.before) {
			r.boxOld(b, told, tables.at)
			continue
		} else if err := s.SetIn(b.value, b.unit); err != nil {
			continue // it was refused once
		}
		if sameFigure(s.Written(), was) && s.Name != "units" { // those the tables' own make
			continue
		}
		r.state(s.Name, stated{byBox, b.valueAt})
		from := source.Cell{}
		if tables.by == bySettings {
			from = tables.at
		}
		r.boxTold = append(r.boxTold, r.boxHolds(b, s.Told(r.metric(b)), told, from, r.sameAs(b, was, b.stood())))
		r.job.SetInBook = append(r.job.SetInBook, calc.SetInBook{Name: s.Name, Before: told, Commanded: b.asked})
	}
	r.boxed = prices
}

// withoutBoxes is the rules as the builder's own tables and the defaults have them,
// in the round figures of the units the book was made in.
func (r *reader) withoutBoxes() calc.Rules {
	rules := r.rules
	if r.madeIn == measure.StyleMM.String() {
		rules.RoundMetric(func(name string) bool { return r.stated[name].by != "" })
	}
	return rules
}

// metric says that a box is told of in millimetres.
func (r *reader) metric(b box) bool {
	return b.unit == "mm" || b.unit == "" && r.madeIn == measure.StyleMM.String()
}

// boxHolds is what is told of a box that is followed, and what in place of: what stood
// when the book was made, or what was changed since.
func (r *reader) boxHolds(b box, now, was string, from source.Cell, stood bool) finding.Finding {
	by := "as written in its box on the Settings sheet"
	if b.asked {
		by = "as the command line had it when the book was made"
	}
	f := finding.Finding{Kind: BoxFollowed, Cell: b.valueAt, Reads: b.value, Text: fmt.Sprintf("%q is %s, %s, in place of %s", b.name, now, by, cmp.Or(was, "none"))}
	if from != (source.Cell{}) {
		f.Also = []source.Cell{from}
		f.Text += " at " + from.String()
		if b.changed() && !stood {
			f.Kind = BoxAgainst
			f.Text += fmt.Sprintf(", where %s stood when the book was made: the box was followed", b.stood())
		}
	}
	return f
}

// boxOld tells that the builder's own tables were changed after a box was.
func (r *reader) boxOld(b box, was string, from source.Cell) {
	r.add(finding.Finding{Kind: BoxAgainst, Cell: b.valueAt, Also: []source.Cell{from}, Reads: b.value, Suggests: was,
		Text: fmt.Sprintf("%q is %s in its box, set in place of %s, and %s at %s now: that was followed", b.name, b.value, b.before, was, from)})
}

// boxLeft tells that what was written in a box was not followed.
func (r *reader) boxLeft(b box, why string) {
	r.add(finding.Finding{Kind: BoxLeft, Cell: b.valueAt, Reads: b.value, Text: fmt.Sprintf("%q was changed from %q to %q, and not followed: %s", b.name, b.made, b.value, why)})
}

// boxEmptied tells what holds in place of what stood in a box that was emptied: what
// the builder's own tables say, else the default.
func (r *reader) boxEmptied(b box, holds string, at source.Cell) {
	by := "the default"
	if at != (source.Cell{}) {
		by = "as at " + at.String()
	}
	r.add(finding.Finding{Kind: BoxLeft, Cell: b.valueAt, Reads: b.made, Suggests: holds, Do: "write in its box the value that is meant",
		Text: fmt.Sprintf("%q, %q when the book was made, has its box emptied: %s holds, %s", b.name, b.made, cmp.Or(holds, "none"), by)})
}

// stood is what the builder's tables said when the book was made.
func (b box) stood() string {
	if b.held {
		return b.before
	}
	return b.made
}

// sameAs says that what the tables say is what stood when the book was made: the
// sheet has that in its own unit, or with one.
func (r *reader) sameAs(b box, was, stood string) bool {
	if sameFigure(was, stood) {
		return true
	}
	rules := r.rules
	s := settingNamed(rules.Settings(), b.name)
	if measure.MarkedUnit(stood) == measure.NoUnit {
		return s.SetIn(stood, b.unit) == nil && sameFigure(s.Written(), was)
	}
	if s.SetIn(stood, "") != nil {
		return false
	}
	told := s.Told(false)
	return s.SetIn(was, "") == nil && s.Told(false) == told
}

// overBoxes puts what the command line sets in place of what the boxes do: it is not
// told of, and is carried on in its turn.
func (r *reader) overBoxes() {
	var kept []calc.SetInBook
	for i, set := range r.job.SetInBook {
		if r.stated[set.Name].by == byBox {
			kept = append(kept, set)
			r.add(r.boxTold[i])
		}
	}
	for _, s := range r.rules.Settings() {
		before := settingNamed(r.base.Settings(), s.Name)
		if r.stated[s.Name].by == byCommand && (s.Name == "units" || !sameFigure(before.Written(), s.Written())) {
			kept = append(kept, calc.SetInBook{Name: s.Name, Before: before.Told(r.rules.Yard.Units == measure.StyleMM), Commanded: true})
		}
	}
	r.job.SetInBook = kept
}

// What becomes of the boxes of a book of ours.
var (
	BoxFollowed = &finding.Kind{
		Code: "box-followed", Severity: finding.Note, Title: "value changed in its box in the new book",
		Why:    "What was written last is meant, and holds over the tables that the book was made from.",
		Remedy: "nothing; to go back, write the old value in the box and hand the book back",
	}
	BoxAgainst = &finding.Kind{
		Code: "box-against", Severity: finding.Warning, Title: "value changed both in its box and in your own table",
		Why:    "Only one of the two can be meant.",
		Remedy: "write the one that is meant in both places",
	}
	BoxLeft = &finding.Kind{
		Code: "box-left", Severity: finding.Warning, Title: "change in the new book not followed",
		Why:    "What was worked out is as your own tables and the defaults have it, not as its box has.",
		Remedy: "write in its place what is meant, or in your own table that it belongs to",
	}
)
