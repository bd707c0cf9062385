package read

import (
	"fmt"
	"regexp"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
)

// minutesHead is words that say angles are in degrees and minutes: deg min, deg. & min.
var minutesHead = regexp.MustCompile(`(?:\bdegs?|\bdegrees|°)\.? ?(?:[ ,;:/&+-]|and )? ?(?:mins?\b|minutes\b|')`)

// blankMinutes is such an angle with nothing but a blank between the two.
var blankMinutes = regexp.MustCompile(`^(\(?[-+]? ?\d{1,3}) (\d{1,2})(\)?)$`)

// minuted marks the degrees and minutes of the angles on a page whose words say that
// they are in such: 2 30 is 2°30' there, and nothing anywhere else.
func (r *reader) minuted(p *page) {
	var head, first source.Cell
	was, n := "", 0
	for row := 1; row <= p.rows; row++ {
		for _, col := range p.filled[0][row] {
			c := p.raw(row, col)
			if c.Kind != sheet.Text {
				continue
			}
			folded := strings.ToLower(measure.Fold(c.Text))
			if head.Row == 0 && minutesHead.MatchString(folded) {
				head, p.inMinutes = p.cell(row, col), true
			}
			m := blankMinutes.FindStringSubmatch(folded)
			if m == nil || head.Row == 0 {
				continue
			}
			if n++; n == 1 {
				first, was = p.cell(row, col), c.Text
			}
			c.Text = m[1] + "°" + m[2] + "'" + m[3]
			p.put[[2]int{row, col}] = c
		}
	}
	if n > 0 {
		r.add(finding.Finding{Kind: ConventionRead, Cell: first, Also: []source.Cell{head}, Reads: was,
			Text: fmt.Sprintf("%s as degrees and minutes, as the words over them say: the first, %q, as %q", plural(n, "angle is read", "angles are read"), was, text(p.raw(first.Row, first.Col)))})
	}
}
