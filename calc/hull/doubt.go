package hull

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/fair"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Doubt is one offset that the checks do not believe.
type Doubt struct {
	Kind          *finding.Kind
	Line, Station int // its places in the table
	Reads         source.Reading[measure.Length]
	Faired        measure.Length // what its neighbours say, to the table's resolution
	HasFaired     bool
	Proposals     []Proposal  // likely readings, the likeliest first
	Copied        string      // why no figure is proposed: what it is the same as
	Text          string      // what speaks against it, where that is not the curve
	Or            []fair.Spot // other figures that explain it nearly as well
}

// isDoubt says that findings of a code are about one figure that is not believed.
func isDoubt(code string) bool {
	return slices.ContainsFunc([]*finding.Kind{OffsetJump, OffsetValley, OffsetRepeat, OffsetZero, OffsetNegative}, func(k *finding.Kind) bool { return k.Code == code })
}

// Take is what a builder takes who takes the proposal: the likeliest reading,
// else the faired value; ok is false where there is neither.
func (d Doubt) Take() (v measure.Length, ok bool) {
	if len(d.Proposals) > 0 {
		return d.Proposals[0].Value, true
	}
	return d.Faired, d.HasFaired
}

// Finding is the doubt as a finding, in the table's own words.
func (d Doubt) Finding(o Offsets) finding.Finding {
	f := finding.Finding{Kind: d.Kind, Cell: d.Reads.Cell, Reads: d.Reads.Text, Suggests: d.suggests(o)}
	reads := fmt.Sprintf("%s at %s reads %q", o.Lines[d.Line].words(), o.called(d.Station), d.Reads.Text)
	switch {
	case d.Text != "":
		f.Text = d.Text
	case d.Kind == OffsetNegative:
		f.Text = reads + ", less than nothing"
	case d.Kind == OffsetZero:
		f.Text = reads + " between " + o.Places.String() + "s that have width"
	default:
		f.Text = reads
		if d.HasFaired {
			f.Text += ", its neighbours say about " + o.Form.Write(d.Faired)
		}
	}
	if len(d.Or) > 0 {
		var names []string
		for _, s := range d.Or {
			name := "the figure at " + o.called(s.At)
			if s.Row != d.Line {
				name = o.Lines[s.Row].words() + " there"
			}
			names = append(names, name)
			f.Also = append(f.Also, o.Lines[s.Row].Values[s.At].Cell)
		}
		f.Text += ", or else " + strings.Join(names, " or ") + " is wrong"
	}
	return f
}

// suggests is the likely readings and the faired value, what Take takes first.
func (d Doubt) suggests(o Offsets) string {
	var words []string
	for _, p := range d.Proposals {
		words = append(words, fmt.Sprintf("%s (%s)", o.Form.Write(p.Value), p.Reason))
	}
	text := strings.Join(words, " or ")
	if d.Copied != "" {
		text = d.Copied
	}
	if d.HasFaired {
		if text != "" {
			text += "; "
		}
		text += "faired " + o.Form.Write(d.Faired)
	}
	return text
}
