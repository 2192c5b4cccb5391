package house_test

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"maps"
	"math/rand/v2"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/google/uuid"
)

// The standard packages pure layers do not import, each with all below it
// unless a longer row says otherwise, and what they do. An empty reason allows.
var worldly = map[string]string{
	"os":            "it reads and writes the machine",
	"io/ioutil":     "it reads and writes files",
	"path/filepath": "it knows this machine's file names",
	"net":           "it talks to other machines",
	"log":           "it prints where nobody asked",
	"embed":         "it holds files, and tables of the domain are Go",
	"database/sql":  "it reads and writes a database",
	"syscall":       "it talks to the system",
	"unsafe":        "it looks behind the types",
	"flag":          "it reads the command line",
	"testing":       "it is for tests",
	"math/rand":     "it has one source for all: take a *rand.Rand of math/rand/v2",
	"math/rand/v2":  "",
	"crypto/rand":   "its chance has no seed: the same question would have two answers",
}

// The names pure layers do not use, by the package they are of, and why.
var clockAndChance = map[string]struct {
	names []string
	why   string
}{
	"time": {
		strings.Fields("Now Since Until Sleep After AfterFunc Tick NewTimer NewTicker LoadLocation"),
		"the instant is an argument, and so is a zone, which is read from files",
	},
	"math/rand/v2": {
		strings.Fields("Int IntN Int32 Int32N Int64 Int64N Uint Uint32 Uint32N Uint64 Uint64N UintN N Float32 Float64 NormFloat64 ExpFloat64 Perm Shuffle"),
		"chance is an argument: take a *rand.Rand with a seed",
	},
	"github.com/google/uuid": {
		strings.Fields("New NewString NewRandom NewUUID NewV6 NewV7 NewV7FromReader"),
		"it reads the clock and draws by chance: the id is an argument",
	},
	"fmt": {
		strings.Fields("Print Printf Println Scan Scanf Scanln"),
		"it talks to the terminal: return a value",
	},
}

// The compiler sees to it that what the table forbids exists.
var _ = []any{
	time.Now, time.Since, time.Until, time.Sleep, time.After, time.AfterFunc, time.Tick, time.NewTimer, time.NewTicker, time.LoadLocation, time.Local,
	rand.Int, rand.IntN, rand.Int32, rand.Int32N, rand.Int64, rand.Int64N, rand.Uint, rand.Uint32, rand.Uint32N, rand.Uint64, rand.Uint64N, rand.UintN,
	rand.N[int], rand.Float32, rand.Float64, rand.NormFloat64, rand.ExpFloat64, rand.Perm, rand.Shuffle,
	uuid.New, uuid.NewString, uuid.NewRandom, uuid.NewUUID, uuid.NewV6, uuid.NewV7, uuid.NewV7FromReader,
	fmt.Print, fmt.Printf, fmt.Println, fmt.Scan, fmt.Scanf, fmt.Scanln,
}

// impure says why pure layers do not import a standard package, or nothing.
func impure(importPath string) string {
	for dir := importPath; dir != "."; dir = path.Dir(dir) {
		if why, ok := worldly[dir]; ok {
			return why
		}
	}
	return ""
}

func TestPureLayersAskNeitherClockNorChance(t *testing.T) {
	for _, l := range plan {
		if !l.pure {
			continue
		}
		files := slices.DeleteFunc(sources(t, l.dir), func(f file) bool { return isForTests(path.Dir(f.path)) })
		for _, f := range files {
			for _, fault := range impurities(f) {
				t.Error(fault)
			}
		}
		for _, fault := range changes(files) {
			t.Error(fault)
		}
	}
}

func TestWorldlyPackagesExist(t *testing.T) {
	for _, p := range list(t, slices.Sorted(maps.Keys(worldly))...) {
		if !p.Standard {
			t.Errorf("%s is no standard package: the table is stale", p.ImportPath)
		}
	}
}

func TestImpuritiesAreFound(t *testing.T) {
	for _, line := range []string{
		`import "time"; var X = time.Now()`,
		`import clock "time"; func f(t clock.Time) any { return clock.Since(t) }`,
		`import "time"; var X = time.Local`,
		`import "time"; func f(t time.Time) time.Time { return t.Local() }`,
		`import "math/rand/v2"; var X = rand.IntN(6)`,
		`import "math/rand/v2"; var X = rand.Shuffle`,
		`import "github.com/google/uuid"; var X = uuid.Must(uuid.NewV7())`,
		`import "fmt"; func f() { fmt.Println() }`,
		`func f() { println("here") }`,
	} {
		if faults := impurities(source(t, "planted.go", "package p; "+line)); len(faults) != 1 {
			t.Errorf("%s\n\tfaults = %q, want one", line, faults)
		}
	}
	for _, line := range []string{
		`import "time"; var X = time.Unix(0, 0).UTC()`,
		`import "math/rand/v2"; var X = rand.New(rand.NewPCG(1, 2)).IntN(6)`,
		`import "fmt"; var X = fmt.Sprint(1)`,
	} {
		if faults := impurities(source(t, "planted.go", "package p; "+line)); len(faults) != 0 {
			t.Errorf("%s\n\tfaults = %q, want none", line, faults)
		}
	}
}

// file is one parsed source, its path seen from the module's folder.
type file struct {
	path   string
	places *token.FileSet
	*ast.File
}

func (f file) at(n ast.Node) string {
	return fmt.Sprintf("%s:%d", f.path, f.places.Position(n.Pos()).Line)
}

// impurities lists the uses of clock, chance and terminal, each with its place.
func impurities(f file) []string {
	imported := map[string]string{}
	for _, i := range f.Imports {
		from, _ := strconv.Unquote(i.Path.Value)
		name := path.Base(strings.TrimSuffix(from, "/v2"))
		if i.Name != nil {
			name = i.Name.Name
		}
		imported[name] = from
	}
	var faults []string
	fault := func(n ast.Node, what, why string) {
		faults = append(faults, f.at(n)+": "+what+": "+why)
	}
	ast.Inspect(f.File, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.SelectorExpr:
			x, _ := n.X.(*ast.Ident)
			if n.Sel.Name == "Local" && (x == nil || imported[x.Name] == "" || imported[x.Name] == "time") {
				fault(n, "time.Local", "a day belongs to the yard's time zone, not to this machine's")
			} else if x != nil {
				if row := clockAndChance[imported[x.Name]]; slices.Contains(row.names, n.Sel.Name) {
					fault(n, imported[x.Name]+"."+n.Sel.Name, row.why)
				}
			}
		case *ast.CallExpr:
			if x, ok := n.Fun.(*ast.Ident); ok && (x.Name == "print" || x.Name == "println") {
				fault(n, x.Name, clockAndChance["fmt"].why)
			}
		}
		return true
	})
	return faults
}

// sources parses every source below a folder of the module, tests left out.
func sources(t *testing.T, dir string) []file {
	t.Helper()
	var files []file
	err := filepath.WalkDir(filepath.Join(root, dir), func(name string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && d.Name() == "testdata" {
			return fs.SkipDir
		}
		if strings.HasSuffix(name, ".go") && !strings.HasSuffix(name, "_test.go") {
			files = append(files, source(t, name, nil))
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(files) == 0 {
		t.Fatalf("no Go files below %s", dir)
	}
	return files
}

// source parses the text given, or the file of that name.
func source(t *testing.T, name string, text any) file {
	t.Helper()
	places := token.NewFileSet()
	parsed, err := parser.ParseFile(places, name, text, parser.ParseComments|parser.SkipObjectResolution)
	if err != nil {
		t.Fatal(err)
	}
	seen, err := filepath.Rel(root, name)
	if err != nil {
		seen = name
	}
	return file{filepath.ToSlash(seen), places, parsed}
}
