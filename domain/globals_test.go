package house_test

import (
	"go/ast"
	"go/token"
	"path"
	"testing"
)

func TestChangesOfGlobalsAreFound(t *testing.T) {
	for text, want := range map[string]int{
		"var m = map[int]int{}; func f() { m[1] = 2 }":                     1,
		"var n int; func f() { n++ }":                                      1,
		"var s []int; func f() { s = append(s, 1) }":                       1,
		"var s struct{ a []int }; func f() { s.a[0] = 1 }":                 1,
		"var m = map[int]int{}; func f() int { return m[1] }":              0,
		"var n int; func f() { n := 1; n++; _ = n }":                       0,
		"var n int; func f(n int) { n++ }":                                 0,
		"var n = func() int { var n int; n++; return n }()":                0,
		"var s []int; func f() { for s := range 3 { s++; _ = s }; _ = s }": 0,
	} {
		if got := changes([]file{source(t, "planted.go", "package p; "+text)}); len(got) != want {
			t.Errorf("%s\n\tfaults = %q, want %d", text, got, want)
		}
	}
}

// changes lists where functions change a variable of their package: a table is
// written once, where it stands. A name that a function declares anywhere for
// itself is taken to be its own.
func changes(files []file) (faults []string) {
	globals := map[string]bool{} // by folder and name
	for _, f := range files {
		for _, d := range f.Decls {
			if g, ok := d.(*ast.GenDecl); ok && g.Tok == token.VAR {
				for _, spec := range g.Specs {
					for _, name := range spec.(*ast.ValueSpec).Names {
						globals[path.Dir(f.path)+" "+name.Name] = true
					}
				}
			}
		}
	}
	for _, f := range files {
		for _, d := range f.Decls {
			fn, ok := d.(*ast.FuncDecl)
			if !ok || fn.Body == nil {
				continue
			}
			own := declared(fn)
			for _, x := range assigned(fn) {
				if name := base(x); !own[name] && globals[path.Dir(f.path)+" "+name] {
					faults = append(faults, f.at(x)+": "+name+" is changed: the domain has no state of its own")
				}
			}
		}
	}
	return faults
}

// declared are the names that a function declares.
func declared(fn *ast.FuncDecl) map[string]bool {
	own := map[string]bool{}
	note := func(x ast.Expr) {
		if name, ok := x.(*ast.Ident); ok {
			own[name.Name] = true
		}
	}
	ast.Inspect(fn, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.Field:
			for _, name := range n.Names {
				note(name)
			}
		case *ast.ValueSpec:
			for _, name := range n.Names {
				note(name)
			}
		case *ast.AssignStmt:
			if n.Tok == token.DEFINE {
				for _, x := range n.Lhs {
					note(x)
				}
			}
		case *ast.RangeStmt:
			if n.Tok == token.DEFINE {
				note(n.Key)
				note(n.Value)
			}
		}
		return true
	})
	return own
}

// assigned are the expressions that a function assigns to.
func assigned(fn *ast.FuncDecl) (to []ast.Expr) {
	ast.Inspect(fn.Body, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.AssignStmt:
			if n.Tok != token.DEFINE {
				to = append(to, n.Lhs...)
			}
		case *ast.IncDecStmt:
			to = append(to, n.X)
		}
		return true
	})
	return to
}

// base is the name at the root of an expression that is assigned to.
func base(x ast.Expr) string {
	switch x := x.(type) {
	case *ast.Ident:
		return x.Name
	case *ast.IndexExpr:
		return base(x.X)
	case *ast.SelectorExpr:
		return base(x.X)
	case *ast.StarExpr:
		return base(x.X)
	case *ast.ParenExpr:
		return base(x.X)
	default:
		return ""
	}
}
