package stock

import (
	"flag"
	"fmt"
	"strings"
	"testing"
	"time"

	"strakebook/calc/lay"
)

var figures = flag.Bool("figures", false, "measure every instance at the usual tries and print what it comes to")
var tries = flag.Int("tries", 0, "tries to measure with; 0 for the usual")
var only = flag.String("only", "", "instances to measure")

func TestTune(t *testing.T) {
	if !*figures {
		t.Skip()
	}
	for _, name := range strings.Split(*only, ",") {
		grid := 1.0
		n, g, ok := strings.Cut(name, "@")
		if ok {
			fmt.Sscan(g, &grid)
		}
		runs, rack, lr, r := open(t, n).job(grid)
		if *tries > 0 {
			r.Tries = *tries
		}
		at := time.Now()
		out, plan, _ := Work(runs, rack, lr, r)
		joints := 0
		for i := range out {
			joints += len(out[i].Joints)
		}
		s := plan.Summary
		fmt.Printf("%-12s %10.2f bound %10.2f boards %d joints %d breaches %d unserved %d %v\n", name, s.Spent+r.JointCost*float64(joints), s.Bound, s.Boards, joints, len(lay.Check(out, lr)), s.Unserved, time.Since(at).Round(time.Millisecond))
	}
}
