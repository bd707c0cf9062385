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

func plainLooks(purpose sheet.Style) *excelize.Style {
	text := func(code string, align string) *excelize.Style {
		s := &excelize.Style{Alignment: &excelize.Alignment{Horizontal: align, Vertical: "top"}}
		if align == "right" {
			s.Alignment.Indent = 1 // air between a figure and the words beside it
		}
		if code != "" {
			s.CustomNumFmt = &code
		}
		return s
	}
	shade := func(s *excelize.Style, colour string) *excelize.Style {
		s.Fill = excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{colour}}
		return s
	}
	line := func(s *excelize.Style, side string, weight int) *excelize.Style {
		s.Border = append(s.Border, excelize.Border{Type: side, Color: "5F5F5F", Style: weight})
		return s
	}
	bold := func(s *excelize.Style, size float64) *excelize.Style {
		s.Font = &excelize.Font{Bold: true, Size: size}
		return s
	}
	switch purpose {
	case sheet.Title:
		return bold(text("", "left"), 18)
	case sheet.Heading:
		s := bold(text("", "center"), 10)
		s.Alignment.WrapText, s.Alignment.Vertical = true, "center"
		return line(line(shade(s, "E8E4DA"), "bottom", 2), "top", 1)
	case sheet.GroupHead:
		return line(bold(text("", "left"), 11), "bottom", 1)
	case sheet.Words:
		s := text("", "left")
		s.Alignment.WrapText, s.Alignment.Indent = true, 1
		return s
	case sheet.Feet:
		s := text("@", "right")
		return s
	case sheet.Inch:
		return text("0.000", "right")
	case sheet.MM:
		return text("0.0", "right")
	case sheet.Degrees:
		return text("+0.00;-0.00;0.00", "right")
	case sheet.Whole:
		return text("0", "right")
	case sheet.Measure:
		return text("#,##0.0", "right")
	case sheet.Money:
		return text("#,##0.00", "right")
	case sheet.Percent:
		return text("0.0", "right")
	case sheet.Ratio:
		return text("0.###", "right")
	case sheet.Input:
		s := text("", "right")
		for _, side := range []string{"top", "bottom", "left", "right"} {
			s = line(s, side, 7)
		}
		s.Alignment.WrapText = true
		return s
	case sheet.Unsure:
		return line(line(shade(text("", "right"), "FFF0C2"), "left", 2), "right", 2)
	case sheet.Wrong:
		return line(line(line(line(shade(text("", "right"), "F4C7B8"), "left", 5), "right", 5), "top", 5), "bottom", 5)
	case sheet.CardHead:
		s := looks(sheet.Heading)
		s.Font.Size = 14
		return s
	case sheet.CardLine, sheet.CardDoubt, sheet.CardFigure:
		s := text("", "left")
		if purpose == sheet.CardFigure {
			s = text("", "right")
		}
		s.Font, s.Alignment.Indent = &excelize.Font{Size: 13, Bold: purpose == sheet.CardDoubt}, 1
		return s
	case sheet.Doubt:
		s := bold(text("", "left"), 12)
		s.Alignment.WrapText, s.Alignment.Indent = true, 1
		return line(line(shade(s, "D9D9D9"), "left", 5), "right", 5)
	case sheet.Gone:
		s := text("", "left")
		s.Font = &excelize.Font{Italic: true, Color: "5F5F5F"}
		s.Alignment.WrapText = true
		return s
	case sheet.Caution:
		s := text("", "left")
		s.Alignment.WrapText = true
		return line(s, "bottom", 4)
	case sheet.Large:
		s := text("+0.00;-0.00;0.00", "right")
		s.Font = &excelize.Font{Bold: true, Size: 20}
		return s
	case sheet.Entry, sheet.Across:
		s := text("", "left")
		s.Alignment.Indent = 1
		return s
	case sheet.Given:
		return text("", "right")
	case sheet.Fine:
		return text("0.0000", "right")
	case sheet.Stick:
		s := text("", "left")
		s.Alignment.Indent = 1
		s.Font = &excelize.Font{Family: "Courier New", Size: 9}
		return s
	case sheet.Called:
		s := text("@", "right")
		s.Font = &excelize.Font{Bold: true, Size: 20}
		return s
	case sheet.Departure:
		return text("+0.0;-0.0;0.0", "right")
	case sheet.Remark:
		s := text("", "left")
		s.Font = &excelize.Font{Size: 10, Color: "3F3F3F"}
		s.Alignment.WrapText = true
		return s
	case sheet.LinkText:
		s := text("", "left")
		s.Font = &excelize.Font{Underline: "single", Color: "1F3F7F"}
		s.Alignment.WrapText = true
		return s
	}
	return text("", "")
}
