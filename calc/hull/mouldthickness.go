package hull

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// MouldThickness is a skin of strakes of more than one thickness.
var MouldThickness = &finding.Kind{
	Code: "mould-thickness", Severity: finding.Warning, Title: "strakes of a skin unlike in thickness",
	Why:    "Moulds, girths and seams are drawn for one thickness of a skin: behind a strake that is thicker or thinner the mould is out by the difference.",
	Remedy: "behind a thicker strake dress the mould down by the difference, behind a thinner one pack it out, unless the strake is meant to stand proud or shy outside",
}

// SkinThickness is the one thickness of a skin that the surfaces of the planking are
// drawn for.
type SkinThickness struct {
	Skin      Skin
	Thickness measure.Length
}

// skinThicknesses is of each skin the thickness that most of its strakes share; of two
// that as many share, the lesser, since a mould can be dressed down and not up. It says
// which strakes are of another.
func (h *hull) skinThicknesses(strakes []Strake) (all []SkinThickness, found finding.List) {
	var skins []Skin
	by := map[Skin][]Strake{}
	for _, s := range strakes {
		if !s.Thickness.OK() || s.Thickness.Value <= 0 {
			continue
		}
		if by[s.Skin] == nil {
			skins = append(skins, s.Skin)
		}
		by[s.Skin] = append(by[s.Skin], s)
	}
	for _, skin := range skins {
		t := SkinThickness{skin, shared(by[skin])}
		all = append(all, t)
		found = append(found, h.otherwise(t, by[skin])...)
	}
	return all, found
}

// counted is how many strakes of both sides have each thickness.
func counted(strakes []Strake) map[measure.Length]int {
	count := map[measure.Length]int{}
	for _, s := range strakes {
		n := len(s.Names())
		if s.Side == BothSides {
			n *= 2
		}
		count[s.Thickness.Value] += n
	}
	return count
}

// shared is the thickness most strakes share.
func shared(strakes []Strake) (best measure.Length) {
	count := counted(strakes)
	for _, s := range strakes {
		t := s.Thickness.Value
		if count[t] > count[best] || count[t] == count[best] && t < best {
			best = t
		}
	}
	return best
}

// otherwise is the strakes of a skin that are not of the thickness it is drawn for.
func (h *hull) otherwise(t SkinThickness, strakes []Strake) finding.List {
	var said []string
	var cells []source.Cell
	for _, s := range strakes {
		if s.Thickness.Value == t.Thickness {
			continue
		}
		cells = append(cells, s.Thickness.Cell)
		if one := fmt.Sprintf("%s is %s", s.Name, h.r.Units.Small(s.Thickness.Value)); !slices.Contains(said, one) {
			said = append(said, one)
		}
	}
	if len(said) == 0 {
		return nil
	}
	if more := len(said) - mostNamed; more > 0 {
		said = append(said[:mostNamed:mostNamed], fmt.Sprintf("%d others differ too", more))
	}
	count, all := counted(strakes), 0
	for _, n := range count {
		all += n
	}
	f := finding.Finding{Kind: MouldThickness, Cell: cells[0], Also: cells[1:],
		Text: fmt.Sprintf("moulds, girths and lining off take the %s skin as %s thick, as %d of its %d strakes of both sides are: %s", t.Skin, h.r.Units.Small(t.Thickness), count[t.Thickness], all, strings.Join(said, ", "))}
	if h.o.To(h.r) == InsidePlanking {
		f.Do = "the moulds are to the offsets' own surface and stand; in the figures to the outside allow the difference"
	}
	return finding.List{f}
}

// mostNamed is as many strakes as one finding names.
const mostNamed = 8
