package xlsx

import (
	"errors"
	"fmt"
	"strings"

	"github.com/xuri/excelize/v2"
)

// agree reads a sheet again with the library, cell by cell, and refuses it where
// the two readings differ: in a cell, or in which cells there are. Each covers
// for what the other may have overlooked.
func agree(f *excelize.File, name string, g *grid, texts []rich) error {
	rows, err := f.Rows(name)
	if err != nil {
		return err
	}
	defer rows.Close()
	row, next := 0, 0
	for rows.Next() {
		row++
		columns, err := rows.Columns(excelize.Options{RawCellValue: true})
		if err != nil {
			return err
		}
		for i, has := range columns {
			want := ""
			if next < len(g.cells) && g.cells[next].row == row && g.cells[next].col == i+1 {
				want = g.cells[next].asWritten(texts)
				next++
			}
			if has != want && !(strings.Contains(want, "_") && has != "") {
				at, _ := excelize.CoordinatesToCellName(i+1, row)
				return fmt.Errorf("cell %s of sheet %q reads one way and another", at, name)
			}
		}
		if next < len(g.cells) && g.cells[next].row <= row {
			return errors.New("a cell is out of its place")
		}
	}
	if next < len(g.cells) {
		return fmt.Errorf("%d cells of sheet %q are read and lost", len(g.cells)-next, name)
	}
	return rows.Close()
}

// asWritten is a cell's value as the library gives it unformatted.
func (c *rawCell) asWritten(texts []rich) string {
	switch c.kind {
	case "s":
		if n, ok := whole([]byte(strings.TrimSpace(c.value))); ok && n < len(texts) {
			return texts[n].all()
		}
		return ""
	case "inlineStr":
		return c.rich.all()
	}
	return c.value
}
