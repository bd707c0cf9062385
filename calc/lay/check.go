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
	JointNone = &finding.Kind{
		Code: "joint-none", Severity: finding.Warning, Title: "no layout of joints keeps every rule",
		Why:    "Every way of making up the strakes from pieces the stock can give was tried: some rule is broken in all of them, and the layout taken breaks few.",
		Remedy: "offer longer boards, shift a stretch to be kept clear, set a finer joint grid, or have the designer pass the joints named",
	}
	JointUnfound = &finding.Kind{
		Code: "joint-unfound", Severity: finding.Warning, Title: "no layout found that keeps every rule",
		Why:    "There are too many ways to try them all: one that keeps every rule may be there.",
		Remedy: "set more tries, offer longer boards, or have the designer pass the joints named",
	}
	PieceShort = &finding.Kind{
		Code: "piece-chain", Severity: finding.Error, Title: "strake that no pieces make up",
		Why:    "No chain of pieces between the shortest allowed and the longest board reaches from end to end.",
		Remedy: "offer longer boards, or allow shorter pieces",
	}
)

// Breach is one rule that the joints as laid break.
type Breach struct {
	Kind       *finding.Kind
	Run        int // index of the run
	Joint      int // index of its joint
	Other      int // index of the run of the other joint, -1 for a stretch kept clear
	OtherJoint int
	Rule       string         // in words
	Apart      measure.Length // what the two joints lie apart along the side
	Short      measure.Length // what they want, or the joint wants to be out of the stretch; 0 for a bay
}

// Breaches is every rule that the joints as laid break, each pair of joints once.
func Breaches(runs []Run, r Rules) []Breach {
	var all []Breach
	for i, near := range Neighbours(runs, r) {
		a := &runs[i]
		for j, at := range a.Joints {
			for _, z := range a.Clear {
				if at > z.From && at < z.To {
					all = append(all, Breach{Kind: JointZone, Run: i, Joint: j, Other: -1, Short: min(at-z.From, z.To-at),
						Rule: fmt.Sprintf("no joint from %s to %s", r.Units.Long(z.From), r.Units.Long(z.To))})
				}
			}
			for _, n := range near {
				if n.Of < i {
					continue
				}
				b := &runs[n.Of]
				for k, other := range b.Joints {
					x, y := a.Start+at, b.Start+other
					d := (x - y).Abs()
					breach := Breach{Kind: JointNear, Run: i, Joint: j, Other: n.Of, OtherJoint: k, Rule: n.Rule, Apart: d, Short: n.Apart - d}
					if d >= n.Apart {
						if !n.Bay || bay(x, r.Frames) != bay(y, r.Frames) {
							continue
						}
						breach.Kind, breach.Rule, breach.Short = JointBay, "three strakes between joints in one frame bay", 0
					}
					all = append(all, breach)
				}
			}
		}
	}
	return all
}

// bay is the number of the frame bay a place lies in.
func bay(x, frames measure.Length) measure.Length {
	b := x / frames
	if x%frames < 0 {
		b--
	}
	return b
}

// Check names every rule that the joints as laid break.
func Check(runs []Run, r Rules) finding.List {
	var found finding.List
	for _, b := range Breaches(runs, r) {
		a := &runs[b.Run]
		at := r.Units.Long(a.Joints[b.Joint])
		f := finding.Finding{Kind: b.Kind, Cell: a.Cell}
		if b.Other < 0 {
			f.Text = fmt.Sprintf("%s has a joint at %s, %s inside a stretch that is to have none: %s", a.words(), at, r.Units.Long(b.Short), b.Rule)
		} else {
			o := &runs[b.Other]
			f.Cell = o.Cell
			apart := r.Units.Long(b.Apart) + " apart"
			f.Text = fmt.Sprintf("joints of %s at %s and %s at %s lie %s and break the rule: %s", a.words(), at, o.words(), r.Units.Long(o.Joints[b.OtherJoint]), apart, b.Rule)
		}
		f.Do = r.free(runs, b)
		found = append(found, f)
	}
	return found
}

// free is what would free a breach, where more can be said than the kind says.
func (r Rules) free(runs []Run, b Breach) string {
	a := &runs[b.Run]
	do := fmt.Sprintf("offer boards that give pieces of %s, so that %s needs one joint fewer", r.Units.Long(a.fewer()), a.words())
	if b.Other < 0 {
		return fmt.Sprintf("%s; or shift the stretch by %s", do, r.Units.Long(b.Short))
	}
	o := &runs[b.Other]
	do += fmt.Sprintf(", or of %s for %s", r.Units.Long(o.fewer()), o.words())
	if b.Kind == JointNear {
		do += fmt.Sprintf("; they want %s more between them", r.Units.Long(b.Short))
	}
	return do + "; or have the designer pass it"
}

// fewer is the least length of pieces that make up the run with one joint fewer.
func (r *Run) fewer() measure.Length {
	n := measure.Length(max(1, len(r.Joints)))
	return ((r.Length + (n-1)*r.Scarf + n - 1) / n).RoundUp(measure.Eighth)
}

// words is the run as findings name it.
func (r *Run) words() string { return fmt.Sprintf("%s %s %s", r.Skin, r.Name, r.Side) }
