package hull

import (
	"fmt"
	"strconv"
	"strings"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Side is a side of the hull.
type Side uint8

// The sides. A row of the book that names none stands for both.
const (
	BothSides Side = iota
	Port
	Starboard
)

// String is the side's word.
func (s Side) String() string { return [...]string{"both", "port", "starboard"}[s] }

// Other is the side across; both sides have none and stay both.
func (s Side) Other() Side {
	switch s {
	case Starboard:
		return Port
	case Port:
		return Starboard
	}
	return s
}

// Skin is one of the hull's skins, as the yard calls it.
type Skin string

// The two skins the program knows rules for. Any other name is kept and worked
// by the rules of planks.
const (
	Strips Skin = "strip"
	Planks Skin = "plank"
)

// Strake is one row of the strakes list: one strake, or Count alike.
type Strake struct {
	Name      string
	Skin      Skin
	Side      Side
	Count     source.Reading[int] // a side; blank is one
	Thickness source.Reading[measure.Length]
	Width     source.Reading[measure.Length] // on the inside face, the greatest where it tapers
	Widths    []source.Reading[measure.Length]
	WidthAt   []Station                      // the stations of Widths
	Outside   bool                           // Width and Widths are on the outside face: of a job without a hull
	Length    source.Reading[measure.Length] // from hood end to hood end along the strake
	Start     source.Reading[measure.Length] // fore end from the same place as the stations
	From, To  string                         // the stations it runs between, where Length is to be worked out
	Species   string
	Slope     source.Reading[float64] // n of a scarf n to 1
	Clear     []Reach                 // stretches in which no joint may fall, from the strake's fore end
	Cell      source.Cell
}

// Reach is a stretch along a strake, from its fore end, or along the hull, placed
// as the stations are.
type Reach struct{ From, To measure.Length }

// span is the first and the last number of a name such as "1-15", "s1-s15" or "1 to
// 15", and what stands before both; noughts for any other.
func (s Strake) span() (prefix string, first, last int) {
	from, to, ranged := strings.Cut(measure.Fold(s.Name), "-")
	if !ranged {
		from, to, ranged = strings.Cut(measure.Fold(s.Name), " to ")
	}
	from, to = strings.TrimSpace(from), strings.TrimSpace(to)
	prefix = strings.TrimRight(from, "0123456789")
	a, errA := strconv.Atoi(strings.TrimPrefix(from, prefix))
	b, errB := strconv.Atoi(strings.TrimPrefix(to, prefix))
	if !ranged || errA != nil || errB != nil {
		return "", 0, 0
	}
	return prefix, a, b
}

// Span is how many strakes the row's name says it stands for: 15 of "1-15"; nought
// where it does not say.
func (s Strake) Span() int {
	if _, a, b := s.span(); a > 0 && b > a && b-a < mostAlike {
		return b - a + 1
	}
	return 0
}

// Spanned is the row with the count that its name says, where it gives none: 15 of
// "1-15".
func (s Strake) Spanned() Strake {
	if n := s.Span(); s.Count.State == source.Blank && n > 0 {
		s.Count = source.Reading[int]{Value: n, State: source.Given, Cell: s.Cell}
	}
	return s
}

// mostAlike is as many strakes as one row may stand for.
const mostAlike = 2000

// Names is the names of the strakes a row stands for: "1-15" with a count of 15
// is 1 to 15; any other counted name has .1, .2 and so on after it.
func (s Strake) Names() []string {
	n := min(max(1, s.Count.Or(1)), mostAlike)
	if n == 1 {
		return []string{s.Name}
	}
	from, step := 1, s.Name+"."
	if prefix, a, b := s.span(); b-a+1 == n {
		from, step = a, prefix
	}
	all := make([]string, n)
	for i := range all {
		all[i] = fmt.Sprint(step, from+i)
	}
	return all
}
