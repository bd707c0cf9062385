// Package setting describes one thing a yard may set: its name, what it means,
// where its default comes from and how it is read. Every trade lists its own
// beside its Rules. It knows nothing of the sheet or flag a value came from.
package setting

import (
	"fmt"
	"strconv"
	"strings"

	"strakebook/calc/measure"
)

// Setting is one rule under its name on the Settings sheet.
type Setting struct {
	Name    string // lower case words: "plank scarf slope"
	Meaning string // one sentence
	Source  string // document and section, "common practice, no source", or "our choice"
	Value   Value
}

// Value reads and writes the rule a setting stands for. It is satisfied by
// pointers into a Rules value.
type Value interface {
	Set(text string) error // what is accepted is in the error's text
	String() string        // as the Settings sheet shows it, without its unit
	Unit() string          // "in", "degrees", "", ...
}

// Number is a bare number setting between two limits.
func Number(p *float64, unit string, least, most float64) Value {
	return number{p, unit, least, most}
}

type number struct {
	p           *float64
	unit        string
	least, most float64
}

func (n number) Set(text string) error {
	v, err := strconv.ParseFloat(strings.TrimSpace(text), 64)
	if err != nil || !(v >= n.least && v <= n.most) {
		return fmt.Errorf("read %q: expected a number from %v to %v", text, n.least, n.most)
	}
	*n.p = v
	return nil
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
	v, err := strconv.Atoi(strings.TrimSpace(text))
	if err != nil || v < c.least || v > c.most {
		return fmt.Errorf("read %q: expected a whole number from %d to %d", text, c.least, c.most)
	}
	*c.p = v
	return nil
}
func (c count) String() string { return strconv.Itoa(*c.p) }
func (c count) Unit() string   { return "" }

// Angle is a setting in degrees between two limits.
func Angle(p *measure.Angle, least, most measure.Angle) Value {
	return number{(*float64)(p), "degrees", float64(least), float64(most)}
}

// YesNo is a setting that is on or off.
func YesNo(p *bool) Value { return yesNo{p} }

type yesNo struct{ p *bool }

func (y yesNo) Set(text string) error {
	switch strings.ToLower(strings.TrimSpace(text)) {
	case "yes", "on", "true", "1":
		*y.p = true
	case "no", "off", "false", "0":
		*y.p = false
	default:
		return fmt.Errorf("read %q: expected yes or no", text)
	}
	return nil
}
func (y yesNo) String() string {
	if *y.p {
		return "yes"
	}
	return "no"
}
func (y yesNo) Unit() string { return "" }

// Choice is a setting that is one of a few words; the pointer's type counts
// from zero in the order of the words.
func Choice[T ~uint8](p *T, words ...string) Value { return choice[T]{p, words} }

type choice[T ~uint8] struct {
	p     *T
	words []string
}

func (c choice[T]) Set(text string) error {
	for i, w := range c.words {
		if strings.EqualFold(strings.TrimSpace(text), w) {
			*c.p = T(i)
			return nil
		}
	}
	return fmt.Errorf("read %q: expected one of: %s", text, strings.Join(c.words, ", "))
}
func (c choice[T]) String() string { return c.words[*c.p] }
func (c choice[T]) Unit() string   { return "" }

// Text is a setting of free words, such as the name of the job.
func Text(p *string) Value { return words{p} }

type words struct{ p *string }

func (w words) Set(text string) error { *w.p = strings.TrimSpace(text); return nil }
func (w words) String() string        { return *w.p }
func (w words) Unit() string          { return "" }

// Length is a length setting between two limits. A bare number is in inches;
// any notation that shows its unit is read as well.
func Length(p *measure.Length, least, most measure.Length) Value {
	return length{p, least, most}
}

type length struct {
	p           *measure.Length
	least, most measure.Length
}

func (l length) Set(text string) error {
	v, err := measure.ParseLength(text, measure.InInches)
	if err != nil {
		return err
	}
	if v < l.least || v > l.most {
		return fmt.Errorf("read %q: expected a length from %v to %v in", text, l.least.Inches(), l.most.Inches())
	}
	*l.p = v
	return nil
}
func (l length) String() string { return strconv.FormatFloat(l.p.Inches(), 'f', -1, 64) }
func (l length) Unit() string   { return "in" }
