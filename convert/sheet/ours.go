package sheet

import (
	"regexp"
	"strings"
)

// ourTexts is how each table that we write as text begins, but for the mill order,
// which a yard may keep as its rack. Where the first headings are such as a builder
// may use, the row below tells. Stations may be headed Frame.
var ourTexts = [][2][]string{
	{{"Line", "Bevel"}, {"", "face on the line"}},
	{{"Strake", "Side", "Edge", "Station", "At", "Set"}},
	{{"Mark", "Skin", "Strake", "Side", "Piece", "Species"}},
	{{"Of", "Strake", "Side", "Figure", "Length"}},
	{{"Skin", "Strake", "Side", "Length", "Pieces", "Slope"}},
	{{"To the", "Line", "View", "At"}},
	{{"View", "Line", "Figures"}},
	{{"Strake", "Side", "Piece", "Station", "At"}},
	{{"No.", "Line", "Station", "Reads", "Stations beside"}},
	{{"Skin", "Thickness", "Slope", "Run", "Fence"}},
	{{"Skin", "Strake", "Side", "Piece", "Length", "Sny"}},
	{{"Stick", "Board", "Lane", "Species"}},
	{{"No.", "How bad", "Where", "What", "Reads", "Suggests"}},
}

// OurText says that a text file is one of the tables that we write: its figures are
// worked out, and are not the builder's.
func (b *Book) OurText() bool {
	if b.Kind != "csv" {
		return false
	}
	for _, begins := range ourTexts {
		if b.begins(0, begins[0]) && b.begins(1, begins[1]) {
			return true
		}
	}
	return false
}

// begins says that a row of the first sheet begins with some headings, their units
// apart.
func (b *Book) begins(row int, headings []string) bool {
	for col, want := range headings {
		got, _, _ := strings.Cut(b.Sheets[0].At(row+1, col+1).Text, ",")
		got = strings.Replace(got, "Frame", "Station", 1)
		if got != want {
			return false
		}
	}
	return true
}

// ByBox is where a value on our Settings sheet comes from that the builder changed
// there, in a book before, or gave on the command line: what it stands in place of, and
// where that stands.
func ByBox(commanded bool, before, from string) string {
	by := byBox
	if commanded {
		by = ByCommand
	}
	by = strings.TrimSpace(by + inPlace + " " + before)
	if from != "" {
		by += "; " + from
	}
	return by
}

const byBox, inPlace = "its box on this sheet", ", in place of"

// ByCommand begins those of a value given on the command line.
const ByCommand = "the command line"

// HeldByBox is the words of ByBox.
var HeldByBox = regexp.MustCompile(`^(?:` + byBox + `|` + ByCommand + `)` + inPlace + ` ?(.*?)(?:; (the rack, .*))?$`)
