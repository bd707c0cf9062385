package write

import (
	"fmt"

	"strakebook/convert/sheet"
)

// joints is where the middle of each scarf falls, a strake a row.
func joints(in Input) *page {
	u := in.units()
	most := 0
	for _, r := range in.Result.Runs {
		most = max(most, len(r.Joints))
	}
	p := table("Joints", "joints along the strakes", col("Skin", 9), col("Strake", 10), col("Side", 11), col("Length, "+longUnit(u), 13), col("Pieces", 8))
	for i := range most {
		p.add(col(fmt.Sprintf("Joint %d, %s", i+1, longUnit(u)), 12))
	}
	p.csv = true
	p.empty = "No joints: a list of strakes with thickness, width and length is needed."
	p.note("A joint's place is the middle of its scarf, from the strake's fore end. Strakes count from the sheer down.")
	for _, r := range in.Result.Runs {
		row := []sheet.Cell{text(string(r.Skin)), text(r.Name), text(r.Side.String()), long(r.Length, u), whole(len(r.Pieces))}
		for _, j := range r.Joints {
			row = append(row, long(j, u))
		}
		p.line(row...)
	}
	return p
}
