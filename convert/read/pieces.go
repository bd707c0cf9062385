package read

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/stock"
)

// pieces reads a list of pieces to be cut as they are given, without joints. A
// blank count is one; a blank species is that of the row above; a piece without a
// mark is called by its place in the list.
func (r *reader) pieces(t *records) {
	table := t.found("pieces")
	r.otherSizes(t)
	cols := r.lengths(t, &table, "thickness", "width", "length")
	species := ""
	for i, row := range t.rows {
		w := stock.Wanted{Mark: t.text(row, "piece"), Cell: t.where(row)}
		if strings.TrimSpace(w.Mark) == "" {
			w.Mark = fmt.Sprint(i + 1)
		}
		if s := t.text(row, "species"); s != "" {
			species = s
		}
		what := func(field string) string { return fmt.Sprintf("%s of piece %s", field, w.Mark) }
		w.Species = species
		w.Thickness = r.length(t, row, "thickness", cols, what("thickness"))
		w.Width = r.length(t, row, "width", cols, what("width"))
		w.Length = r.length(t, row, "length", cols, what("length"))
		w.Count = r.count(t, row, "count", what("count"))
		table.Digest += fmt.Sprint(w.Mark, w.Thickness.Value, w.Width.Value, w.Length.Value, w.Count.Value, ";")
		r.job.Wanted = append(r.job.Wanted, w)
	}
	r.tableRead()
	r.tables = append(r.tables, table)
}

// ListOpen is a list of sizes that nothing says what it is of.
var ListOpen = &finding.Kind{
	Code: "list-open", Severity: finding.Error, Title: "list that may be of boards or of pieces",
	Why:    "Boards to cut from and pieces to be cut are listed alike: taken for each other, the yard would order the wrong lumber.",
	Remedy: "write Board or Piece over the marks, or a title over the list: lumber rack, or pieces to cut",
}

// rackOrPieces settles whether a list of sizes is of boards to cut from or of
// pieces to be cut: by its columns, or else by the words over it. Where neither
// says, or they say both, it is asked and left.
func (r *reader) rackOrPieces(t *records) *records {
	boards, pieces := r.columnsSay(t)
	if !boards && !pieces {
		boards, pieces = r.titleSays(t)
	}
	if boards == pieces {
		r.body(t)
		r.add(finding.Finding{Kind: ListOpen, Cell: t.page.cell(t.head, t.left),
			Text: fmt.Sprintf("the list at %s may be of boards to cut from or of pieces to be cut: nothing says which", t.found("").Range)})
		t.page.useBlock(t.top, t.left, t.last(), t.right)
		t.page.tables++
		return nil
	}
	name := "rack"
	if pieces {
		name = "pieces"
	}
	if t.kind.name == name {
		return t
	}
	kinds := recordTables()
	k := slices.IndexFunc(kinds, func(k recordTable) bool { return k.name == name })
	return r.heading(t.page, t.top, t.head, kinds[k])
}

// columnsSay is what the columns of a list say that it is of.
func (r *reader) columnsSay(t *records) (boards, pieces bool) {
	for col := t.left; col <= t.right; col++ {
		for _, m := range []string{"price", "pricedby", "footprice", "runfoot", "runmetre", "cubicmetre", "thousand", "source", "bad", "badfrom", "badto", "delivered"} {
			boards = boards || t.cols[m] == col
		}
		// A title just over the headings is taken for their first row.
		boards = boards || r.words.has(t.heads[col], "rack") || holdsAny(t.heads[col], "board", "boards", "stock", "hand", "rough", "nominal")
		pieces = pieces || r.words.has(t.heads[col], "pieces") || holdsAny(t.heads[col], "piece", "part", "finished", "net")
	}
	return boards, pieces
}

// titleSays is what the words over a list, the nearest first, say that it is of.
func (r *reader) titleSays(t *records) (boards, pieces bool) {
	for _, c := range t.caption {
		boards = r.words.has(c, "rack") || holdsAny(c, "board", "stock", "timber", "shed", "mill", "sawmill", "merchant")
		pieces = r.words.has(c, "pieces") || holdsAny(c, "piece", "pieces")
		if boards || pieces {
			return boards, pieces
		}
	}
	return false, false
}

// holdsAny says that one of some words stands in a text.
func holdsAny(text string, some ...string) bool {
	words := tokens(text)
	return slices.ContainsFunc(some, func(w string) bool { return slices.Contains(words, w) })
}
