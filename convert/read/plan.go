package read

import (
	"fmt"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/calc/stock"
	"strakebook/convert/sheet"
)

// PlanBefore says that the search for joints and boards begins from the plan in a
// book of ours that was handed back.
var PlanBefore = &finding.Kind{
	Code: "plan-before", Severity: finding.Note, Title: "begun from the plan in the book",
	Why:    "Joints and boards stay where they were as far as they still may: the new plan costs no more than the old one where that still stands.",
	Remedy: "nothing; to plan anew, give the book that this one was made from",
}

// plan takes from a cut list of ours the pieces of the plan it tells of, for the
// new one to begin from. Its rows may have been sorted otherwise since.
func (r *reader) plan(p *page) {
	head, cols := heads(p, "Mark", "Skin", "Strake", "Side", "Piece", "Board", "Stick", "Joint to joint")
	if head == 0 {
		return
	}
	unit := measure.Inch
	if strings.HasSuffix(text(p.sheet.At(head, cols["Joint to joint"])), "mm") {
		unit = measure.Millimetre
	}
	type piece struct {
		stock.Before
		core measure.Length
	}
	strakes, order := map[string][]piece{}, []string{}
	for row := head + 1; row <= p.rows; row++ {
		at := func(field string) string { return text(p.sheet.At(row, cols[field])) }
		place, of := 0, 0
		core := p.sheet.At(row, cols["Joint to joint"])
		if n, _ := fmt.Sscanf(at("Piece"), "%d of %d", &place, &of); n != 2 || place < 1 || of > 1000 || place > of || core.Kind != sheet.Number {
			continue
		}
		q := piece{Before: stock.Before{Mark: at("Mark"), Of: of}, core: measure.Length(core.Number * float64(unit))}
		if stick := p.sheet.At(row, cols["Stick"]); stick.Kind == sheet.Number {
			q.Board, q.Stick = at("Board"), int(stick.Number)
		}
		key := strings.Join([]string{at("Skin"), at("Strake"), at("Side")}, "\x00")
		if strakes[key] == nil {
			strakes[key] = make([]piece, of)
			order = append(order, key)
		}
		if place <= len(strakes[key]) {
			strakes[key][place-1] = q
		}
	}
	before := len(r.job.Before)
	for _, key := range order {
		at := measure.Length(0)
		for _, q := range strakes[key] {
			at += q.core
			if q.Joint = at; q.Mark != "" {
				r.job.Before = append(r.job.Before, q.Before)
			}
		}
	}
	if n := len(r.job.Before) - before; n > 0 {
		r.add(finding.Finding{Kind: PlanBefore, Cell: source.Cell{Book: p.book.Name, Sheet: p.sheet.Name},
			Text: fmt.Sprintf("the search for joints and boards begins from the %d pieces of this cut list", n)})
	}
}

// heads finds the row of a sheet of ours that bears some headings, each as it is
// or with its unit after a comma, and their columns; 0 where none does.
func heads(p *page, some ...string) (row int, cols map[string]int) {
	for row := 1; row <= min(p.rows, 10); row++ {
		cols := map[string]int{}
		for _, col := range p.filled[0][row] {
			word, _, _ := strings.Cut(text(p.sheet.At(row, col)), ", ")
			cols[word] = col
		}
		all := true
		for _, word := range some {
			all = all && cols[word] > 0
		}
		if all {
			return row, cols
		}
	}
	return 0, nil
}
