package write

import (
	"strings"

	"strakebook/calc/hull"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// queries is what there is to ask the designer of the table of offsets, in the
// table's own words. It is there only where there is something to ask.
func queries(in Input) *page {
	p := table("Queries", "queries to the designer", col("No.", 5), col("Line", 18), col(in.stationHead(), 8), col("Reads", 11), col(in.stationHead()+"s beside", 17),
		col("Lines beside", 20), col("What is doubtful", 36), col("Proposed", 22), col("Used meanwhile", 12), col("Answer", 14), col("Where", 12))
	p.csv, p.wide = true, true
	p.note("Of the table as read. Used meanwhile: what the tables of this book go by until the answer comes; a blank, the figure as it reads, or none where it cannot be believed.")
	p.note("Write the figure that the designer answers in Answer, as the table writes it, and hand this book back: it is followed as a decision on the Warnings sheet is.")
	for i, q := range in.Result.Queries {
		p.line(whole(i+1), words(q.Line), words(q.Station), words(q.Reads), words(both(q.Before, q.After)), words(both(q.Below, q.Above)),
			words(q.Text), words(q.Suggests), words(in.usedFor(q.Cell)), sheet.Cell{Style: sheet.Input}, in.linked(text(q.Cell.String()), q.Cell))
	}
	return p
}

// both is what two sides say, either of which may say nothing.
func both(one, other string) string {
	return strings.TrimPrefix(strings.TrimSuffix(one+"; "+other, "; "), "; ")
}

// decidedOf is what was decided of a cell.
func (in Input) decidedOf(c source.Cell) (hull.Decided, bool) {
	for _, d := range in.Result.Decided {
		if d.Cell == c {
			return d, true
		}
	}
	return hull.Decided{}, false
}

// usedFor is the figure decided on for a cell, empty where none was.
func (in Input) usedFor(c source.Cell) string {
	d, _ := in.decidedOf(c)
	return d.Now
}

// jsonQueries is what there is to ask the designer.
func jsonQueries(in Input) []object {
	var list []object
	for _, q := range in.Result.Queries {
		o := object{"book": q.Cell.Book, "sheet": q.Cell.Sheet, "cell": q.Cell.Ref(), "line": q.Line, "station": q.Station, "reads": q.Reads,
			"before": q.Before, "after": q.After, "below": q.Below, "above": q.Above, "text": q.Text, "suggests": q.Suggests}
		if d, ok := in.decidedOf(q.Cell); ok {
			o["used"] = d.Now
		}
		list = append(list, o)
	}
	return list
}
