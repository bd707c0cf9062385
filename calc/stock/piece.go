package stock

import (
	"fmt"

	"strakebook/calc/hull"
	"strakebook/calc/lay"
	"strakebook/calc/measure"
)

// pieces is a run's pieces with their marks and ends.
func pieces(run *lay.Run) []Piece {
	all := make([]Piece, len(run.Pieces))
	from := measure.Length(0) // joint to joint
	for i, l := range run.Pieces {
		p := Piece{
			Mark:   mark(run, i+1),
			Strake: run.Name, Skin: run.Skin, Side: run.Side, Place: i + 1, Of: len(run.Pieces), Species: run.Species,
			Thickness: run.Thick, Hollow: run.Hollow, Width: run.Wide, Length: l, Scarf: run.Scarf, Fore: FeatherInside, Aft: FeatherOutside, Given: run.Given, Board: -1, Cell: run.Cell,
		}
		if run.Feather.OutsideFore() {
			p.Fore, p.Aft = FeatherOutside, FeatherInside
		}
		if run.Scarf == 0 {
			p.Fore, p.Aft = Butt, Butt
		}
		if i == 0 {
			p.Fore = Hood
		}
		if i == len(all)-1 {
			p.Aft = Hood
		}
		to := run.Length
		if i < len(run.Joints) {
			to = run.Joints[i]
		}
		p.Mean, from = run.Mean(from, to), to
		all[i] = p
	}
	return all
}

// mark is a piece's mark: S for strip, P for plank or the skin's own name, the
// strake, P or S for its side, and its place from the fore end. It does not
// change when another strake does.
func mark(run *lay.Run, place int) string {
	if run.Given {
		return run.Name
	}
	skin := string(run.Skin)
	switch run.Skin {
	case hull.Strips:
		skin = "S"
	case hull.Planks:
		skin = "P"
	}
	side := "S"
	if run.Side == hull.Port {
		side = "P"
	}
	return fmt.Sprintf("%s%s-%s-%d", skin, run.Name, side, place)
}

// Dressed is how thick a piece's board is dressed: it is scarfed and sawn at this, and
// the back is worked afterwards.
func (p *Piece) Dressed() measure.Length { return p.Thickness + p.Hollow }

// Feet is a piece's board feet, by its own thickness, width and length.
func (p *Piece) Feet() measure.BoardFeet {
	return measure.BoardFeet(p.Thickness.Inches() * p.Width.Inches() * p.Length.Feet() / 12)
}

// slants is how many ends of a piece are scarfed.
func (p *Piece) slants() int {
	n := 0
	if p.Fore != Hood {
		n++
	}
	if p.Aft != Hood {
		n++
	}
	return n
}
