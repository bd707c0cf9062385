package measure

import "math"

// BoardFeet is lumber by board measure: one is a foot square and an inch thick,
// 144 cubic inches.
type BoardFeet float64

// Board is the board measure of one board: thickness by width by length.
// Stock under an inch counts as an inch; over an inch, fractions count as they
// are (Danforth, Mechanical Processes, "Lumber Measurement"; Griffith).
func Board(thickness, width, length Length) BoardFeet {
	return BoardFeet(counted(thickness) * width.Inches() * length.Feet() / 12)
}

// counted is the inches of thickness that board measure counts.
func counted(thickness Length) float64 { return max(thickness.Inches(), 1) }

// SurfaceMeasure is a hardwood board's face in square feet to the nearest whole
// number (NHLA rules, as the American Hardwood Export Council gives them). A
// board exactly on the half is read down where down is true and up where not:
// the tally takes them alternately (King, Elements of Woodwork).
func SurfaceMeasure(width, length Length, down bool) float64 {
	return nearest(width.Inches()*length.Feet()/12, down)
}

// HardwoodBoard is the board measure of a hardwood board: its surface measure
// times its thickness, under an inch counting as an inch.
func HardwoodBoard(thickness, width, length Length, down bool) BoardFeet {
	return BoardFeet(SurfaceMeasure(width, length, down) * counted(thickness))
}

// nearest is the nearest whole number, an exact half going the way said. A half
// is exact to a billionth, so that no float noise turns it.
func nearest(v float64, down bool) float64 {
	lower := math.Floor(v)
	if math.Abs(v-lower-0.5) > 1e-9 {
		return math.Round(v)
	}
	if down {
		return lower
	}
	return lower + 1
}
