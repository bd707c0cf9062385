package csv

import (
	"encoding/csv"
	"fmt"
	"io"
	"strings"
)

// records reads the fields, by the strict rules of RFC 4180 if the file keeps
// them; else loosely, for inch marks that were never quoted. Read loosely, a
// field with a line break is a quotation that never closed and would swallow
// the rest of the file, so it is refused. A blank line is a row without fields:
// every row is where a spreadsheet program shows it.
func records(text string, comma rune) ([][]string, error) {
	rows, bad, err := parse(text, comma, false)
	if err != nil {
		rows, bad, err = parse(text, comma, true)
	}
	switch {
	case err != nil:
		return nil, fmt.Errorf("not a text of columns: %w", err)
	case bad > 0:
		return nil, fmt.Errorf("a quotation mark at line %d opens and does not close", bad)
	}
	return rows, nil
}

// parse reads the rows; bad is the line of a quotation that cannot have been
// meant for one, 0 for none.
func parse(text string, comma rune, lazy bool) (rows [][]string, bad int, err error) {
	r := csv.NewReader(strings.NewReader(text))
	r.Comma, r.FieldsPerRecord, r.LazyQuotes = comma, -1, lazy
	for {
		from := r.InputOffset()
		row, err := r.Read()
		if err == io.EOF {
			return rows, bad, nil
		}
		if err != nil {
			return nil, 0, err
		}
		for n := blankLines(text[from:]); n > 0; n-- {
			rows = append(rows, nil)
		}
		for i, f := range row {
			if bad == 0 && swallowed(f, comma, lazy) {
				bad, _ = r.FieldPos(i)
			}
		}
		rows = append(rows, row)
	}
}

// blankLines is how many empty lines a text begins with: the library passes over
// them.
func blankLines(text string) int { return len(text) - len(strings.TrimLeft(text, "\n")) }

// swallowed says that a field is the text between two marks that were not meant
// as quotation marks: ditto marks, or inch marks.
func swallowed(field string, comma rune, lazy bool) bool {
	broken := strings.Contains(field, "\n")
	return broken && (lazy || strings.HasPrefix(field, string(comma))) || strings.TrimSpace(field) == string(comma)
}
