package read

import (
	"strings"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// guideForm is the form that the guide gives a table of stations.
func (r *reader) guideForm(p *page, t *stationTable) (measure.Form, bool) {
	if r.now == nil {
		return measure.Form{}, false
	}
	return formOfGuide(*r.now)
}

// formOfGuide is the unit and notation of one line of a guide. Where the
// notation is one of feet and inches the word feet is no unit of bare numbers.
func formOfGuide(g sheet.GuideRow) (measure.Form, bool) {
	form, _ := bareUnit(g.Unit)
	for n := measure.FeetInchesEighths; n <= measure.Decimal; n++ {
		if plainWords(g.Notation) == plainWords(n.String()) {
			form.Notation = n
		}
	}
	switch form.Notation {
	case measure.FeetInchesEighths, measure.OldPrint, measure.FeetInchesFractions:
		if form.Unit == measure.InFeet {
			form.Unit = measure.NoUnit
		}
	}
	return form, form != measure.Form{}
}

// fieldOfGuide is what a guide's line says of one column of a list: its unit may
// be one word for all, or a word for each, "thickness inches; length feet".
func fieldOfGuide(g sheet.GuideRow, field string) (measure.Form, bool) {
	unit := ""
	for _, part := range strings.Split(g.Unit, ";") {
		name, word, two := strings.Cut(strings.TrimSpace(part), " ")
		switch {
		case two && plainWords(name) == field:
			unit = word
		case !strings.Contains(g.Unit, ";") && len(unit) == 0 && !two:
			unit = part
		}
	}
	form, ok := bareUnit(unit)
	return form, ok && form != measure.Form{}
}
