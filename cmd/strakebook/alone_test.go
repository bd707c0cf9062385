package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strings"
	"testing"
)

// TestOneThingAtATime holds all but the command line to doing one thing at a time: it
// alone works books side by side, and so the race detector need look only there.
func TestOneThingAtATime(t *testing.T) {
	started := map[string]int{}
	err := filepath.WalkDir("../..", func(path string, _ fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		ast.Inspect(file, func(n ast.Node) bool {
			if call, ok := n.(*ast.CallExpr); ok {
				if s, ok := call.Fun.(*ast.SelectorExpr); ok && s.Sel.Name == "Go" {
					started[filepath.Base(path)]++
				}
			}
			if _, ok := n.(*ast.GoStmt); ok {
				started[filepath.Base(path)]++
			}
			return true
		})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(started) != 1 || started["each.go"] == 0 {
		t.Errorf("goroutines are started in %v, want each.go alone", started)
	}
}
