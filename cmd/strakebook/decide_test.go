package main

import (
	"fmt"

	"github.com/rogpeppe/go-internal/testscript"
	"github.com/xuri/excelize/v2"
)

// decide is what a builder does in a spreadsheet program: it writes a decision
// beside the finding at a cell on the Warnings sheet of a book.
//
//	decide BOOK Sheet!C7 words
func decide(ts *testscript.TestScript, _ bool, args []string) {
	if len(args) != 3 {
		ts.Fatalf("usage: decide book cell words")
	}
	path := ts.MkAbs(args[0])
	book, err := excelize.OpenFile(path)
	ts.Check(err)
	rows, err := book.GetRows("Warnings")
	ts.Check(err)
	for i, row := range rows {
		if len(row) > 2 && row[2] == args[1] {
			ts.Check(book.SetCellStr("Warnings", fmt.Sprintf("H%d", i+1), args[2]))
			ts.Check(book.Save())
			return
		}
	}
	ts.Fatalf("no finding at %s", args[1])
}
