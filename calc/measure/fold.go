package measure

import "strings"

// folding turns the marks that typewriters, phones and spreadsheets put for
// each other into one of each. It is a table of our own because Unicode's
// compatibility folding ruins measures: it joins 4½ into 41/2 and splits the
// inch mark into two foot marks.
var folding = strings.NewReplacer(
	"’", "'", "‘", "'", "′", "'", "`", "'", "´", "'", "ʹ", "'", "＇", "'",
	"”", `"`, "“", `"`, "″", `"`, "„", `"`, "ʺ", `"`, "''", `"`, "’’", `"`, "′′", `"`,
	"½", " 1/2", "¼", " 1/4", "¾", " 3/4", "⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8",
	"⅓", " 1/3", "⅔", " 2/3", "⅕", " 1/5", "⅙", " 1/6", "⁄", "/", "∕", "/",
	"\u00a0", " ", "\u2009", " ", "\u202f", " ", "\u2007", " ", "\u2002", " ", "\u2003", " ", "\u200a", " ",
	"\t", " ", "\r\n", " ", "\n", " ", "\r", " ",
	"‐", "-", "‑", "-", "‒", "-", "–", "-", "—", "-", "―", "-", "−", "-", "－", "-",
	"\u200b", "", "\u200c", "", "\u200d", "", "\ufeff", "", "\u00ad", "",
	"０", "0", "１", "1", "２", "2", "３", "3", "４", "4", "５", "5", "６", "6", "７", "7", "８", "8", "９", "9",
	"º", "°", "˚", "°", "．", ".", "，", ",", "＋", "+", "／", "/", "…", "...",
)

// Fold is the text with its marks made plain and its spaces single: what every
// reader of a notation starts from.
func Fold(text string) string {
	return strings.Join(strings.Fields(folding.Replace(text)), " ")
}

// IsDash says that a text stands for a line that is not there: a dash, dots,
// n/a or nil. A blank is not a dash, nor is a zero.
func IsDash(text string) bool {
	t := strings.ToLower(Fold(text))
	switch t {
	case "n/a", "#n/a", "na", "nil", "none":
		return true
	case "":
		return false
	}
	return strings.Trim(t, "-") == "" || (len(t) >= 2 && strings.Trim(t, ". ") == "")
}

// IsDitto says that a text stands for the one above it.
func IsDitto(text string) bool {
	switch strings.ToLower(Fold(text)) {
	case `"`, "do", "do.", "ditto", "〃":
		return true
	}
	return false
}
