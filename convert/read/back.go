package read

import (
	"cmp"
	"fmt"
	"regexp"
	"strings"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// warned is one row of a Warnings sheet of ours that was decided on.
type warned struct {
	decision calc.Decision
	suggests string
	beside   string // the row and column that it was written of
	where    string // its cell, as the Warnings sheet has it
	carried  bool   // as it was decided before, and not written anew
	answered bool   // on the Queries sheet
}

// back takes from a sheet of ours the decisions that the builder wrote on it.
func (r *reader) back(p *page) {
	r.answersOn(p)
	head, cols := heads(p, "Where", "Decision", "Code")
	if head == 0 {
		return
	}
	for row := head + 1; row <= p.rows; row++ {
		at := func(field string) string { return text(p.sheet.At(row, cols[field])) }
		decision, code := at("Decision"), at("Code")
		name, ref, ok := cutLast(at("Where"), "!")
		col, line, fine := address(ref)
		before := code == DecisionTaken.Code || code == hull.OffsetDecided.Code
		if before && (decision == "" || calc.Decision{Value: decision}.Stands()) {
			decision = at("Suggests") // as decided before: it holds until it is changed
		}
		if !ok || !fine {
			name, line, col = at("Where"), 0, 0
		}
		d := calc.Decision{Code: code, Cell: source.Cell{Book: p.book.Name, Sheet: name, Row: line, Col: col}, Reads: at("Reads"), Text: at("What")}
		if m := saidBefore.FindStringSubmatch(at("What")); before && m != nil && decision == at("Suggests") {
			d.Why = m[1]
		}
		if strings.EqualFold(decision, "take") {
			d.Take = true
		} else {
			d.Value = decision
		}
		w := warned{decision: d, suggests: at("Suggests"), beside: at("Row and column"), where: at("Where"), carried: before && decision == at("Suggests")}
		if decision == "" {
			r.undecided = append(r.undecided, w)
			continue
		}
		r.decided = append(r.decided, w)
	}
}

// saidBefore is why a figure was taken, at the end of what is told of it.
var saidBefore = regexp.MustCompile(`is taken as ".*" \(([^()]+)\)$`)

// decide puts what the builder decided in place of what the cells hold, before
// anything is read of them. What was decided of an offset goes with the job: what
// is suggested of it follows from the whole table.
func (r *reader) decide() {
	r.answer()
	var loose []warned
	for _, w := range r.decided {
		d := w.decision
		if d.Cell.Row == 0 {
			if !r.loose(d) {
				loose = append(loose, w)
			}
			continue
		}
		value := d.Value
		if d.Take {
			value = firstSuggested(w.suggests)
		}
		p := r.pageAt(d.Cell)
		if p != nil {
			w.decision.Cell.Book = p.book.Name
			r.follow(p, &w)
			d.Cell = w.decision.Cell
		}
		if p != nil && !d.Undone() {
			if why := p.moved(w); why != "" && (!d.Stands() || hull.Decides(d.Code)) {
				r.stale(w, why)
				continue
			}
			if now, changed := p.changed(w); changed && !d.Stands() {
				r.stale(w, otherwise(w, now))
				continue
			}
		}
		if p != nil && hull.Decides(d.Code) {
			r.job.Decisions = append(r.job.Decisions, d)
			continue
		}
		switch {
		case d.Take && unranked(d.Code) && len(suggestions(w.suggests)) > 1:
			r.unmet(w, "several figures are suggested and none is the likeliest: write the one that is meant")
			continue
		case d.Take && value == "":
			r.unmet(w, "no figure is suggested that could be taken")
			continue
		case d.Stands() && p != nil:
			r.job.Decisions = append(r.job.Decisions, d)
			continue
		case value == "" || d.Stands() || d.Undone():
			continue
		}
		if p == nil {
			r.unmet(w, "there is no such cell")
			continue
		}
		was := p.raw(d.Cell.Row, d.Cell.Col)
		if !figure(value) || was.Kind == sheet.Text && !figure(was.Text) && len(tokens(was.Text)) > 1 {
			r.unmet(w, "it is no figure in place of a figure")
			continue
		}
		p.put[[2]int{d.Cell.Row, d.Cell.Col}] = sheet.Cell{Kind: sheet.Text, Text: value}
		if !filled(was) { // a blank that was filled in
			p.fill(d.Cell.Row, d.Cell.Col)
		}
		d.Take, d.Value, d.Read, d.Was = false, value, true, text(was)
		r.job.Decisions = append(r.job.Decisions, d)
		by := "decided on the Warnings sheet"
		if w.answered {
			by = "answered on the Queries sheet"
		}
		r.add(finding.Finding{Kind: DecisionTaken, Cell: d.Cell, Reads: text(was), Suggests: value, Decision: value,
			Text: fmt.Sprintf("read as %q, as %s", value, by)})
	}
	r.looseUnmet(loose)
}

// loose follows a decision beside a finding that is about no one cell but about a
// sheet, a book or the whole job: there a warning can be kept, and nothing else be
// decided.
func (r *reader) loose(d calc.Decision) bool {
	switch where := d.Cell.Sheet; {
	case d.Undone():
		return true
	case !d.Stands():
		return false
	case where == "" || where == "book":
		d.Cell = source.Cell{}
	default:
		p := r.pageAt(d.Cell)
		if p == nil {
			d.Cell = source.Cell{Book: where}
		} else {
			d.Cell = source.Cell{Book: p.book.Name, Sheet: p.sheet.Name}
		}
	}
	r.job.Decisions = append(r.job.Decisions, d)
	return true
}

// looseUnmet reports the decisions that were loose and could not be followed.
func (r *reader) looseUnmet(all []warned) {
	if len(all) == 0 {
		return
	}
	w := all[0]
	reads := cmp.Or(w.decision.Value, "take")
	more := ""
	if n := len(all) - 1; n > 0 {
		more = fmt.Sprintf(", as %s", plural(n, "other was", "others were"))
	}
	r.add(finding.Finding{Kind: hull.DecisionIdle, Reads: reads,
		Text: fmt.Sprintf("the decision %q on %q was not followed%s: the finding is about no one cell, and can only be kept", reads, w.decision.Code, more)})
}

// unmet reports a decision that puts no figure in place of another.
func (r *reader) unmet(w warned, why string) {
	reads := w.decision.Value
	if w.decision.Take {
		reads = "take"
	}
	r.add(finding.Finding{Kind: hull.DecisionIdle, Cell: w.decision.Cell, Reads: reads,
		Text: fmt.Sprintf("the decision %q on %q was not followed: %s", reads, w.decision.Code, why)})
}

// explained is the words in brackets after a suggestion.
var explained = regexp.MustCompile(` *\([^)]*\)`)

// firstSuggested is the first figure of several suggestions, without why it is
// made; "" where none is a figure.
func firstSuggested(suggests string) string {
	for _, one := range suggestions(suggests) {
		one = strings.TrimPrefix(strings.TrimSpace(explained.ReplaceAllString(one, "")), "about ")
		_, err := measure.ParseAngle(one)
		if err == nil || len(measure.Notations(one)) > 0 {
			return one
		}
	}
	return ""
}

// suggestions is what a finding suggests, one by one.
func suggestions(suggests string) []string {
	return strings.Split(strings.ReplaceAll(suggests, " or ", ";"), ";")
}

// unranked is the findings whose suggestions stand in no order of likelihood:
// which of them is meant the builder alone can say.
func unranked(code string) bool {
	return code == LengthDateAsked.Code || code == LengthTwoWays.Code
}

// pageAt is the page a cell lies on: that of its own book, else the only one of
// its name.
func (r *reader) pageAt(c source.Cell) *page {
	var found *page
	for _, p := range r.pages {
		if !strings.EqualFold(p.sheet.Name, c.Sheet) {
			continue
		}
		if p.book.Name == c.Book {
			return p
		}
		if found != nil {
			return nil
		}
		found = p
	}
	return found
}

func cutLast(s, sep string) (before, after string, found bool) {
	i := strings.LastIndex(s, sep)
	if i < 0 {
		return s, "", false
	}
	return s[:i], s[i+len(sep):], true
}
