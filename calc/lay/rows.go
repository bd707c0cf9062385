package lay

import (
	"fmt"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
)

// CheckRows says of every row of strakes in which a rule is broken whether that
// had to be: proven, or merely not found otherwise. Longest is the longest piece
// the stock gives each run; 0 where it gives none.
func CheckRows(runs []Run, longest []measure.Length, r Rules) finding.List {
	broken := make([]bool, len(runs))
	for _, b := range Breaches(runs, r) {
		broken[b.Run] = true
		if b.Other >= 0 {
			broken[b.Other] = true
		}
	}
	var found finding.List
	for from := 0; from < len(runs); {
		to := from + 1
		for to < len(runs) && runs[to].Skin == runs[from].Skin && runs[to].Side == runs[from].Side && longest[to] > 0 && longest[from] > 0 {
			to++
		}
		any := false
		for i := from; i < to; i++ {
			any = any || broken[i]
		}
		if any && !mirrors(runs[from:to], runs[:from]) {
			found = append(found, checkRow(runs[from:to], longest[from:to], r))
		}
		from = to
	}
	return found
}

// mirrors says that a row is laid as one before it is.
func mirrors(row, before []Run) bool {
	if len(before) < len(row) {
		return false
	}
	before = before[len(before)-len(row):]
	for i := range row {
		a, b := &row[i], &before[i]
		if a.Skin != b.Skin || a.Name != b.Name || a.Length != b.Length || fmt.Sprint(a.Joints) != fmt.Sprint(b.Joints) {
			return false
		}
	}
	return true
}

// checkRow is the finding for a row that breaks a rule.
func checkRow(row []Run, longest []measure.Length, r Rules) finding.Finding {
	f := finding.Finding{Kind: JointUnfound, Cell: row[0].Cell}
	name := fmt.Sprintf("%s %s to %s %s", row[0].Skin, row[0].Name, row[len(row)-1].Name, row[0].Side)
	verdict, last := Judge(row, longest, r)
	switch verdict {
	case Impossible:
		f.Kind, f.Cell = JointNone, row[last].Cell
		f.Text = fmt.Sprintf("the joints of %s %s to %s %s cannot be laid on %s without breaking a rule: every way was tried",
			row[0].Skin, row[0].Name, row[last].Name, row[0].Side, r.Falls())
		f.Do = frees(row, longest, r)
	case Possible:
		f.Text = fmt.Sprintf("the joints of %s can be laid without breaking a rule, but not from the boards there are at a like cost", name)
	default:
		f.Text = fmt.Sprintf("no layout of %s was found that keeps every rule; whether there is one is not known", name)
	}
	return f
}

// frees tries what would free a row in which some rule must be broken: pieces
// some feet longer, no stretch to be kept clear.
func frees(row []Run, longest []measure.Length, r Rules) string {
	free := append([]Run{}, row...)
	for i := range free {
		free[i].Clear = nil
	}
	if v, _ := Judge(free, longest, r); v != Impossible {
		return "shift the stretches to be kept clear: without them no proof stands against it"
	}
	for feet := measure.Length(2); feet <= 8; feet += 2 {
		more := make([]measure.Length, len(longest))
		for i := range more {
			more[i] = longest[i] + feet*measure.Foot
		}
		if v, _ := Judge(row, more, r); v != Impossible {
			return fmt.Sprintf("offer boards %s longer: with those no proof stands against it; or have the designer pass the joints named", r.Units.Long(feet*measure.Foot))
		}
	}
	return ""
}
