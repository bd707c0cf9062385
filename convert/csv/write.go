package csv

import (
	"io"
	"iter"
	"regexp"
	"strings"
	"unicode/utf8"

	"github.com/gocarina/gocsv"
)

// Write writes rows as a text file that any spreadsheet opens: UTF-8 with its
// mark, lines ended as RFC 4180 has them, and text that a spreadsheet might run
// as a formula guarded by a quotation mark (OWASP ASVS 5.0, 1.2.10). The library
// takes a table's columns from a kind of line that is known beforehand; these come
// of the book, its units and its joints, and so are handed to its writer as they
// are.
func Write(w io.Writer, rows iter.Seq[[]string]) error {
	to, err := newGuarding(w)
	if err != nil {
		return err
	}
	for row := range rows {
		if err := to.Write(row); err != nil {
			return err
		}
	}
	to.Flush()
	return to.Error()
}

// guarding writes rows with their formulas guarded.
type guarding struct{ *gocsv.SafeCSVWriter }

// newGuarding writes the mark of UTF-8, and is what writes the rows after it.
func newGuarding(w io.Writer) (guarding, error) {
	_, err := io.WriteString(w, "\ufeff")
	to := gocsv.DefaultCSVWriter(w)
	to.UseCRLF = true
	return guarding{to}, err
}

// Write writes one row.
func (g guarding) Write(row []string) error { return g.SafeCSVWriter.Write(guarded(row)) }

func guarded(row []string) []string {
	out := make([]string, len(row))
	for i, field := range row {
		out[i] = guard(clean(field))
	}
	return out
}

// clean is a field without what no text file may hold, line breaks made one kind.
func clean(field string) string {
	field = strings.ToValidUTF8(strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(field), string(utf8.RuneError))
	return strings.Map(func(r rune) rune {
		if r < ' ' && r != '\n' && r != '\t' {
			return utf8.RuneError
		}
		return r
	}, field)
}

// guard puts a quotation mark before text that begins as a formula does, or that a
// spreadsheet takes for a date, as it does 3-4-6. A number is left a number, and a
// dash a dash. Text that already begins with such
// a mark gets one more, so that unguard gives it back.
func guard(field string) string {
	rest := strings.TrimLeft(field, "'")
	switch {
	case plainNumber.MatchString(field), strings.Trim(field, "-") == "":
		return field
	case formula(rest), likeDate.MatchString(field), rest != field && rest != "" && figure(rune(rest[0])):
		return "'" + field
	}
	return field
}

var likeDate = regexp.MustCompile(`^[0-9]{1,4}([-/][0-9]{1,4}){1,2}$`)

// unguard takes off the mark that keeps a field text: the one that guard puts
// before a formula, or the one that a builder types before 3-4-6 to keep it from
// becoming a date.
func unguard(field string) (rest string, was bool) {
	bare := strings.TrimLeft(field, "'")
	if bare == field || bare == "" || !formula(bare) && !figure(rune(bare[0])) {
		return field, false
	}
	return field[1:], true
}

// formula says that a text begins with what a spreadsheet may take for the start
// of a formula or of a command, full-width marks among them.
func formula(text string) bool {
	first, _ := utf8.DecodeRuneInString(text)
	return text != "" && strings.ContainsRune("=+-@\t\r\n＝＋－＠", first)
}
