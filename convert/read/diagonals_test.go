package read

import (
	"testing"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
)

// Where a diagonal leaves the centre line and how far below level it runs, as labels,
// titles over them and columns of their own say it.
func TestDiagonalsSaid(t *testing.T) {
	const four = 4 * measure.Foot
	for _, c := range []diagonalCase{
		{"in inches", "Diagonal 4-0-0 45 deg", four, 45},
		{"in inches", "Diagonal A, 4-0-0 on CL, at 45°", four, 45},
		{"in inches", "Diagonals Diagonal A, 4-0-0, 40 deg", four, 40}, // of two rows of headings
		{"in inches", "Diag. A: from 48 in on the centreline, 45 deg down", four, 45},
		{"in inches", "Diag. 2 from 4' 0\" on the middle line, 37 1/2 degrees below level", four, 37.5},
		{"in inches", "Diagonal B, 30° to the vertical from 4 ft", four, 60},
		{"in mm", "Diagonal 1, 1200 mm up, 40°30' down", 1200 * measure.Millimetre, 40.5},
		{"in mm", "Diagonal 1, 1200 on CL, 40 deg.", 1200 * measure.Millimetre, 40},
		{"in inches", "Diagonal 1 at 45 deg", 0, 45},
		{"in inches", "Diagonal 1, 4-0-0", four, 0},
		{"in inches", "Diagonal 1 4-0-0 30 deg 30 min", four, 30.5},
		{"in inches", "Diagonal A, 3'-6\", 45 deg", 3*measure.Foot + 6*measure.Inch, 45},
		{"in inches", "Diagonal A 4 ft 10 deg below level", four, 10},
		{"in inches", "Bilge diagonal: 37 1/2° down; 4'", four, 37.5},
		{"in mm", "Diagonal 2 1200 mm 45 deg", 1200 * measure.Millimetre, 45},
		{"in mm", "Diagonal A, 1,041 mm, 30 deg", 1041 * measure.Millimetre, 30}, // as a cell would be read
		// What is not understood whole is not used.
		{"in mm", "Diagonal 1 041 mm, 30 deg", 0, 0},
		{"in inches", "Diagonal 1, 4-0-0 on CL, 45 deg up", 0, 0},
		{"in inches", "Diagonal A, 12 in above LWL, 30 deg", 0, 0},
		{"in inches", "Diagonal A, 3-0-0 below sheer, 30 deg", 0, 0},
		{"in inches", "Diagonal A, 3-0-0 from CL, 30 deg", 0, 0},
		{"in inches", "Diagonal A, 3-0-0, 75 deg off C.L.", 0, 0},
		{"in inches", "Diagonal A, 3-0-0, 75 deg to centreline", 0, 0},
		{"in inches", "Diagonal A, 3-0-0, 75 deg from CL", 0, 0},
		{"in inches", "Diagonal A, 3-0-0, 30 deg 20", 0, 0},
		{"in inches", "Diagonal A, 3' 13\", 30 deg", 0, 0},
		{"in inches", "Diagonal A, 3' 6\" 1/2, 30 deg", 0, 0},
		{"in inches", "Diagonal 3 1/2 in, 30 deg", 0, 0},
		{"in inches", "Diagonal A, 3-0-0, 4-0-0, 30 deg", 0, 0},
		{"in inches", "Diagonal A, 45 deg 4' 2\"", 0, 0},
	} {
		r := read(t, bookOf(sheetOf("Offsets", "Table of offsets "+c.title+"\nStation|0|1|2|3\nHB deck|4|14.5|21|22.25\n"+c.label+"|5|15|22|23")), Options{})
		c.is(t, r.job.Offsets, c.label)
	}
	for _, rows := range []string{
		"Offsets in inches\nStation|0|1|2|3\nHB deck|4|14.5|21|22.25\nDiagonals: 4-0-0 up on the centreline, 45 degrees||||\nDiagonal A|5|15|22|23",
		"Offsets in inches\nLine|Height on centreline|Angle below level|0|1|2|3\nHB deck|||4|14.5|21|22.25\nDiagonal A|48|45|5|15|22|23",
		"Offsets in inches\nLine|Height on centreline|Angle|0|1|2|3\nHB deck|||4|14.5|21|22.25\nUpper diagonal|4-0-0|45°|5|15|22|23",
	} {
		r := read(t, bookOf(sheetOf("Offsets", rows)), Options{})
		diagonalCase{at: four, down: 45}.is(t, r.job.Offsets, rows)
	}
}

type diagonalCase struct {
	title, label string
	at           measure.Length
	down         measure.Angle // 0 where it is not said
}

func (c diagonalCase) is(t *testing.T, all []hull.Offsets, words string) {
	t.Helper()
	for _, o := range all {
		for _, l := range o.Lines {
			if l.Role != hull.DiagonalLine {
				continue
			}
			if l.At.Value != c.at || l.At.OK() != (c.at > 0) || l.Down.Value != c.down || l.Down.OK() != (c.down > 0) {
				t.Errorf("%s: from %v at %v degrees, want %v at %v", words, l.At.Value, l.Down.Value, c.at, c.down)
			}
			if len(l.Values) != 4 || l.Values[1].Value != 15*measure.Inch && l.Values[1].Value != 15*measure.Millimetre {
				t.Errorf("%s: %d figures", words, len(l.Values))
			}
			return
		}
	}
	t.Errorf("%s: no diagonal is read", words)
}
