package write

import "strakebook/convert/sheet"

// cautions is what the figures do not know, and what hurts. The figures' sources
// stand beside them.
func cautions(Input) *page {
	p := table("Cautions", "cautions", col("Of", 20), col("Caution", 75))
	for _, c := range [][2]string{
		{"The figures", "These tables are for planning and checking. The hull on the stocks and the batten rule; measure before you cut, and try every setting of the saw on waste first."},
		{"Structure", "Scantlings, scarf slopes, joint spacing and species are the designer's and the surveyor's to pass. Local codes and licensed practice hold over anything written here."},
		{"Saws", "Guard all of the blade that is not cutting; a band saw's wheels are enclosed (29 CFR 1910.213). Use push sticks and hold-downs, keep hands out of the blade's line, and set the tilt with the saw stopped."},
		{"Ripping", "A rip saw wants a hood and a spreader (29 CFR 1910.213). Wood under stress closes on the blade: stop if it pinches."},
		{"Dust", "Wood dust is harmful and in part carcinogenic: NIOSH recommends at most 1 mg a cubic metre over a shift; ACGIH 0.5 for western red cedar. Collect it at the saw and wear a fitted respirator."},
		{"Resins and glues", "Epoxy resins and hardeners sensitise the skin and may bring on asthma (HSE RR079). Wear gloves of laminate or thick nitrile, not thin rubber; keep uncured resin off the skin, and air the shop."},
		{"Curing", "A joint is only as good as its glue line: keep to the maker's temperatures, pressures and times, and break test pieces from every batch."},
	} {
		p.line(text(c[0]), sheet.Cell{Kind: sheet.Text, Text: c[1], Style: sheet.Caution})
	}
	return p
}
