package convert

import (
	"path/filepath"
	"testing"

	"strakebook/convert/sheet"
)

// A book with macros is written under a name that may hold them.
func TestTargetKeepsMacros(t *testing.T) {
	for kind, want := range map[string]string{"xlsx": ".xlsx", "xltx": ".xlsx", "xlsm": ".xlsm", "xltm": ".xlsm", "csv": ".xlsx"} {
		book := &sheet.Book{Path: filepath.Join(t.TempDir(), "yard."+kind), Kind: kind}
		d := &Done{Job: &Job{Books: []*sheet.Book{book}}}
		got, err := d.target(Target{}, book)
		if err != nil || filepath.Ext(got) != want {
			t.Errorf("%s: %q, %v; want a name in %s", kind, got, err, want)
		}
		other := map[string]string{".xlsx": ".xlsm", ".xlsm": ".xlsx"}[want]
		if _, err := d.target(Target{Path: filepath.Join(t.TempDir(), "out"+other)}, book); err == nil {
			t.Errorf("%s: a name in %s was taken", kind, other)
		}
	}
}
