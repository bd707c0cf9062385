package xlsx

import (
	"errors"
	"fmt"
	"strings"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// setUp sets what belongs to a whole sheet: columns, paper, print titles, filter,
// lists.
func (w writer) setUp(s *sheet.Sheet, cols int) error {
	last, err := excelize.CoordinatesToCellName(cols, max(1, len(s.Rows)))
	if err != nil {
		return err
	}
	fit := true
	return errors.Join(
		w.columns(s),
		w.file.SetSheetDimension(s.Name, "A1:"+last),
		w.paper(s),
		w.headAndFoot(s),
		w.printedPart(s),
		w.filter(s),
		// After the filter, which would undo it.
		w.file.SetSheetProps(s.Name, &excelize.SheetPropsOptions{FitToPage: &fit}),
		w.dropDowns(s))
}

// columns sets the widths of columns, the rows that stay in view, and the ends of
// pages.
func (w writer) columns(s *sheet.Sheet) error {
	f := w.file
	for i, width := range s.Out.Widths {
		if name := letters26(i + 1); width > 0 {
			if err := f.SetColWidth(s.Name, name, name, width); err != nil {
				return err
			}
		}
	}
	if h := s.Out.HeadRow; h > 0 {
		if err := f.SetPanes(s.Name, &excelize.Panes{Freeze: true, YSplit: h, TopLeftCell: fmt.Sprint("A", h+1), ActivePane: "bottomLeft"}); err != nil {
			return err
		}
	}
	for _, after := range s.Out.RowBreaks {
		if err := f.InsertPageBreak(s.Name, fmt.Sprint("A", after+1)); err != nil {
			return err
		}
	}
	return nil
}

// printTitles is the headings, and the columns repeated on papers side by side.
func printTitles(s *sheet.Sheet) string {
	rows := fmt.Sprintf("%s!$%d:$%d", Quote(s.Name), s.Out.HeadRow, s.Out.HeadRow)
	if s.Out.PagesWide < 2 || s.Out.KeyCols == 0 {
		return rows
	}
	return fmt.Sprintf("%s!$A:$%s,%s", Quote(s.Name), letters26(s.Out.KeyCols), rows)
}

// paper sets the paper a sheet is printed on, which way, on how many, and the margins.
func (w writer) paper(s *sheet.Sheet) error {
	size, across, wide, tall := 1, "portrait", 1, 0
	if s.Out.A4 {
		size = 9
	}
	if s.Out.Landscape {
		across = "landscape"
	}
	if s.Out.OnePage {
		tall = 1
	}
	if s.Out.PagesWide > 1 {
		wide = s.Out.PagesWide
	}
	margin, edge, top := 0.5, 0.3, 0.5
	if s.Out.Header != "" {
		top = 0.75
	}
	return errors.Join(
		w.file.SetPageLayout(s.Name, &excelize.PageLayoutOptions{Size: &size, Orientation: &across, FitToWidth: &wide, FitToHeight: &tall}),
		w.file.SetPageMargins(s.Name, &excelize.PageLayoutMarginsOptions{Left: &margin, Right: &margin, Top: &top, Bottom: &margin, Header: &edge, Footer: &edge}))
}

// headAndFoot sets what stands at the head and the foot of each page.
func (w writer) headAndFoot(s *sheet.Sheet) error {
	if s.Out.Footer == "" && s.Out.HeadRow == 0 {
		return nil
	}
	h := &excelize.HeaderFooterOptions{OddFooter: "&L" + printed(s.Out.Footer) + "&C" + printed(s.Name) + "&RPage &P of &N"}
	if s.Out.Header != "" {
		h.OddHeader = "&L&\"-,Bold\"&12 " + printed(s.Out.Header)
	}
	return w.file.SetHeaderFooter(s.Name, h)
}

// printed is text as a page's header or footer takes it, cut where it would be
// longer than they may be together.
func printed(text string) string {
	const most = 90
	if r := []rune(tidy(text)); len(r) > most {
		text = string(r[:most]) + "..."
	}
	return strings.ReplaceAll(strings.ReplaceAll(text, "\n", " "), "&", "&&")
}

// printedPart names the rows and columns repeated on each page, and the part that is
// printed.
func (w writer) printedPart(s *sheet.Sheet) error {
	if s.Out.HeadRow == 0 {
		return nil
	}
	if err := w.file.SetDefinedName(&excelize.DefinedName{Name: "_xlnm.Print_Titles", RefersTo: printTitles(s), Scope: s.Name}); err != nil || s.Out.PrintCols == 0 {
		return err
	}
	part := fmt.Sprintf("%s!$A$1:$%s$%d", Quote(s.Name), letters26(s.Out.PrintCols), len(s.Rows))
	return w.file.SetDefinedName(&excelize.DefinedName{Name: "_xlnm.Print_Area", RefersTo: part, Scope: s.Name})
}

// filter sets the filter over the headings.
func (w writer) filter(s *sheet.Sheet) error {
	h := s.Out.HeadRow
	if h == 0 || s.Out.FilterTo <= h {
		return nil
	}
	return w.file.AutoFilter(s.Name, fmt.Sprintf("A%d:%s%d", h, letters26(len(s.Rows[h-1])), s.Out.FilterTo), nil)
}

// dropDowns sets the words to choose from in cells.
func (w writer) dropDowns(s *sheet.Sheet) error {
	for _, d := range s.Out.DropDown {
		v := excelize.NewDataValidation(true)
		v.Sqref = fmt.Sprintf("%s%d:%s%d", letters26(d.Range.Left), d.Range.Top, letters26(d.Range.Right), d.Range.Bottom)
		if err := v.SetDropList(d.Words); err != nil {
			return err
		}
		v.ShowErrorMessage = false // a value of the builder's own may be written too
		if err := w.file.AddDataValidation(s.Name, v); err != nil {
			return err
		}
	}
	return nil
}
