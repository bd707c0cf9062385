package write

import (
	"fmt"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/convert/sheet"
)

// doubted is what a card's title says of the plank's readings where some of them, or
// the whole of them, are doubtful, and the lines below that say how far the card may
// be followed; nothing where all are sure.
func doubted(s bevel.Schedule) (title string, lines []string) {
	var at []string
	for _, m := range s.Marks {
		if m.Doubt == bevel.Doubtful {
			at = append(at, m.Station)
		}
	}
	if s.Doubt != "" {
		title = " - DOUBTFUL"
		lines = append(lines, fmt.Sprintf("Doubtful, the whole edge: %s. Look at Warnings before sawing.", s.Places.Speak(s.Doubt)))
	} else if len(at) > 0 {
		title = " - DOUBTFUL at " + strings.Join(at, ", ")
	}
	if len(at) == 0 {
		return title, lines
	}
	lines = append(lines, "Marks with ? rest on a doubtful reading: lift it again before sawing.")
	if s.Sure() > 0 {
		return title, append(lines, "The parallel batten is worked without them, blade and board with them.")
	}
	return title, append(lines, "So does the parallel batten: no mark is sure.")
}

// queried puts a question mark before a figure of a mark that is in doubt.
func queried(c sheet.Cell, d bevel.Doubt) sheet.Cell {
	if c.Kind != sheet.Number || d == bevel.Sure {
		return c
	}
	switch c.Style {
	case sheet.Inch:
		c.Format = `"? "0.000;"? "-0.000`
	case sheet.MM:
		c.Format = `"? "0.0;"? "-0.0`
	default:
		c.Format = `"? "+0.00;"? "-0.00;"? "0.00`
	}
	return c
}
