package measure

import (
	"regexp"
	"strings"
)

var (
	fieText      = regexp.MustCompile(`^(-?)(\d*) ?- ?(\d+) ?- ?(\d+)(?: ?([+-])| (1/2))?$`)
	fieOther     = regexp.MustCompile(`^()(\d+)(?:\.(\d{1,2})\.(\d{1,2})|:(\d{1,2}):(\d{1,2})|/(\d{1,2})/(\d{1,2})| (\d{1,2}) (\d{1,2}))([+-]?)$`)
	feetInchText = regexp.MustCompile(`^(-?)(\d+)(?: ?- ?| )(\d+)((?:(?: ?- ?| )\d+/\d+)?)$`)
	dateText     = regexp.MustCompile(`^(?:(?:19|20)\d\d[-/.]\d\d?[-/.]\d\d?|\d\d?[-/.]\d\d?[-/.](?:19|20)\d\d)(?:[ t]\d\d?:\d\d(?::\d\d)?)?$`)
	oldText      = regexp.MustCompile(`^(-?)(?:(\d+)[- ]+)?(\d{1,3})([⁰¹²³⁴⁵⁶⁷⁸⁹]?)$`)
)

// feetInchesEighths reads 3-4-6. A + or - after it is a sixteenth more or less,
// and so is a half eighth. Where a spreadsheet was to be kept from making dates
// of them the three figures stand apart by points, colons, strokes or spaces.
func feetInchesEighths(t string) (Length, error) {
	if t == "0" {
		return 0, nil
	}
	if dateText.MatchString(strings.ToLower(t)) {
		return 0, &ReadError{t, DateSeen, "feet-inches-eighths such as 3-4-6, not the date that a spreadsheet makes of it", nil}
	}
	m := fieText.FindStringSubmatch(t)
	if m == nil {
		m = otherMarks(t)
	}
	if m == nil {
		return 0, notRead(t, "feet-inches-eighths such as 3-4-6")
	}
	feet, inches, eighths := whole(m[2]), whole(m[3]), whole(m[4])
	switch {
	case eighths > 7:
		return 0, &ReadError{t, EighthsOver, "eighths up to 7", nil}
	case inches > 11 && feet > 0:
		return 0, &ReadError{t, InchesOver, "inches up to 11 after feet", nil}
	}
	l := Length(feet)*Foot + Length(inches)*Inch + Length(eighths)*Eighth
	switch {
	case m[5] == "-":
		l -= Sixteenth
	case m[5] == "+" || m[6] != "":
		l += Sixteenth
	}
	return signed(m[1], l), nil
}

// otherMarks is the parts of three figures set apart by other marks than dashes.
func otherMarks(t string) []string {
	m := fieOther.FindStringSubmatch(t)
	if m == nil {
		return nil
	}
	return []string{t, m[1], m[2], m[3] + m[5] + m[7] + m[9], m[4] + m[6] + m[8] + m[10], m[11], ""}
}

// oldPrint reads feet and inches with the eighths as a last figure of the
// inches, as older books printed it: 1-44 is 1 ft 4 4/8 in. A 10 or 11 may be
// whole inches or one inch and no or one eighth; no figure printed means none,
// so 10 is ten inches, but 11 can be either. Where the eighths still stand
// raised there is no doubt.
func oldPrint(t string) (Length, error) {
	m := oldText.FindStringSubmatch(t)
	if m == nil || m[4] != "" && len(m[3]) > 2 {
		return 0, notRead(t, "feet and inches with the last figure eighths, such as 1-44")
	}
	feet := Length(whole(m[2])) * Foot
	figures := m[3]
	inches, eighths := whole(figures), whole(level.Replace(m[4]))
	switch {
	case m[4] != "":
	case figures == "11":
		return 0, &ReadError{t, TwoWays, "11 in or 1 1/8 in told apart", []Length{
			signed(m[1], feet+11*Inch), signed(m[1], feet+Inch+Eighth)}}
	case len(figures) > 1 && figures != "10":
		inches, eighths = whole(figures[:len(figures)-1]), whole(figures[len(figures)-1:])
	}
	switch {
	case eighths > 7:
		return 0, &ReadError{t, EighthsOver, "eighths up to 7", nil}
	case inches > 11:
		return 0, &ReadError{t, InchesOver, "inches up to 11", nil}
	}
	return signed(m[1], feet+Length(inches)*Inch+Length(eighths)*Eighth), nil
}

// hyphenPart is a whole figure and a fraction parted by a hyphen: 5-1/2.
var hyphenPart = regexp.MustCompile(`^(-?)(\d+) ?- ?(\d+/\d+)$`)

// feetTwoWays says that 5-1/2 among feet is five feet and a half, or five feet
// and half an inch.
func feetTwoWays(t string) error {
	m := hyphenPart.FindStringSubmatch(t)
	part, ok := mixed(m[3])
	if !ok || part >= 1 {
		return notRead(t, "a fraction such as 3/4")
	}
	feet := Length(whole(m[2])) * Foot
	return &ReadError{t, TwoWays, "a fraction of a foot told from one of an inch, such as 5 1/2 from 5' 0 1/2\"", []Length{
		signed(m[1], feet+Feet(part)), signed(m[1], feet+Inches(part))}}
}

// feetInches reads feet and inches apart, without marks: 3-4 3/4, or a bare
// number in the unit.
func feetInches(t string, f Form) (Length, error) {
	m := feetInchText.FindStringSubmatch(t)
	if m == nil || f.DecimalComma && commaText.MatchString(t) {
		return f.bare(t, `feet and inches such as 3' 4 3/4"`)
	}
	part, ok := 0.0, true
	if m[4] != "" {
		part, ok = mixed(strings.TrimLeft(m[4], " -"))
	}
	if !ok || part >= 1 {
		return 0, notRead(t, "a fraction of an inch such as 3/4")
	}
	inches := whole(m[3])
	if inches > 11 && whole(m[2]) > 0 {
		return 0, &ReadError{t, InchesOver, "inches up to 11 after feet", nil}
	}
	return signed(m[1], Length(whole(m[2]))*Foot+Length(inches)*Inch+Inches(part)), nil
}
