package stock

import (
	"bufio"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"strakebook/calc/lay"
)

// TestBins cuts the OR-Library's binpack1 and binpack3 (Falkenauer), forty lists
// of 120 and of 500 pieces, from one length: the number after capacity and count
// is the best known number of bins.
func TestBins(t *testing.T) {
	reached, all := 0, 0
	var took []int64
	for _, file := range []string{"binpack1", "binpack3"} {
		f, err := os.Open("../../testdata/worked/stock/orlib/" + file + ".txt")
		if err != nil {
			t.Fatal(err)
		}
		defer f.Close()
		book := bufio.NewReader(f)
		var lists int
		fmt.Fscan(book, &lists)
		for k := range lists {
			var name string
			var hold, n, best int
			fmt.Fscan(book, &name, &hold, &n, &best)
			var list []Wanted
			for i := range n {
				var l int
				fmt.Fscan(book, &l)
				list = append(list, Wanted{Mark: fmt.Sprint(i + 1), Species: "pine", Thickness: in(1), Width: in(4), Length: in(float64(l))})
			}
			if !*figures && (k%5 != 0 || strings.HasSuffix(file, "3") && k%10 != 0) {
				continue
			}
			r := DefaultRules()
			r.EndTrim, r.CrossKerf, r.Edging, r.Dressing = 0, 0, 0, 0
			at := cpu()
			runs, plan, _ := Work(WantedRuns(list), []Board{board("b", "pine", 1, 4, float64(hold)/12, 0)}, nil, lay.DefaultRules(), r)
			took = append(took, (cpu() - at).Milliseconds())
			if len(runs) != n || plan.Summary.Unserved > 0 || plan.Summary.Boards > best+1 {
				t.Errorf("%s: %d bins, best known %d", name, plan.Summary.Boards, best)
			}
			if plan.Summary.Boards < best {
				t.Errorf("%s: %d bins, fewer than the proven %d", name, plan.Summary.Boards, best)
			}
			all++
			if plan.Summary.Boards == best {
				reached++
			}
		}
	}
	slices.Sort(took)
	if *figures {
		fmt.Printf("binpack: best known reached on %d of %d, median %d ms, most %d ms\n", reached, all, took[len(took)/2], took[len(took)-1])
	}
	if reached*40 < 34*all {
		t.Errorf("best known reached on %d of %d", reached, all)
	}
}
