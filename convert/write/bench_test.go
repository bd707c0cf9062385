package write_test

import (
	"fmt"
	"path/filepath"
	"testing"

	"strakebook/calc/stock"
	"strakebook/convert/write"
	"strakebook/convert/xlsx"
)

// What writing the demo's book costs, from the result to the file.
func BenchmarkDemoBook(b *testing.B) { benchmark(b, demo()) }

// What a large yard's book costs: 10,000 pieces and 50,000 bevel marks.
func BenchmarkLargeBook(b *testing.B) { benchmark(b, large(demo(), 10000, 50000)) }

func benchmark(b *testing.B, in write.Input) {
	path := filepath.Join(b.TempDir(), "out.xlsx")
	b.ReportAllocs()
	for b.Loop() {
		ours, _ := write.Lay(in).Book()
		if err := xlsx.Save(path, true, ours, nil, nil); err != nil {
			b.Fatal(err)
		}
	}
}

// large is the job with its strakes and seams told over and over.
func large(in write.Input, pieces, marks int) write.Input {
	plan, runs, bevels := in.Result.Plan, in.Result.Runs, in.Result.Bevels
	in.Result.Plan = stock.Plan{Summary: plan.Summary, Order: plan.Order}
	in.Result.Runs = nil
	for n := 0; len(in.Result.Plan.Pieces) < pieces; n++ {
		pieceAt, cutAt := len(in.Result.Plan.Pieces), len(in.Result.Plan.Cuts)
		for _, p := range plan.Pieces {
			p.Strake, p.Mark = fmt.Sprint(n, p.Strake), fmt.Sprint(n, p.Mark)
			if p.Board >= 0 {
				p.Board += cutAt
			}
			in.Result.Plan.Pieces = append(in.Result.Plan.Pieces, p)
		}
		for _, c := range plan.Cuts {
			c.Pieces = append([]int{}, c.Pieces...)
			for i := range c.Pieces {
				c.Pieces[i] += pieceAt
			}
			in.Result.Plan.Cuts = append(in.Result.Plan.Cuts, c)
		}
		for _, r := range runs {
			r.Name = fmt.Sprint(n, r.Name)
			r.Order += n * 1000
			in.Result.Runs = append(in.Result.Runs, r)
		}
	}
	in.Result.Bevels = nil
	for n := 0; n < marks; {
		for _, s := range bevels {
			s.Strake = fmt.Sprint(len(in.Result.Bevels), "-", s.Strake)
			in.Result.Bevels = append(in.Result.Bevels, s)
			n += len(s.Marks)
		}
	}
	return in
}
