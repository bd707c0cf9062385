package read

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/setting"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// givenSetting is one setting as a book gives it.
type givenSetting struct {
	name, value, unit       string
	nameAt, valueAt, unitAt source.Cell
}

// settings takes the rows of a table of settings; they are applied when every
// book's have been found.
func (r *reader) settings(t *records) {
	r.tables = append(r.tables, t.found("settings"))
	for _, row := range t.rows {
		name := t.text(row, "setting")
		c, at, _ := t.cell(row, "value")
		if name == "" || !filled(c) {
			continue
		}
		g := givenSetting{name: name, value: settingText(c), unit: t.text(row, "unit"), nameAt: t.page.cell(row, t.cols["setting"]), valueAt: at}
		if form, ok := t.said["value"]; ok && g.unit == "" {
			g.unit = form.Unit.String()
		}
		r.given = append(r.given, g)
	}
}

// settingText is a setting's value as text: of a number all its figures, whatever
// its format shows.
func settingText(c sheet.Cell) string {
	switch {
	case c.Kind == sheet.Number:
		if u := formatUnit(c); u != measure.NoUnit {
			return plainNumber(c.Number) + " " + unitMark(u)
		}
		return plainNumber(c.Number)
	case c.Kind == sheet.Empty:
		return "=" + c.Formula
	}
	return text(c)
}

// loneSettings finds settings kept without headings: a name that is exactly that
// of a setting, and its value in the next cell or after a colon; below it where
// the names stand side by side.
func (r *reader) loneSettings(p *page) {
	known := map[string]bool{}
	for _, s := range r.rules.Settings() {
		known[settingName(s.Name)] = true
	}
	var all []givenSetting
	for row := 1; row <= p.rows; row++ {
		for _, col := range p.filled[0][row] {
			c := p.at(row, col)
			if c.Kind != sheet.Text {
				continue
			}
			name, value, joined := strings.Cut(c.Text, ":")
			if !joined {
				name, value, joined = strings.Cut(c.Text, "=")
			}
			if !known[settingName(name)] {
				continue
			}
			g := givenSetting{name: strings.TrimSpace(name), value: strings.TrimSpace(value), nameAt: p.cell(row, col), valueAt: p.cell(row, col)}
			right, down := 1, 0
			if known[settingName(text(p.at(row, col+1)))] || known[settingName(text(p.at(row, col-1)))] {
				right, down = 0, 1
			}
			if next := p.at(row+down, col+right); g.value == "" && filled(next) && !known[settingName(text(next))] {
				g.value, g.valueAt = settingText(next), p.cell(row+down, col+right)
				if form, ok := bareUnit(text(p.at(row+2*down, col+2*right))); ok && form.Unit != measure.NoUnit {
					g.unit, g.unitAt = form.Unit.String(), p.cell(row+2*down, col+2*right)
				}
			}
			if g.value != "" && (joined || g.valueAt != g.nameAt) {
				all = append(all, g)
			}
		}
	}
	for _, g := range all {
		// Units and the like are said of a table too: alone they are no settings.
		if name := settingName(g.name); len(all) < 3 && (name == "units" || name == "date" || name == "paper") {
			continue
		}
		p.use(g.nameAt.Row, g.nameAt.Col)
		p.use(g.valueAt.Row, g.valueAt.Col)
		if g.unit != "" {
			p.use(g.unitAt.Row, g.unitAt.Col)
		}
		p.tables++
		r.given = append(r.given, g)
	}
}

// apply sets the rules as the books give them: the unit of bare numbers first,
// since other settings may be such. A setting given twice is reported.
func (r *reader) apply() {
	order := slices.Clone(r.given)
	slices.SortStableFunc(order, func(a, b givenSetting) int {
		x, y := settingName(a.name) == "bare numbers", settingName(b.name) == "bare numbers"
		switch {
		case x == y:
			return 0
		case x:
			return -1
		}
		return 1
	})
	first := map[string]givenSetting{}
	for _, g := range order {
		name := settingName(g.name)
		if f, again := first[name]; again {
			if f.value != g.value || f.unit != g.unit {
				r.add(finding.Finding{Kind: SettingTwice, Cell: g.valueAt, Also: []source.Cell{f.valueAt}, Reads: g.value, Suggests: f.value,
					Text: fmt.Sprintf("setting %q is %q here and %q before: the first holds", name, g.value, f.value)})
			}
			continue
		}
		if err := r.applyOne(g); err != nil {
			r.badSetting(err, g.name, g.value, g.valueAt, g.nameAt)
			continue // and holds against none that can be read
		}
		first[name] = g
		r.state(g.name, stated{bySettings, g.valueAt})
	}
}

// applyOne sets one rule from a book. A bare number that is to be a length needs
// a unit: beside it, in it, or that of bare numbers; fractions are of inches. One that
// is over an area needs the area likewise.
func (r *reader) applyOne(g givenSetting) error {
	unit := g.unit
	if s := settingNamed(r.rules.Settings(), g.name); s != nil && strings.HasPrefix(s.Value.Unit(), "a square") && strings.TrimSpace(unit) == "" {
		imperial := r.rules.Yard.Bare == measure.InFeet || r.rules.Yard.Bare == measure.InInches
		if v, err := measure.ParseNumber(g.value); err == nil && v != 0 && !imperial {
			return openArea{}
		}
	}
	if s := settingNamed(r.rules.Settings(), g.name); s != nil && s.Value.Unit() == "in" && strings.TrimSpace(unit) == "" {
		n := measure.Notations(g.value)
		bare := len(n) > 0 && (n[0] == measure.Decimal || n[0] == measure.InchesFractions && !strings.Contains(g.value, "/"))
		if v, err := measure.ParseNumber(g.value); bare && err == nil && v != 0 && measure.MarkedUnit(g.value) == measure.NoUnit {
			if r.rules.Yard.Bare == measure.NoUnit {
				return openUnit{}
			}
			unit, r.bared = r.rules.Yard.Bare.String(), true
		}
	}
	return Apply(r.rules.Settings(), g.name, g.value, unit)
}

// openUnit is a length without a unit.
type openUnit struct{}

func (openUnit) Error() string {
	return "is a number without a unit: write the unit beside it"
}

// openArea is an amount over an area that is not said.
type openArea struct{}

func (openArea) Error() string {
	return "is a number without an area: write beside it what it is over, a square foot or a square metre, as in 0.05 lb a square foot or 250 g/m2"
}

// set applies the command line's settings, over what the book says.
func (r *reader) set(given []string) {
	for _, s := range given {
		name, value, _ := strings.Cut(s, "=")
		if err := Apply(r.rules.Settings(), name, value, ""); err != nil {
			r.badSetting(err, name, value, source.Cell{}, source.Cell{})
			continue
		}
		r.state(name, stated{by: byCommand})
	}
}

// unknown is a setting of a name not known, and the nearest that is.
type unknown struct{ nearest string }

// Error is the fault and the nearest name.
func (u unknown) Error() string {
	if u.nearest == "" {
		return "no setting has that name"
	}
	return fmt.Sprintf("no setting has that name; the nearest is %q", u.nearest)
}

// Apply sets one of the settings by its name. A unit beside the value is part of
// it. Its errors say what was expected, and the nearest name where none is the
// one given.
func Apply(all []setting.Setting, name, value, unit string) error {
	if s := settingNamed(all, name); s != nil {
		return s.SetIn(value, unit)
	}
	want := settingName(name)
	nearest, least := "", max(2, len(want)/3+1)
	for _, s := range all {
		if d := distance(want, settingName(s.Name)); d < least {
			nearest, least = s.Name, d
		}
	}
	return unknown{nearest}
}

// settingNamed is the setting of a name, however it is written; nil where none has it.
func settingNamed(all []setting.Setting, name string) *setting.Setting {
	want := settingName(name)
	i := slices.IndexFunc(all, func(s setting.Setting) bool { return settingName(s.Name) == want })
	if i < 0 {
		return nil
	}
	return &all[i]
}

func settingName(name string) string {
	return strings.Join(strings.Fields(strings.ToLower(unjoined.Replace(measure.Fold(name)))), " ")
}

var unjoined = strings.NewReplacer("_", " ", "-", " ", ":", " ")

// unitMark is a unit as it is written after a number.
func unitMark(u measure.Unit) string {
	return map[measure.Unit]string{measure.InFeet: "ft", measure.InInches: "in", measure.InMillimetres: "mm", measure.InCentimetres: "cm", measure.InMetres: "m"}[u]
}

func (r *reader) badSetting(err error, name, value string, at, nameAt source.Cell) {
	if u, ok := err.(unknown); ok {
		r.add(finding.Finding{Kind: SettingUnknown, Cell: nameAt, Reads: name, Suggests: u.nearest, Text: fmt.Sprintf("there is no setting named %q", name)})
		return
	}
	r.add(finding.Finding{Kind: SettingUnread, Cell: at, Reads: value, Text: fmt.Sprintf("setting %q %v", settingName(name), err)})
}

// distance is how many letters must change to make one name of another.
func distance(a, b string) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range len(a) {
		last := row[0]
		row[0] = i + 1
		for j := range len(b) {
			cost := last
			if a[i] != b[j] {
				cost++
			}
			last = row[j+1]
			row[j+1] = min(cost, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(b)]
}
