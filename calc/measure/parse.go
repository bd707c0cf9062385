package measure

import (
	"fmt"
	"strconv"
	"strings"
)

// ParseLength reads one length standing alone, as in a setting or a flag:
// the notation is known from the text, and a bare number is in the unit.
// Its errors say what was read and what would have been accepted.
func ParseLength(text string, unit Unit) (Length, error) {
	v, err := strconv.ParseFloat(strings.TrimSpace(text), 64)
	if err != nil || unit == NoUnit {
		return 0, fmt.Errorf("read %q: expected a length with its unit", text)
	}
	return times(v, unit.Length()), nil
}
