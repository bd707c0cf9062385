package read

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"strakebook/calc/bevel"
	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Bevels off square are + where the outside face is the wider. Words that have them the
// other way about turn every reading; words on the sign that are not understood are
// asked about.

const (
	aSign  = `(?:(\+(?: ?ve\b)?|\bplus\b|\bpositive\b)|(\bminus\b|\bnegative\b))`
	aSide  = `\b(?:(outside|outer|outboard)|(inside|inner|inboard|faying))(?: face| side)?(?: of the plank)?`
	aWidth = `(?: is| being)?(?: the)? (?:(wider|broader|greater|larger|bigger|longer)|(narrower|smaller|less|shorter))\b`
	where  = `[^;.+]{0,30}?(?:[ ,](?:where|when|if|for|means?|being|is|in|on|at) |[ :]*= ?|: ?)(?:the |a )?`
)

// In each, the groups of even number are those that turn a sign about.
var signs = []*regexp.Regexp{
	regexp.MustCompile(aSign + where + aSide + aWidth),
	regexp.MustCompile(aSide + aWidth + `(?: is| are| reads?| taken as|:| =)*(?: a| as)? ?` + aSign),
	regexp.MustCompile(aSign + where + `(?:(round)|(hollow))`),
}

var (
	dashed       = regexp.MustCompile(`(^|[\s(,;:])- ?(?:ve )?((?:where|when|if|for|means?|is|in|on)\b|=)`)
	betweenWords = regexp.MustCompile(`[a-z0-9)] - ?(?:where|when|if|for|means?|is|in|on|=)`)
	signAsked    = regexp.MustCompile(aSign + `[^;.]{0,40}\b(?:open|closed|standing|under|over|acute|obtuse|inside|outside|inner|outer|inboard|outboard|faying|wider|narrower)\b`)
	otherSign    = regexp.MustCompile(`\+|\bplus\b|\bpositive\b|\bminus\b|\bnegative\b`)
)

// signIn is what words say of the sign of bevels: own where + has the outside face the
// wider; asked where they say something of it that is not understood.
func signIn(words string) (said, own, asked bool) {
	t := denied.ReplaceAllString(strings.ToLower(measure.Fold(words)), " ")
	stroke := betweenWords.MatchString(t) && !otherSign.MatchString(t) // it may be no minus
	t = dashed.ReplaceAllString(t, "${1}minus $2")
	for _, re := range signs {
		for _, m := range re.FindAllStringSubmatch(t, -1) {
			is := true
			for k := 2; k < len(m); k += 2 {
				if m[k] != "" {
					is = !is
				}
			}
			if stroke || said && is != own {
				return false, false, true
			}
			said, own = true, is
		}
	}
	return said, own, !said && signAsked.MatchString(t)
}

// signSaid turns the readings of a table about where words over it have them + where the
// inside face is the wider, and leaves them where what is said of their sign is not
// understood.
func (r *reader) signSaid(own []string, p *page, b *bevel.Readings) {
	if b.AboutNinety() {
		return
	}
	remarks, titles := p.sheetWords()
	by, turned := "", false
	for _, w := range slices.Concat(own, remarks, titles) {
		said, as, asked := signIn(w)
		switch {
		case asked, said && by != "" && turned == as:
			r.add(finding.Finding{Kind: ConventionOpen, Cell: b.Cell, Reads: w,
				Text: fmt.Sprintf("%q: what it says of the sign of the bevels is not understood, and they were left", w),
				Do:   "write over them: + where the outside face is the wider, or + where the inside face is the wider"})
			eachReading(b, func(v *source.Reading[measure.Angle]) { v.State = source.Unread })
			return
		case said:
			by, turned = w, !as
		}
	}
	if !turned {
		return
	}
	r.add(finding.Finding{Kind: ConventionRead, Cell: b.Cell, Reads: by,
		Text: fmt.Sprintf("%q: each reading was turned to the sign that is + where the outside face is the wider", by)})
	eachReading(b, func(v *source.Reading[measure.Angle]) { v.Value = -v.Value })
}

// eachReading changes every reading that some bevels have.
func eachReading(b *bevel.Readings, as func(*source.Reading[measure.Angle])) {
	for i := range b.Seams {
		for k := range b.Seams[i].Readings {
			if v := &b.Seams[i].Readings[k]; v.OK() {
				as(v)
			}
		}
	}
}
