package write_test

import (
	"slices"
	"strings"
	"testing"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
	"strakebook/convert/write"
)

// The cards of a plank that is sawn on both edges say where its width is measured
// from; those of the others, whose other edge is square, do not.
func TestCardsOfBothEdges(t *testing.T) {
	in := demo()
	result := in.Result
	twice := result.Bevels[1]
	twice.Edge = bevel.Lower
	result.Bevels = append(slices.Clone(result.Bevels[:3]), twice)
	in.Result = result
	said := 0
	book, _ := write.Lay(in).Book()
	for _, s := range book.Sheets {
		for _, row := range s.Rows {
			for _, c := range row {
				if strings.HasPrefix(s.Name, "Bevels") && strings.Contains(c.Text, "Both edges are sawn") {
					said++
				}
			}
		}
	}
	if said != 2 {
		t.Errorf("said on %d cards of 4, want 2", said)
	}
}

// A card says what wood is still to come off the back when the plank is sawn, and how
// loose the table leaves bevels that none was lifted of; these do not stand as read.
func TestCardOfAComputedPlank(t *testing.T) {
	in := demo()
	result := in.Result
	s := result.Bevels[0]
	s.Computed, s.Step, s.Within = true, measure.Eighth, 1.38
	s.Thickness, s.Listed, s.Worked, s.Rounded, s.Less = measure.Inches(0.875), measure.Inches(0.75), measure.Inches(0.1875), measure.Inches(0.1875), measure.Inches(0.017)
	flat := s // one whose back wants hollowing, and is let be
	flat.Within, flat.Worked, flat.Rounded, flat.Less, flat.LetBe = 0, 0, 0, 0, measure.Inches(0.1875)
	result.Bevels = []bevel.Schedule{s, flat}
	in.Result = result
	want := []string{"Offsets to 1/8 in leave them about 1.4 degrees loose either way on a plank so wide: lift some before it is sawn.",
		"Sawn from the board as dressed, 7/8 in thick; then its back is rounded by 3/16 in.",
		"Widths are straight across the board: up to 0.017 in less than round the back as worked.",
		"Width and batten are to the corners of the back as rounded.", "As planed it is 1/16 in too thin for that.",
		`Its back is left flat, as "hollow from" has it: widths are round the hull, as of a plank drawn to it; lying flat it stands off by 3/16 in.`}
	var said []string
	book, _ := write.Lay(in).Book()
	for _, sh := range book.Sheets {
		if !strings.HasPrefix(sh.Name, "Bevels") {
			continue
		}
		read := slices.IndexFunc(sh.Rows[0], func(c sheet.Cell) bool { return strings.HasPrefix(c.Text, "Read") })
		for _, row := range sh.Rows[1:] {
			if len(row) > 0 && slices.Contains(want, row[0].Text) {
				said = append(said, row[0].Text)
			}
			if len(row) > read && row[read].Kind == sheet.Number && row[0].Text == s.Strake {
				t.Errorf("%v stands as read", row[read].Number)
			}
		}
	}
	if !slices.Equal(said, want) {
		t.Errorf("said %q", said)
	}
}

// A port card of a plank lifted to starboard says so, and from which end it is read:
// its marks stand fore end first, so that from the after end it is read upward.
func TestCardOfASideMirrored(t *testing.T) {
	in := demo()
	result := in.Result
	at := slices.IndexFunc(result.Bevels, func(s bevel.Schedule) bool { return s.AsOther })
	result.Bevels = []bevel.Schedule{result.Bevels[0], result.Bevels[at]}
	in.Result = result
	var lines []string
	book, _ := write.Lay(in).Book()
	for _, s := range book.Sheets {
		for _, row := range s.Rows {
			for _, c := range row {
				if strings.HasPrefix(s.Name, "Bevels") && (strings.Contains(c.Text, "face up. Marks from") || strings.HasPrefix(c.Text, "Sawn as") || strings.Contains(c.Text, "Saw from")) {
					lines = append(lines, c.Text)
				}
			}
		}
	}
	if len(lines) != 5 {
		t.Fatalf("%d lines: %q", len(lines), lines)
	}
	for i, want := range []string{"Marks from station", "Saw from the fore end; + leans the blade in under", "Marks from station", "Sawn as starboard, mirrored: bevels lifted there only; same distances from the same station", "Saw from the after end (read upward, each change the other way); + leans the blade in under"} {
		if !strings.Contains(lines[i], want) {
			t.Errorf("%q, want %q", lines[i], want)
		}
	}
}

// A doubtful reading is told in the card's title, in a line below it and at its mark,
// with a question mark before each figure that rests on it; the parallel batten is of
// the other marks. Every card bears the cautions of the saw, and the book those of
// saws, dust and resins.
func TestCardOfADoubtfulReading(t *testing.T) {
	in := demo()
	result := in.Result
	result.Bevels = slices.Clone(result.Bevels[:2])
	result.Bevels[1].Side = hull.BothSides
	s := &result.Bevels[0]
	s.Marks = slices.Clone(s.Marks)
	bad := slices.IndexFunc(s.Marks, func(m bevel.Mark) bool { return m.At > 0 && m.Read.OK() })
	jump := finding.Finding{Kind: bevel.Jump, Cell: s.Marks[bad].Read.Cell}
	bevel.DoubtMarks(result.Bevels, finding.List{jump}, result.Rules.Bevel)
	in.Result = result
	book, _ := write.Lay(in).Book()
	var cards, told []string
	queried, continued := 0, 0
	for _, s := range book.Sheets {
		if strings.HasPrefix(s.Name, "Bevels") {
			for i, at := range append(slices.Clone(s.Out.RowBreaks), len(s.Rows)) {
				if n := at - append([]int{1}, s.Out.RowBreaks...)[i]; n > 45 {
					t.Errorf("%d rows of a card on one paper", n)
				}
			}
			continued = len(s.Out.RowBreaks) - 1 // but for the one between the two cards
		}
		for _, row := range s.Rows {
			for _, c := range row {
				if c.Style == sheet.CardLine && len(c.Text) > 165 { // more runs off the edge when printed
					t.Errorf("no paper is so wide: %q", c.Text)
				}
				switch {
				case s.Name == "Cautions" && c.Style == sheet.Caution, strings.HasPrefix(s.Name, "Bevels") && strings.Contains(c.Text, "Guard on, hold-downs set, hands clear"):
					cards = append(cards, c.Text)
				case strings.HasPrefix(s.Name, "Bevels") && (strings.Contains(c.Text, "DOUBTFUL") || strings.HasPrefix(c.Text, "Marks with ?")):
					told = append(told, c.Text)
				case strings.HasPrefix(c.Text, "card continued"):
					continued--
				case strings.HasPrefix(c.Format, `"? "`):
					queried++
				}
			}
		}
	}
	at := result.Bevels[0].Marks[bad].Station
	want := []string{"DOUBTFUL at " + at, "Marks with ? rest on a doubtful reading", "DOUBTFUL, lift again"}
	if len(told) != len(want) || queried < 5 {
		t.Fatalf("told %q, with %d figures queried", told, queried)
	}
	for i, w := range want {
		if !strings.Contains(told[i], w) {
			t.Errorf("told %q, want %q", told[i], w)
		}
	}
	if continued != 0 || len(result.Bevels[0].Marks) < 45 {
		t.Errorf("a card of %d marks: %d papers it goes on to are not told", len(result.Bevels[0].Marks), continued)
	}
	all := strings.Join(cards, "\n")
	for _, w := range []string{"hands out of the blade's line", "Wood dust is harmful", "Wear gloves"} {
		if !strings.Contains(all, w) {
			t.Errorf("no caution %q", w)
		}
	}
	if got := strings.Count(all, "Guard on"); got != 2 {
		t.Errorf("the saw's caution is on %d cards of 2", got)
	}
}

// A starboard card is read from the fore end aft and the blade goes over to the other
// hand as it does going aft; a port card is read from aft forward, and as it does going
// that way. Turned over on the bench each is read from its other end.
func TestCrossingTheWayTheCardIsRead(t *testing.T) {
	for _, c := range []struct {
		side hull.Side
		up   bevel.Face
		aft  bool // said where it goes over going aft
	}{{hull.Starboard, bevel.Outside, true}, {hull.Port, bevel.Outside, false}, {hull.Starboard, bevel.Inside, false}, {hull.Port, bevel.Inside, true}} {
		s, r := bevel.Schedule{Side: c.side, Edge: bevel.Upper}, bevel.DefaultRules()
		r.FaceUp = c.up
		aft, back := write.Crossing(s, bevel.Mark{Crossing: true}, r) != "", write.Crossing(s, bevel.Mark{CrossingBack: true}, r) != ""
		if aft != c.aft || back == c.aft {
			t.Errorf("%s, face %d up: going aft %v, forward %v", c.side, c.up, aft, back)
		}
	}
}

// A batten's shift is said in figures that a rule shows, or not at all.
func TestShiftOfABatten(t *testing.T) {
	for _, c := range []struct {
		by, off float64
		u       measure.Style
		want    string
	}{
		{0.0625, 0.0213, measure.StyleFeet, "The batten of 2 serves, shifted out 0.062 in: within 0.021 in."},
		{-0.0004, 0.0001, measure.StyleInches, "The batten of 2 serves, as it is."},
		{-0.0004, 0.02, measure.StyleInches, "The batten of 2 serves, as it is: within 0.020 in."},
		{-0.05, 0.0004, measure.StyleMM, "The batten of 2 serves, shifted in 1.3 mm."},
	} {
		if got := write.Shifted("2", measure.Inches(c.by), measure.Inches(c.off), c.u); got != c.want {
			t.Errorf("%v, %v: %q, want %q", c.by, c.off, got, c.want)
		}
	}
}
