package xlsx

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// rows writes a sheet's rows as its part holds them (ISO/IEC 29500-1, 18.3), each
// as soon as it is made. The library holds all of a sheet in memory, twice over,
// and types a text beside a formula as one that was typed in.
type rows struct {
	of     *sheet.Sheet
	styles map[look]int
}

// splice writes a sheet's part as the library left it, with the rows and the
// merged cells in their places.
func (r rows) splice(to io.Writer, part []byte) error {
	from, end := bytes.Index(part, []byte("<sheetData")), bytes.Index(part, []byte("</sheetData>"))
	if from < 0 || end < 0 {
		return fmt.Errorf("no rows in the part of %q", r.of.Name)
	}
	rest := part[end:]
	after := len("</sheetData>")
	if filter := []byte("</autoFilter>"); bytes.HasPrefix(rest[after:], []byte("<autoFilter")) && bytes.Contains(rest, filter) {
		after = bytes.Index(rest, filter) + len(filter)
	}
	if _, err := to.Write(append(part[:from:from], "<sheetData>"...)); err != nil {
		return err
	}
	if err := r.write(to); err != nil {
		return err
	}
	for _, piece := range [][]byte{rest[:after], r.merged(), rest[after:]} {
		if _, err := to.Write(piece); err != nil {
			return err
		}
	}
	return nil
}

// write writes the rows, some at a time.
func (r rows) write(to io.Writer) error {
	const some = 32 << 10
	out := make([]byte, 0, 2*some)
	for n, cells := range r.of.Each() {
		if out = r.row(out, n, cells); len(out) < some {
			continue
		}
		if _, err := to.Write(out); err != nil {
			return err
		}
		out = out[:0]
	}
	_, err := to.Write(out)
	return err
}

// row adds one row; nothing where all its cells are blank.
func (r rows) row(out []byte, n int, cells []sheet.Cell) []byte {
	start := len(out)
	out = strconv.AppendInt(append(out, `<row r="`...), int64(n), 10)
	out = append(out, '"')
	if h := height(r.of, n, cells); h > 0 {
		out = strconv.AppendFloat(append(out, ` ht="`...), h, 'f', -1, 64)
		out = append(out, `" customHeight="1"`...)
	}
	out = append(out, '>')
	filled, middle := false, slices.ContainsFunc(cells, large)
	for i := range cells {
		if c := &cells[i]; !blank(c) {
			filled = true
			out = r.cell(out, n, i+1, c, lookOf(c, middle))
		}
	}
	if !filled {
		return out[:start]
	}
	return append(out, "</row>"...)
}

// blank says that a cell is as if it were not there.
func blank(c *sheet.Cell) bool {
	none := c.Kind == sheet.Empty && c.Style == sheet.Plain || c.Kind == sheet.Text && c.Text == "" && c.Style != sheet.Input
	return none && c.Formula == "" && !c.Rule
}

// cell adds one cell.
func (r rows) cell(out []byte, row, col int, c *sheet.Cell, l look) []byte {
	out = append(append(out, `<c r="`...), letters26(col)...)
	out = strconv.AppendInt(out, int64(row), 10)
	out = strconv.AppendInt(append(out, `" s="`...), int64(r.styles[l]), 10)
	out = append(out, '"')
	formula := func(kind string) {
		out = append(append(out, kind...), '>')
		if c.Formula != "" {
			out = append(addText(append(out, "<f>"...), c.Formula), "</f>"...)
		}
	}
	switch {
	case c.Kind == sheet.Empty, isNumber(c) && (math.IsNaN(c.Number) || math.IsInf(c.Number, 0)):
		formula("")
	case isNumber(c):
		formula("")
		out = append(strconv.AppendFloat(append(out, "<v>"...), c.Number, 'f', -1, 64), "</v>"...)
	case c.Kind == sheet.Bool:
		formula(` t="b"`)
		out = append(strconv.AppendInt(append(out, "<v>"...), int64(math.Min(1, math.Abs(c.Number))), 10), "</v>"...)
	case c.Formula != "":
		formula(` t="str"`)
		out = append(addText(append(out, "<v>"...), tidy(c.Text)), "</v>"...)
	case c.Text == "":
		formula("")
	default:
		out = append(out, ` t="inlineStr"><is><t xml:space="preserve">`...)
		out = append(addText(out, tidy(c.Text)), "</t></is>"...)
	}
	return append(out, "</c>"...)
}

func isNumber(c *sheet.Cell) bool {
	return c.Kind == sheet.Number || c.Kind == sheet.Date || c.Kind == sheet.Time
}

// merged is the merged cells.
func (r rows) merged() []byte {
	if len(r.of.Merged) == 0 {
		return nil
	}
	out := fmt.Appendf(nil, `<mergeCells count="%d">`, len(r.of.Merged))
	for _, m := range r.of.Merged {
		out = fmt.Appendf(out, `<mergeCell ref="%s%d:%s%d"/>`, letters26(m.Left), m.Top, letters26(m.Right), m.Bottom)
	}
	return append(out, "</mergeCells>"...)
}

// letters26 is a column's letters.
func letters26(col int) string {
	if col <= len(oneLetter) {
		return oneLetter[col-1 : col]
	}
	name, _ := excelize.ColumnNumberToName(col)
	return name
}

const oneLetter = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"

var likeEscape = regexp.MustCompile(`_(x[0-9A-Fa-f]{4})`)

// addText adds a text as the part holds it.
func addText(out []byte, text string) []byte {
	if strings.Contains(text, "_x") { // which a reader would take for an escaped character (22.9.2.19)
		text = likeEscape.ReplaceAllString(text, "_x005F_$1")
	}
	for _, r := range text {
		switch r {
		case '&':
			out = append(out, "&amp;"...)
		case '<':
			out = append(out, "&lt;"...)
		case '>':
			out = append(out, "&gt;"...)
		case 0xFFFE, 0xFFFF: // which XML has no place for
			out = utf8.AppendRune(out, utf8.RuneError)
		default:
			out = utf8.AppendRune(out, r)
		}
	}
	return out
}
