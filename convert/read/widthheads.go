package read

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// widthAt is the heading of a column of widths at one station: Width at sta. 2, Width,
// sta 2 (in), W2. Its second part is the station, the third a unit.
var widthAt = regexp.MustCompile(`^(?:widths?|wide|w)[ .,:;@-]*(?:at )?(.*?\w)\.?(?:[ ,]+[(\[]?(in|ins|inches|"|mm|cm|ft|feet)\.?[)\]]?)?$`)

// thePlace is what may stand before the name of a station that has no number.
var thePlace = regexp.MustCompile(`^(?:(?:the|sta\.?|stn\.?|stations?|frame|fr\.?|mould|mold) )+`)

// widthHead is a heading as the name of a station, by itself or behind the word width.
func (r *reader) widthHead(c sheet.Cell) (name, bool) {
	if n, ok := r.stationName(c); ok || c.Kind != sheet.Text {
		return n, ok
	}
	m := widthAt.FindStringSubmatch(strings.ToLower(measure.Fold(text(c))))
	if m == nil {
		return name{}, false
	}
	n, ok := r.nameIn(sheet.Cell{Kind: sheet.Text, Text: m[1]})
	if at := thePlace.ReplaceAllString(m[1], ""); !ok && at != m[1] {
		n, ok = r.nameIn(sheet.Cell{Kind: sheet.Text, Text: at}) // station Transom, the transom
	}
	n.ofWidth = ok
	return n, ok
}

// soundHead is a heading of stretches of a board that are sound.
var soundHead = regexp.MustCompile(`(?i)^(?:clear|usable|sound|good)\b`)

// widthWord is a heading that begins by naming widths.
var widthWord = regexp.MustCompile(`(?i)^(?:widths?\b|w ?\d)`)

// widthUnit is the unit that such a heading ends in.
func widthUnit(heading string) (measure.Form, bool) {
	if m := widthAt.FindStringSubmatch(strings.ToLower(measure.Fold(heading))); m != nil && m[2] != "" {
		return bareUnit(m[2])
	}
	return measure.Form{}, false
}

// namesKnown says that a heading names widths, prices or sound stretches, though not so that its column
// could be read.
func (r *reader) namesKnown(t *records, heading string) bool {
	switch t.kind.name {
	case "strakes":
		return widthWord.MatchString(heading)
	case "rack":
		if soundHead.MatchString(heading) {
			return true
		}
		_, ok := priceHead(heading)
		for m := range priceMeasures {
			_, have := t.cols[m]
			ok = ok && !have
		}
		return ok
	}
	return false
}

// widthsByNumber leaves the widths whose headings give a number alone, as W2, where
// the book knows no station of that number: they may be of anything.
func (r *reader) widthsByNumber() {
	known := map[string]string{}
	transoms := []string(nil)
	all := slices.Clone(r.job.Stations)
	for _, o := range r.job.Offsets {
		all = append(all, o.Stations...)
	}
	for _, b := range r.job.Bevels {
		all = append(all, b.Stations...)
	}
	for _, s := range all {
		known[strings.ToLower(s.Name)] = s.Name
		if s.Transom && !slices.Contains(transoms, s.Name) {
			transoms = append(transoms, s.Name)
		}
	}
	var left []source.Cell
	for i := range r.job.Strakes {
		s := &r.job.Strakes[i]
		for k := range s.WidthAt {
			at := &s.WidthAt[k]
			if name, ok := known[strings.ToLower(at.Name)]; ok {
				at.Name = name
			} else if at.Transom && len(transoms) == 1 {
				at.Name = transoms[0]
			}
		}
		if slices.ContainsFunc(s.WidthAt, func(st hull.Station) bool { return r.numbered[st.Cell] && known[strings.ToLower(st.Name)] == "" }) {
			left = append(left, s.Cell)
			s.Widths, s.WidthAt = nil, nil
		}
	}
	if len(left) > 0 {
		r.add(finding.Finding{Kind: ColumnUnread, Cell: left[0], Also: left[1:],
			Text: fmt.Sprintf("the widths of %s stand under numbers that are no stations of this book, and were not read", plural(len(left), "strake", "strakes"))})
	}
}
