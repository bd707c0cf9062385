package hull

import (
	"fmt"
	"strconv"
	"strings"

	"strakebook/calc/measure"
)

// mostAlike is as many strakes as one row may stand for.
const mostAlike = 2000

// Names is the names of the strakes a row stands for: "1-15" with a count of 15
// is 1 to 15; any other counted name has .1, .2 and so on after it.
func (s Strake) Names() []string {
	n := min(max(1, s.Count.Or(1)), mostAlike)
	if n == 1 {
		return []string{s.Name}
	}
	from, step := 1, s.Name+"."
	first, last, ranged := strings.Cut(measure.Fold(s.Name), "-")
	if !ranged {
		first, last, ranged = strings.Cut(measure.Fold(s.Name), " to ")
	}
	prefix := strings.TrimRight(strings.TrimSpace(first), "0123456789")
	a, errA := strconv.Atoi(strings.TrimPrefix(strings.TrimSpace(first), prefix))
	b, errB := strconv.Atoi(strings.TrimPrefix(strings.TrimSpace(last), prefix))
	if ranged && errA == nil && errB == nil && b-a+1 == n {
		from, step = a, prefix
	}
	all := make([]string, n)
	for i := range all {
		all[i] = fmt.Sprint(step, from+i)
	}
	return all
}
