package calc

import (
	"regexp"

	"strakebook/calc/finding"
)

// stationWord is the word that findings have for the places of the offsets.
var stationWord = regexp.MustCompile(`\bstation(s?)\b`)

// atFrames is findings of a book whose offsets are given at frames, in its words.
func atFrames(found finding.List) finding.List {
	for i := range found {
		f := &found[i]
		f.Text, f.Do = stationWord.ReplaceAllString(f.Text, "frame$1"), stationWord.ReplaceAllString(f.Do, "frame$1")
	}
	return found
}
