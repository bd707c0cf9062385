package read

import (
	"fmt"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/setting"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// settings reads a table of settings into the rules.
func (r *reader) settings(t *records) {
	r.tables = append(r.tables, t.found("settings"))
	for _, row := range t.rows {
		name := t.text(row, "setting")
		value, at, _ := t.see(row, "value")
		if strings.TrimSpace(name) == "" || (value.Kind == sheet.Empty && value.Formula == "") {
			continue
		}
		text := text(value)
		if value.Kind == sheet.Number {
			text = plainNumber(value.Number)
		}
		if err := r.apply(name, text, t.text(row, "unit")); err != nil {
			r.badSetting(err, name, text, at, t.page.cell(row, t.cols["setting"]))
		}
	}
}

// set applies the command line's settings, over what the book says.
func (r *reader) set(given []string) {
	for _, s := range given {
		name, value, _ := strings.Cut(s, "=")
		if err := r.apply(name, value, ""); err != nil {
			r.badSetting(err, name, value, source.Cell{}, source.Cell{})
		}
	}
}

// unknown is a setting of a name not known, and the nearest that is.
type unknown struct{ nearest string }

func (u unknown) Error() string { return "no setting has that name" }

// apply sets one rule by its name. A unit beside the value is part of it.
func (r *reader) apply(name, value, unit string) error {
	return Apply(r.rules.Settings(), name, value, unit)
}

// Apply sets one of the settings by its name. A unit beside the value is part of
// it where the setting is a length. Its errors say what was expected, and the
// nearest name where none is the one given.
func Apply(all []setting.Setting, name, value, unit string) error {
	want := settingName(name)
	nearest, least := "", 4
	for _, s := range all {
		if s.Name == want {
			if s.Value.Unit() == "in" && unit != "" && measure.MarkedUnit(value) == measure.NoUnit {
				if form, ok := bareUnit(unit); ok && form.Unit != measure.NoUnit {
					value += map[measure.Unit]string{measure.InFeet: " ft", measure.InInches: " in", measure.InMillimetres: " mm", measure.InCentimetres: " cm", measure.InMetres: " m"}[form.Unit]
				}
			}
			return s.Value.Set(value)
		}
		if d := distance(want, s.Name); d < least {
			nearest, least = s.Name, d
		}
	}
	return unknown{nearest}
}

func settingName(name string) string {
	return strings.Join(strings.Fields(strings.ToLower(strings.NewReplacer("_", " ", "-", " ", ":", " ").Replace(measure.Fold(name)))), " ")
}

func (r *reader) badSetting(err error, name, value string, at, nameAt source.Cell) {
	if u, ok := err.(unknown); ok {
		f := finding.Finding{Kind: SettingUnknown, Cell: nameAt, Reads: name, Text: fmt.Sprintf("there is no setting named %q", name)}
		if u.nearest != "" {
			f.Suggests = u.nearest
		}
		r.add(f)
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
