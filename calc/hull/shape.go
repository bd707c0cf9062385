package hull

import "strakebook/calc/measure"

// Shape is what follows from the offsets: sections, girths, seams, moulds.
type Shape struct {
	Stations []Girth
}

// Girth is a station's half girth, on the surface the offsets are to.
type Girth struct {
	Name  string
	At    measure.Length
	Girth measure.Length
}

// LineReport is how fair one line of the table is.
type LineReport struct {
	Line      string
	View      View
	Roughness float64          // in the table's resolution
	Largest   float64          // departure from fair, in the table's resolution
	Station   string           // where the largest is
	Smallest  measure.Length   // the smallest fault that could have been seen inside the line
	Departure []measure.Length // reads less faired, a station each
	Given     []bool           // whether the station has a departure
}
