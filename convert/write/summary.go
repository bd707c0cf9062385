package write

import (
	"fmt"

	"strakebook/calc/finding"
)

// Lines is the few figures that matter, for the Summary sheet and the terminal.
func Lines(in Input) [][2]string {
	var all [][2]string
	add := func(what, figure string, args ...any) {
		all = append(all, [2]string{what, fmt.Sprintf(figure, args...)})
	}
	for _, t := range in.Tables {
		add("Read", "%s at %s!%s, %d lines", t.Table, t.Sheet, t.Range, t.Lines)
	}
	add("Findings", "%d errors, %d warnings, %d notes", in.Findings.Count(finding.Error), in.Findings.Count(finding.Warning), in.Findings.Count(finding.Note))
	s := in.Result.Plan.Summary
	if s.Pieces > 0 {
		joints := 0
		for _, r := range in.Result.Runs {
			joints += len(r.Joints)
		}
		add("Strakes", "%d, of %d pieces with %d scarfs", len(in.Result.Runs), s.Pieces, joints)
	}
	if s.Boards > 0 {
		add("Boards", "%d, %.0f board feet; %.1f per cent of it waste (%.1f per cent on the net)", s.Boards, float64(s.BoardFeet), s.WasteOfBought, s.WasteOnNet)
		if s.Bound > 0 {
			add("Least possible", "the lumber is within %.1f per cent of the least it could be, joints placed freely", 100*(s.Spent-s.Bound)/s.Bound)
		}
	}
	if n := len(in.Result.Bevels); n > 0 {
		add("Bevels", "%d edges to saw", n)
	}
	if in.Result.Hull != nil {
		add("Hull", "%d stations drawn from the offsets", len(in.Result.Hull.Stations))
	}
	return all
}

// summary is the few figures that matter, what to look at first, and which of the
// other sheets hold nothing.
func summary(in Input, others []*page) *page {
	p := table("Summary", "summary", col("What", 20), col("Figure", 75))
	for _, l := range Lines(in) {
		p.line(text(l[0]), words(l[1]))
	}
	for i, f := range in.Findings {
		if i == 5 || f.Severity == finding.Note {
			break
		}
		p.line(text("Look at first"), words(f.Cell.String()+": "+f.Text))
	}
	for _, q := range others {
		if len(q.rows) == 0 && q.empty != "" && q.name != "Warnings" {
			p.line(text("Left out"), words(q.name+": "+q.empty))
		}
	}
	return p
}
