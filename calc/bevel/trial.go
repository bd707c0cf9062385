package bevel

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"

	"strakebook/calc/measure"
)

// Trial is one trial cut: what the saw's scale read and what the saw cut.
type Trial struct{ Reads, Cuts measure.Angle }

// tilt is what the saw's scale must read to cut a bevel, rounded once to the scale's
// step: the bevel is given as it is wanted, not as it was rounded to be shown.
func (r Rules) tilt(wanted measure.Angle) measure.Angle {
	s := r.Scale()
	i := 0
	for i < len(s)-1 && s[i].To < wanted {
		i++
	}
	return (s[i].Reads + (wanted-s[i].Cuts)*s[i].Slope).Round(r.Readout)
}

// ScalePart is a part of the saw's scale: up to the bevel To it reads Reads at the
// bevel Cuts and grows by Slope a degree cut.
type ScalePart struct {
	To, Reads, Cuts, Slope measure.Angle
}

// Scale is the saw's scale by the trial cuts: drawn straight from one to the next and
// on beyond the last, so that To of the last part does not count; of one alone, in its
// proportion, or about square, where that says nothing, as far off all along; true where
// none was made.
func (r Rules) Scale() []ScalePart {
	t := r.trials()
	switch {
	case len(t) == 0:
		return []ScalePart{{Slope: 1}}
	case len(t) == 1 && !t[0].proportioned():
		return []ScalePart{{Reads: t[0].Reads, Cuts: t[0].Cuts, Slope: 1}}
	case len(t) == 1:
		return []ScalePart{{Slope: t[0].Reads / t[0].Cuts}}
	}
	var all []ScalePart
	for i := 1; i < len(t); i++ {
		a, b := t[i-1], t[i]
		all = append(all, ScalePart{To: b.Cuts, Reads: a.Reads, Cuts: a.Cuts, Slope: (b.Reads - a.Reads) / (b.Cuts - a.Cuts)})
	}
	return all
}

// proportioned says that a trial cut shows a scale's proportion: it was read and cut to
// one hand, a degree or more. Our choice.
func (t Trial) proportioned() bool {
	return t.Reads*t.Cuts > 0 && math.Abs(float64(t.Cuts)) >= 1
}

// trials is the trial cuts made, by what they cut.
func (r Rules) trials() []Trial {
	if len(r.Trials) == 0 && r.TrialReads != 0 && r.TrialCuts != 0 {
		return []Trial{{r.TrialReads, r.TrialCuts}}
	}
	return r.Trials
}

// beyondTrials is how far a bevel lies beyond those tried and a step of the scale
// more, where several were; 0 or less where it does not.
func (r Rules) beyondTrials(b measure.Angle) float64 {
	t := r.trials()
	if len(t) < 2 {
		return 0
	}
	return float64(max(t[0].Cuts-b, b-t[len(t)-1].Cuts) - r.Readout)
}

// trialCuts is the setting of trial cuts: "10 cuts 9.75; 5 cuts 5; 0 cuts 0.25".
type trialCuts struct{ p *[]Trial }

// Set reads pairs of what the scale read and what was cut, apart by semicolons.
func (v trialCuts) Set(text string) error {
	var all []Trial
	expected := fmt.Errorf("reads %q: expected what the scale read and what was cut, as in 10 cuts 9.75; 0 cuts 0.25", text)
	for _, one := range strings.FieldsFunc(measure.Fold(text), func(r rune) bool { return r == ';' }) {
		reads, cuts, ok := strings.Cut(strings.ToLower(one), "cuts")
		if !ok {
			reads, cuts, ok = strings.Cut(one, "=")
		}
		a, errA := measure.ParseAngle(strings.TrimSpace(reads))
		b, errB := measure.ParseAngle(strings.TrimSpace(cuts))
		if !ok || errA != nil || errB != nil || math.Abs(float64(a)) > 60 || math.Abs(float64(b)) > 60 {
			return expected
		}
		all = append(all, Trial{a, b})
	}
	slices.SortFunc(all, func(a, b Trial) int { return cmp.Compare(a.Cuts, b.Cuts) })
	for i := 1; i < len(all); i++ {
		if all[i].Cuts <= all[i-1].Cuts || all[i].Reads <= all[i-1].Reads {
			return errors.New("expected trial cuts that grow with the scale's reading")
		}
	}
	*v.p = all
	return nil
}

func (v trialCuts) String() string {
	var all []string
	for _, t := range *v.p {
		all = append(all, t.Reads.Write()+" cuts "+t.Cuts.Write())
	}
	return strings.Join(all, "; ")
}

// Unit is none: both figures are in degrees.
func (v trialCuts) Unit() string { return "" }
