package scarf

// Feathers is which way the feathers on the outside face point. All point one
// way, so every piece is the same parallelogram seen from above: each joint is
// one cut on the saw for fore ends and one on the saw for after ends, and the
// two saws are never changed over. Lay a starboard piece flat and turn it end
// for end, and it is a port piece, the face that was outside now inside.
type Feathers uint8

// The two ways.
const (
	PointAft     Feathers = iota // common practice, no source: water runs past a feather
	PointForward                 // the other hand
)

// OutsideFore says that the scarf at a piece's fore end has its feather on the
// outside face. Its after end then has its feather on the inside face, and the
// other way about.
func (f Feathers) OutsideFore() bool { return f == PointForward }
