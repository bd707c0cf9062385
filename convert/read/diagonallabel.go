package read

import (
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/measure"
)

// run is what words say of where a diagonal runs. A label is understood whole or
// not at all: a figure misread is a section misdrawn.
type run struct {
	height     measure.Length
	heightText string // as written, "" where no height is said
	down       measure.Angle
	angleText  string // as written, "" where no angle is said
	unread     string // from where the words are not understood
}

const (
	centre = `(?:the )?(?:cent(?:re|er)[ -]?line|cent(?:re|er)|middle[ -]?line|c\.? ?l\b\.?)`
	base   = `(?:the )?(?:base[ -]?line|base|b\.? ?l\b\.?)`
	plain  = `(?:the )?(?:level|horizontal)`
)

var (
	diagonalName = regexp.MustCompile(`^(?:(?:upper|lower|middle|bilge|first|second|third) )*(?:diagonals?|diags?)\b\.?(?: no\b\.?)? ?`)
	diagonalMark = regexp.MustCompile(`^(?:\d{1,2}[a-z]?|[a-z]{1,2}-?\d{0,2})(?:$|[ ,;:)])`)
	grouped      = regexp.MustCompile(`^\d{1,2} \d{3}\b`)
	between      = regexp.MustCompile(`^(?:[ ,;:()=@]|- )+`)
	// leads are words that may stand before a height and before an angle.
	heightLead = regexp.MustCompile(`^(?:(?:up )?(?:on|at) ` + centre + `(?: at)?|from|at|up|height|ht\b\.?)[ ,:=]+`)
	angleLead  = regexp.MustCompile(`^(?:(?:running|sloping) )?(?:(?:at|down|angle)[ :=]+)*`)
	heightTail = regexp.MustCompile(`^(?: up)?(?: (?:above|from) ` + base + `)?(?: (?:up )?(?:on|at) ` + centre + `)?`)
	bareTail   = regexp.MustCompile(`^(?: up)? (?:above ` + base + `|on ` + centre + `)`)
	angleText  = regexp.MustCompile(`^(\d+(?:[.,]\d+)?(?: \d+/\d+)?) ?(?:°|deg(?:rees|ree|s)?\b\.?)(?: ?(\d+(?:[.,]\d+)?) ?min(?:utes|ute|s)?\b\.?)?`)
	minuteMark = regexp.MustCompile(`^ ?(\d+(?:[.,]\d+)?) ?'`)
	angleTail  = regexp.MustCompile(`^ (?:down|(?:below|to|from|off|with) ` + plain + `)`)
	upright    = regexp.MustCompile(`^ (?:to|from|off|with) (?:the )?vertical`)
	anyAngle   = regexp.MustCompile(`\d ?(?:°|deg)`)
	// Words that place a diagonal otherwise than from the base and from level.
	saidOtherwise   = regexp.MustCompile(`\b(?:vertical|angles?|degrees?|sheer|[ld]?wl|waterline|below)\b`)
	otherwiseHeight = regexp.MustCompile(`\b(?:sheer|deck|[ld]?wl|water ?lines?|below|down)\b`)
	otherwiseAngle  = regexp.MustCompile(`\b(?:vertical|cent(?:re|er)|c\.? ?l\b|up\b|above)`)
)

// runOf reads the whole of a label, or of the title over lines, in the form of its
// table.
func runOf(words string, form measure.Form) run {
	var s run
	written := measure.Fold(words)
	rest, ok := unnamedRun(strings.ToLower(written), form)
	if !ok {
		return run{unread: written}
	}
	for {
		rest = strings.TrimPrefix(rest, between.FindString(rest))
		if strings.Trim(rest, ". ") == "" {
			return s
		}
		after, ok := s.angle(rest)
		if !ok {
			after, ok = s.level(rest, form)
		}
		if !ok || after != "" && !strings.ContainsAny(after[:1], " ,;:()=@.") {
			if k := len(written) - len(rest); k >= 0 && strings.ToLower(written[k:]) == rest {
				rest = written[k:] // quoted as written
			}
			return run{unread: rest}
		}
		rest = after
	}
}

// unnamedRun is a label without its name: Diagonal, Diag. 2, A; ok is false where a
// figure may be the name or part of the height.
func unnamedRun(words string, form measure.Form) (rest string, ok bool) {
	rest = words
	for name := diagonalName.FindString(rest); name != ""; name = diagonalName.FindString(rest) {
		rest = rest[len(name):] // twice under a heading: Diagonals, Diagonal A
	}
	mark := strings.TrimRight(diagonalMark.FindString(rest), " ,;:)")
	if mark == "" || slices.Contains([]string{"at", "on", "up", "cl", "to", "ht", "in", "ft", "bl"}, mark) {
		return rest, true
	}
	text, _ := longest(rest, form)
	next := strings.TrimSpace(rest[len(mark):])
	switch {
	case angleText.MatchString(rest), text != "" && (next == "" || !digit(next[0])):
		return rest, true // 45 deg, 4 ft: no name
	case text != "", grouped.MatchString(rest):
		return "", false // 3 1/2 in, 1 041 mm
	}
	return rest[len(mark):], true
}

// angle reads an angle that the words begin with.
func (s *run) angle(words string) (after string, ok bool) {
	rest := strings.TrimPrefix(words, angleLead.FindString(words))
	m := angleText.FindStringSubmatch(rest)
	if m == nil || s.angleText != "" {
		return "", false
	}
	text, minutes := m[0], m[2]
	after = rest[len(text):]
	if mark := minuteMark.FindStringSubmatch(after); mark != nil {
		// Minutes, or the feet of the height: the degree's own sign alone says minutes.
		text, minutes, after = text+mark[0], mark[1], after[len(mark[0]):]
		if m[2] != "" || !strings.Contains(text, "°") || after != "" && strings.ContainsAny(strings.TrimSpace(after), "0123456789") && !strings.ContainsAny(after[:1], ",;:") {
			return "", false
		}
	}
	said := m[1]
	if minutes != "" {
		said += "°" + minutes + "'"
	}
	v, err := measure.ParseAngle(said)
	if tail := upright.FindString(after); tail != "" {
		v, after = 90-v, after[len(tail):]
	} else {
		after = strings.TrimPrefix(after, angleTail.FindString(after))
	}
	s.down, s.angleText = v, text
	return after, err == nil && v > 0 && v < 90
}

// level reads a height on the centre line that the words begin with.
func (s *run) level(words string, form measure.Form) (after string, ok bool) {
	rest := strings.TrimPrefix(words, heightLead.FindString(words))
	text, after := longest(rest, form)
	if text == "" {
		text = bareFigure.FindString(rest)
		after = rest[len(text):]
		if text == "" || !bareTail.MatchString(after) {
			return "", false
		}
	}
	v, err := labelLength(text, form)
	if err != nil || s.heightText != "" {
		return "", false
	}
	s.height, s.heightText = v, text
	return strings.TrimPrefix(after, heightTail.FindString(after)), true
}

var (
	bareFigure  = regexp.MustCompile(`^\d+(?:[., /-]+\d+)*`)
	wordEnd     = regexp.MustCompile(`^(?:$|[ ,;:()@]|\.(?:$| ))`)
	threeDashed = regexp.MustCompile(`^\d+-\d+-\d+(?: ?[+-])?$`)
)

// longest is the longest beginning of words that is a length and shows what it is,
// and what comes after it. A figure of degrees is no part of it.
func longest(words string, form measure.Form) (text, after string) {
	if words == "" || !digit(words[0]) {
		return "", words
	}
	for end := len(words); end > 0; end-- {
		text, after = strings.TrimSpace(words[:end]), words[end:]
		if !wordEnd.MatchString(after) || len(text) < end || degrees.MatchString(after) {
			continue
		}
		if measure.MarkedUnit(text) == measure.NoUnit && !threeDashed.MatchString(text) {
			continue
		}
		if _, err := labelLength(text, form); err == nil {
			return text, after
		}
	}
	return "", words
}

var degrees = regexp.MustCompile(`^ ?(?:\d+/\d+ ?)?(?:°|deg)`)

// labelLength reads a length of a label as the cells of its table are read; three
// figures between dashes are feet-inches-eighths in any table.
func labelLength(text string, form measure.Form) (measure.Length, error) {
	if threeDashed.MatchString(text) {
		form.Notation = measure.FeetInchesEighths
	}
	return form.Length(text)
}
