package sheet

import "testing"

func TestLegalName(t *testing.T) {
	for name, want := range map[string]string{
		"planks":                                 "planks",
		"planks [rev 2]: A/B":                    "planks rev 2 A B",
		"'quoted'":                               "quoted",
		"":                                       "Sheet",
		"???":                                    "Sheet",
		"history":                                "history 1",
		"a name of more than thirty-one letters": "a name of more than thirty-one",
		"\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6": "\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6\U0001F6F6",
	} {
		if got := LegalName(name); got != want {
			t.Errorf("%q became %q, want %q", name, got, want)
		}
	}
}

func TestFreeName(t *testing.T) {
	taken := []string{"stock", "Stock (checked)", "a name of thirty-one letters abc"[:31]}
	if got := FreeName(taken, "Stock"); got != "Stock (checked 2)" {
		t.Errorf("Stock became %q", got)
	}
	if got := FreeName(taken, taken[2]); len(got) > 31 || got == taken[2] {
		t.Errorf("%q became %q", taken[2], got)
	}
	if got := FreeName(taken, "Mill order"); got != "Mill order" {
		t.Errorf("a free name became %q", got)
	}
}
