package read

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// name is one cell as the name of a station.
type name struct {
	col      int
	text     string  // as the tables know it: "3", "3.5", "X"
	number   float64 // of its name
	numbered bool
	worded   bool // it says that it is a station
	transom  bool
	summary  bool // not a station: the table's own totals or maxima
	ofWidth  bool // its heading says that the width there stands below: Width at sta. 2
}

var (
	stationText = regexp.MustCompile(`^(?:(st(?:a|n)?|stations?|moulds?|molds?|fr(?:ame)?|sec(?:tion)?|ord(?:inate)?|no|#)[. #:]*)?(-?\d+(?:\.\d+)?(?: 1/2)?|\d*1/2)[ab]?$`)
	letterText  = regexp.MustCompile(`^(?:(st(?:a|n)?|stations?|moulds?|molds?|fr(?:ame)?|sec(?:tion)?)[. :]+)([a-z])$`)
	romanText   = regexp.MustCompile(`^(?:(st(?:a|n)?|stations?|moulds?|molds?)[. :]*)?(x{0,3}(?:ix|iv|v?i{1,3}|v))$`)
)

// anglesAt is what says, after a station's name, that angles stand below: degrees, deg min.
var anglesAt = regexp.MustCompile(`[ ,(]+(?:degrees|degs?|°)\.?(?: ?(?:[,;:/&+-]|and )? ?(?:minutes|mins?|')\.?)?\)?$`)

// namedStations are stations known by a name alone.
var namedStations = []string{"x", "xx", "fp", "ap", "bow", "stem", "midship", "midships", "amidships", "mid", "m", "⊗", "⌽", "φ", "fwd", "aft"}

// stationName is a cell as the name of a station; ok is false where it cannot be
// one.
func (r *reader) stationName(c sheet.Cell) (n name, ok bool) {
	switch c.Kind {
	case sheet.Number:
		n = name{text: plainNumber(c.Number), number: c.Number, numbered: true}
		return n, c.Number >= -100 && c.Number <= 1000 && (c.Number*4 == math.Trunc(c.Number*4) || places(c.Number) <= 3)
	case sheet.Text:
		if seen, ok := r.named[c.Text]; ok {
			return seen, seen != name{}
		}
		n, _ := r.nameIn(c)
		if r.named == nil {
			r.named = map[string]name{}
		}
		r.named[c.Text] = n
		return n, n != name{}
	}
	return name{}, false
}

// nameIn is a text as the name of a station.
func (r *reader) nameIn(c sheet.Cell) (n name, ok bool) {
	t := strings.Trim(strings.ToLower(measure.Fold(c.Text)), ". ")
	if len(t) > 24 {
		return name{}, false
	}
	if m := stationText.FindStringSubmatch(anglesAt.ReplaceAllString(t, "")); m != nil && m[1] != "" {
		t = anglesAt.ReplaceAllString(t, "")
	}
	if m := stationText.FindStringSubmatch(t); m != nil {
		v := numberOf(m[2])
		return name{text: stationWord(t[len(t)-len(strings.TrimPrefix(t, m[1])):], m[2], v), number: v, numbered: true, worded: m[1] != ""}, true
	}
	if m := letterText.FindStringSubmatch(t); m != nil {
		return name{text: strings.ToUpper(m[2]), worded: true}, true
	}
	if m := romanText.FindStringSubmatch(t); m != nil && (m[1] != "" || t != "x") && len(t) > 1 {
		return name{text: strings.ToUpper(m[2]), number: roman(m[2]), numbered: true, worded: m[1] != ""}, true
	}
	if slices.Contains(namedStations, strings.ReplaceAll(t, ".", "")) {
		return name{text: text(c)}, true
	}
	switch m := r.words.heading(c.Text); m {
	case "transom":
		return name{text: text(c), transom: true}, true
	case "summary":
		return name{text: text(c), summary: true}, true
	}
	return name{}, false
}

// stationWord is a station's name without what only says that it is a station; a
// suffix, as of frames doubled at a break (12a), stays.
func stationWord(whole, number string, v float64) string {
	if last := whole[len(whole)-1]; last == 'a' || last == 'b' {
		return number + string(last)
	}
	return plainNumber(v)
}

// numberOf reads a station's number: 3, 3.5, 3 1/2, 1/2.
func numberOf(t string) float64 {
	t, half := strings.CutSuffix(t, "1/2")
	v, _ := strconv.ParseFloat(strings.TrimSpace(t), 64)
	if half {
		v += 0.5
	}
	return v
}

func roman(t string) float64 {
	n, last := 0, 0
	for i := len(t) - 1; i >= 0; i-- {
		v := map[byte]int{'i': 1, 'v': 5, 'x': 10}[t[i]]
		if v < last {
			n -= v
		} else {
			n, last = n+v, v
		}
	}
	return float64(n)
}

// regularity is how much some numbers look like the names of stations one after
// the other: the share of even steps, counting half and double steps, and less
// where the step is none that stations are numbered by.
func regularity(names []name) float64 {
	var v []float64
	for _, n := range names {
		if n.numbered {
			v = append(v, n.number)
		}
	}
	if len(v) < 2 {
		return 0
	}
	steps := map[float64]int{}
	usual, most := 0.0, 0
	for i := 1; i < len(v); i++ {
		d := math.Round((v[i]-v[i-1])*1000) / 1000
		if d == 0 {
			continue
		}
		steps[d]++
		if steps[d] > most || steps[d] == most && math.Abs(d) < math.Abs(usual) {
			usual, most = d, steps[d]
		}
	}
	if most == 0 {
		return 0
	}
	even := steps[usual] + steps[usual/2] + steps[2*usual]
	share := float64(even) / float64(len(v)-1)
	switch math.Abs(usual) {
	case 1, 0.5, 2:
		return share
	case 5, 10, 3, 4:
		return 0.7 * share
	}
	return 0.4 * share
}
