package main

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

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

// write is what a builder does to a cell of a book: the one named, or the value in the
// box of a setting or its unit.
//
//	write BOOK Sheet!C7 words
//	write BOOK 'rip kerf' 1/4
//	write BOOK 'unit of rip kerf' mm
func write(ts *testscript.TestScript, _ bool, args []string) {
	if len(args) != 3 {
		ts.Fatalf("usage: write book cell words")
	}
	path := ts.MkAbs(args[0])
	book, err := excelize.OpenFile(path)
	ts.Check(err)
	sheet, ref, of := strings.Cut(args[1], "!")
	if !of {
		name, unit := strings.CutPrefix(args[1], "unit of ")
		col := "B"
		if unit {
			col = "C"
		}
		rows, err := book.GetRows("Settings")
		ts.Check(err)
		i := slices.IndexFunc(rows, func(row []string) bool { return len(row) > 0 && row[0] == name })
		sheet, ref = "Settings", fmt.Sprint(col, i+1)
	}
	var value any = args[2]
	if number, err := strconv.ParseFloat(args[2], 64); err == nil {
		value = number
	}
	ts.Check(book.SetCellValue(sheet, ref, value))
	ts.Check(book.Save())
}
