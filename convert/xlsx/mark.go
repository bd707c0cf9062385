package xlsx

import (
	"bytes"
	"strings"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// mark shades and notes doubtful cells of the builder's own sheets, keeping
// their number formats, fonts and alignment. A note that the builder has on such
// a cell stands before ours in one. A note that the library cannot add is left
// out: the shading and the Warnings sheet still tell.
func (b *carried) mark(marks []sheet.Mark) error {
	f := b.file
	renameNoteShapes(f)
	type key struct {
		style   int
		purpose sheet.Style
	}
	made := map[key]int{}
	for _, m := range marks {
		at, err := excelize.CoordinatesToCellName(m.Col, m.Row)
		if err != nil {
			return err
		}
		had, err := f.GetCellStyle(m.Sheet, at)
		if err != nil {
			return err
		}
		id, ok := made[key{had, m.Style}]
		if !ok {
			style, err := f.GetStyle(had)
			if err != nil {
				return err
			}
			if font := style.Font; font != nil && len(font.Color) == 8 {
				font.Color = font.Color[2:] // some write no opacity, and the library writes its own before it
			}
			ours := looks(m.Style)
			style.Fill, style.Border = ours.Fill, ours.Border
			if id, err = f.NewStyle(style); err != nil {
				return err
			}
			made[key{had, m.Style}] = id
		}
		if err := f.SetCellStyle(m.Sheet, at, at, id); err != nil {
			return err
		}
		if m.Note != "" && !b.noNotes[m.Sheet] {
			b.note(m.Sheet, at, m.Note)
		}
	}
	return nil
}

// note puts a note on a cell, after the builder's own where there is one.
func (b *carried) note(name, at, text string) {
	had, err := b.had(name)
	if err != nil {
		return
	}
	if own := had[at]; own != "" {
		if err := b.file.DeleteComment(name, at); err != nil {
			return
		}
		text = own + "\n\n" + text
	}
	_ = b.file.AddComment(name, note(at, text))
}

// had is the builder's own notes on a sheet, by their cells.
func (b *carried) had(name string) (map[string]string, error) {
	if all, ok := b.notes[name]; ok {
		return all, nil
	}
	notes, err := b.file.GetComments(name)
	if err != nil {
		return nil, err
	}
	all := map[string]string{}
	for _, n := range notes {
		all[n.Cell] = wordsOf(n)
	}
	b.notes[name] = all
	return all, nil
}

// wordsOf is all the words of a note, whichever way it keeps them.
func wordsOf(n excelize.Comment) string {
	words := n.Text
	for _, run := range n.Paragraph {
		words += run.Text
	}
	return strings.TrimSpace(words)
}

// renameNoteShapes gives the shapes of notes written by other programs the names
// the library expects; it refuses to add a note beside any other.
func renameNoteShapes(f *excelize.File) {
	f.Pkg.Range(func(name, data any) bool {
		if strings.HasPrefix(name.(string), "xl/drawings/vmlDrawing") {
			if b, ok := data.([]byte); ok && bytes.Contains(b, []byte(`id="shape_`)) {
				b = bytes.ReplaceAll(b, []byte(`id="shape_`), []byte(`id="_x0000_s1025`))
				f.Pkg.Store(name, b)
			}
		}
		return true
	})
}
