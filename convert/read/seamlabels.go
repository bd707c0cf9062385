package read

import (
	"fmt"
	"regexp"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/convert/sheet"
)

// seamReader reads the labels of a table of strakes' edges, row after row: one
// that names no strake belongs to the one above, as does a ditto mark.
func (r *reader) seamReader(t *stationTable) func(row int) bevel.Seam {
	last := bevel.Seam{Skin: r.captionSkin(t.caption)}
	captioned := sideIn(t.caption)
	return func(row int) bevel.Seam {
		s := bevel.Seam{Skin: last.Skin, Side: captioned, Cell: t.place(row, t.labelAt())}
		var name []string
		for _, col := range t.labels {
			c := t.title(row, col)
			if c.Kind == sheet.Empty {
				continue
			}
			r.seamField(&s, &name, text(t.title(t.head, col)), c, last)
		}
		s.Strake = strings.Join(name, " ")
		if s.Strake == "" {
			s.Strake = last.Strake
		}
		last.Strake, last.Skin, last.Edge, last.Side = s.Strake, s.Skin, s.Edge, s.Side
		return s
	}
}

// seamField takes one label of a row: by the heading of its column where that
// says what it is, else by its own words.
func (r *reader) seamField(s *bevel.Seam, name *[]string, head string, c sheet.Cell, last bevel.Seam) {
	word := text(c)
	if c.Kind == sheet.Number {
		word = plainNumber(c.Number)
	}
	same := measure.IsDitto(word)
	switch m := r.words.heading(head); {
	case m == "edge" && strings.Contains(strings.ToLower(head), "seam") && seamText.MatchString(measure.Fold(word)):
		// The seam between two strakes is the upper edge of the lower one.
		s.Edge = bevel.Upper
		*name = append(*name, seamText.FindStringSubmatch(measure.Fold(word))[2])
	case m == "edge" && same:
		s.Edge = last.Edge
	case m == "edge" && (edgeIn(word) != bevel.EdgeUnstated || holdsAny(head, "edge")): // a seam may be called by its strake alone
		edge, ok := edgeNamed(word)
		if s.Edge = edge; !ok {
			r.oddEdges[s.Cell] = word
		}
	case m == "side" && same:
		s.Side = last.Side
	case m == "side":
		s.Side = sideOf(word)
	case m == "skin" && skinOf(word) != "":
		s.Skin = skinOf(word)
	case m == "note" || m == "skin":
	case m == "strake" && same:
		*name = append(*name, last.Strake)
	case m == "strake" && len(tokens(word)) == 1:
		*name = append(*name, word)
	default:
		r.seamWords(s, name, word, last)
	}
}

// seamWords takes a label whose column has no heading: "2 upper S".
func (r *reader) seamWords(s *bevel.Seam, name *[]string, label string, last bevel.Seam) {
	label = edgeOf.ReplaceAllStringFunc(measure.Fold(label), func(w string) string {
		return map[bool]string{true: "upper", false: "lower"}[strings.EqualFold(w[:5], "sheer")]
	})
	for _, w := range strings.Fields(strings.NewReplacer(",", " ", "/", " ").Replace(label)) {
		low := strings.Trim(strings.ToLower(w), ".():")
		switch {
		case measure.IsDitto(low) && len(*name) == 0:
			*name = append(*name, last.Strake)
		case edgeIn(low) != bevel.EdgeUnstated:
			s.Edge = edgeIn(low)
		case sideOf(low) != hull.BothSides:
			s.Side = sideOf(low)
		case skinOf(low) == hull.Strips || skinOf(low) == hull.Planks:
			s.Skin = skinOf(low)
		case low == "" || low == "both" || low == "side" || r.words.has(low, "strake", "edge", "bevels", "count"):
		default:
			*name = append(*name, w)
		}
	}
}

// edgeOf is an edge named by what it looks to.
var edgeOf = regexp.MustCompile(`(?i)\b(?:sheer|keel)(?:ward)? edge\b`)

// otherPlank is words that have an edge be another plank's than the row's.
var otherPlank = regexp.MustCompile(`\b(?:plank|strake)s? (?:above|below|over|under|next)\b|\b(?:next|other) (?:plank|strake)\b`)

// edgeNamed is the edge that a cell under "Edge" names; not ok where it names something,
// and neither edge of its plank.
func edgeNamed(word string) (bevel.Edge, bool) {
	t := strings.ToLower(measure.Fold(word))
	if otherPlank.MatchString(t) {
		return bevel.EdgeUnstated, false
	}
	upper, lower := edgeIn(word) == bevel.Upper, edgeIn(word) == bevel.Lower
	named := upper || lower
	for _, w := range tokens(word) {
		switch w {
		case "sheer", "sheerward", "above", "over", "u/e":
			upper = true
		case "keel", "keelward", "below", "under", "beneath", "l/e":
			lower = true
		default:
			named = named || w == "both"
		}
	}
	switch {
	case upper && !lower:
		return bevel.Upper, true
	case lower && !upper:
		return bevel.Lower, true
	}
	return bevel.EdgeUnstated, named && !upper && !lower || len(tokens(word)) == 0 || measure.IsDash(t)
}

// edgeOdd says that the edge of a seam could not be told from what stands there, and
// asks: a bevel sawn on the other edge opens both seams.
func (r *reader) edgeOdd(s bevel.Seam) bool {
	word, odd := r.oddEdges[s.Cell]
	if odd {
		r.add(finding.Finding{Kind: ConventionOpen, Cell: s.Cell, Reads: word,
			Text: fmt.Sprintf("the edge of %s %s reads %q, which is neither its upper nor its lower one: its bevels were left", s.Skin, s.Strake, word), Do: "write upper or lower under Edge"})
	}
	return odd
}

// edgeIn is the edge that words name.
func edgeIn(words string) bevel.Edge {
	upper, lower := false, false
	for _, w := range tokens(words) {
		switch w {
		case "upper", "top", "upr", "u":
			upper = true
		case "lower", "bottom", "bot", "btm", "lwr", "l":
			lower = true
		}
	}
	switch {
	case upper && !lower:
		return bevel.Upper
	case lower && !upper:
		return bevel.Lower
	}
	return bevel.EdgeUnstated
}

// sideIn is the side that the nearest caption names in a word: port, starboard.
func sideIn(caption []string) hull.Side {
	for _, c := range caption {
		found := hull.BothSides
		for _, w := range tokens(c) {
			side := sideOf(w)
			switch {
			case len(w) < 3 || side == hull.BothSides:
			case found != hull.BothSides && found != side:
				return hull.BothSides
			default:
				found = side
			}
		}
		if found != hull.BothSides {
			return found
		}
	}
	return hull.BothSides
}

// skinIn is the skin that a caption's words name; "" where they name none or two.
func (r *reader) skinIn(caption string) hull.Skin {
	found := hull.Skin("")
	for _, w := range tokens(caption) {
		s := skinOf(w)
		if s != hull.Strips && s != hull.Planks {
			continue
		}
		if found != "" && found != s {
			return ""
		}
		found = s
	}
	return found
}

// captionSkin is the skin that a table's caption names, planks where none.
func (r *reader) captionSkin(caption []string) hull.Skin {
	for _, c := range caption {
		if s := r.skinIn(c); s != "" {
			return s
		}
	}
	return hull.Planks
}
