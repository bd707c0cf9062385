package xlsx

import (
	"strings"

	"github.com/xuri/nfp"

	"strakebook/convert/sheet"
)

// builtIn is the codes of the numbered formats that matter here (ECMA-376-1
// 18.8.30, from memory).
var builtIn = map[int]string{
	1: "0", 2: "0.00", 9: "0%", 10: "0.00%", 12: "# ?/?", 13: "# ??/??",
	14: "mm-dd-yy", 15: "d-mmm-yy", 16: "d-mmm", 17: "mmm-yy", 18: "h:mm AM/PM", 19: "h:mm:ss AM/PM",
	20: "h:mm", 21: "h:mm:ss", 22: "m/d/yy h:mm", 45: "mm:ss", 46: "[h]:mm:ss", 47: "mmss.0",
}

// format is what a style says of the values under it.
func (r reader) format(id int) (format, error) {
	if f, ok := r.formats[id]; ok {
		return f, nil
	}
	style, err := r.file.GetStyle(id)
	if err != nil {
		return format{}, err
	}
	out := format{kind: sheet.Number}
	if style.CustomNumFmt != nil {
		out.code = *style.CustomNumFmt
	} else {
		out.code = builtIn[style.NumFmt]
		if n := style.NumFmt; (n >= 27 && n <= 36) || (n >= 50 && n <= 58) {
			out.code = "yyyy-mm-dd"
		}
	}
	if strings.EqualFold(out.code, "general") {
		out.code = ""
	}
	out.kind = kindOf(out.code)
	out.struck = style.Font != nil && style.Font.Strike
	if xfs := r.file.Styles.CellXfs; xfs != nil && id < len(xfs.Xf) && xfs.Xf[id].QuotePrefix != nil {
		out.quoted = *xfs.Xf[id].QuotePrefix
	}
	r.formats[id] = out
	return out, nil
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
