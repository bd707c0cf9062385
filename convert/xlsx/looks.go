package xlsx

import (
	"sync"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// looks is what each purpose of a cell looks like. Everything is legible in grey
// print: nothing is told by colour alone.
func looks(purpose sheet.Style) *excelize.Style {
	s := plainLooks(purpose)
	if s.Font == nil {
		s.Font = &excelize.Font{}
	}
	if s.Font.Family == "" {
		s.Font.Family = letterface
	}
	if s.Font.Size == 0 {
		s.Font.Size = 10
	}
	return s
}

// wraps is the purposes whose text is wrapped, by their looks.
var wraps = sync.OnceValue(func() map[sheet.Style]bool {
	all := map[sheet.Style]bool{}
	for purpose := sheet.Plain; purpose <= sheet.Doubt; purpose++ {
		if a := looks(purpose).Alignment; a != nil && a.WrapText {
			all[purpose] = true
		}
	}
	return all
})

// letterface is found, or one of its widths, wherever there is a spreadsheet.
const letterface = "Arial"

// figures is how the purposes that are plain figures are written.
var figures = map[sheet.Style]string{
	sheet.Feet: "@", sheet.Inch: "0.000", sheet.MM: "0.0", sheet.Degrees: "+0.00;-0.00;0.00", sheet.Whole: "0", sheet.Measure: "#,##0.0", sheet.Money: "#,##0.00",
	sheet.Percent: "0.0", sheet.Ratio: "0.###", sheet.Given: "", sheet.Fine: "0.0000", sheet.Departure: "+0.0;-0.0;0.0",
}

// plainLooks is the looks of a purpose, but for what all have in common.
func plainLooks(purpose sheet.Style) *excelize.Style {
	if format, ok := figures[purpose]; ok {
		return figure(format)
	}
	switch purpose {
	case sheet.Title:
		return lettered(words(0), excelize.Font{Bold: true, Size: 18})
	case sheet.Heading:
		s := lettered(wrapped(0), excelize.Font{Bold: true, Size: 10})
		s.Alignment.Horizontal, s.Alignment.Vertical = "center", "center"
		return lined(tinted(s, "E8E4DA"), side{"bottom", 2}, side{"top", 1})
	case sheet.GroupHead:
		return lined(lettered(words(0), excelize.Font{Bold: true, Size: 11}), side{"bottom", 1})
	case sheet.Words:
		return wrapped(1)
	case sheet.Input:
		s := figure("")
		s.Alignment.WrapText = true
		return lined(s, side{"top", 7}, side{"bottom", 7}, side{"left", 7}, side{"right", 7})
	case sheet.Unsure:
		return lined(tinted(figure(""), "FFF0C2"), side{"left", 2}, side{"right", 2})
	case sheet.Wrong:
		return lined(tinted(figure(""), "F4C7B8"), side{"left", 5}, side{"right", 5}, side{"top", 5}, side{"bottom", 5})
	case sheet.Doubt:
		return lined(tinted(lettered(wrapped(1), excelize.Font{Bold: true, Size: 12}), "D9D9D9"), side{"left", 5}, side{"right", 5})
	case sheet.Gone:
		return lettered(wrapped(0), excelize.Font{Italic: true, Color: "5F5F5F"})
	case sheet.Caution:
		return lined(wrapped(0), side{"bottom", 4})
	case sheet.Entry, sheet.Across:
		return words(1)
	case sheet.Stick:
		return lettered(words(1), excelize.Font{Family: "Courier New", Size: 9})
	case sheet.Remark:
		return lettered(wrapped(0), excelize.Font{Size: 10, Color: "3F3F3F"})
	case sheet.LinkText:
		return lettered(wrapped(0), excelize.Font{Underline: "single", Color: "1F3F7F"})
	}
	return cardLooks(purpose)
}

// cardLooks is the looks of what is read or called out across a shop.
func cardLooks(purpose sheet.Style) *excelize.Style {
	switch purpose {
	case sheet.CardHead:
		s := looks(sheet.Heading)
		s.Font.Size = 14
		return s
	case sheet.CardLine:
		return lettered(words(1), excelize.Font{Size: 13})
	case sheet.CardDoubt:
		return lettered(words(1), excelize.Font{Size: 13, Bold: true})
	case sheet.CardFigure:
		return lettered(figure(""), excelize.Font{Size: 13})
	case sheet.Large:
		return lettered(figure(figures[sheet.Degrees]), excelize.Font{Bold: true, Size: 20})
	case sheet.Called:
		return lettered(figure("@"), excelize.Font{Bold: true, Size: 20})
	}
	return &excelize.Style{Alignment: &excelize.Alignment{Vertical: "top"}}
}

// figure is set to the right, with air between it and the words beside it.
func figure(format string) *excelize.Style {
	s := &excelize.Style{Alignment: &excelize.Alignment{Horizontal: "right", Vertical: "top", Indent: 1}}
	if format != "" {
		s.CustomNumFmt = &format
	}
	return s
}

// words is set to the left, so far in; wrapped is the same on as many lines as it takes.
func words(indent int) *excelize.Style {
	return &excelize.Style{Alignment: &excelize.Alignment{Horizontal: "left", Vertical: "top", Indent: indent}}
}

func wrapped(indent int) *excelize.Style {
	s := words(indent)
	s.Alignment.WrapText = true
	return s
}

func lettered(s *excelize.Style, font excelize.Font) *excelize.Style {
	s.Font = &font
	return s
}

func tinted(s *excelize.Style, colour string) *excelize.Style {
	s.Fill = excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{colour}}
	return s
}

// side is a side of a cell with a line along it, of one of the file's own kinds.
type side struct {
	name string
	line int
}

func lined(s *excelize.Style, sides ...side) *excelize.Style {
	for _, l := range sides {
		s.Border = append(s.Border, excelize.Border{Type: l.name, Color: "5F5F5F", Style: l.line})
	}
	return s
}
