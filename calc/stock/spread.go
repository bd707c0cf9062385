package stock

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"strakebook/calc/measure"
)

// Spread is how much glue an area of joint takes: so much of whatever it is bought
// by, over a square foot or a square metre.
type Spread struct {
	Amount float64 // 0: not set
	Of     string  // "lb", "g", ...; "" where that is not said
	Metre  bool    // over a square metre, not a square foot
}

// squareFoot is a square foot in square metres: exact, by the foot of 0.3048 m.
const squareFoot = 0.09290304

// Over is the glue that some square feet take.
func (s Spread) Over(feet float64) float64 {
	if s.Metre {
		return s.Amount * feet * squareFoot
	}
	return s.Amount * feet
}

// Area is what the amount is over, of some square feet.
func (s Spread) Area(feet float64) float64 {
	if s.Metre {
		return feet * squareFoot
	}
	return feet
}

var (
	spreadText = regexp.MustCompile(`^((?:\d+ )?\d+/\d+|\d[\d.,]*)(?:$|[ ]?(.*)$)`)
	spreadOver = regexp.MustCompile(`^([a-z][a-z .]{0,15}?)?\.?(?: ?/ ?| ?per | ?an? |^| )(1,?000 ?|thousand ?|a )?(sq\.? ?f(?:t|eet|oot)|square f(?:oot|eet)|ft ?\^?(?:2|²)|sf|m(?:sf|sgl)|sq\.? ?m(?:et(?:re|er)s?)?|square met(?:re|er)s?|m ?\^?(?:2|²))\.?$`)
)

// mostSpread is more than any glue is spread, in any measure: a slip.
const mostSpread = 100_000

// spread reads and writes a Spread: a bare number is a square foot's.
type spread struct{ p *Spread }

func (s spread) Set(text string) error {
	bad := fmt.Errorf("reads %q: expected a number, or one with its measure and area such as 0.05 lb a square foot, 50 lb/1000 sq ft or 250 g/m2", text)
	m := spreadText.FindStringSubmatch(strings.TrimSpace(strings.ToLower(measure.Fold(text))))
	if m == nil {
		return bad
	}
	v, err := measure.ParseNumber(m[1])
	if err != nil || v < 0 || v > mostSpread {
		return bad
	}
	to := Spread{Amount: v}
	if m[2] != "" {
		over := spreadOver.FindStringSubmatch(m[2])
		if over == nil {
			return bad
		}
		to.Of, to.Metre = gluedBy(over[1]), !strings.Contains(over[3], "f") && over[3] != "msgl"
		if strings.Contains(over[2], "000") || strings.HasPrefix(over[2], "thousand") || over[3] == "msf" || over[3] == "msgl" {
			to.Amount /= 1000
		}
	}
	*s.p = to
	return nil
}

// SetUnit is Set with the measure and area in a cell beside the number.
func (s spread) SetUnit(text, unit string) error {
	if _, err := measure.ParseNumber(text); err == nil {
		text += " " + unit
	}
	return s.Set(text)
}

// gluedBy is the measure that glue is bought by, its longer forms made one.
func gluedBy(words string) string {
	switch w := strings.Trim(words, " ."); w {
	case "a", "an", "per": // a square foot, of what is not said
		return ""
	case "lbs", "pound", "pounds":
		return "lb"
	case "gram", "grams", "gr", "gm", "gms":
		return "g"
	case "kilo", "kilos", "kgs", "kilogram", "kilograms":
		return "kg"
	case "ounce", "ounces":
		return "oz"
	default:
		return w
	}
}

func (s spread) String() string { return strconv.FormatFloat(s.p.Amount, 'f', -1, 64) }

func (s spread) Unit() string {
	over := "a square foot"
	if s.p.Metre {
		over = "a square metre"
	}
	return strings.TrimSpace(s.p.Of + " " + over)
}
