package house_test

import (
	"go/ast"
	"slices"
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

// keyNames are the constants of the keys, in their order.
func keyNames(t *testing.T) (names []string) {
	files := sources(t, "domain/practice")
	i := slices.IndexFunc(files, func(f file) bool { return strings.HasSuffix(f.path, "/key.go") })
	if i < 0 {
		t.Fatal("domain/practice has no key.go")
	}
	for _, d := range files[i].Decls {
		if g, ok := d.(*ast.GenDecl); ok {
			for _, s := range g.Specs {
				if v, ok := s.(*ast.ValueSpec); ok && v.Names[0].IsExported() {
					names = append(names, v.Names[0].Name)
				}
			}
		}
	}
	return names
}
