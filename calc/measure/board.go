package measure

import "math"

// BoardFeet is lumber by board measure: one is a foot square and an inch thick,
// 144 cubic inches.
type BoardFeet float64

// Board is the board measure of one board: thickness by width by length.
// Stock under an inch counts as an inch; over an inch, fractions count as they
// are (Danforth, Mechanical Processes, "Lumber Measurement"; Griffith).
func Board(thickness, width, length Length) BoardFeet {
	t := max(thickness.Inches(), 1)
	return BoardFeet(t * width.Inches() * length.Feet() / 12)
}

// SurfaceMeasure is a hardwood board's face in square feet to the nearest whole
// number (NHLA rules, as the American Hardwood Export Council gives them). A
// board exactly on the half is read down where down is true and up where not:
// the tally takes them alternately.
func SurfaceMeasure(width, length Length, down bool) float64 {
	sm := width.Inches() * length.Feet() / 12
	if whole := math.Floor(sm); sm-whole == 0.5 {
		if down {
			return whole
		}
		return whole + 1
	}
	return math.Round(sm)
}

// HardwoodBoard is the board measure of a hardwood board: its surface measure
// times its thickness, under an inch counting as an inch.
func HardwoodBoard(thickness, width, length Length, down bool) BoardFeet {
	return BoardFeet(SurfaceMeasure(width, length, down) * max(thickness.Inches(), 1))
}
