package main

import (
	"os"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"strakebook": main})
}

// TestScript runs the stories of testdata/script.
func TestScript(t *testing.T) {
	testscript.Run(t, testscript.Params{Dir: "../../testdata/script", UpdateScripts: os.Getenv("UPDATE") != "",
		Cmds: map[string]func(*testscript.TestScript, bool, []string){"decide": decide}})
}
