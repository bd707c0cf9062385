package stock

import (
	"fmt"

	"strakebook/calc/finding"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
)

// checkRack says which boards have no size, and which can serve no strake.
func checkRack(rack []Board, runs []lay.Run, r Rules) finding.List {
	var found finding.List
	for _, b := range rack {
		name := b.Mark
		if name == "" {
			name = b.Species
		}
		if !b.whole() {
			found = append(found, finding.Finding{Kind: Incomplete, Cell: b.Cell,
				Text: fmt.Sprintf("board %q has no %s", name, lacking(b))})
			continue
		}
		if len(runs) == 0 {
			continue
		}
		asked, thin, narrow := false, true, true
		for i := range runs {
			c := classOf(&runs[i])
			if !c.suits(b) {
				continue
			}
			asked = true
			if thick, _ := c.across(r); b.Thickness.Value >= thick+r.Dressing {
				thin = false
				narrow = narrow && c.lanes(b, r) < 1
			}
		}
		switch {
		case !asked:
			found = append(found, finding.Finding{Kind: Unused, Cell: b.Cell, Reads: b.Species,
				Text: fmt.Sprintf("board %q is %s, which no strake asks for", name, b.Species)})
		case thin:
			found = append(found, finding.Finding{Kind: Thin, Cell: b.Thickness.Cell, Reads: b.Thickness.Text,
				Text: fmt.Sprintf("board %q of %s in is too thin for every strake of its species", name, measure.InchesText(b.Thickness.Value))})
		case narrow:
			found = append(found, finding.Finding{Kind: Narrow, Cell: b.Width.Cell, Reads: b.Width.Text,
				Text: fmt.Sprintf("board %q of %s in is too narrow for every strake of its species", name, measure.InchesText(b.Width.Value))})
		}
	}
	return found
}

func lacking(b Board) string {
	switch {
	case !b.Thickness.OK() || b.Thickness.Value <= 0:
		return "thickness"
	case !b.Width.OK() || b.Width.Value <= 0:
		return "width"
	}
	return "length"
}

// noStock says of each class that no board serves why none does.
func noStock(runs []lay.Run, classes []class, of []int, rack []Board, r Rules) finding.List {
	var found finding.List
	if len(rack) == 0 {
		return nil
	}
	told := make([]bool, len(classes))
	for i := range runs {
		c := &classes[of[i]]
		if len(c.sticks) > 0 || told[of[i]] {
			continue
		}
		told[of[i]] = true
		found = append(found, why(c, runs[i], rack, r))
	}
	return found
}

// why is the finding for a class that no board serves.
func why(c *class, run lay.Run, rack []Board, r Rules) finding.Finding {
	species, thick, wide := false, false, false
	needThick, needWide := c.across(r)
	for _, b := range rack {
		if !b.whole() || !c.suits(b) {
			continue
		}
		species = true
		if b.Thickness.Value >= needThick+r.Dressing {
			thick = true
			wide = wide || c.lanes(b, r) > 0
		}
	}
	f := finding.Finding{Cell: run.Cell}
	switch {
	case !species:
		f.Kind, f.Reads = NoSpecies, c.species
		f.Text = fmt.Sprintf("%s %s is to be of %q, and no board is", run.Skin, run.Name, c.species)
	case !thick:
		f.Kind = NoThick
		f.Text = fmt.Sprintf("%s %s needs stock of %s in and none is so thick", run.Skin, run.Name, measure.InchesText(needThick+r.Dressing))
	case !wide:
		f.Kind = NoWide
		f.Text = fmt.Sprintf("%s %s needs stock %s in wide and none is", run.Skin, run.Name, measure.InchesText(needWide+r.Edging))
	default:
		f.Kind = NoLong
		f.Text = fmt.Sprintf("%s %s has no stock longer than the end trim", run.Skin, run.Name)
	}
	return f
}
