package write

import (
	"fmt"
	"strings"

	"strakebook/calc"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// Lines is the few figures that matter, for the Summary sheet and the terminal.
func Lines(in Input) [][2]string {
	var all [][2]string
	add := func(what, figure string, args ...any) {
		all = append(all, [2]string{what, fmt.Sprintf(figure, args...)})
	}
	for _, t := range in.Tables {
		add("Read", "%s at %s!%s, %d lines", t.Table, t.Sheet, t.Range, t.Lines)
	}
	add("Findings", "%d errors, %d warnings, %d notes", in.Findings.Count(finding.Error), in.Findings.Count(finding.Warning), in.Findings.Count(finding.Note))
	s := in.Result.Plan.Summary
	if s.Pieces > 0 {
		joints := 0
		for _, r := range in.Result.Runs {
			joints += len(r.Joints)
		}
		add("Strakes", "%d, of %d pieces with %d scarfs", len(in.Result.Runs), s.Pieces, joints)
	}
	if s.Boards > 0 {
		add("Boards", "%d, %.0f board feet; %.1f per cent of it waste (%.1f per cent on the net)", s.Boards, float64(s.BoardFeet), s.WasteOfBought, s.WasteOnNet)
		if s.Bound > 0 {
			add("Least possible", "the lumber is within %.1f per cent of the least it could be, joints placed freely", 100*(s.Spent-s.Bound)/s.Bound)
		}
	}
	if n := len(in.Result.Bevels); n > 0 {
		add("Bevels", "%d edges to saw", n)
	}
	if in.Result.Hull != nil {
		add("Hull", "%d stations drawn from the offsets", len(in.Result.Hull.Stations))
	}
	return all
}

// summary is the few figures that matter, what to look at first, and which of the
// other sheets hold nothing.
func summary(in Input, others []*page) *page {
	p := &page{name: "Summary", title: "summary", heads: []string{"What", "Figure"}, widths: []float64{20, 90}}
	for _, l := range Lines(in) {
		p.rows = append(p.rows, []sheet.Cell{text(l[0]), words(l[1])})
	}
	for i, f := range in.Findings {
		if i == 5 || f.Severity == finding.Note {
			break
		}
		p.rows = append(p.rows, []sheet.Cell{text("Look at first"), words(f.Cell.String() + ": " + f.Text)})
	}
	for _, q := range others {
		if len(q.rows) == 0 && q.empty != "" && q.name != "Warnings" {
			p.rows = append(p.rows, []sheet.Cell{text("Left out"), words(q.name + ": " + q.empty)})
		}
	}
	return p
}

// warnings is every finding, the worst first.
func warnings(in Input) *page {
	p := &page{name: "Warnings", title: "warnings", wide: true, filter: true,
		notes:  []string{"Where links to the marked cell. In Decision write take for the first thing suggested, or a value of your own, and hand this book back."},
		heads:  []string{"No.", "How bad", "Where", "What", "Reads", "Suggests", "What to do", "Decision", "Code"},
		widths: []float64{6, 9, 18, 60, 14, 34, 50, 12, 20},
		empty:  "Nothing was found."}
	for i, f := range in.Findings {
		where := sheet.Cell{Kind: sheet.Text, Text: f.Cell.String()}
		if ref := f.Cell.Ref(); ref != "" && in.carried(f.Cell.Sheet) {
			where.Link, where.Style = "'"+strings.ReplaceAll(f.Cell.Sheet, "'", "''")+"'!"+ref, sheet.LinkText
		}
		p.rows = append(p.rows, []sheet.Cell{whole(i + 1), text(f.Severity.String()), where, words(f.Text), text(f.Reads), words(f.Suggests), words(f.ToDo()), {Style: sheet.Input}, text(f.Code)})
	}
	if n := len(p.rows); n > 0 {
		p.drop = []sheet.DropDown{{Range: sheet.Range{Top: 4, Left: 8, Bottom: 3 + n, Right: 8}, Words: []string{"take"}}}
	}
	return p
}

// marks is the cells of the carried sheets to be marked, one mark a cell.
func marks(in Input) []sheet.Mark {
	at := map[source.Cell]int{}
	var all []sheet.Mark
	for _, f := range in.Findings {
		if f.Severity == finding.Note || f.Cell.Ref() == "" || !in.carried(f.Cell.Sheet) || (len(in.Books) > 0 && f.Cell.Book != in.Books[0].Name) {
			continue
		}
		note := fmt.Sprintf("%s: %s", f.Severity, f.Text)
		if f.Suggests != "" {
			note += "\nSuggests: " + f.Suggests
		}
		note += "\nTo do: " + f.ToDo()
		if i, twice := at[f.Cell]; twice {
			all[i].Note += "\n" + note
			continue
		}
		style := sheet.Unsure
		if f.Severity == finding.Error {
			style = sheet.Wrong
		}
		at[f.Cell] = len(all)
		all = append(all, sheet.Mark{Sheet: f.Cell.Sheet, Row: f.Cell.Row, Col: f.Cell.Col, Style: style, Note: note})
	}
	return all
}

// bevels is the sawyer's schedule, a card a seam.
func bevels(in Input) *page {
	r := in.Result.Rules
	u := r.Yard.Units
	p := &page{name: "Bevels", title: "bevels to saw", wide: true, group: map[int]bool{},
		notes: []string{
			"Degrees off square, + where the outside face is the wider. Marks along the sawn edge from the station named. The free edge is square.",
			fmt.Sprintf("Set to %s degree. Batten: from the free edge; set out: beyond a batten parallel at the bevel named. Nothing is said beyond the first and last reading.", r.Bevel.Readout.Write())},
		heads:  []string{"Strake", "Side", "Edge", "At, " + longUnit(u), "Station", "Read", "Between readings", "Faired", "Set", "Saw's scale", "Degrees a foot", "Faces differ, " + unit(u), "Batten, " + unit(u), "Set out, " + unit(u), "Note"},
		widths: []float64{12, 11, 9, 12, 9, 9, 10, 9, 9, 9, 10, 11, 10, 10, 30},
		empty:  "No bevels: a table of bevels (strake, edge, degrees by station) is needed."}
	for _, s := range in.Result.Bevels {
		p.group[len(p.rows)] = true
		known := ""
		if s.Thickness > 0 {
			known = fmt.Sprintf(", %s in thick, %s in wide, blade %s in", measure.InchesText(s.Thickness), measure.InchesText(s.Width), measure.InchesText(s.Depth.RoundUp(measure.Sixteenth)))
		}
		p.rows = append(p.rows, []sheet.Cell{opens(fmt.Sprintf("%s %s, %s edge, %s: from station %s aft to %s; distances from %s%s; parallel batten at %s", s.Skin, s.Strake, s.Edge, s.Side, s.From, s.To, s.AlongFrom, known, s.Parallel.Write()))})
		for _, m := range s.Marks {
			var notes []string
			if m.Crossing {
				notes = append(notes, "passes through square to the other hand")
			}
			if m.Filled {
				notes = append(notes, "no reading: from its neighbours")
			}
			read := sheet.Cell{}
			if m.Read.OK() {
				read = number(float64(m.Read.Value), sheet.Degrees)
			}
			row := []sheet.Cell{text(s.Strake), text(s.Side.String()), text(s.Edge.String()), long(m.At, u), text(m.Station), read,
				number(float64(m.Between), sheet.Degrees), number(float64(m.Faired), sheet.Degrees), number(float64(m.Set), sheet.Large), number(float64(m.Tilt), sheet.Degrees), number(float64(m.PerFoot), sheet.Degrees)}
			if s.Thickness > 0 && s.Width > 0 {
				row = append(row, small(m.Faces, u), small(m.Batten, u), small(m.SetOut, u))
			} else {
				row = append(row, sheet.Cell{}, sheet.Cell{}, sheet.Cell{})
			}
			p.rows = append(p.rows, append(row, text(strings.Join(notes, "; "))))
		}
	}
	return p
}

// offsets is the table as read, line by line, with how fair each line is.
func offsets(in Input) *page {
	p := &page{name: "Offsets", title: "offsets as read, and how fair", wide: true,
		notes:  []string{"Roughness and departure are in the table's own smallest step. Reads less faired; the worst is named."},
		heads:  []string{"View", "Line", "Roughness", "Largest departure", "At station", "Smallest fault seen"},
		widths: []float64{13, 18, 11, 11, 10, 13},
		empty:  "No offsets: a table of half-breadths and heights by station is needed."}
	i := 0
	for _, o := range in.Job.Offsets {
		if len(p.heads) == 6 {
			for _, s := range o.Stations {
				p.heads, p.widths = append(p.heads, s.Name), append(p.widths, 10)
			}
		}
		for _, l := range o.Lines {
			row := []sheet.Cell{text(l.View.String()), text(l.Name), {}, {}, {}, {}}
			if i < len(in.Result.Fair) && in.Result.Fair[i].Smallest > 0 {
				f := in.Result.Fair[i]
				row = []sheet.Cell{text(l.View.String()), text(l.Name), number(f.Roughness, sheet.Ratio), number(f.Largest, sheet.Ratio), text(f.Station),
					{Kind: sheet.Text, Text: o.Form.Write(f.Smallest), Style: sheet.Feet}}
			}
			i++
			for _, v := range l.Values {
				c := sheet.Cell{Kind: sheet.Text, Text: v.Text, Style: sheet.Feet}
				if v.OK() {
					c.Text = o.Form.Write(v.Value)
				}
				row = append(row, c)
			}
			p.rows = append(p.rows, row)
		}
	}
	return p
}

// settings is every rule with its value, unit, meaning, default and source.
func settings(in Input) *page {
	p := &page{name: "Settings", title: "settings", wide: true,
		notes:  []string{"Change a value on a sheet of your own headed Setting, Value and run strakebook again."},
		heads:  []string{"Name", "Value", "Unit", "Default", "Meaning", "Source"},
		widths: []float64{24, 16, 10, 16, 70, 60}}
	now, was := in.Result.Rules, calc.DefaultRules()
	defaults := was.Settings()
	for i, s := range now.Settings() {
		p.rows = append(p.rows, []sheet.Cell{text(s.Name), {Kind: sheet.Text, Text: s.Value.String(), Style: sheet.Input}, text(s.Value.Unit()), text(defaults[i].Value.String()), words(s.Meaning), words(s.Source)})
	}
	return p
}

// cautions is what the figures do not know, and what hurts. The figures' sources
// stand beside them.
func cautions(Input) *page {
	p := &page{name: "Cautions", title: "cautions", heads: []string{"Of", "Caution"}, widths: []float64{20, 100}}
	for _, c := range [][2]string{
		{"The figures", "These tables are for planning and checking. The hull on the stocks and the batten rule; measure before you cut, and try every setting of the saw on waste first."},
		{"Structure", "Scantlings, scarf slopes, joint spacing and species are the designer's and the surveyor's to pass. Local codes and licensed practice hold over anything written here."},
		{"Saws", "Guard all of the blade that is not cutting; a band saw's wheels are enclosed (29 CFR 1910.213). Use push sticks and hold-downs, keep hands out of the blade's line, and set the tilt with the saw stopped."},
		{"Ripping", "A rip saw wants a hood and a spreader (29 CFR 1910.213). Wood under stress closes on the blade: stop if it pinches."},
		{"Dust", "Wood dust is harmful and in part carcinogenic: NIOSH recommends at most 1 mg a cubic metre over a shift; ACGIH 0.5 for western red cedar. Collect it at the saw and wear a fitted respirator."},
		{"Resins and glues", "Epoxy resins and hardeners sensitise the skin and may bring on asthma (HSE RR079). Wear gloves of laminate or thick nitrile, not thin rubber; keep uncured resin off the skin, and air the shop."},
		{"Curing", "A joint is only as good as its glue line: keep to the maker's temperatures, pressures and times, and break test pieces from every batch."},
	} {
		p.rows = append(p.rows, []sheet.Cell{text(c[0]), {Kind: sheet.Text, Text: c[1], Style: sheet.Caution}})
	}
	return p
}
