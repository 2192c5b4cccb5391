package house_test

import (
	"fmt"
	"go/ast"
	"go/token"
	"path"
	"slices"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"
)

// explained are the layers in which every exported name says what it is, its
// unit, its range and its source: what a keeper trusts is read there.
var explained = []string{"domain", "storage"}

const (
	cure    = "in a group, one beside each or one over all that begins \"The\" will do"
	because = "what is it, in which unit, from which source?"
)

func TestExportedNamesAreExplained(t *testing.T) {
	for _, dir := range explained {
		introduced := map[string]bool{}
		for _, f := range sources(t, dir) {
			pkg := path.Dir(f.path)
			introduced[pkg] = introduced[pkg] || begins(f.Doc, "Package "+f.Name.Name)
			for _, fault := range unexplained(f) {
				t.Error(fault)
			}
		}
		for pkg, ok := range introduced {
			if !ok {
				t.Errorf("%s: no file says what the package is for: a comment that begins \"Package %s\"", pkg, path.Base(pkg))
			}
		}
	}
}

func TestUnexplainedNamesAreFound(t *testing.T) {
	for _, c := range []struct {
		text string
		want int
	}{
		{"func F() {}", 1},
		{"// Does something.\nfunc F() {}", 1},
		{"// Fold does something.\nfunc F() {}", 1},
		{"// F does something.\nfunc F() {}", 0},
		{"func f() {}", 0},
		{"type T struct{}", 1},
		{"// A T is wrong.\ntype T struct{}", 1},
		{"// T is right.\ntype T struct{ Field int }", 0},
		{"// T is.\ntype T int\nfunc (T) M() {}", 1},
		{"// T is.\ntype T int\n// M does.\nfunc (*T) M() {}", 0},
		{"type t int\nfunc (t) M() {}", 0},
		{"const C = 1", 1},
		{"const C = 1 // trailing, but alone", 1},
		{"// C is.\nconst C = 1", 0},
		{"const (\n\tC = 1 // one\n\tD = 2\n)", 1},
		{"const (\n\t// C is.\n\tC = 1\n\tD = 2 // two\n)", 0},
		{"// The kinds.\nconst (\n\tC = 1\n\tD = 2\n)", 0},
		{"// Some kinds.\nconst (\n\tC = 1\n\tD = 2\n)", 1},
		{"// Values of kind.\nconst (\n\tC kind = iota\n\tD\n)", 0},
		{"var V, W int", 1},
		{"var v int", 0},
	} {
		if faults := unexplained(source(t, "planted.go", "package p\n"+c.text)); len(faults) != c.want {
			t.Errorf("%s\n\tfaults = %q, want %d", c.text, faults, c.want)
		}
	}
}

// unexplained lists the exported names without a doc comment that begins with
// them, each with its place; names of one group are one fault.
func unexplained(f file) []string {
	var faults []string
	fault := func(n ast.Node, names ...string) {
		if len(names) > 0 {
			faults = append(faults, fmt.Sprintf("%s: no comment begins with %s (%s): %s", f.at(n), strings.Join(names, ", "), cure, because))
		}
	}
	for _, d := range f.Decls {
		switch d := d.(type) {
		case *ast.FuncDecl:
			if d.Name.IsExported() && !isMethodOfHidden(d) && !begins(d.Doc, d.Name.Name) {
				fault(d, d.Name.Name)
			}
		case *ast.GenDecl:
			fault(d, unexplainedIn(d)...)
		}
	}
	return faults
}

func unexplainedIn(d *ast.GenDecl) []string {
	var names []string
	kind := ""
	for _, s := range d.Specs {
		switch s := s.(type) {
		case *ast.TypeSpec:
			if s.Name.IsExported() && !begins(s.Doc, s.Name.Name) && (d.Lparen.IsValid() || !begins(d.Doc, s.Name.Name)) {
				names = append(names, s.Name.Name)
			}
		case *ast.ValueSpec:
			if x, ok := s.Type.(*ast.Ident); ok {
				kind = x.Name
			}
			for _, name := range s.Names {
				if name.IsExported() && !isExplained(d, s, name.Name, kind) {
					names = append(names, name.Name)
				}
			}
		}
	}
	return names
}

// isExplained tells whether a constant or variable is: by a comment of its
// own, beside it in a group, or by one over a group that begins with "The" or
// says the type its members are of.
func isExplained(d *ast.GenDecl, s *ast.ValueSpec, name, kind string) bool {
	if begins(s.Doc, name) {
		return true
	}
	if !d.Lparen.IsValid() {
		return begins(d.Doc, name)
	}
	return s.Comment != nil || begins(d.Doc, "The") ||
		d.Tok == token.CONST && kind != "" && slices.Contains(strings.FieldsFunc(d.Doc.Text(), notLetter), kind)
}

// begins tells whether a comment begins with the name, as a whole word.
func begins(doc *ast.CommentGroup, name string) bool {
	rest, ok := strings.CutPrefix(doc.Text(), name)
	next, _ := utf8.DecodeRuneInString(rest)
	return ok && notLetter(next)
}

func notLetter(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '_' }

func isMethodOfHidden(d *ast.FuncDecl) bool {
	if d.Recv == nil {
		return false
	}
	of := d.Recv.List[0].Type
	for {
		switch x := of.(type) {
		case *ast.StarExpr:
			of = x.X
		case *ast.IndexExpr:
			of = x.X
		case *ast.IndexListExpr:
			of = x.X
		case *ast.Ident:
			return !x.IsExported()
		default:
			return false
		}
	}
}
