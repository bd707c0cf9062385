package stock

import "math"

// The search for joints and boards works on whole numbers, so that every
// machine comes to the same plan: lengths in nanometres, money in
// hundred-thousandths of the rack's own. The yard holds all that does not change
// while the search goes on.

// money is in hundred-thousandths, or as many of a board foot where the rack
// has no prices.
type money int64

const (
	one       money = 100_000
	never     money = 1 << 60       // the price of what cannot be had
	unlimited int32 = math.MaxInt32 // as many boards as are wanted
)

// inMoney rounds a price to whole hundred-thousandths. Prices beyond a thousand
// million a board are held there, so that sums cannot overflow.
func inMoney(v float64) money { return money(math.Round(max(0, min(v, 1e9)) * float64(one))) }

// value is m in the rack's money.
func (m money) value() float64 { return float64(m) / float64(one) }

// size is one way of ripping one kind of board: into so many lanes.
type size struct {
	kind   int
	lanes  int
	cost   money // of one board
	sticks []int // one for each sound stretch of the board's length
}

// stick is one lane of one sound stretch of a size: what pieces are cut from
// one after another.
type stick struct {
	size int
	hold int64   // pieces may come to this, each with a kerf after it
	cost money   // its share of its board
	part float64 // which share that is
	rare money   // what it is worth beyond its cost where boards of its kind are counted
	form         // widest and thickest piece it gives, and its species
}

// class is pieces that the same boards serve alike.
type class struct {
	pool    int
	form    // in a board's width and thickness
	scarf   int64
	shared  int64 // saved where two pieces share one slanted cut
	least   int64 // shortest piece allowed
	longest int64 // piece that any stick gives
	opens   []int // sticks worth opening for it
}

// pool is classes that compete for the same boards.
type pool struct {
	sticks  []int
	least   int64   // shortest piece of any of its classes
	longest int64   // longest
	rate    float64 // money a nanometre of the cheapest stick
}

// timber is a strake to be made up of pieces, or a strake and its mirror.
type timber struct {
	runs   []int // one, or starboard's and port's
	class  int
	length int64
	start  int64
	zone   int64  // no joint nearer to its ends
	steps  int    // the last step of the grid inside it
	shut   []bool // steps that no joint may fall on; nil for none
	given  bool   // one piece, no joints
	clear  []span
	near   []near
}

// span is an open stretch along a strake.
type span struct{ from, to int64 }

// near is another timber whose joints a timber's must keep clear of.
type near struct {
	of    int
	apart int64
	bay   bool
}

// yard is the whole of it, or one part that shares nothing with the others.
type yard struct {
	grid, kerf, bay int64
	joint           money // what one more joint may cost, and a hair
	trueJoint       money // the same without the hair
	counts          []int32
	sizes           []size
	sticks          []stick
	classes         []class
	pools           []pool
	timbers         []timber
}

// copies is how many strakes a timber stands for.
func (t *timber) copies() int { return len(t.runs) }

// form is a size across and a species; species 0 is any.
type form struct {
	wide, thick int64
	species     int32
}

// serves says that pieces of a form may be cut from a stick.
func (s *stick) serves(f *form) bool {
	return s.wide >= f.wide && s.thick >= f.thick && f.agrees(s.species)
}

// agrees says that a species may be that of a form.
func (f *form) agrees(species int32) bool {
	return species == 0 || f.species == 0 || f.species == species
}

// cover makes a form serve another too.
func (f *form) cover(o *form) {
	f.wide, f.thick, f.species = max(f.wide, o.wide), max(f.thick, o.thick), max(f.species, o.species)
}

// floor is a/b rounded down.
func floor(a, b int64) int64 {
	q := a / b
	if a%b < 0 {
		q--
	}
	return q
}
