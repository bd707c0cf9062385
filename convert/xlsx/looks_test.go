package xlsx

import (
	"testing"

	"strakebook/convert/sheet"
)

// A stick is drawn in letters alone: no colour of ground or letter tells pieces
// apart.
func TestSticksAreUncoloured(t *testing.T) {
	if s := looks(sheet.Stick); s.Fill.Type != "" || s.Fill.Color != nil || s.Font.Color != "" {
		t.Errorf("%+v, %+v", s.Fill, s.Font)
	}
}
