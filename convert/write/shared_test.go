package write_test

import (
	"math"
	"strings"
	"testing"

	"strakebook/calc/measure"
	"strakebook/convert/sheet"
	"strakebook/convert/write"
)

// listed is a piece as the sheets list it, in inches: how it lies on its stick, the
// places along it of the corners of its two ends, each with its height there.
type listed struct {
	length, slope float64
	near, far     bool // scarfed
	corners       [][2]float64
}

// lying reads a piece off the Cut list. A feather is longest on the face it is
// named for, and a turned piece has gone half round, end for end and face for face.
func lying(s *sheet.Sheet, row int, col map[string]int, turned bool) listed {
	figure := func(key string) float64 { return s.At(row, col[key]).Number }
	fore, after := s.At(row, col["Fore end"]).Text, s.At(row, col["After end"]).Text
	long, thick, run := figure("Length, in"), figure("Thickness, in"), figure("Scarf run, in")
	p := listed{length: long, slope: 7, near: strings.HasPrefix(fore, "feather"), far: strings.HasPrefix(after, "feather")}
	if s.At(row, col["Skin"]).Text == "plank" {
		p.slope = 12
	}
	nib := (thick - run/p.slope) / 2
	end := func(said string, tip, in float64) {
		shape := [][2]float64{{tip, 0}, {tip, nib}, {tip + in*run, thick - nib}, {tip + in*run, thick}}
		if strings.HasPrefix(said, "hood") {
			shape = [][2]float64{{tip, 0}, {tip, thick}}
		}
		for _, c := range shape {
			if strings.HasPrefix(said, "feather outside") {
				c[1] = thick - c[1]
			}
			if turned {
				c = [2]float64{long - c[0], thick - c[1]}
			}
			p.corners = append(p.corners, c)
		}
	}
	end(fore, 0, 1)
	end(after, long, -1)
	if turned {
		p.near, p.far = p.far, p.near
	}
	return p
}

// after is where a piece may begin at the soonest after another that begins at
// from: one square or slanted cut of the kerf parts them.
func (p listed) after(x listed, from, kerf float64) float64 {
	soonest := math.Inf(1)
	for _, lean := range []float64{0, p.slope, -p.slope} {
		most, least := math.Inf(-1), math.Inf(1)
		for _, c := range x.corners {
			most = max(most, from+c[0]-lean*c[1])
		}
		for _, c := range p.corners {
			least = min(least, c[0]-lean*c[1])
		}
		soonest = min(soonest, most-least+kerf*math.Hypot(lean, 1))
	}
	return soonest
}

// With slanted cuts shared every stick as it is listed and drawn can be sawn: its
// pieces laid in their order, turned or not, as near as a saw can part them, take
// what the sheet says is used, and no more than the board has sound; and one slant
// is drawn where one cut serves two.
func TestSharedCutsAsListed(t *testing.T) {
	in := demo("share slanted cuts=yes", "units=inches", "scarf nib=1/32", "strip scarf slope=7", "plank scarf slope=12", "tries=200")
	book, _ := write.Lay(in).Book()
	of := func(name string) (*sheet.Sheet, map[string]int) {
		for _, s := range book.Sheets {
			if s.Name == name {
				col := map[string]int{}
				for c := 1; s.At(1, c).Text != ""; c++ {
					col[s.At(1, c).Text] = c
				}
				return s, col
			}
		}
		t.Fatalf("no sheet %s", name)
		return nil, nil
	}
	list, on := of("Cut list")
	rows := map[string]int{}
	for r := 2; list.At(r, on["Mark"]).Text != ""; r++ {
		rows[list.At(r, on["Mark"]).Text] = r
	}
	stock, col := of("Stock")
	drawing := 0
	for name, c := range col {
		if strings.HasPrefix(name, "Drawn to scale") {
			drawing = c
		}
	}
	kerf, row, shared, turns := in.Result.Rules.Stock.CrossKerf.Inches(), 1, 0, 0
	for _, cut := range in.Result.Plan.Cuts {
		sound := cut.Board.Length.Value - in.Result.Rules.Stock.EndTrim
		for _, b := range cut.Board.Bad {
			sound -= b.To - b.From
		}
		for range cut.Lanes {
			row++
			marks := stock.At(row, col["Pieces"]).Text
			used, left, drawn := stock.At(row, col["Used, in"]).Number, stock.At(row, col["Left, in"]).Number, stock.At(row, drawing).Text
			if math.Abs(used+left-sound.Inches()) > 1e-6 || left < 0 || stock.At(row, col["Still fits"]).Text != "fits" {
				t.Errorf("row %d: %v used and %v left of %v sound", row, used, left, sound.Inches())
			}
			if len(cut.Board.Bad) > 0 || marks == "" {
				continue
			}
			var last listed
			from := 0.0
			for i, mark := range strings.Split(marks, ", ") {
				mark, turned := strings.CutSuffix(mark, " turned")
				p := lying(list, rows[mark], on, turned)
				begins := map[bool]string{true: "/", false: "|"}[p.near] + mark
				if i > 0 {
					at := p.after(last, from, kerf)
					if last.far && p.near && at < from+last.length {
						shared++
						begins = mark // the slant is that of the piece before
						if !strings.Contains(drawn, "/"+mark) {
							t.Errorf("row %d: no slant before %s in %q", row, mark, drawn)
						}
					}
					from = at
				}
				if turned {
					turns++
					begins += " t"
				}
				if noted := list.At(rows[mark], on["Note"]).Text == "turned"; noted != turned || !strings.Contains(drawn, begins) {
					t.Errorf("row %d: %s (turned %v, noted %v) is drawn %q", row, mark, turned, noted, drawn)
				}
				last = p
			}
			if takes := from + last.length; math.Abs(takes-used) > 1e-5 || measure.Inches(takes) > sound+measure.Inch/1000 {
				t.Errorf("row %d: %s take %v, said %v, of %v sound", row, marks, takes, used, sound.Inches())
			}
		}
	}
	if shared < 20 || turns < 5 {
		t.Errorf("%d cuts shared and %d pieces turned", shared, turns)
	}
}
