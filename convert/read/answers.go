package read

import (
	"fmt"
	"slices"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/source"
)

// answer is what a builder wrote in Answer on a Queries sheet of ours: it is as good as
// a decision on the Warnings sheet beside what was found of the same figure.
type answer struct {
	where, reads, text string
	cell               source.Cell
}

// answersOn takes from a sheet of ours the answers to queries.
func (r *reader) answersOn(p *page) {
	head, cols := heads(p, "Reads", "What is doubtful", "Answer", "Where")
	for row := head + 1; head > 0 && row <= p.rows; row++ {
		if a := text(p.sheet.At(row, cols["Answer"])); a != "" {
			r.answers = append(r.answers, answer{text(p.sheet.At(row, cols["Where"])), text(p.sheet.At(row, cols["Reads"])), a, p.cell(row, cols["Answer"])})
		}
	}
}

// answer makes decisions of the answers. One written anew on the Warnings sheet holds
// over an answer, and an answer over one that was carried on.
func (r *reader) answer() {
	for _, a := range r.answers {
		at := slices.IndexFunc(r.decided, func(w warned) bool { return w.where == a.where && !w.decision.Undone() })
		var w warned
		switch {
		case at >= 0 && sameReading(r.decided[at].decision.Value, a.text):
			continue
		case at >= 0 && !r.decided[at].carried:
			r.idleAnswer(a, "another decision stands beside it on the Warnings sheet")
			continue
		case at >= 0:
			w = r.decided[at]
			r.decided = slices.Delete(r.decided, at, at+1)
		default:
			var ok bool
			if w, ok = r.asked(a); !ok {
				r.idleAnswer(a, "the Warnings sheet has nothing of that figure")
				continue
			}
		}
		w.decision.Take, w.decision.Value, w.decision.Why, w.answered, w.carried = false, a.text, "as answered", true, false
		r.decided = append(r.decided, w)
	}
}

// asked is the row of the Warnings sheet that a query is of: of the offsets' figures if
// there is such, else of a cell that could not be read.
func (r *reader) asked(a answer) (warned, bool) {
	at := -1
	for i, w := range r.undecided {
		if w.where == a.where && w.decision.Reads == a.reads && (at < 0 || hull.Decides(w.decision.Code) && !hull.Decides(r.undecided[at].decision.Code)) {
			at = i
		}
	}
	if at < 0 {
		return warned{}, false
	}
	return r.undecided[at], true
}

// idleAnswer tells of an answer that is not followed.
func (r *reader) idleAnswer(a answer, why string) {
	r.add(finding.Finding{Kind: hull.DecisionIdle, Cell: a.cell, Reads: a.text,
		Text: fmt.Sprintf("the answer %q to the query on %s was not followed: %s", a.text, a.where, why),
		Do:   "write it in Decision on the Warnings sheet, beside what it is of"})
}
