package stock

import (
	"fmt"

	"strakebook/calc/finding"
	"strakebook/calc/lay"
	"strakebook/calc/source"
)

// checkRack says which boards have no size, and which can serve no strake.
func checkRack(rack []Board, needs []need, r Rules) finding.List {
	var found finding.List
	for _, b := range rack {
		name := b.Mark
		if name == "" {
			name = b.Species
		}
		if odd := b.odd(r.Units); odd != "" {
			found = append(found, finding.Finding{Kind: Absurd, Cell: b.Cell, Text: fmt.Sprintf("board %q is %s", name, odd)})
			continue
		}
		if b.Count.State == source.Dash {
			found = append(found, finding.Finding{Kind: Incomplete, Cell: b.Count.Cell, Reads: b.Count.Text, Do: "write how many there are, or leave the count blank where there are as many as are wanted",
				Text: fmt.Sprintf("board %q has a count of %q, and is left on the rack", name, b.Count.Text)})
			continue
		}
		if !b.sized() {
			found = append(found, finding.Finding{Kind: Incomplete, Cell: b.Cell,
				Text: fmt.Sprintf("board %q has no %s", name, lacking(b))})
			continue
		}
		if !b.Free() && b.Delivered.OK() && b.Delivered.Value != b.Count.Value {
			found = append(found, finding.Finding{Kind: Delivery, Cell: b.Delivered.Cell, Reads: b.Delivered.Text,
				Text: fmt.Sprintf("%d of board %q are delivered and %d are counted", b.Delivered.Value, name, b.Count.Value)})
		}
		if len(needs) == 0 || b.Unsure { // what is unsure of it is said where it was read
			continue
		}
		asked, thin, narrow := false, true, true
		for _, n := range needs {
			if !n.suits(b) {
				continue
			}
			asked = true
			if r.finishes(b.Thickness.Value) >= n.thick {
				thin = false
				narrow = narrow && n.lanes(b, r) < 1
			}
		}
		switch {
		case !asked:
			found = append(found, finding.Finding{Kind: Unused, Cell: b.Cell, Reads: b.Species,
				Text: fmt.Sprintf("board %q is %s, which no strake asks for", name, b.Species)})
		case thin:
			found = append(found, finding.Finding{Kind: Thin, Cell: b.Thickness.Cell, Reads: b.Thickness.Text,
				Text: fmt.Sprintf("board %q of %s is too thin for every strake of its species", name, r.Units.Small(b.Thickness.Value))})
		case narrow:
			found = append(found, finding.Finding{Kind: Narrow, Cell: b.Width.Cell, Reads: b.Width.Text,
				Text: fmt.Sprintf("board %q of %s is too narrow for every strake of its species", name, r.Units.Small(b.Width.Value))})
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

// noStock says of each need that no board serves why none does.
func noStock(runs []lay.Run, h *shop, rack []Board, r Rules) finding.List {
	var found finding.List
	if len(rack) == 0 {
		return nil
	}
	told := make([]bool, len(h.classes))
	for i := range runs {
		k := h.of[i]
		if len(h.classes[k].opens) > 0 || told[k] {
			continue
		}
		told[k] = true
		found = append(found, why(h.needs[k], runs[i], rack, r))
	}
	return found
}

// hollowed says what of a run's stock is hollowed out of its back; "" for nothing.
func hollowed(run lay.Run, r Rules) string {
	if run.Hollow == 0 {
		return ""
	}
	return fmt.Sprintf(", of which %s is hollowed out of its back,", r.Units.Small(run.Hollow))
}

// why is the finding for a need that no board serves.
func why(n need, run lay.Run, rack []Board, r Rules) finding.Finding {
	species, thick, wide, idle := false, false, false, false
	for _, b := range rack {
		if n.suits(b) && (!b.whole() || !b.Free() && b.Count.Value < 1) {
			idle = true
			continue
		}
		if !n.suits(b) {
			continue
		}
		species = true
		if r.finishes(b.Thickness.Value) >= n.thick {
			thick = true
			wide = wide || n.lanes(b, r) > 0
		}
	}
	f := finding.Finding{Cell: run.Cell}
	switch {
	case !species && idle:
		f.Kind, f.Do = NoLong, "see what is said of each board: write its size, its count or its flaw so that it can be read; leave the count blank where there are as many as are wanted"
		f.Text = fmt.Sprintf("%s %s has no stock: of the boards that would suit it none can be used, for want of a size, a count or a flaw that can be read", run.Skin, run.Name)
	case !species:
		f.Kind, f.Reads = NoSpecies, run.Species
		f.Text = fmt.Sprintf("%s %s is to be of %q, and no board is", run.Skin, run.Name, run.Species)
	case !thick:
		f.Kind = NoThick
		f.Text = fmt.Sprintf("%s %s needs stock of %s%s and none is so thick", run.Skin, run.Name, r.Units.Small(r.rough(n.thick)), hollowed(run, r))
		if run.Hollow > 0 {
			f.Do = "add thicker stock, or line off narrower planks, which are hollowed less"
		}
		if 4*run.Hollow > 3*run.Thick {
			f.Do = "line the seams off anew, so that none of the planks straddles a chine; thicker stock or less dressing is no remedy"
		}
	case !wide:
		f.Kind = NoWide
		f.Text = fmt.Sprintf("%s %s needs stock %s wide and none is", run.Skin, run.Name, r.Units.Small(n.wide+r.Edging))
	default:
		f.Kind = NoLong
		f.Text = fmt.Sprintf("%s %s has no stock longer than the end trim and its least piece", run.Skin, run.Name)
	}
	return f
}
