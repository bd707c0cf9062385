package xlsx

import (
	"slices"
	"strings"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// writer writes our sheets into one workbook.
type writer struct {
	file   *excelize.File
	styles map[look]int
	rows   map[string]rows // what is yet to be written, by the names of the sheets' parts
}

// look is a purpose with the number format carried over from a builder's cell.
type look struct {
	purpose sheet.Style
	format  string
	rule    bool
	middle  bool // beside figures to be called out, half way up them
}

func lookOf(c *sheet.Cell, middle bool) look {
	l := look{c.Style, c.Format, c.Rule, middle}
	if l.purpose == sheet.Plain && c.Kind == sheet.Text {
		l.purpose = sheet.Entry // air between it and a figure beside it
	}
	return l
}

// large says that a cell is to be called out across a shop.
func large(c sheet.Cell) bool { return c.Style == sheet.Large || c.Style == sheet.Called }

// style has the workbook know a look.
func (w writer) style(l look) error {
	if _, ok := w.styles[l]; ok {
		return nil
	}
	style := looks(l.purpose)
	if format := l.format; format != "" {
		style.CustomNumFmt = &format
	}
	if l.rule {
		style.Border = append(style.Border, excelize.Border{Type: "top", Color: "5F5F5F", Style: 1})
	}
	if l.middle || l.rule {
		style.Alignment.Vertical = "center"
	}
	id, err := w.file.NewStyle(style)
	w.styles[l] = id
	return err
}

// sheet writes one sheet but for its rows, which go straight into the file when it
// is written: see rows.
func (w writer) sheet(s *sheet.Sheet, part string) error {
	w.rows[part] = rows{s, w.styles}
	widest, needs := 1, widths{}
	for r, row := range s.Each() {
		widest = max(widest, len(row))
		needs.row(s, r, row)
		middle := slices.ContainsFunc(row, large)
		for c := range row {
			if err := w.aside(s, r, c+1, &row[c], middle); err != nil {
				return err
			}
		}
	}
	if s.Out.Widths == nil && needs.sum() > downPaper {
		s.Out.Landscape = true
	}
	s.Out.Widths = needs.widen(s.Out.Widths)
	if err := w.setUp(s, widest); err != nil {
		return err
	}
	for _, c := range s.Out.Charts {
		if err := w.chart(s, c); err != nil {
			return err
		}
	}
	return nil
}

// aside is what a cell needs that does not stand in its row: its look, its link
// and its note.
func (w writer) aside(s *sheet.Sheet, row, col int, c *sheet.Cell, middle bool) error {
	if !blank(c) {
		if err := w.style(lookOf(c, middle)); err != nil {
			return err
		}
	}
	if c.Link == "" && c.Note == "" {
		return nil
	}
	at, err := excelize.CoordinatesToCellName(col, row)
	if err != nil {
		return err
	}
	if c.Link != "" {
		if err := w.file.SetCellHyperLink(s.Name, at, c.Link, "Location"); err != nil {
			return err
		}
	}
	if c.Note != "" {
		return w.file.AddComment(s.Name, note(at, c.Note))
	}
	return nil
}

// height is a row's height where its wrapped text takes several lines; 0, the
// standard, where it takes one. No spreadsheet works it out by itself on opening.
func height(s *sheet.Sheet, r int, row []sheet.Cell) float64 {
	if h := s.Out.Heights[r]; h > 0 {
		return h
	}
	if slices.ContainsFunc(row, large) {
		return 25
	}
	most, air := 1, 0.0
	for c, cell := range row {
		switch {
		case cell.Style == sheet.Title:
			return 30
		case cell.Style == sheet.CardHead:
			return 54
		case cell.Style == sheet.CardLine, cell.Style == sheet.CardDoubt:
			return 18
		case cell.Rule:
			air = 4 // between the line and the words below it
		}
		if !wraps()[cell.Style] {
			continue
		}
		if w := width(s, r, c+1); w > 0 {
			most = max(most, lines(cell.Text, w))
		}
	}
	if most == 1 && air == 0 {
		return 0
	}
	return 14*float64(most) + air
}

// tidy is text without what a spreadsheet cannot hold: control characters, and
// more than a cell's fill.
func tidy(text string) string {
	text = strings.Map(func(r rune) rune {
		if r < ' ' && r != '\n' && r != '\t' {
			return -1
		}
		return r
	}, text)
	if len(text) > 32000 {
		text = strings.ToValidUTF8(text[:32000], "") + " ..."
	}
	return text
}

// author is whom our notes on the builder's cells are by.
const author = "strakebook"

func note(at, text string) excelize.Comment {
	lines := strings.Count(text, "\n") + len(text)/40 + 2
	return excelize.Comment{Cell: at, Author: author, Text: tidy(text), Width: 260, Height: uint(18 * lines)}
}
