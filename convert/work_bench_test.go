package convert

import (
	"testing"

	"strakebook/calc"
	"strakebook/calc/hull"
	"strakebook/convert/read"
	"strakebook/convert/sheet"
	"strakebook/templates"
)

// BenchmarkWork is the cost of working out the demo yard, read already: all of it,
// and the hull alone.
func BenchmarkWork(b *testing.B) {
	job, _, _ := read.Books([]*sheet.Book{Demo()}, read.Options{Headings: templates.Headings})
	b.Run("whole", func(b *testing.B) {
		for b.Loop() {
			calc.Work(job)
		}
	})
	b.Run("checks", func(b *testing.B) {
		for b.Loop() {
			hull.Examine(job.Offsets[0], job.Rules.Hull)
		}
	})
	o := job.Offsets[0]
	o = o.Without(hull.Examine(o, job.Rules.Hull).Doubts)
	b.Run("hull", func(b *testing.B) {
		for b.Loop() {
			hull.Work(o, job.Strakes, job.Rules.Hull)
		}
	})
}
