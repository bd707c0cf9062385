// Package stock is the buyer's and the ripsaw's trade: boards on the rack and
// at the mill, the pieces cut from them, the mill order and its board feet.
package stock

import (
	"fmt"
	"strings"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Board is one row of the rack: boards alike, counted, or a size the mill will
// send as many of as are wanted.
type Board struct {
	Mark      string
	Species   string
	Thickness source.Reading[measure.Length]
	Width     source.Reading[measure.Length]
	Length    source.Reading[measure.Length]
	Count     source.Reading[int]     // blank: as many as wanted
	Delivered source.Reading[int]     // of what was ordered; blank: not said
	Price     source.Reading[float64] // of one board, or of a board foot where PerFoot
	PerFoot   bool
	Bad       []hull.Reach // stretches of its length not to be used, from its own end, in order
	Unsure    bool         // a stretch not to be used could not be read: it is left on the rack
	Source    string       // "rack", "mill", a merchant's name
	Cell      source.Cell
}

// Called is what a board of the rack is known by: its mark, or its row of those
// counted from nought.
func (b Board) Called(row int) string {
	if b.Mark != "" {
		return b.Mark
	}
	return fmt.Sprintf("row %d", row+1)
}

// PriceOf says what a board's price is of, and PricedAt where the rack has it.
func (b Board) PriceOf() string {
	of := "of a board"
	if b.PerFoot {
		of += " foot"
	}
	return strings.TrimSpace(of + " of " + b.Species)
}

// PricedAt is the line of the rack.
func (b Board) PricedAt() string { return "the rack, " + b.Cell.String() }

// whole says that a board has a size, and that its flaws are known.
func (b Board) whole() bool { return b.sized() && !b.Unsure }

// sized says that a board has a size.
func (b Board) sized() bool {
	return b.Thickness.OK() && b.Width.OK() && b.Length.OK() &&
		b.Thickness.Value > 0 && b.Width.Value > 0 && b.Length.Value > 0 && b.odd(measure.StyleFeet) == ""
}

// odd is what of a board is beyond reason, and its figure; "" for nothing.
func (b Board) odd(u measure.Style) string {
	beyond := func(v, most measure.Length) bool { return v < 0 || v > most }
	switch {
	case b.Thickness.OK() && beyond(b.Thickness.Value, 4*measure.Foot):
		return fmt.Sprintf("%s thick", u.Small(b.Thickness.Value))
	case b.Width.OK() && beyond(b.Width.Value, 20*measure.Foot):
		return fmt.Sprintf("%s wide", u.Small(b.Width.Value))
	case b.Length.OK() && beyond(b.Length.Value, 300*measure.Foot):
		return fmt.Sprintf("%s long", u.Long(b.Length.Value))
	case b.Count.OK() && (b.Count.Value < 0 || b.Count.Value > 1_000_000):
		return fmt.Sprintf("%d in number", b.Count.Value)
	case b.Price.OK() && !(b.Price.Value >= 0 && b.Price.Value <= 1e9):
		return fmt.Sprintf("at a price of %v", b.Price.Value)
	}
	for _, bad := range b.Bad {
		if bad.From < 0 || bad.To <= bad.From || b.Length.OK() && bad.To > b.Length.Value {
			return fmt.Sprintf("not to be used from %s to %s of its %s", u.Long(bad.From), u.Long(bad.To), u.Long(b.Length.Value))
		}
	}
	return ""
}

// Free says that as many as are wanted may be had.
func (b Board) Free() bool { return b.Count.State == source.Blank }

// Feet is one board's measure.
func (b Board) Feet(r Rules) measure.BoardFeet {
	if r.Hardwood {
		return measure.HardwoodBoard(b.Thickness.Value, b.Width.Value, b.Length.Value, true)
	}
	return measure.Board(b.Thickness.Value, b.Width.Value, b.Length.Value)
}

// Cost is what one board costs; its board feet where no price is known.
func (b Board) Cost(r Rules, priced bool) float64 {
	switch {
	case !priced:
		return float64(b.Feet(r))
	case b.PerFoot:
		return b.Price.Value * float64(b.Feet(r))
	default:
		return b.Price.Value
	}
}

// End is how one end of a piece is finished.
type End uint8

// The ends of a piece. A feather on the outside face and one on the inside face
// are cut on different saws.
const (
	Hood           End = iota // the strake's own end: cut to fit at stem or transom
	FeatherInside             // a scarf at the fore end, where outside feathers point aft
	FeatherOutside            // a scarf at the after end, where they do
	Butt                      // square against the next piece: a scarf there would have no run
)

// String is the end's words on the cut list.
func (e End) String() string {
	return [...]string{"hood end", "scarf, feather inside", "scarf, feather outside", "butt"}[e]
}

// Piece is one piece of one strake, to be cut from a board.
type Piece struct {
	Mark      string // from skin, strake, side and place: does not change when another strake does
	Strake    string
	Skin      hull.Skin
	Side      hull.Side
	Place     int // from the fore end, from one
	Of        int // how many pieces the strake has
	Species   string
	Thickness measure.Length
	Hollow    measure.Length // worked out of its back: its board is so much the thicker
	Width     measure.Length // of the board face it must cover
	Mean      measure.Length // width on the inside face from joint to joint, on the whole
	Length    measure.Length // long point to long point
	Scarf     measure.Length // run of its strake's scarfs
	Fore, Aft End
	Given     bool // of the builder's list: both ends square, of no strake
	Board     int  // index into Plan.Cuts, -1 where no board would serve
	Cell      source.Cell
}

// Cut is one board cut: a stick, or a board ripped into lanes.
type Cut struct {
	Mark   string // of this very board: the rack's mark, numbered where several are alike
	Board  Board
	Lanes  int              // strips or narrow planks side by side; 1 is a whole-width stick
	Pieces []int            // indexes into Plan.Pieces in the order they come off, lane by lane
	Lane   []int            // the lane of each of Pieces, from one, counted in each sound stretch
	From   []measure.Length // where each of Pieces begins along the board, from its own end
	Turned []bool           // each of Pieces lies with its after end nearer the board's own end, and its inside face up
	Saved  []measure.Length // by each of Pieces on the slanted cut it shares with the one before it
	Row    int              // of the rack the board is of
	Used   measure.Length   // along the pieces, what two of them have one over the other counted once
	Left   measure.Length   // the longest offcut
	Cost   float64
	size   int
}

// OrderLine is one line of the mill order.
type OrderLine struct {
	Count                    int
	Delivered                int // so far, as the rack says
	Species                  string
	Thickness, Width, Length measure.Length
	EachFeet, Feet           measure.BoardFeet
	Cost                     float64
	Source                   string
	Note                     string
}

// Summary is what the plan comes to.
type Summary struct {
	Pieces, Boards int
	Bought, Used   measure.Length // added up along the boards, and along the pieces cut from them
	BoardFeet      measure.BoardFeet
	NetFeet        measure.BoardFeet // in the pieces cut from boards, by their own thickness, width and length
	Cost           float64           // zero where the rack has no prices
	Spent          float64           // what was made least: cost, or board feet where there are no prices
	Bound          float64           // no plan can spend less on lumber
	Priced         bool              // Spent and Bound are money, not board feet
	WasteOfBought  float64           // per cent of what is bought
	WasteOnNet     float64           // per cent to add to the net
	Unserved       int               // pieces no board was found for
	Lacking        measure.Length    // their lengths added up
	Joints         int
	Total          float64 // Spent and the joints' cost
	TotalBound     float64 // no plan can come to less in all
}

// Plan is the whole of it.
type Plan struct {
	Pieces  []Piece
	Cuts    []Cut
	Order   []OrderLine
	Stay    []Stay
	Longer  []Longer
	Skins   []SkinSum
	Summary Summary
}
