package xlsx

import (
	"strings"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// shownKey is a stored number under a cell style.
type shownKey struct {
	style int
	value string
}

// show is a number as the spreadsheet shows it, as nearly as the library can
// tell: for quoting only, never for reading. It is worked out on a sheet of its
// own, as the library would first load the whole of the builder's.
func (b *builder) show(style int, stored string, form format) string {
	stored = strings.TrimSpace(stored)
	if form.code == "" {
		return stored
	}
	key := shownKey{style, stored}
	if text, ok := b.shown[key]; ok {
		return text
	}
	if b.scratch == "" {
		b.scratch = sheet.FreeName(b.file.GetSheetList(), "Scratch")
		if _, err := b.file.NewSheet(b.scratch); err != nil {
			return stored
		}
	}
	text := stored
	at, err := excelize.CoordinatesToCellName(1+style%mostCols, 1+style/mostCols)
	if err == nil && b.file.SetCellDefault(b.scratch, at, stored) == nil && b.file.SetCellStyle(b.scratch, at, at, style) == nil {
		if shown, err := b.file.GetCellValue(b.scratch, at); err == nil {
			text = shown
		}
	}
	b.shown[key] = text
	return text
}
