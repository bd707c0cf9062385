package hull

import (
	"fmt"
	"regexp"
	"strings"
)

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

// short is the word before a name that is kept apart from those of the other kind.
var short = [...]string{"Sta ", "Fr "}

// Apart is the name of one where the others are of the other kind: "Fr 4" among
// stations.
func (p Places) Apart(name string) string { return short[p] + name }

// Plain is a name without what keeps it apart, and whether it had that.
func (p Places) Plain(name string) (plain string, apart bool) {
	return strings.CutPrefix(name, short[p])
}

// Named is one by its name in words: "station 4"; one that is kept apart says itself
// what it is.
func (p Places) Named(name string) string {
	if _, apart := p.Plain(name); apart {
		return name
	}
	return p.String() + " " + name
}

// called is one of the table's stations in words: "station 4", "the station after
// station 4" where it has no name.
func (o Offsets) called(k int) string {
	switch name := o.Stations[k].Name; {
	case strings.TrimSpace(name) != "":
		return o.Places.Named(name)
	case k > 0:
		return fmt.Sprintf("the %s after %s", o.Places, o.called(k-1))
	}
	return fmt.Sprintf("the first %s, which has no name", o.Places)
}

// called is a station of the hull by its name in words, a station where there is no
// hull to say otherwise.
func (s *Shape) called(name string) string {
	if s == nil {
		return AtStations.Named(name)
	}
	return s.Places.Named(name)
}

// stationWord is the word for a place in what is said of any book.
var stationWord = regexp.MustCompile(`\b([Ss])tation`)

// Speak is words that speak of stations in the word of a book. What is quoted is a name
// and stays; so do words that tell stations and frames apart.
func (p Places) Speak(words string) string {
	if p == AtStations || strings.Contains(strings.ToLower(words), "frame") {
		return words
	}
	parts := strings.Split(words, `"`)
	for i := 0; i < len(parts); i += 2 {
		parts[i] = stationWord.ReplaceAllStringFunc(parts[i], func(w string) string {
			if w[0] == 'S' {
				return "Frame"
			}
			return "frame"
		})
	}
	return strings.Join(parts, `"`)
}
