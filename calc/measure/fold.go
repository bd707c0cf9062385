package measure

import (
	"regexp"
	"strings"
	"unicode"
)

// folding turns the marks that typewriters, phones and spreadsheets put for
// each other into one of each. It is a table of our own because Unicode's
// compatibility folding ruins measures: it joins 4½ into 41/2 and splits the
// inch mark into two foot marks.
var folding = strings.NewReplacer(
	"’", "'", "‘", "'", "‛", "'", "′", "'", "‵", "'", "`", "'", "´", "'", "ʹ", "'", "ʼ", "'", "＇", "'",
	"”", `"`, "“", `"`, "‟", `"`, "″", `"`, "‶", `"`, "„", `"`, "ʺ", `"`, "＂", `"`, "〃", `"`,
	"½", " 1/2", "¼", " 1/4", "¾", " 3/4", "⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8",
	"⅓", " 1/3", "⅔", " 2/3", "⁄", "/", "∕", "/", "／", "/",
	"‐", "-", "‑", "-", "‒", "-", "–", "-", "—", "-", "―", "-", "−", "-", "－", "-", "﹣", "-",
	"\u200b", "", "\u200c", "", "\u200d", "", "\u200e", "", "\u200f", "", "\u2060", "", "\ufeff", "", "\u00ad", "",
	"０", "0", "１", "1", "２", "2", "３", "3", "４", "4", "５", "5", "６", "6", "７", "7", "８", "8", "９", "9",
	"º", "°", "˚", "°", "．", ".", "，", ",", "＋", "+", "：", ":", "（", "(", "）", ")", "…", "...",
)

// raised is a fraction set in raised and lowered figures, as word processors
// make them: 4¹⁄₂. A raised figure without a bar stays as it is, because it may
// be an eighth (see oldPrint) and must not be taken for one figure more.
var raised = regexp.MustCompile(`([⁰¹²³⁴⁵⁶⁷⁸⁹]+)[⁄∕／/]([₀₁₂₃₄₅₆₇₈₉]+)`)

var level = strings.NewReplacer(
	"⁰", "0", "¹", "1", "²", "2", "³", "3", "⁴", "4", "⁵", "5", "⁶", "6", "⁷", "7", "⁸", "8", "⁹", "9",
	"₀", "0", "₁", "1", "₂", "2", "₃", "3", "₄", "4", "₅", "5", "₆", "6", "₇", "7", "₈", "8", "₉", "9",
)

// toFold says that a letter is one that may be folded: most texts hold none.
func toFold(r rune) bool { return r > unicode.MaxASCII || r == '`' }

// Fold is the text with its marks made plain and its spaces single: what every
// reader of a notation starts from. Folding twice changes nothing more.
func Fold(text string) string {
	t := text
	if strings.ContainsFunc(t, toFold) {
		t = raised.ReplaceAllStringFunc(t, func(fraction string) string {
			return " " + level.Replace(strings.NewReplacer("⁄", "/", "∕", "/", "／", "/").Replace(fraction))
		})
		t = folding.Replace(t)
	}
	t = strings.ReplaceAll(t, "''", `"`)
	return strings.Join(strings.Fields(t), " ")
}

// IsDash says that a text stands for a line that is not there: a dash, dots,
// n/a or nil. A blank is not a dash, nor is a zero, nor is a question mark,
// which says that something is there and not known.
func IsDash(text string) bool {
	t := strings.ToLower(Fold(text))
	switch t {
	case "n/a", "#n/a", "n.a.", "na", "nil", "none":
		return true
	case "":
		return false
	}
	return strings.Trim(t, "- ") == "" || (len(t) >= 2 && strings.Trim(t, ". ") == "")
}

// IsDitto says that a text stands for the one above it.
func IsDitto(text string) bool {
	switch strings.Trim(strings.ToLower(Fold(text)), "- ") {
	case `"`, `""`, `" "`, ",,", "do", "do.", "ditto":
		return true
	}
	return false
}
