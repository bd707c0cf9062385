package xlsx

import (
	"strings"

	"github.com/xuri/nfp"

	"strakebook/convert/sheet"
)

// format is what a cell's style says of its value.
type format struct {
	code   string     // number format, "" for general
	kind   sheet.Kind // Number, Date or Time
	struck bool
}

// formats reads the part of styles: what each cell style says of a value. It
// refuses a part that holds fewer than it says, as every style after a lost one
// would be another's; some programs say too few.
func formats(data []byte) ([]format, error) {
	var all []format
	codes := map[int]string{}
	var fonts []bool // struck
	var within string
	said, found := map[string]int{}, map[string]int{}
	r := newReader(data)
	lists := map[string]func() error{}
	for _, name := range []string{"numFmts", "fonts", "cellStyleXfs", "cellXfs"} {
		lists[name] = func() error {
			n, err := r.count("count")
			within, said[name] = name, n
			return err
		}
	}
	for _, name := range []string{"fills", "borders", "cellStyles", "dxfs"} {
		lists[name] = func() error { within = name; return nil }
	}
	lists["numFmt"] = func() error {
		if within != "numFmts" {
			return nil
		}
		found[within]++
		id, err := r.count("numFmtId")
		codes[id], _ = r.attr("formatCode")
		return err
	}
	lists["font"] = func() error {
		if within == "fonts" {
			found[within]++
			fonts = append(fonts, false)
		}
		return nil
	}
	lists["strike"] = func() error {
		off, err := r.off()
		if within == "fonts" && len(fonts) > 0 {
			fonts[len(fonts)-1] = !off
		}
		return err
	}
	lists["xf"] = func() error {
		found[within]++
		if within != "cellXfs" {
			return nil
		}
		f, err := r.style(codes, fonts)
		all = append(all, f)
		return err
	}
	if err := r.each(lists); err != nil {
		return nil, err
	}
	for name, n := range said {
		if n > found[name] {
			return nil, r.fault("it does not hold as many " + name + " as it says")
		}
	}
	return all, nil
}

// style reads one cell style.
func (r *reader) style(codes map[int]string, fonts []bool) (format, error) {
	var f format
	id, err := r.count("numFmtId")
	if err != nil {
		return f, err
	}
	font, err := r.count("fontId")
	if err != nil {
		return f, err
	}
	if font >= len(fonts) {
		return f, r.fault("a style of a font that is not there")
	}
	f.struck = font >= 0 && fonts[font]
	var own bool
	if f.code, own = codes[id]; !own {
		f.code = builtIn[id]
		if id >= 27 && id <= 36 || id >= 50 && id <= 58 {
			f.code = "yyyy-mm-dd" // dates of eastern calendars
		}
	}
	if strings.EqualFold(f.code, "general") {
		f.code = ""
	}
	f.kind = kindOf(f.code)
	return f, nil
}

// builtIn is the codes of the numbered formats (ECMA-376-1 18.8.30, from memory).
var builtIn = map[int]string{
	1: "0", 2: "0.00", 3: "#,##0", 4: "#,##0.00", 9: "0%", 10: "0.00%", 11: "0.00E+00", 12: "# ?/?", 13: "# ??/??",
	14: "mm-dd-yy", 15: "d-mmm-yy", 16: "d-mmm", 17: "mmm-yy", 18: "h:mm AM/PM", 19: "h:mm:ss AM/PM",
	20: "h:mm", 21: "h:mm:ss", 22: "m/d/yy h:mm", 37: "#,##0 ;(#,##0)", 38: "#,##0 ;[Red](#,##0)",
	39: "#,##0.00;(#,##0.00)", 40: "#,##0.00;[Red](#,##0.00)", 45: "mm:ss", 46: "[h]:mm:ss", 47: "mmss.0", 48: "##0.0E+0", 49: "@",
}

// kindOf says whether a number format shows a date, a time, or a number.
func kindOf(code string) sheet.Kind {
	if code == "" {
		return sheet.Number
	}
	parser := nfp.NumberFormatParser()
	kind := sheet.Number
	for _, section := range parser.Parse(code) {
		for _, token := range section.Items {
			switch token.TType {
			case nfp.TokenTypeDateTimes:
				t := strings.ToLower(token.TValue)
				switch {
				case strings.ContainsAny(t, "yd"):
					return sheet.Date
				case strings.HasPrefix(t, "mmm"):
					return sheet.Date
				case strings.ContainsAny(t, "hs") || strings.HasPrefix(t, "a"):
					kind = sheet.Time
				case kind == sheet.Number:
					kind = sheet.Date // months, unless hours or seconds stand by
				}
			case nfp.TokenTypeElapsedDateTimes:
				kind = sheet.Time
			}
		}
	}
	return kind
}
