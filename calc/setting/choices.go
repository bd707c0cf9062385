package setting

import (
	"fmt"
	"strings"

	"strakebook/calc/measure"
)

// YesNo is a setting that is on or off.
func YesNo(p *bool) Value { return yesNo{p} }

type yesNo struct{ p *bool }

func (y yesNo) Set(text string) error {
	switch strings.ToLower(measure.Fold(text)) {
	case "yes", "y", "on", "true", "1":
		*y.p = true
	case "no", "n", "off", "false", "0":
		*y.p = false
	default:
		return fmt.Errorf("reads %q: expected yes or no", text)
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
		if strings.EqualFold(measure.Fold(text), w) {
			*c.p = T(i)
			return nil
		}
	}
	return fmt.Errorf("reads %q: expected one of: %s", text, strings.Join(c.words, ", "))
}
func (c choice[T]) oneOf() []string { return c.words }

func (c choice[T]) String() string {
	if int(*c.p) >= len(c.words) {
		return ""
	}
	return c.words[*c.p]
}
func (c choice[T]) Unit() string { return "" }

// Text is a setting of free words, such as the name of the job.
func Text(p *string) Value { return words{p} }

type words struct{ p *string }

func (w words) Set(text string) error { *w.p = strings.TrimSpace(text); return nil }
func (w words) String() string        { return *w.p }
func (w words) Unit() string          { return "" }
