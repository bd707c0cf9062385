package lay

import (
	"fmt"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// What the checks of joints find.
var (
	JointNear = &finding.Kind{
		Code: "joint-near", Severity: finding.Warning, Title: "joints nearer than the rule",
		Why:    "Joints close together make one weak place across several strakes.",
		Remedy: "buy longer boards for one of the two strakes, shorten the least piece, or have the designer pass it",
	}
	JointBay = &finding.Kind{
		Code: "joint-bay", Severity: finding.Warning, Title: "joints in one frame bay",
		Why:    "Joints in one bay with few strakes between make one weak place between two frames.",
		Remedy: "buy longer boards for one of the two strakes, or have the designer pass it",
	}
	JointZone = &finding.Kind{
		Code: "joint-zone", Severity: finding.Warning, Title: "joint where none may fall",
		Why:    "The stretch was kept clear by the builder or the designer.",
		Remedy: "buy longer boards for the strake, or shift the stretch",
	}
	PieceShort = &finding.Kind{
		Code: "piece-chain", Severity: finding.Error, Title: "strake that no pieces make up",
		Why:    "No chain of pieces between the shortest allowed and the longest board reaches from end to end.",
		Remedy: "offer longer boards, or allow shorter pieces",
	}
)

// Breaks counts the rules that a joint of run at a place would break against
// the joints of runs already laid on its side, and the stretches kept clear.
func Breaks(run *Run, at measure.Length, laid []*Run, r Rules) int {
	n := 0
	for _, z := range run.Clear {
		if at > z.From && at < z.To {
			n += 10 // a stretch kept clear outweighs the stagger
		}
	}
	for _, other := range laid {
		for _, j := range other.Joints {
			if _, broken := between(run, at, other, j, r); broken {
				n++
			}
		}
	}
	return n
}

// between says which rule two joints break, if any.
func between(a *Run, at measure.Length, b *Run, other measure.Length, r Rules) (string, bool) {
	x, y := a.Start+at, b.Start+other
	d := (x - y).Abs()
	if a.Skin != b.Skin {
		if d < r.SkinsClear {
			return "joints of the two skins at least " + measure.FeetInchesText(r.SkinsClear) + " apart", true
		}
		return "", false
	}
	places := a.Order - b.Order
	if places < 0 {
		places = -places
	}
	if apart, rule := r.Apart(a.Skin, places, max(a.Scarf, b.Scarf)); d < apart {
		return rule, true
	}
	if r.SameBay(a.Skin, places) && x/r.Frames == y/r.Frames {
		return "three strakes between joints in one frame bay", true
	}
	return "", false
}

// Check names every rule that the joints as laid break, each pair once.
func Check(runs []Run, r Rules) finding.List {
	var found finding.List
	for i := range runs {
		a := &runs[i]
		for _, at := range a.Joints {
			for _, z := range a.Clear {
				if at > z.From && at < z.To {
					found = append(found, finding.Finding{Kind: JointZone, Cell: a.Cell,
						Text: fmt.Sprintf("%s has a joint at %s, in the stretch from %s to %s", a.words(), measure.FeetInchesText(at), measure.FeetInchesText(z.From), measure.FeetInchesText(z.To))})
				}
			}
			for k := i + 1; k < len(runs); k++ {
				b := &runs[k]
				if b.Side != a.Side || (a.Skin == b.Skin && b.Order-a.Order > Reach) || (a.Skin != b.Skin && r.SkinsClear == 0) {
					continue
				}
				for _, other := range b.Joints {
					rule, broken := between(a, at, b, other, r)
					if !broken {
						continue
					}
					kind := JointNear
					if d, _ := r.Apart(a.Skin, b.Order-a.Order, a.Scarf); (a.Start+at-b.Start-other).Abs() >= d && a.Skin == b.Skin {
						kind = JointBay
					}
					found = append(found, finding.Finding{Kind: kind, Cell: b.Cell,
						Text: fmt.Sprintf("joints of %s at %s and %s at %s break the rule: %s", a.words(), measure.FeetInchesText(at), b.words(), measure.FeetInchesText(other), rule)})
				}
			}
		}
	}
	return found
}

// words is the run as findings name it.
func (r *Run) words() string { return fmt.Sprintf("%s %s %s", r.Skin, r.Name, r.Side) }
