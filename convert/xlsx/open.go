package xlsx

import (
	"bytes"
	"fmt"
	"path/filepath"
	"strconv"
	"strings"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// Read reads a workbook whole, or refuses it: its errors are *sheet.Refused. The
// name is only for messages.
func Read(name string, data []byte) (*sheet.Book, error) {
	z, err := unfit(name, data)
	if err != nil {
		return nil, err
	}
	in, err := whole(name, z)
	if err != nil {
		return nil, err
	}
	refuse := func(err error) error {
		return &sheet.Refused{Doing: "open", Path: name, Cause: "damaged", Hint: "open it, repair it and save it under a new name", Err: err}
	}
	f, err := excelize.OpenReader(bytes.NewReader(in.trimmed), excelize.Options{UnzipSizeLimit: mostUnpacked, UnzipXMLSizeLimit: mostUnpacked})
	if err != nil {
		return nil, refuse(err)
	}
	defer f.Close()
	book := &sheet.Book{Path: name, Name: filepath.Base(name), Kind: strings.TrimPrefix(strings.ToLower(filepath.Ext(name)), ".")}
	r := reader{file: f, formats: map[int]format{}}
	if props, err := f.GetWorkbookProps(); err == nil && props.Date1904 != nil {
		r.epoch1904 = *props.Date1904
	}
	for _, s := range f.GetSheetList() {
		target := in.targets[s]
		if target != "" && !isSheet(target) {
			continue // a sheet of charts or of another kind: it has no cells
		}
		p, ok := in.sheets[target]
		if !ok {
			return nil, refuse(fmt.Errorf("sheet %q is not in it", s))
		}
		out, err := r.sheet(s, p)
		if err != nil {
			return nil, refuse(err)
		}
		book.Sheets = append(book.Sheets, out)
	}
	book.Names = names(f, book)
	return book, nil
}

// reader reads the sheets of one open workbook.
type reader struct {
	file      *excelize.File
	epoch1904 bool
	formats   map[int]format
}

// format is what a cell's style says of its value.
type format struct {
	code   string
	kind   sheet.Kind // Number, Date or Time
	struck bool
	quoted bool
}

func (r reader) sheet(name string, p part) (*sheet.Sheet, error) {
	f := r.file
	out := &sheet.Sheet{Name: name, HiddenRows: p.hidden, HiddenCols: p.cols}
	if visible, err := f.GetSheetVisible(name); err == nil {
		out.Hidden = !visible
	}
	merged, err := f.GetMergeCells(name)
	if err != nil {
		return nil, err
	}
	covered := map[[2]int]bool{}
	for _, m := range merged {
		g, err := block(m.GetStartAxis() + ":" + m.GetEndAxis())
		if err != nil {
			return nil, err
		}
		out.Merged = append(out.Merged, g)
		if (g.Bottom-g.Top+1)*(g.Right-g.Left+1) > 100_000 {
			continue
		}
		for row := g.Top; row <= g.Bottom; row++ {
			for col := g.Left; col <= g.Right; col++ {
				covered[[2]int{row, col}] = row != g.Top || col != g.Left
			}
		}
	}
	for _, c := range p.cells {
		col, row, err := excelize.CellNameToCoordinates(c.ref)
		if err != nil {
			return nil, err
		}
		if covered[[2]int{row, col}] {
			continue // what lies under a merged cell is not shown, and is not the builder's word
		}
		cell, err := r.cell(name, c)
		if err != nil {
			return nil, err
		}
		if cell.Kind != sheet.Empty || cell.Formula != "" || cell.Struck != "" {
			out.Set(row, col, cell)
		}
	}
	notes, err := f.GetComments(name)
	if err != nil {
		return out, nil // notes that cannot be read are not the builder's figures
	}
	for _, n := range notes {
		col, row, err := excelize.CellNameToCoordinates(n.Cell)
		if err != nil {
			continue
		}
		c := out.At(row, col)
		c.Note = n.Text
		for _, p := range n.Paragraph {
			c.Note += p.Text
		}
		c.Note = strings.TrimSpace(c.Note)
		out.Set(row, col, c)
	}
	return out, nil
}

// cell is one cell as the library has it, every error counting.
func (r reader) cell(name string, c rawCell) (sheet.Cell, error) {
	f := r.file
	raw, err := f.GetCellValue(name, c.ref, excelize.Options{RawCellValue: true})
	if err != nil {
		return sheet.Cell{}, err
	}
	style, err := f.GetCellStyle(name, c.ref)
	if err != nil {
		return sheet.Cell{}, err
	}
	form, err := r.format(style)
	if err != nil {
		return sheet.Cell{}, err
	}
	out := sheet.Cell{Format: form.code, Quoted: form.quoted}
	if c.formula {
		if out.Formula, err = f.GetCellFormula(name, c.ref); err != nil {
			return out, err
		}
		if !c.value {
			out.NoValue = true
			if raw, err = f.CalcCellValue(name, c.ref, excelize.Options{RawCellValue: true}); err != nil || raw == "" {
				return out, nil // said by the reader: a formula never worked out
			}
		}
	}
	if err := r.fill(&out, name, c, raw, form); err != nil {
		return out, err
	}
	if form.struck {
		out = sheet.Cell{Struck: out.Text, Note: out.Note}
	}
	return out, nil
}

// fill puts the value into the cell by what the book says it is.
func (r reader) fill(out *sheet.Cell, name string, c rawCell, raw string, form format) error {
	switch c.kind {
	case "s", "inlineStr":
		out.Kind, out.Text = sheet.Text, raw
		runs, err := r.file.GetCellRichText(name, c.ref)
		if err == nil && len(runs) > 1 {
			kept := ""
			for _, run := range runs {
				if run.Font != nil && run.Font.Strike {
					out.Struck += run.Text
				} else {
					kept += run.Text
				}
			}
			if out.Struck != "" {
				out.Text = kept
			}
		}
	case "str":
		out.Kind, out.Text = sheet.Text, raw
	case "e":
		out.Kind, out.Text = sheet.Fault, raw
	case "b":
		out.Kind, out.Text = sheet.Bool, raw
		if raw == "1" || strings.EqualFold(raw, "true") {
			out.Number = 1
		}
	case "d":
		out.Kind, out.Text = sheet.Date, raw
	default:
		v, err := strconv.ParseFloat(raw, 64)
		if err != nil {
			if out.NoValue {
				out.Kind, out.Text = sheet.Text, raw
				return nil
			}
			return err
		}
		out.Kind, out.Number, out.Text = form.kind, v, raw
		if form.kind == sheet.Date && r.epoch1904 {
			out.Number += 1462
		}
		if form.code != "" {
			if shown, err := r.file.GetCellValue(name, c.ref); err == nil {
				out.Text = shown
			}
		}
	}
	if strings.TrimSpace(out.Text) == "" && out.Struck == "" && c.kind != "" {
		out.Kind, out.Text = sheet.Empty, ""
	}
	return nil
}

// block is an address such as B3:W14 as a range.
func block(ref string) (sheet.Range, error) {
	from, to, ok := strings.Cut(strings.ReplaceAll(ref, "$", ""), ":")
	if !ok {
		to = from
	}
	left, top, err := excelize.CellNameToCoordinates(from)
	if err != nil {
		return sheet.Range{}, err
	}
	right, bottom, err := excelize.CellNameToCoordinates(to)
	return sheet.Range{Top: top, Left: left, Bottom: bottom, Right: right}, err
}

// names is the book's tables and the defined names that stand for one plain block.
func names(f *excelize.File, book *sheet.Book) []sheet.Name {
	var all []sheet.Name
	for _, n := range f.GetDefinedName() {
		at := strings.LastIndex(n.RefersTo, "!")
		if at < 0 || strings.HasPrefix(n.Name, "_xlnm.") {
			continue
		}
		g, err := block(n.RefersTo[at+1:])
		if err == nil {
			all = append(all, sheet.Name{Name: n.Name, Sheet: strings.ReplaceAll(strings.Trim(n.RefersTo[:at], "'"), "''", "'"), Range: g})
		}
	}
	for _, s := range book.Sheets {
		tables, err := f.GetTables(s.Name)
		if err != nil {
			continue // a table that cannot be read is only a hint lost
		}
		for _, t := range tables {
			if g, err := block(t.Range); err == nil {
				all = append(all, sheet.Name{Name: t.Name, Sheet: s.Name, Range: g})
			}
		}
	}
	return all
}
