package hull

import (
	"strings"

	"strakebook/calc/measure"
)

// Shape is what follows from the offsets: sections, girths, the true lengths of
// the lines, and how each skin is lined off. A nil Shape is a hull that is not
// known; its methods then say so.
type Shape struct {
	Surface  Surface // what the offsets are to
	Form     measure.Form
	Step     measure.Length // the table's smallest
	Places   Places
	Raked    bool  // the last station is a transom off plumb
	transom  point // the way aft square to the last station
	Stations []Girth
	Sections []Section
	Lines    []LineLength
	Moulds   []Mould
	Board    []BoardBevel
	Skins    []SkinThickness // that the surfaces of the planking are drawn for
	Linings  []Lining
}

// Girth is a station's half girth, on the surface the offsets are to.
type Girth struct {
	Name  string
	At    measure.Length
	Girth measure.Length // 0 where the station's section could not be drawn
	Lacks string         // why it could not, "" where it could
	From  string         // the line it starts from: "rabbet", "keel", the lowest line given
	To    string         // the line it ends at: "deck", the highest line given
}

// Section is the outline of half the hull at a station, from the rabbet up.
type Section struct {
	Station string
	At      measure.Length
	Points  []Point // those of the table
	Drawn   []Point // close together along the curve, for a body plan
}

// Point is a place on a section.
type Point struct {
	Out, Up measure.Length
	Line    string // the line of the table it is on, "" where on none
}

// LineLength is the true length of a line of the table along the hull.
type LineLength struct {
	Name     string
	Role     Role
	Length   measure.Length
	From, To string // the stations, or the profile, between which it runs
}

// Lining is how one skin is lined off: where its seams run.
type Lining struct {
	Skin    Skin
	Side    Side
	On      Surface // the surface the seams are drawn on
	By      Method
	Strakes []Lined          // from the sheer down
	Seams   []Seam           // one more than the strakes: the sheer first, the last at the rabbet or above what remains
	Left    []measure.Length // below the last strake, a station each
	// How the last strake meets the keel, where the offsets give its half-breadth.
	Garboards []Garboard
	// Of parallel strakes: the line of the offsets they start on, "" the sheer, and
	// the place of the first strake below it; past the last where the line lies
	// below them all.
	From  string
	First int
	// Of parallel strakes: where along the hull, placed as the stations are, more is
	// left below the last than widths may be out by, which must taper, and where it
	// is as wide as a plank may be at the least, so that a stealer can be fitted.
	Tapers, Stealers []Reach
	girths           []measure.Length // of the surface, a station each
}

// Lined is one strake between the seam above and the seam below it.
type Lined struct {
	Name   string
	Widths []measure.Length // a station each, 0 where it does not cross it
	// How deep the hull is hollow behind a flat plank, a station each: to be worked
	// out of its back; below nothing where the hull is hollow and the back rounded.
	Hollows []measure.Length
	Length  measure.Length // the longer of its edges
	Back    Back
}

// Seam is one seam along the hull.
type Seam struct {
	Name   string // "sheer", "3/4" between strakes 3 and 4, "rabbet"
	Length measure.Length
	Points []SeamPoint // a station each
	run    *curve
	at     []int          // the stations of its points, -1 for an end between two
	loose  measure.Length // how far its ends on the rabbet move along it for a step of the table in the girth
}

// SeamPoint is where a seam crosses a station.
type SeamPoint struct {
	Crosses bool           // false where the seam has ended before the station
	Out, Up measure.Length // from the centre line and the base line
	Girth   measure.Length // down from the sheer line
	Along   measure.Length // from the seam's fore end
	// How much the planking turns at the seam, in the plane square to it: off
	// square, plus where the outside face is the wider. HasBevel is false at the
	// sheer, the last seam, and where a plank beside the seam has ended.
	Bevel    measure.Angle
	HasBevel bool
	Angle    measure.Angle // of the seam to the fore-and-aft line
	// The girth to the outer corner of the edge, over the outer face of the skin,
	// and that whole girth, where they are known.
	outer, outerWhole measure.Length
	known             bool
}

// Method is how a skin is lined off.
type Method uint8

// The methods.
const (
	AsListed   Method = iota // by the list: widths by station where given, else shares for planks, as their widths listed, and parallel strips
	ByMarks                  // the builder's own marks
	ByShares                 // equal shares of the girth at each station
	ByWidths                 // parallel strakes from the sheer down
	ByGreatest               // shares of the girth in proportion to the greatest widths listed
)

// String is the method's words.
func (m Method) String() string {
	return [...]string{"as listed", "builder's marks", "equal shares", "parallel strakes", "shares as the widths listed"}[m]
}

// station is the place of a station in the order of the table, -1 where there
// is none of the name.
func (s *Shape) station(name string) int {
	for i, g := range s.Stations {
		if strings.EqualFold(g.Name, name) {
			return i
		}
	}
	return -1
}
