package templates_test

import "strconv"

// evenly is stations so far apart, named by their numbers, with those between.
func evenly(spacing float64, names ...float64) []station {
	var all []station
	for _, n := range names {
		all = append(all, station{strconv.FormatFloat(n, 'f', -1, 64), n * spacing})
	}
	return all
}

// demoBoat is a motor vessel of 58 ft with a strip skin of 5/8 in and planks of
// 1 in over it.
func demoBoat() boat {
	f := form{length: 58 * 12, scale: 0.9875, ease: 1}
	transom := station{"Transom", f.length}
	return boat{
		form:      f,
		stations:  append(evenly(48, 0, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14), transom),
		bevelled:  append(evenly(48, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14), transom),
		buttocks:  []float64{24, 36, 72},
		levels:    []float64{36, 48, 60, 72, 84, 96, 108},
		outer:     planking{f, 1, 28},
		inner:     strips{f, 1.625, 1.5},
		thick:     "1",
		stripWide: "1 1/2",
		seed:      58,
		scatter:   0.1,
	}
}

// demoBook is the demo yard's sheets before the faults are planted.
func demoBook() map[string]rows {
	b := demoBoat()
	return map[string]rows{
		"Job": {
			{"Hull 31, motor vessel of 58 ft: yard book"},
			{"Two skins: strips edge-glued over moulds, planks over them."},
			{},
			{"Setting", "Value", "Unit", "Note"},
			{"job", "Hull 31, 58 ft motor vessel", "", ""},
			{"date", "revision C", "", "of the offsets"},
			{"units", "feet", "", ""},
			{"strip scarf slope", "7", "to 1", ""},
			{"plank scarf slope", "12", "to 1", ""},
			{"sawn edge", "upper", "", "hung from the sheer down"},
			{"saw tilt", "12", "degrees", "either hand"},
			{"saw offset", "1/2", "in", "off the batten"},
			{"batten thickness", "3/4", "in", "the saw rides on it"},
			{"face up", "outside", "", ""},
			{"rip kerf", "1/8", "in", ""},
			{"end trim", "4", "in", "both ends together"},
			{"joint grid", "6", "in", "joints on the half-foot marks of the staff"},
			{"tries", "500", "", "a plan in a moment; more tries may save lumber"},
		},
		"Offsets": b.offsets("Hull 31: table of offsets, feet-inches-eighths, to outside of planking", "Stations 4 ft apart, numbered from the stem aft. A dash: the line is not there."),
		"Bevels":  b.bevels("Hull 31: bevels of the planks, degrees off square", "Lifted square to the upper edge; + where the outside face is the wider. Port is lifted as far as plank 10.", 28, 10),
		"Strakes": b.strakes("Hull 31: strakes of both skins, a side", "Widths on the inside face.", "Red cedar", "Douglas fir"),
		"Rack": {
			{"Hull 31: lumber in the shed and what the mill will cut"},
			{"Rough sizes. No count: as many as wanted."},
			{},
			{"Board", "Species", "Thickness", "Width", "Length", "Count", "Price a board foot", "Source", "Remarks"},
			{"", "", "in", "in", "ft", "pcs", "", "", ""},
			{"F1", "Douglas fir", "1 1/4", "6", "20", "24", "4.1", "shed", "clear"},
			{"F2", "Douglas fir", "1 1/4", "6", "18", "30", "4.1", "shed", ""},
			{"F3", "Douglas fir", "1 1/4", "8", "16", "18", "4.1", "shed", ""},
			{"F4", "Douglas fir", "1 1/4", "7", "14", "12", "4.1", "shed", ""},
			{"F5", "Douglas fir", "1 1/4", "6", "16", "", "4.6", "mill", ""},
			{"F6", "Douglas fir", "1 1/4", "6", "20", "", "4.9", "mill", ""},
			{"C1", "Red cedar", "2", "8", "14", "20", "3.2", "shed", "for strips"},
			{"C2", "Red cedar", "2", "10", "12", "16", "3.2", "shed", "for strips"},
			{"C3", "Red cedar", "2", "8", "12", "", "3.5", "mill", ""},
			{"C4", "Red cedar", "2", "8", "14", "", "3.6", "mill", ""},
		},
	}
}

// starterBoat is a launch of 24 ft with one skin of planks 3/4 in thick.
func starterBoat() boat {
	f := form{length: 24 * 12, scale: 0.42, ease: 1.2}
	whole := evenly(24, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12)
	return boat{
		form:     f,
		stations: evenly(24, 0, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12),
		bevelled: whole,
		buttocks: []float64{12},
		levels:   []float64{18, 24, 30, 36, 42},
		outer:    planking{f, 0.75, 12},
		thick:    "3/4",
		seed:     24,
		scatter:  0.1,
	}
}

// starterBook is a book to begin from: every table with an example in it.
func starterBook() map[string]rows {
	b := starterBoat()
	return map[string]rows{
		"Settings": {
			{"Settings of the job"},
			{"Change the values; leave out what does not matter. Any other setting may be added by its name."},
			{},
			{"Setting", "Value", "Unit", "Note"},
			{"job", "24 ft launch (an example)", "", "heads every sheet"},
			{"units", "feet", "", "feet, inches or mm: how lengths are written"},
			{"paper", "letter", "", "letter or a4"},
			{"plank scarf slope", "12", "to 1", ""},
			{"strip scarf slope", "7", "to 1", ""},
			{"plank joints apart", "4", "ft", "scarfs of neighbouring planks"},
			{"planks between", "3", "", "between scarfs in one place"},
			{"sawn edge", "upper", "", "planks are hung from the sheer down"},
			{"saw readout", "0.25", "degrees", ""},
			{"saw tilt", "15", "degrees", "to either hand"},
			{"saw offset", "1/2", "in", "kerf off the guide batten"},
			{"batten thickness", "0", "in", "0: the saw rides on the plank"},
			{"face up", "outside", "", "outside or inside"},
			{"rip kerf", "1/8", "in", ""},
			{"end trim", "4", "in", "of a board, both ends together"},
		},
		"Offsets": b.offsets("Table of offsets, feet-inches-eighths, to outside of planking", "An example: write your own over it. A dash: the line is not there. Leave nothing blank inside a line."),
		"Bevels":  b.bevels("Bevels of the planks, degrees off square", "An example. Lifted square to the upper edge; + where the outside face is the wider.", 4, 2),
		"Strakes": b.strakes("Strakes, a side", "An example. Width on the inside face, the greatest where it tapers; length from hood end to hood end.", "", "White cedar"),
		"Rack": {
			{"Lumber on the rack and what the mill will cut"},
			{"An example. Rough sizes. No count: as many as wanted."},
			{},
			{"Board", "Species", "Thickness", "Width", "Length", "Count", "Price a board foot", "Source", "Remarks"},
			{"", "", "in", "in", "ft", "pcs", "", "", ""},
			{"A", "White cedar", "1", "8", "14", "16", "3", "shed", ""},
			{"B", "White cedar", "1", "8", "12", "", "3.2", "mill", ""},
			{"C", "White cedar", "1", "8", "20", "", "3.4", "mill", ""},
		},
		"Pieces": {
			{"Pieces to cut as they are given, without joints"},
			{"An example. Finished sizes. No count: one."},
			{},
			{"Piece", "Species", "Thickness", "Width", "Length", "Count", "Remarks"},
			{"", "", "in", "in", "ft-in-8ths", "pcs", ""},
			{"thwart", "White cedar", "3/4", "7", "5-4-0", "2", ""},
			{"side bench", "White cedar", "3/4", "6", "6-2-4", "4", ""},
			{"floorboard", "White cedar", "3/4", "4", "9-0-0", "6", ""},
		},
	}
}
