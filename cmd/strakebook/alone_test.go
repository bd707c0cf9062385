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

// program is the files of the program by their folders, without the tests.
func program(t *testing.T) map[string][]*ast.File {
	t.Helper()
	all := map[string][]*ast.File{}
	err := filepath.WalkDir("../..", func(path string, _ fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
		all[filepath.Dir(path)] = append(all[filepath.Dir(path)], file)
		return err
	})
	if err != nil || len(all) < 15 {
		t.Fatal(len(all), err)
	}
	return all
}

// TestOneThingAtATime holds all but the command line to doing one thing at a time: it
// alone works books side by side, and so the race detector need look only there.
func TestOneThingAtATime(t *testing.T) {
	for folder, files := range program(t) {
		for _, file := range files {
			ast.Inspect(file, func(n ast.Node) bool {
				call, ok := n.(*ast.CallExpr)
				started := false
				if ok {
					s, is := call.Fun.(*ast.SelectorExpr)
					started = is && s.Sel.Name == "Go"
				}
				if _, ok := n.(*ast.GoStmt); (ok || started) && folder != "../../cmd/strakebook" {
					t.Errorf("%s starts a goroutine", folder)
				}
				return true
			})
		}
	}
}

// TestNothingIsShared holds books worked side by side to sharing nothing that changes:
// no function writes to a variable of a package, or hands its address on. It is surer
// than the race detector, which sees only what happens to meet.
func TestNothingIsShared(t *testing.T) {
	for folder, files := range program(t) {
		vars := map[string]bool{}
		for _, file := range files {
			for _, d := range file.Decls {
				if g, ok := d.(*ast.GenDecl); ok && g.Tok == token.VAR {
					for _, s := range g.Specs {
						for _, name := range s.(*ast.ValueSpec).Names {
							vars[name.Name] = true
						}
					}
				}
			}
		}
		for _, file := range files {
			for _, d := range file.Decls {
				if f, ok := d.(*ast.FuncDecl); ok {
					ast.Inspect(f, func(n ast.Node) bool {
						for _, e := range written(n) {
							if name := root(e); name != nil && vars[name.Name] && ofPackage(name, file) {
								t.Errorf("%s: %s writes to the package's %s", folder, f.Name.Name, name.Name)
							}
						}
						return true
					})
				}
			}
		}
	}
}

// written is what a statement or an expression may write to.
func written(n ast.Node) []ast.Expr {
	switch n := n.(type) {
	case *ast.AssignStmt:
		return n.Lhs
	case *ast.IncDecStmt:
		return []ast.Expr{n.X}
	case *ast.RangeStmt:
		return []ast.Expr{n.Key, n.Value}
	case *ast.UnaryExpr:
		if n.Op == token.AND {
			return []ast.Expr{n.X}
		}
	case *ast.CallExpr:
		if f, ok := n.Fun.(*ast.Ident); ok && (f.Name == "delete" || f.Name == "clear") {
			return n.Args[:1]
		}
	}
	return nil
}

// root is the name that an expression begins with: of a.b[c] it is a.
func root(e ast.Expr) *ast.Ident {
	for {
		switch x := e.(type) {
		case *ast.Ident:
			return x
		case *ast.SelectorExpr:
			e = x.X
		case *ast.IndexExpr:
			e = x.X
		case *ast.StarExpr:
			e = x.X
		case *ast.ParenExpr:
			e = x.X
		case *ast.SliceExpr:
			e = x.X
		default:
			return nil
		}
	}
}

// ofPackage says that a name is not one of a function's own.
func ofPackage(name *ast.Ident, file *ast.File) bool {
	return name.Obj == nil || name.Obj == file.Scope.Lookup(name.Name)
}
