package read

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Positions increase aft. A boat that is measured from aft is turned about where its
// words say so, and asked about where only its stations' names do: read the wrong way
// every plank would be sawn back to front.

// PositionOpen is positions that may run from either end.
var PositionOpen = &finding.Kind{
	Code: "position-open", Severity: finding.Error, Title: "positions that may be measured from aft",
	Why:    "Read from the wrong end every mark, bevel and feather is the wrong way about, so nothing is laid out by them.",
	Remedy: "write over the positions where they are measured from, as \"Distance from FP\" or \"Distance from AP\"",
}

// placing is where the stations of one table lie, as it was read.
type placing struct {
	cell     source.Cell // where a finding of it stands
	label    string      // of its positions
	words    []string    // over it
	page     *page
	stations []hull.Station
	from     origin
	why      string // the words that say so
	ask      string // what is asked of it
	datum    measure.Length
	done     bool // turned about
}

// lay notes where the stations of a table lie; one read again takes its place.
func (r *reader) lay(n placing) {
	n.stations = slices.Clone(n.stations)
	for i := range r.placings {
		if r.placings[i].cell == n.cell {
			r.placings[i] = n
			return
		}
	}
	r.placings = append(r.placings, n)
}

// saidOver is what the words over a table and the remarks of its sheet say of the
// end it begins from.
func (n placing) saidOver() originSaid {
	said := originsIn(n.words)
	if said.numbered == originUnsaid && said.measured == originUnsaid {
		remarks, titles := n.page.sheetWords()
		said = originsIn(append(remarks, titles...))
	}
	return said
}

// placed is the stations of some stations that have positions.
func (n placing) placed() []hull.Station {
	var all []hull.Station
	for _, s := range n.stations {
		if s.At.OK() {
			all = append(all, s)
		}
	}
	return all
}

// trend is 1 where figures rise, -1 where they fall, a slip among them or not; else 0.
func trend[T measure.Length | float64](all []T) int {
	up, down := 0, 0
	for i := 1; i < len(all); i++ {
		switch {
		case all[i] > all[i-1]:
			up++
		case all[i] < all[i-1]:
			down++
		}
	}
	switch {
	case up > 3*down:
		return 1
	case down > 3*up:
		return -1
	}
	return 0
}

// numberTrend is 1 where positions rise with the stations' numbers, -1 where they
// fall as the numbers rise.
func numberTrend(stations []hull.Station) int {
	var at, numbers []float64
	for _, s := range stations {
		if v, ok := stationNumber(s.Name); ok && s.At.OK() {
			numbers, at = append(numbers, v), append(at, s.At.Value.Inches())
		}
	}
	return trend(at) * trend(numbers)
}

// endOf is the end of the boat that a station is named by.
func endOf(s hull.Station) origin {
	switch t := strings.Join(tokens(s.Name), " "); t {
	case "ap", "aft", "after", "stern", "sternpost":
		return fromAft
	case "fp", "fwd", "forward", "bow", "stem":
		return fromFore
	default:
		if s.Transom {
			return fromAft
		}
	}
	return originUnsaid
}

// byEnds is the end that positions seem to be measured from by the names of the
// first station and the last.
func byEnds(placed []hull.Station) origin {
	if len(placed) < 2 {
		return originUnsaid
	}
	return endOf(slices.MinFunc(placed, byPlace)).and(endOf(slices.MaxFunc(placed, byPlace)).other())
}

// byPlace orders stations by their positions.
func byPlace(a, b hull.Station) int { return cmp.Compare(a.At.Value, b.At.Value) }

// settle decides the end that stations are measured from by its own words.
func (n *placing) settle() {
	over, placed := n.saidOver(), n.placed()
	n.from, n.why = originOf(n.label), n.label
	if n.from == originUnsaid {
		n.why = over.by
	}
	n.from = n.from.and(over.measured)
	switch numberTrend(placed) {
	case 1:
		n.from = n.from.and(over.numbered)
	case -1:
		n.from = n.from.and(over.numbered.other())
	}
	ends := byEnds(placed)
	switch {
	case n.from == originTwo:
		n.ask = "the words over the positions of the stations say that they are measured from both ends"
	case n.from != originUnsaid && n.from.and(ends) == originTwo:
		n.ask = fmt.Sprintf("%q says that the positions are measured from %s, and the names of the first and last stations say the other end", n.why, n.from)
	}
}

func (o origin) String() string {
	return map[origin]string{fromFore: "forward", fromAft: "aft"}[o]
}

// follow decides stations of which nothing is said by those of which something is, else
// by its stations' names.
func (n *placing) follow(r *reader, said []placing) {
	for _, other := range said {
		var mine, theirs []float64
		for _, s := range n.placed() {
			if t, ok := r.namesake(s, other.placed()); ok {
				mine, theirs = append(mine, s.At.Value.Inches()), append(theirs, t.At.Value.Inches())
			}
		}
		switch trend(mine) * trend(theirs) {
		case 1:
			n.from, n.why = other.from, other.why
		case -1:
			n.from, n.why = other.from.other(), other.why
		}
		if n.from != originUnsaid {
			return
		}
	}
	placed := n.placed()
	switch byEnds(placed) {
	case fromAft:
		n.ask = fmt.Sprintf("by the names %q and %q the positions are measured from aft, and nothing over them says from where", placed[0].Name, placed[len(placed)-1].Name)
	case originTwo:
		n.ask = "the names of the first and last stations are both of one end, and nothing says from where the positions are measured"
	case originUnsaid:
		if numberTrend(placed) < 0 {
			n.ask = fmt.Sprintf("the numbers of the stations fall as their positions rise, %q at %q: nothing says whether they are numbered or measured from aft", placed[0].Name, placed[0].At.Text)
		}
	}
}

// namesake is the station of the same name, of its own kind, among others.
func (r *reader) namesake(s hull.Station, among []hull.Station) (hull.Station, bool) {
	for _, t := range among {
		if strings.EqualFold(r.keyOf(s.Name, s.Cell), r.keyOf(t.Name, t.Cell)) {
			return t, true
		}
	}
	return hull.Station{}, false
}

// origins turns about the positions that are measured from aft, and drops those that
// must be asked about.
func (r *reader) origins() {
	var said []placing
	for i := range r.placings {
		if n := &r.placings[i]; len(n.placed()) > 1 {
			n.settle()
			if n.ask == "" && n.from != originUnsaid {
				said = append(said, *n)
			}
		}
	}
	for i := range r.placings {
		if n := &r.placings[i]; len(n.placed()) > 1 && n.ask == "" && n.from == originUnsaid {
			n.follow(r, said)
		}
	}
	for i := range r.placings {
		if n := &r.placings[i]; n.from == fromAft && n.ask == "" {
			r.turnAbout(n)
		}
	}
	for i := range r.placings {
		if n := &r.placings[i]; n.ask != "" {
			r.placeAsked = true
			r.add(finding.Finding{Kind: PositionOpen, Cell: n.cell, Reads: n.label, Text: n.ask})
			r.replace(n, func(v source.Reading[measure.Length]) source.Reading[measure.Length] {
				return source.Reading[measure.Length]{State: source.Unread, Text: v.Text, Cell: v.Cell}
			})
		}
	}
}

// turnAbout makes positions from aft positions from forward: from where other tables
// of the book have them from, else from the foremost station.
func (r *reader) turnAbout(n *placing) {
	datum, ok := r.datum(n)
	if !ok {
		n.ask = fmt.Sprintf("%q says that the positions are measured from aft, and other tables measure from elsewhere: no station is in both to tell how far apart", n.why)
		return
	}
	foremost := slices.MaxFunc(n.placed(), byPlace)
	f := finding.Finding{Kind: ConventionRead, Cell: n.cell, Reads: n.label,
		Text: fmt.Sprintf("%q is read as measured from aft: the positions were turned about to increase aft, %s, the foremost, at %s", n.why, r.calls[foremost.Cell].places().Named(foremost.Name), datum-foremost.At.Value)}
	r.add(f)
	r.replace(n, func(v source.Reading[measure.Length]) source.Reading[measure.Length] {
		v.Value = datum - v.Value
		return v
	})
	n.datum, n.done, r.turned = datum, true, true
}

// datum is the place of the after end that stations are measured from: by the stations
// that another table has too, else so that the foremost station of all lies at nought.
func (r *reader) datum(n *placing) (measure.Length, bool) {
	var known []*placing
	most := measure.Length(0)
	for i := range r.placings {
		other := &r.placings[i]
		switch placed := other.placed(); {
		case other.ask != "" || len(placed) < 2:
		case other.from != fromAft || other.done:
			known = append(known, other)
		case other.measuredFrom() == n.measuredFrom():
			for _, s := range placed {
				most = max(most, s.At.Value)
			}
		}
	}
	for _, other := range known {
		for _, s := range n.placed() {
			if t, ok := r.namesake(s, other.placed()); ok {
				return t.At.Value + s.At.Value, true
			}
		}
	}
	for _, other := range known {
		if other.from == fromAft && other.measuredFrom() == n.measuredFrom() {
			return other.datum, true
		}
	}
	return most, len(known) == 0
}

// measuredFrom is the words for the end that stations are measured from.
func (n *placing) measuredFrom() string {
	t := plainEnds(n.why)
	if found := measuredAft.FindString(t); found != "" {
		return found
	}
	return t
}

// replace puts other positions in place of those of some stations wherever they were read.
func (r *reader) replace(n *placing, as func(source.Reading[measure.Length]) source.Reading[measure.Length]) {
	own := map[source.Cell]bool{}
	for _, s := range n.placed() {
		own[s.At.Cell] = true
	}
	for _, stations := range append(r.stationRows(), n.stations) {
		for i, s := range stations {
			if s.At.OK() && own[s.At.Cell] {
				stations[i].At = as(s.At)
			}
		}
	}
	for name, at := range r.at {
		if own[at.Cell] {
			if at = as(at); !at.OK() {
				delete(r.at, name)
				continue
			}
			r.at[name] = at
		}
	}
}
