package measure

import (
	"regexp"
	"strings"
)

var minutesText = regexp.MustCompile(`^(-?) ?(\d+) ?° ?(\d+(?:\.\d+)?) ?(?:'|min\.?)?$`)

// ParseAngle reads degrees as a gauge is called out: 2.5, 2 1/2, 2°30', -2, and
// (2) for the other hand. A reading about 90 is returned as it stands: what it
// means is the table's to say. Its errors are *ReadError.
func ParseAngle(text string) (Angle, error) {
	t := strings.ToLower(Fold(text))
	sign := Angle(1)
	if strings.HasPrefix(t, "(") && strings.HasSuffix(t, ")") {
		sign, t = -1, strings.TrimSpace(t[1:len(t)-1])
	}
	if m := minutesText.FindStringSubmatch(t); m != nil {
		minutes, ok := decimal(m[3], false)
		if !ok || minutes >= 60 {
			return 0, notRead(text, "minutes below 60")
		}
		if m[1] == "-" {
			sign = -sign
		}
		return sign * (Angle(whole(m[2])) + Angle(minutes/60)), nil
	}
	for _, mark := range []string{"degrees", "degree", "deg.", "deg", "°"} {
		if rest, found := strings.CutSuffix(t, mark); found {
			t = strings.TrimSpace(rest)
			break
		}
	}
	t = strings.TrimPrefix(t, "+")
	v, ok := number(t, loneComma(t))
	if !ok || v < -360 || v > 360 {
		return 0, notRead(text, "degrees such as 2.5, 2 1/2 or 2°30'")
	}
	return sign * Angle(v), nil
}
