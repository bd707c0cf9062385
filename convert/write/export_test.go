package write

// MakeLater has every line made as it is written until the function it returns is
// called.
func MakeLater() (undo func()) {
	was := few
	few = 0
	return func() { few = was }
}

// Bulk is how many points set a picture's axes, and whether it tells of others.
func Bulk(x, y []float64) (within int, told bool) {
	var all []point
	for i := range x {
		all = append(all, point{x: x[i], y: y[i]})
	}
	var d picture
	return len(d.bulk(all)), d.shows != ""
}

// Shifted is what a card says of another plank's batten.
var Shifted = shifted

// Crossing is what a card says at a mark where the blade leans to the other hand.
var Crossing = crossing
