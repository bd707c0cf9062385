package hull

import "strakebook/calc/measure"

// say writes a length in the words of a finding: as the offsets are written, or in
// the units asked for where these are of another kind, so that all that is said of a
// book is in one notation.
func (r Rules) say(form measure.Form, l measure.Length) string {
	own := measure.StyleInches
	switch form.Notation {
	case measure.FeetInchesEighths, measure.OldPrint, measure.FeetInchesFractions:
		own = measure.StyleFeet
	}
	if form.Metric() {
		own = measure.StyleMM
	}
	if form.Unit == measure.Fractions || r.Units == own || r.Units == measure.StyleFeet && own == measure.StyleInches {
		return form.Say(l)
	}
	return r.Units.Long(l)
}
