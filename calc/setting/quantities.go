package setting

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"

	"strakebook/calc/measure"
)

// Number is a bare number setting between two limits. Its own unit may stand
// after it, and where that is "to 1" a slope may be written in any of the usual
// ways: 12, 12:1, 12 to 1, 1 in 12, 1:12.
func Number(p *float64, unit string, least, most float64) Value {
	return number{p, unit, least, most}
}

type number struct {
	p           *float64
	unit        string
	least, most float64
}

var slopeText = regexp.MustCompile(`^(?:1 ?(?::|in|/) ?(\S+)|(\S+) ?(?::|to) ?1)$`)

func (n number) Set(text string) error {
	v, err := measure.ParseNumber(n.bare(text))
	switch bad := err != nil || v < n.least || v > n.most; {
	case bad && n.unit == "to 1":
		return fmt.Errorf("reads %q: expected a slope from %v to %v, written as 12, 12:1, 1:12 or 12 to 1", text, n.least, n.most)
	case bad:
		return fmt.Errorf("reads %q: expected a number from %v to %v", text, n.least, n.most)
	}
	*n.p = v
	return nil
}

// bare is the text without the setting's own unit.
func (n number) bare(text string) string {
	t := strings.ToLower(measure.Fold(text))
	if n.unit == "to 1" {
		if m := slopeText.FindStringSubmatch(t); m != nil {
			return m[1] + m[2]
		}
		return t
	}
	figures := strings.TrimRight(t, " abcdefghijklmnopqrstuvwxyz%.")
	if n.unit != "" && figures != t && unitWords(t[len(figures):]) == n.unit {
		return figures
	}
	return t
}

func (n number) String() string { return strconv.FormatFloat(*n.p, 'f', -1, 64) }
func (n number) Unit() string   { return n.unit }

// Count is a whole-number setting between two limits.
func Count(p *int, least, most int) Value { return count{p, least, most} }

type count struct {
	p           *int
	least, most int
}

func (c count) Set(text string) error {
	v, err := measure.ParseNumber(text)
	if err != nil || v != math.Trunc(v) || v < float64(c.least) || v > float64(c.most) {
		return fmt.Errorf("reads %q: expected a whole number from %d to %d", text, c.least, c.most)
	}
	*c.p = int(v)
	return nil
}
func (c count) String() string { return strconv.Itoa(*c.p) }
func (c count) Unit() string   { return "" }

// Angle is a setting in degrees between two limits.
func Angle(p *measure.Angle, least, most measure.Angle) Value { return angle{p, least, most} }

type angle struct {
	p           *measure.Angle
	least, most measure.Angle
}

func (a angle) Set(text string) error {
	v, err := measure.ParseAngle(text)
	if err != nil || v < a.least || v > a.most {
		return fmt.Errorf("reads %q: expected degrees from %v to %v", text, float64(a.least), float64(a.most))
	}
	*a.p = v
	return nil
}
func (a angle) String() string { return strconv.FormatFloat(float64(*a.p), 'f', -1, 64) }
func (a angle) Unit() string   { return "degrees" }

// Length is a length setting between two limits. A bare number is in inches;
// any notation that shows its unit is read as well.
func Length(p *measure.Length, least, most measure.Length) Value {
	return length{p, least, most}
}

type length struct {
	p           *measure.Length
	least, most measure.Length
}

func (l length) Set(text string) error { return l.setIn(text, measure.InInches) }

func (l length) setIn(text string, unit measure.Unit) error {
	v, err := measure.ParseLength(text, unit)
	if err != nil {
		return err
	}
	if v < l.least || v > l.most {
		return fmt.Errorf("reads %q: expected a length from %v to %v", text, l.least, l.most)
	}
	*l.p = v
	return nil
}

// String is the inches to the nanometre, the ninth place.
func (l length) String() string {
	return strconv.FormatFloat(math.Round(l.p.Inches()*1e9)/1e9, 'f', -1, 64)
}
func (l length) Unit() string { return "in" }
