package hull

import (
	"fmt"
	"math"
	"testing"

	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// TestTransom ends a hull of planes, the same at every station, on a transom that
// stands plumb and on one that leans 20 degrees aft: a line at the height z runs z
// tan 20 farther, the transom's own outline is 1/cos 20 as long up and down, every
// strake keeps its width, an inch of planking is laid in square to the planes, and
// the sheer strake's after end lies on the transom, its inside face the longer.
func TestTransom(t *testing.T) {
	for _, rake := range []measure.Angle{0, 20} {
		o := chined(0)
		o.Stations[8].Transom = true
		r := DefaultRules()
		r.TransomRake = rake
		s, _ := Work(o, []Strake{{Name: "1-4", Skin: Planks, Count: source.Is(4)}}, r)
		tan, up := rake.Tan(), 1/rake.Cos()
		chine := point{y: 28 / 0.95, z: 7 / 0.95}
		girth := math.Hypot(chine.y, chine.z*up) + math.Hypot(36-chine.y, (40-chine.z)*up)
		near(t, "girth", s.Stations[8].Girth.Inches(), girth, 1e-6)
		near(t, "girth before", s.Stations[7].Girth.Inches(), chine.length()+math.Hypot(36-chine.y, 40-chine.z), 1e-6)
		for _, l := range s.Lines {
			z := map[Role]float64{Deck: 40, Chine: chine.z}[l.Role]
			fmt.Sscanf(l.Name, "WL %g", &z)
			near(t, l.Name+" long", l.Length.Inches(), 96+z*tan, 1e-6)
		}
		l := s.Linings[0]
		for _, k := range l.Strakes {
			near(t, "width", k.Widths[8].Inches(), k.Widths[7].Inches(), 1e-6)
		}
		for j, seam := range l.Seams {
			p := seam.Points[8]
			near(t, fmt.Sprint("height of seam ", j), p.Up.Inches(), seam.Points[7].Up.Inches(), 1e-6)
			face := math.Hypot(36-p.Out.Inches(), (40-p.Up.Inches())*up)
			if p.Up.Inches() < chine.z {
				face = girth - math.Hypot(p.Out.Inches(), p.Up.Inches()*up)
			}
			near(t, fmt.Sprint("girth to seam ", j), p.Girth.Inches(), face, 1e-5)
			near(t, fmt.Sprint("end of seam ", j), seam.run.p[len(seam.run.p)-1].x, 96+p.Up.Inches()*tan, 1e-6)
			if seam.Points[8].HasBevel != (j > 0 && j < 4) {
				t.Errorf("seam %d: bevel at the transom %v", j, p.HasBevel)
			}
		}
		if _, after, _ := l.Ends(0); math.Abs(after.Inches()-96-40*tan) > 1e-6 {
			t.Errorf("strake 1 ends at %v", after.Inches())
		}
		side, bottom := point{0, 1, -0.2}.unit(), point{0, -0.25, 1}.unit()
		h := draw(o, r)
		for _, b := range h.board(h.newNet()) {
			if b.Place == 8 && b.Role == Waterline { // of the transom's after face
				near(t, "square bevel", float64(b.Square), math.Asin(0.2*math.Sin(rake.Radians())/math.Hypot(1, 0.2))*180/math.Pi, 1e-6)
			}
		}
		all, _ := s.Spile([]Strake{{Name: "1-4", Skin: Planks, Count: source.Is(4)}}, SawnUpper, r)
		near(t, "after end bevel", float64(all[0].After.Bevel), -math.Asin(0.2*math.Sin(rake.Radians())/math.Hypot(1, 0.2))*180/math.Pi, 1e-3)
		near(t, "fore end bevel", float64(all[0].Fore.Bevel), 0, 1e-3)
		c, _ := h.parallel(h.newNet(), 8, 1, 0)
		for i := range 101 {
			p := c.at(c.t[len(c.t)-1] * float64(i) / 100)
			inside := min(p.dot(bottom), point{0, 30, 10}.minus(p).dot(side))
			near(t, "planking laid in", inside, 1, 1./64)
			near(t, "in the transom's plane", p.x, 96+p.z*tan, 1e-6)
		}
	}
}
