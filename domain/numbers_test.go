package house_test

import (
	"go/ast"
	"go/token"
	"path"
	"strings"
	"testing"

	"lidmark/domain/practice"
)

// TestNumbersAreUsedAsTold: what a number is said to be used for, something
// reckons with it, and what is said to be for reference, nothing does.
func TestNumbersAreUsedAsTold(t *testing.T) {
	used := map[string]bool{}
	for _, dir := range []string{"domain", "ui", "cmd"} {
		for _, f := range sources(t, dir) {
			if !strings.HasPrefix(f.path, "domain/practice/") {
				ast.Inspect(f.File, func(n ast.Node) bool {
					if s, ok := n.(*ast.SelectorExpr); ok {
						if x, ok := s.X.(*ast.Ident); ok && x.Name == "practice" {
							used[s.Sel.Name] = true
						}
					}
					return true
				})
			}
		}
	}
	keys := keyNames(t)
	for r := range practice.All() {
		name := keys[r.Key-1]
		if told := r.Used != practice.ForReference; told != used[name] {
			t.Errorf("practice.%s (%s) is told as used: %v, and used: %v", name, r.Name, told, used[name])
		}
	}
}

// keyNames are the constants of the keys, in their order: those of key.go before
// those of the files that carry on from it.
func keyNames(t *testing.T) (names []string) {
	for _, f := range sources(t, "domain/practice") {
		if strings.HasPrefix(path.Base(f.path), "key") {
			names = append(names, constantsOf(f)...)
		}
	}
	if len(names) == 0 {
		t.Fatal("domain/practice has no key.go")
	}
	return names
}

func constantsOf(f file) (names []string) {
	for _, d := range f.Decls {
		if g, ok := d.(*ast.GenDecl); ok && g.Tok == token.CONST {
			for _, s := range g.Specs {
				if v, ok := s.(*ast.ValueSpec); ok && v.Names[0].IsExported() {
					names = append(names, v.Names[0].Name)
				}
			}
		}
	}
	return names
}
