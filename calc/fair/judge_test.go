package fair

import (
	"math"
	"slices"
	"testing"
)

// told is a second opinion that knows every value of some rows.
type told struct {
	of  map[int]Row
	sd  float64
	bad map[Spot]float64 // where it is led astray: what it says instead
}

func (s told) Opinion(_ []Row, _ float64, row, at int) (Opinion, bool) {
	r, ok := s.of[row]
	if !ok {
		return Opinion{}, false
	}
	if v, astray := s.bad[Spot{row, at}]; astray {
		return Opinion{v, s.sd}, true
	}
	return Opinion{r.Y[at], s.sd}, true
}

func (s told) Beside([]Row, int, int) []int { return nil }

func spots(j Judged) []Spot {
	var all []Spot
	for _, f := range j.Flags {
		all = append(all, f.Spot)
	}
	return all
}

// A row too short to have a say of its own is judged by the second opinion alone.
func TestShortRowIsJudgedBySecondOpinion(t *testing.T) {
	good := parabola(5)
	rows := []Row{parabola(15), parabola(5)}
	rows[1].Y[2] += 20
	j := Judge(rows, DefaultRules(), told{of: map[int]Row{1: good}, sd: 1})
	if len(j.Flags) != 1 || j.Flags[0].Spot != (Spot{1, 2}) || !j.Flags[0].Alone || j.Flags[0].Says.Value != good.Y[2] {
		t.Errorf("%+v", j.Flags)
	}
}

// Where the two contradict each other only what both say counts: a second opinion
// led astray does not make a sound value bad, and one that would take a bad value
// keeps it.
func TestOpinionsThatContradict(t *testing.T) {
	second := told{of: map[int]Row{0: parabola(15)}, sd: 1, bad: map[Spot]float64{{0, 7}: 150}}
	if j := Judge([]Row{parabola(15)}, DefaultRules(), second); len(j.Flags) > 0 {
		t.Errorf("a sound value: %+v", j.Flags)
	}
	row := parabola(15)
	row.Y[7] += 30
	second.bad[Spot{0, 7}] = row.Y[7]
	if j := Judge([]Row{row}, DefaultRules(), second); slices.Contains(spots(j), Spot{0, 7}) {
		t.Errorf("a value the second opinion takes: %+v", j.Flags)
	}
}

// An end, of which the row knows little, is found with the second opinion.
func TestEndIsFoundWithSecondOpinion(t *testing.T) {
	row := parabola(15)
	row.Y[14] += 12
	if j := Judge([]Row{row}, DefaultRules(), nil); len(j.Flags) > 0 {
		t.Errorf("without: %+v", j.Flags)
	}
	if j := Judge([]Row{row}, DefaultRules(), told{of: map[int]Row{0: parabola(15)}, sd: 1}); !slices.Equal(spots(j), []Spot{{0, 14}}) {
		t.Errorf("with: %+v", j.Flags)
	}
}

// The same table gives the same, and judging leaves the rows as they were.
func TestJudgeLeavesTheRows(t *testing.T) {
	rows := []Row{parabola(15), parabola(12)}
	rows[0].Y[3] += 30
	rows[1].Y[8] -= 30
	first := spots(Judge(rows, DefaultRules(), nil))
	if again := spots(Judge(rows, DefaultRules(), nil)); !slices.Equal(first, again) || len(first) != 2 {
		t.Errorf("%v, then %v", first, again)
	}
	for _, row := range rows {
		if slices.Contains(row.Given, false) {
			t.Error("a value was left withdrawn")
		}
	}
}

// What is made of a value with another withdrawn.
func TestWithout(t *testing.T) {
	row := parabola(15)
	row.Y[5], row.Y[6] = row.Y[6]+40, row.Y[5]-40
	j := Judge([]Row{row}, DefaultRules(), nil)
	for _, s := range []Spot{{0, 5}, {0, 6}} {
		says, ok := j.Without(s, Spot{0, 11 - s.At})
		if want := parabola(15).Y[s.At]; !ok || math.Abs(says.Value-want) > 3*says.Sd {
			t.Errorf("at %d: %+v, was %v", s.At, says, want)
		}
	}
}

// Between its neighbours a parabola passes through a value at one place only.
func TestPlace(t *testing.T) {
	row := Row{}
	for i := range 9 {
		row.X, row.Y, row.Given = append(row.X, float64(10*i)), append(row.Y, float64(100*i*i)), append(row.Given, true)
	}
	row.Y[4] = 100 * 4.3 * 4.3
	if x, steep, ok := Place(row, 4); !ok || math.Abs(x-43) > 1e-6 || steep <= 0 {
		t.Errorf("%v, %v, %v", x, steep, ok)
	}
	row.Y[4] = 9000
	if x, _, ok := Place(row, 4); ok {
		t.Errorf("beyond its neighbours: %v", x)
	}
}
