package csv

import (
	"regexp"
	"unicode/utf8"
)

// sampled is how many lines are looked at to know a file's separator.
const sampled = 30

var sepLine = regexp.MustCompile(`(?i)^"?sep=([^"\n])"?\n`)

// separator finds what separates the fields: as a first line sep=; says, which a
// spreadsheet program does not show, or of comma, semicolon, tab and bar the one
// that stands most evenly in the lines, ties going to more columns. Where one of
// the others stands in most lines, a comma between two figures is a decimal
// comma and separates nothing.
func separator(text string) (comma rune, rest string) {
	if m := sepLine.FindStringSubmatch(text); m != nil {
		if r, _ := utf8.DecodeRuneInString(m[1]); r != utf8.RuneError && r != '\r' {
			return r, text[len(m[0]):]
		}
	}
	best, top := ',', evenness{}
	others := false
	for _, r := range "\t;|" {
		e := weigh(text, r, false)
		others = others || 2*e.present > e.lines
		if e.above(top) {
			best, top = r, e
		}
	}
	if weigh(text, ',', others).above(top) {
		best = ','
	}
	return best, text
}

// evenness is how a separator stands in the lines sampled.
type evenness struct {
	lines, present int // lines that are not blank, and those that hold it
	even, columns  int // most lines that hold it equally often, and how often
}

func (e evenness) above(other evenness) bool {
	a, b := 2*e.even+e.present, 2*other.even+other.present
	return a > b || a == b && e.columns > other.columns
}

// weigh counts a separator in each line, outside of quotation marks.
func weigh(text string, comma rune, decimals bool) evenness {
	var e evenness
	counts := map[int]int{}
	for e.lines < sampled && text != "" {
		var n int
		n, text = separators(text, comma, decimals)
		if n < 0 {
			continue
		}
		e.lines++
		if n == 0 {
			continue
		}
		e.present++
		counts[n]++
		if counts[n] > e.even || counts[n] == e.even && n > e.columns {
			e.even, e.columns = counts[n], n
		}
	}
	return e
}

// separators counts a separator in the first line of a text and returns the
// rest; less than nought for a blank line. A quotation opens only at the start
// of a field, so that an inch mark opens none; it may run over some lines.
func separators(text string, comma rune, decimals bool) (n int, rest string) {
	const long = 20 // lines: a quotation that runs on is a mark that opens nothing
	start, quoted, broken, blank := true, false, 0, true
	before := rune(0)
	for i, r := range text {
		switch {
		case quoted && r == '"':
			after, _ := utf8.DecodeRuneInString(text[i+1:])
			quoted = after != comma && after != '\n' && i+1 < len(text)
		case quoted && r == '\n' && broken < long:
			broken++
		case r == '\n':
			if blank {
				return -1, text[i+1:]
			}
			return n, text[i+1:]
		case quoted:
		case r == comma:
			next, _ := utf8.DecodeRuneInString(text[i+1:])
			if !decimals || !figure(before) || !figure(next) {
				n++
				start = true
			}
			blank = false
		case r == '"' && start:
			quoted, start, blank = true, false, false
		case r != ' ':
			start, blank = false, false
		}
		before = r
	}
	if blank {
		n = -1
	}
	return n, ""
}

func figure(r rune) bool { return r >= '0' && r <= '9' }
