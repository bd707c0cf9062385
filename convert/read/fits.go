package read

import (
	"slices"

	"strakebook/convert/sheet"
)

// fits says whether a run of names heads a table, and how surely.
func (r *reader) fits(t *stationTable) bool {
	h := r.headsOf(t)
	t.said = h.over == "station" || h.corner || 2*h.worded > h.real || r.now != nil
	least := fewestNames
	if t.said {
		least = 2
	}
	if h.real < least || h.over == "line" || !t.said && (h.real < 4 || h.even < 0.6) {
		return false
	}
	r.extent(t)
	if len(t.lines) == 0 && t.position == 0 || !t.said && len(t.lines) < 2 && (t.position == 0 || t.position == t.head) {
		return false // one row of figures under numbers, and no distances to say that those are stations
	}
	if t.ofFigures() > 1 {
		return false // the right part of a table whose names are broken off
	}
	t.score = r.score(t, h)
	return true
}

// tableHeads is what the heads of a table tell of its being one.
type tableHeads struct {
	real, worded, transoms int     // names of stations, those with a word such as "sta", those of a transom
	even                   float64 // how regular their numbers are, to 1
	over                   string  // "station" or "line", where the title over them says
	corner, cornerLine     bool    // its corner speaks of stations, of lines
}

// score is how surely a table is one, to be held against the same cells read another
// way: by its heads, and by how many of its lines are labelled as such.
func (r *reader) score(t *stationTable, h tableHeads) float64 {
	labelled := 0
	for _, row := range t.lines {
		if r.lineMeaning(t.label(row)) != "" {
			labelled++
		}
	}
	score := 2*h.even + 3*float64(labelled)/max(1, float64(len(t.lines))) + 3*float64(h.worded)/float64(h.real) + min(float64(h.real), 40)/40
	switch {
	case h.over == "station":
		score += 4
	case h.corner && !h.cornerLine:
		score += 1.5
	case h.cornerLine && !h.corner:
		score += 2
	case h.corner:
		score++
	}
	if h.transoms > 0 {
		score++
	}
	if t.position == t.head {
		score -= 4
	}
	return score
}

// lineMeanings is what makes a label that of a line of the offsets.
var lineMeanings = []string{"waterline", "buttock", "deck", "sheer", "rabbet", "keel", "chine", "diagonal", "breadths", "heights"}

// overhead is what stands over the names as their title: "station", or "line"
// where it says that they are no stations.
func (r *reader) overhead(t *stationTable) string {
	for up := 1; up <= min(2, t.head-1); up++ {
		for col := t.left; col <= t.right; col++ {
			c := t.title(t.head-up, col)
			if c.Kind == sheet.Number {
				return "" // figures, over which nothing is a title of the names
			}
			if c.Kind != sheet.Text || len(c.Text) > 40 {
				continue
			}
			hits := r.words.in(c.Text)
			if n, ok := r.stationName(c); ok && n.numbered {
				return "" // the name of one station, and no title over them
			}
			if len(hits) == 0 || len(tokens(c.Text)) > 4 {
				continue
			}
			switch m := hits[0].meaning; {
			case m == "station" && len(t.between(t.head-up, t.left, t.right)) > 1:
				return "" // one of the labels of lines that run the other way
			case m == "station":
				return "station"
			case col == t.left && slices.Contains([]string{"waterline", "buttock", "diagonal"}, m) && len(hits) == 1:
				return "line"
			}
		}
	}
	return ""
}

// corner is the words before the names in their own row, up to an empty column that
// parts them from what stands beside.
func (t *stationTable) corner() []sheet.Cell {
	var all []sheet.Cell
	from := t.labelsEnd()
	for col := from; col >= 1 && col > from-6; col-- {
		blank := true
		for row := t.head; row <= t.head+2; row++ {
			blank = blank && !filled(t.title(row, col))
		}
		if blank && len(all) > 0 {
			break
		}
		if c := t.title(t.head, col); c.Kind == sheet.Text && len(c.Text) < 60 {
			all = append(all, c)
		}
	}
	return all
}

// headsOf reads the names over a table, what stands over them, and its corner.
func (r *reader) headsOf(t *stationTable) tableHeads {
	h := tableHeads{even: regularity(t.names), over: r.overhead(t)}
	for _, n := range t.names {
		if n.summary {
			continue
		}
		h.real++
		if n.worded {
			h.worded++
		}
		if n.transom {
			h.transoms++
		}
	}
	for _, c := range t.corner() {
		if r.words.has(c.Text, "position") {
			t.position = t.head // stations known by where they lie, if by no name
		}
		if n, ok := r.stationName(c); ok && (n.numbered || n.worded) {
			continue // a station of a table that runs the other way
		}
		h.corner = h.corner || r.words.has(c.Text, "station")
		h.cornerLine = h.cornerLine || r.words.has(c.Text, lineMeanings...) || r.words.has(c.Text, "strake", "edge")
	}
	return h
}
