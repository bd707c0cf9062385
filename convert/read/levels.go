package read

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// level is the height of a waterline or the distance out of a buttock that its
// label gives: a length that shows its unit, or feet-inches-eighths; in a label
// that is nothing else, or whose column is headed so, in the table's own form.
func (r *reader) level(l *tableLine, t *stationTable, form measure.Form) source.Reading[measure.Length] {
	none := source.Reading[measure.Length]{Cell: l.line.Cell}
	if l.line.Role != hull.Waterline && l.line.Role != hull.Buttock {
		return none
	}
	take := func(v measure.Length, text string) source.Reading[measure.Length] {
		return source.Reading[measure.Length]{Value: v, State: source.Given, Text: text, Cell: l.line.Cell}
	}
	label := measure.Fold(l.line.Name)
	places := []string{r.withoutViews(label), r.afterName(label)}
	if found := levelText.FindString(strings.ToLower(label)); found != "" && measure.MarkedUnit(strings.TrimSpace(found)) != measure.NoUnit {
		places = append(places, strings.Trim(found, " )"))
	}
	for _, p := range places {
		if p == "" {
			continue
		}
		if measure.MarkedUnit(p) != measure.NoUnit {
			if v, err := measure.ParseLength(p, measure.NoUnit); err == nil {
				return take(v, p)
			}
		}
		if n := measure.Notations(p); len(n) > 0 && n[0] == measure.FeetInchesEighths {
			if v, err := (measure.Form{Notation: measure.FeetInchesEighths}).Length(p); err == nil {
				return take(v, p)
			}
		}
	}
	if l.height != "" {
		if v, ok := r.headed(l.height, t, form); ok {
			return take(v, l.height)
		}
	}
	if form.Unit == measure.Fractions {
		for _, p := range places {
			if v, err := strconv.ParseFloat(p, 64); err == nil && v >= 0 && v <= 10 {
				return take(measure.Metre.Times(v), p)
			}
		}
	}
	return none
}

// headed reads a label's number in the unit that the heading of its column
// states, else in the table's.
func (r *reader) headed(label string, t *stationTable, form measure.Form) (measure.Length, bool) {
	form.Notation = measure.Decimal
	for _, c := range t.corner() {
		if f, ok := headUnit(c.Text); ok && r.words.has(c.Text, "heights") {
			form = f
		}
	}
	v, err := form.Length(label)
	return v, err == nil
}

// afterName is a label without the word that names its line: the 2-0-0 of
// "Buttock 2-0-0".
func (r *reader) afterName(label string) string {
	t := strings.ToLower(r.withoutViews(label))
	for _, h := range r.words.in(t) {
		if h.meaning == "waterline" || h.meaning == "buttock" || h.meaning == "diagonal" {
			toks := tokens(t)
			// From where the name's last word ends in the label as it is written.
			last := toks[h.to-1]
			if at := strings.LastIndex(unpointed(t), last); at >= 0 {
				rest := unpointed(t)[at+len(last):]
				return strings.Trim(rest, " .:,()=@")
			}
		}
	}
	return ""
}

// unpointed is a label whose abbreviations have lost their points.
func unpointed(t string) string {
	var b strings.Builder
	for i := range len(t) {
		if t[i] == '.' && !(i > 0 && digit(t[i-1])) {
			continue
		}
		b.WriteByte(t[i])
	}
	return b.String()
}

// levels reads the waterlines and buttocks that are named by a bare number as
// places, where these can be nothing else: in a table whose unit is known and
// numbers that do not count the lines. WL 1, WL 2, WL 3 are names.
func (r *reader) levels(lines []tableLine, t *stationTable, form measure.Form) {
	unit := form.Unit
	if unit == measure.NoUnit || unit == measure.Fractions {
		return
	}
	for _, role := range []hull.Role{hull.Waterline, hull.Buttock} {
		var all []int
		var at []float64
		signed := role == hull.Waterline && slices.ContainsFunc(lines, func(l tableLine) bool { return l.line.Role == role && aboveOrBelow(l.line.Name) })
		if signed && slices.ContainsFunc(lines, func(l tableLine) bool { return l.line.Role == role && l.line.At.OK() }) {
			continue // some from base and some from the load waterline: what the others are from is not said
		}
		for i := range lines {
			l := &lines[i]
			if l.line.Role != role || l.line.At.OK() {
				continue
			}
			number := r.numberIn(l.line.Name)
			if form.DecimalComma || decimalComma.MatchString(number) {
				number = strings.Replace(number, ",", ".", 1)
			}
			v, err := strconv.ParseFloat(number, 64)
			if signed {
				v, err = fromLoadWaterline(l.line.Name, number)
			}
			if err != nil || v < 0 && !signed {
				return
			}
			all, at = append(all, i), append(at, v)
		}
		if len(all) < 2 || counts(at) || !signed && !likely(at, lines, unit) {
			continue
		}
		for k, i := range all {
			v, _, err := form.Number(at[k])
			if err != nil {
				return
			}
			lines[i].line.At = source.Reading[measure.Length]{Value: v, State: source.Given, Text: r.numberIn(lines[i].line.Name), Cell: lines[i].line.Cell}
		}
		first := lines[all[0]].line
		r.add(finding.Finding{Kind: ConventionRead, Cell: first.Cell,
			Text: fmt.Sprintf("the names of the %ss are read as their places in %s: %s at %s", role, unit, first.Name, form.Write(first.At.Value))})
	}
}

// aboveOrBelow says that a waterline is named by its place above or below the load
// waterline: DWL+0.328, WL -6, 0.5 below LWL.
func aboveOrBelow(label string) bool {
	return signedName.MatchString(strings.ToLower(measure.Fold(label)))
}

// fromLoadWaterline is how far such a waterline is above the load waterline, which is
// named by itself.
func fromLoadWaterline(label, number string) (float64, error) {
	t := strings.ToLower(measure.Fold(label))
	m := levelSaid.FindStringSubmatch(t)
	switch {
	case m != nil:
		number = m[1]
		if m[2] == "below" {
			number = "-" + number
		}
	case !strings.ContainsAny(t, "0123456789"):
		return 0, nil
	}
	return strconv.ParseFloat(strings.ReplaceAll(number, " ", ""), 64)
}

var levelSaid = regexp.MustCompile(`(\d+(?:\.\d+)?) (above|below)\b`)

// likely says that numbers can be places on the hull: they reach at least a
// twentieth of its greatest figure.
func likely(at []float64, lines []tableLine, unit measure.Unit) bool {
	top, most := 0.0, measure.Length(0)
	for _, v := range at {
		top = max(top, v)
	}
	for _, l := range lines {
		for _, v := range l.line.Values {
			if v.OK() {
				most = max(most, v.Value)
			}
		}
	}
	return 20*unit.Length().Times(top) >= most
}

// numberIn is the bare number that a line's label gives beside its name.
func (r *reader) numberIn(label string) string {
	if rest := r.afterName(measure.Fold(label)); rest != "" {
		return rest
	}
	return r.withoutViews(label)
}

// counts says that numbers count lines one after another, up or down.
func counts(at []float64) bool {
	for i, v := range at {
		if v != float64(int(v)) || v > 40 {
			return false
		}
		if i > 0 && at[i]-at[i-1] != at[1]-at[0] {
			return false
		}
	}
	step := at[1] - at[0]
	return step == 1 || step == -1
}
