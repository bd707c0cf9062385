package read

import (
	"fmt"
	"strconv"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// leftUnits tells of the units that alone were changed on a Settings sheet of ours,
// and are not followed: whether the figure beside one is meant in it is not known.
// Where the figure was changed too it is read in them.
func (r *reader) leftUnits() {
	rules := r.rules
	for _, b := range r.boxUnits {
		made, do := "", "write the value anew in that unit, or the unit as it was"
		switch s := settingNamed(rules.Settings(), b.name); {
		case b.changed():
			continue
		case strings.HasPrefix(b.name, pricePrefix):
			made, do = b.pricedBy(), "write on your rack what its prices are of"
		case s == nil || b.held:
			continue // a box that holds is told of as it is read
		default:
			made = s.Value.Unit()
			if _, own := s.Value.(interface{ SetUnit(text, unit string) error }); own && !sameFigure(s.Value.String(), b.made) {
				continue // its unit is the tables' own, which were changed since
			}
			if _, err := strconv.ParseFloat(b.made, 64); err == nil && made == "in" && r.madeIn == measure.StyleMM.String() {
				made = "mm"
			}
			if s.SetIn(b.value, made) == nil {
				if as := s.Written(); s.SetIn(b.value, b.unit) == nil && s.Written() == as {
					continue // the same, in other words
				}
			}
		}
		if !strings.EqualFold(b.unit, made) {
			r.add(finding.Finding{Kind: BoxLeft, Cell: b.valueAt, Reads: b.unit, Do: do,
				Text: fmt.Sprintf("the unit of %q was changed from %q to %q, and not followed", b.name, made, b.unit)})
		}
	}
}
