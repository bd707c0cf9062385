package read

import (
	"strings"
	"testing"
)

// Sizes in two parts and three, and what is none.
func TestSizeParts(t *testing.T) {
	for size, want := range map[string]string{
		`1 x 6`:            "1|6",
		`1X6`:              "1|6",
		`3/4 by 5 1/4`:     "3/4|5 1/4",
		`25×150 mm`:        "25 mm|150 mm",
		`1" x 6"`:          `1"|6"`,
		`1 x 6 in.`:        "1 in|6 in.",
		`1 x 6 x 12'`:      "1|6|12'",
		`25 x 150 x 4.2 m`: "25|150|4.2 m",
		`1 x 6 x 12 x 4`:   "",
		`6`:                "",
		`box`:              "",
		`1 x`:              "",
		`x 6`:              "",
		`1 x cedar`:        "",
	} {
		if got := strings.Join(sizeParts(size), "|"); got != want {
			t.Errorf("%q in parts is %q and not %q", size, got, want)
		}
	}
}
