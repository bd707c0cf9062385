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
