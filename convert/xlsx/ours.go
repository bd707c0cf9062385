package xlsx

import (
	"reflect"
	"regexp"
	"strings"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// strip takes out of a book what an earlier run put into it: our sheets with the
// names they are known by, and the shading and notes on the builder's cells. What
// still holds is written again.
func strip(f *excelize.File) error {
	old := map[string]bool{}
	for _, n := range f.GetDefinedName() {
		name, at, ok := strings.Cut(n.RefersTo, "!")
		if !strings.HasPrefix(n.Name, sheet.NamePrefix) {
			continue
		}
		if ok && strings.HasPrefix(n.Name, sheet.OursPrefix) {
			old[strings.ReplaceAll(strings.Trim(name, "'"), "''", "'")] = at != "#REF"
		}
		if err := f.DeleteDefinedName(&excelize.DefinedName{Name: n.Name, Scope: n.Scope}); err != nil {
			return err
		}
	}
	for _, name := range f.GetSheetList() {
		if old[name] {
			if err := f.DeleteSheet(name); err != nil {
				return err
			}
		}
	}
	if len(old) == 0 {
		return nil
	}
	for _, name := range f.GetSheetList() {
		if err := unmark(f, name); err != nil {
			return err
		}
	}
	return nil
}

// unmark takes our notes off a sheet, and our shading off the cells that bear
// them: marking had put it in place of the builder's own.
func unmark(f *excelize.File, name string) error {
	notes, err := f.GetComments(name)
	if err != nil {
		return nil // notes the library cannot read are not ours
	}
	for _, n := range notes {
		said := wordsOf(n)
		if n.Author != author && !ourForm.MatchString(said) {
			continue
		}
		if err := f.DeleteComment(name, n.Cell); err != nil {
			return err
		}
		if own := theirNote(said); own != "" {
			if err := f.AddComment(name, note(n.Cell, own)); err != nil {
				return err
			}
		}
		id, err := f.GetCellStyle(name, n.Cell)
		if err != nil {
			return err
		}
		style, err := f.GetStyle(id)
		if err != nil {
			return err
		}
		if !shaded(style) {
			continue
		}
		style.Fill, style.Border = excelize.Fill{}, nil
		if id, err = f.NewStyle(style); err != nil {
			return err
		}
		if err := f.SetCellStyle(name, n.Cell, n.Cell, id); err != nil {
			return err
		}
	}
	return nil
}

// oursFrom is where our own words begin in a note of ours.
var oursFrom = regexp.MustCompile(`(?:^|\n\n)(?:error|warning|note): `)

// ourForm is the form of a note of ours, by which it is known when another program
// has saved the book and left its author out.
var ourForm = regexp.MustCompile(`(?s)(?:^|\n\n)(?:error|warning): .+\nTo do: `)

// theirNote is the builder's own words in a note of ours, which stand before them.
func theirNote(text string) string {
	if at := oursFrom.FindStringIndex(text); at != nil {
		return strings.TrimSpace(text[:at[0]])
	}
	return strings.TrimSpace(text)
}

// shaded says that a style's shading is ours.
func shaded(style *excelize.Style) bool {
	for _, purpose := range []sheet.Style{sheet.Unsure, sheet.Wrong} {
		if ours := looks(purpose); len(style.Fill.Color) > 0 && reflect.DeepEqual(colours(style.Fill), colours(ours.Fill)) {
			return true
		}
	}
	return false
}

func colours(f excelize.Fill) []string {
	var all []string
	for _, c := range f.Color {
		all = append(all, strings.ToUpper(strings.TrimPrefix(c, "#")))
	}
	return all
}
