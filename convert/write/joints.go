package write

import (
	"fmt"

	"strakebook/calc/lay"
	"strakebook/convert/sheet"
)

// joints is where the middle of each scarf falls, a strake a row; those that
// break a rule are marked.
func joints(in Input) *page {
	u := in.units()
	most := 0
	for _, r := range in.Result.Runs {
		most = max(most, len(r.Joints))
	}
	p := table("Joints", "joints along the strakes", col("Skin", 9), col("Strake", 9), col("Side", 11), col("Length, "+longUnit(u), 12), col("Pieces", 8), col("Slope, to 1", 8), col("Scarf run, "+unit(u), 10))
	for i := range most {
		p.add(col(fmt.Sprintf("Joint %d, %s", i+1, longUnit(u)), 11))
	}
	p.csv, p.keys = true, 3
	p.empty = "No joints: a list of strakes with thickness, width and length is needed."
	p.note("A joint's place is the middle of its scarf, from the strake's fore end. Strakes count from the sheer down. Marked: nearer to another joint than the rules allow. Where the joints fall wants strakebook run again.")
	breaches := in.breaches()
	for i := range in.Result.Runs {
		r := &in.Result.Runs[i]
		if r.Given {
			continue // it has none, and comes after those that may
		}
		row := []sheet.Cell{text(string(r.Skin)), text(r.Name), text(r.Side.String()), long(r.Length, u), whole(len(r.Pieces)),
			live(number(r.Slope, sheet.Ratio), slope(in, *r)), livef(small(r.Scarf, u), "%s*MAX(0,%s-2*%s)", p.here("Slope"), figure(inUnits(r.Through(), u)), set("scarf nib"))}
		for k, bad := range breaches[i] {
			c := long(r.Joints[k], u)
			if bad {
				c.Style = sheet.Unsure
			}
			row = append(row, c)
		}
		if i > 0 && (r.Skin != in.Result.Runs[i-1].Skin || r.Side != in.Result.Runs[i-1].Side) {
			ruled(row)
		}
		p.line(row...)
	}
	return p
}

// breaches says of each joint of each run whether it breaks a rule.
func (in Input) breaches() [][]bool {
	runs := in.Result.Runs
	all := make([][]bool, len(runs))
	for i := range runs {
		all[i] = make([]bool, len(runs[i].Joints))
	}
	for _, b := range lay.Breaches(runs, in.Result.Rules.Lay) {
		all[b.Run][b.Joint] = true
		if b.Other >= 0 {
			all[b.Other][b.OtherJoint] = true
		}
	}
	return all
}
