package hull

// Places is what a book calls the places at which its figures are given, in whose
// words it is told of.
type Places uint8

// The two words.
const (
	AtStations Places = iota
	AtFrames
)

// String is the word for one: "station".
func (p Places) String() string { return [...]string{"station", "frame"}[p] }

// Named is one by its name: "station 4".
func (p Places) Named(name string) string { return p.String() + " " + name }

// called is one of the table's stations in words: "station 4".
func (o Offsets) called(k int) string { return o.Places.Named(o.Stations[k].Name) }

// called is a station of the hull by its name in words, a station where there is no
// hull to say otherwise.
func (s *Shape) called(name string) string {
	if s == nil {
		return AtStations.Named(name)
	}
	return s.Places.Named(name)
}
