package xlsx

import "testing"

// A note that ours was added to gives the builder's own words back.
func TestTheirNote(t *testing.T) {
	for text, want := range map[string]string{
		"warning: reads \"3\"\nTo do: check":               "",
		"lifted twice\n\nerror: reads \"3\"\nTo do: check": "lifted twice",
		"lifted twice, error: none":                        "lifted twice, error: none",
		"a\n\nb\n\nnote: hidden\n\nwarning: other":         "a\n\nb",
		"": "",
	} {
		if got := theirNote(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// Another program that saves the book may leave the author of a note out: ours are
// known by their form, and no others.
func TestOurNotesByTheirForm(t *testing.T) {
	for text, want := range map[string]bool{
		"warning: reads \"3\"\nSuggests: 4\nTo do: check":  true,
		"lifted twice\n\nerror: reads \"3\"\nTo do: check": true,
		"error: I misread this":                            false,
		"To do: lift it again":                             false,
	} {
		if got := ourForm.MatchString(text); got != want {
			t.Errorf("%q: ours %v, want %v", text, got, want)
		}
	}
}
