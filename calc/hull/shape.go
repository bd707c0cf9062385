package hull

import "strakebook/calc/measure"

// Shape is what follows from the offsets: sections and girths.
type Shape struct {
	Stations []Girth
}

// Girth is a station's half girth, on the surface the offsets are to.
type Girth struct {
	Name  string
	At    measure.Length
	Girth measure.Length
}
