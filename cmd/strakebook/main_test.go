package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"strakebook": main})
}

// TestScript runs the stories of testdata/script.
func TestScript(t *testing.T) {
	books, err := filepath.Abs("../../testdata/books")
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{Dir: "../../testdata/script", UpdateScripts: os.Getenv("UPDATE") != "",
		Setup: func(env *testscript.Env) error { env.Setenv("BOOKS", books); return nil },
		Cmds:  map[string]func(*testscript.TestScript, bool, []string){"decide": decide, "write": write}})
}
