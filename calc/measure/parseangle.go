package measure

import (
	"regexp"
	"strings"
)

var minutesText = regexp.MustCompile(`^([-+]?) ?(\d+) ?(?:° ?(\d+(?:[.,]\d+)?) ?(?:'|min\.?)?|:(\d{2}))$`)

// ParseAngle reads degrees as a gauge is called out: 2.5, 2 1/2, 2°30', 2:30,
// -2, and (2) for the other hand. A comma is a decimal comma: there are no
// thousands of degrees. A reading about 90 is returned as it stands: what it
// means is the table's to say. Its errors are *ReadError.
func ParseAngle(text string) (Angle, error) {
	t := strings.ToLower(Fold(text))
	sign := Angle(1)
	if strings.HasPrefix(t, "(") && strings.HasSuffix(strings.TrimSuffix(t, "°"), ")") {
		sign, t = -1, strings.TrimSpace(strings.TrimSuffix(t[1:], "°"))
		t = strings.TrimSpace(strings.TrimSuffix(t, ")"))
		if strings.HasPrefix(t, "-") || strings.HasPrefix(t, "(") {
			return 0, notRead(text, "one sign: -2 or (2)")
		}
	}
	if m := minutesText.FindStringSubmatch(t); m != nil {
		minutes, ok := decimal(strings.Replace(m[3]+m[4], ",", ".", 1), false)
		degrees := Angle(whole(m[2]))
		if !ok || minutes >= 60 {
			return 0, notRead(text, "minutes below 60")
		}
		if degrees > 359 {
			return 0, notRead(text, "degrees up to 360")
		}
		if m[1] == "-" {
			sign = -sign
		}
		return sign * (degrees + Angle(minutes/60)), nil
	}
	for _, mark := range []string{"degrees", "degree", "degs.", "degs", "deg.", "deg", "°"} {
		if rest, found := strings.CutSuffix(t, mark); found {
			t = strings.TrimSpace(rest)
			break
		}
	}
	v, ok := number(strings.TrimPrefix(t, "+"), strings.Contains(t, ","))
	if !ok || v < -360 || v > 360 {
		return 0, notRead(text, "degrees such as 2.5, 2 1/2 or 2°30'")
	}
	return sign * Angle(v), nil
}
