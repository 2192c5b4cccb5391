// Package house_test holds the rules of the house: what may import what, that
// the domain is pure, that what is exported is explained, and that files are
// small and at home. Each rule says why; none is changed to mend a build.
package house_test

import (
	"encoding/json"
	"errors"
	"io"
	"os"
	"os/exec"
	"slices"
	"strings"
	"testing"
)

const (
	root   = ".." // the module's folder, seen from here
	module = "lidmark/"
	fyne   = "fyne.io/fyne/v2"
)

// A layer is a folder with all below it, and what its packages may import.
type layer struct {
	dir  string
	ours []string // folders of ours, each with all below it
	libs []string // modules or packages of others, each with all below it
	pure bool     // no clock, no chance, no input or output
	why  string   // said when something else is imported
}

// The arrows run cmd -> ui -> domain and cmd -> storage -> domain. A new room
// is a new row, a new arrow a new word in one; a word that no import needs is
// a fault.
var plan = []layer{
	{dir: "domain/calendar", pure: true, why: "it stands on the ground floor, nothing is below it"},
	{dir: "domain/practice", pure: true, why: "it stands on the ground floor, nothing is below it"},
	{dir: "domain/unit", pure: true, why: "it stands on the ground floor, nothing is below it"},
	{dir: "domain/spread", pure: true, why: "it knows processors and nothing of bees"},
	{dir: "domain/allot", pure: true, why: "it knows numbers and nothing of bees"},
	{dir: "domain/tour", pure: true, why: "it knows numbers and nothing of bees"},
	{dir: "domain/bee", ours: rooms("calendar practice"), pure: true, why: "it stands on the ground floor, beside the numbers and the days"},
	{dir: "domain/book", ours: rooms("calendar practice bee spread"), libs: []string{"github.com/google/uuid"}, pure: true, why: "a record is what was seen, never what follows from it"},
	{dir: "domain/weather", ours: rooms("calendar practice book"), pure: true, why: "the hours fit to fly follow from what was said of the weather, not from the nucs"},
	{dir: "domain/yard", ours: rooms("calendar practice tour book weather"), libs: []string{"github.com/paulmach/orb"}, pure: true, why: "how boxes stand is reckoned from the ground and the book, not from what the boxes hold"},
	{dir: "domain/siting", ours: rooms("practice spread book yard"), pure: true, why: "a better layout follows from what a layout costs, not from how it is shown"},
	{dir: "domain/course", ours: rooms("calendar practice bee book weather yard"), pure: true, why: "what a nuc holds follows from the book, not from the rules"},
	{dir: "domain/strength", ours: rooms("calendar practice book weather"), pure: true, why: "bees and food follow from the book and the weather, not from the rules"},
	{dir: "domain/pedigree", ours: rooms("practice book"), pure: true, why: "kinship follows from who the mothers are and whose drones flew"},
	{dir: "domain/plan", ours: rooms("calendar practice spread bee book weather course strength"), pure: true, why: "a plan follows from the course and the numbers; rules tell of its steps"},
	{dir: "domain/handover", ours: rooms("calendar practice bee book course strength plan"), pure: true, why: "who gets which queen, and when to graft those missing, follows from the book, the course, the room she has and the plan, not from how it is shown"},
	{dir: "domain/rules", ours: rooms("calendar practice bee spread book weather yard course strength pedigree plan handover"), pure: true, why: "rules judge the book and the course and know nothing that shows them"},
	{dir: "domain/review", ours: rooms("calendar practice spread book course strength plan rules allot"), pure: true, why: "what an action is worth follows from the course and the rules, not from how it is shown"},
	{dir: "domain/season", ours: rooms("calendar practice book plan handover"), pure: true, why: "batches are fitted to each other by what each of them takes, as the plan of one has it"},
	{dir: "domain/crew", ours: rooms("calendar practice book plan rules handover"), pure: true, why: "what waits on a short day follows from the course, the rules, the plan and who is promised, not from how it is shown"},
	{dir: "domain/line", ours: rooms("calendar unit book rules"), pure: true, why: "a typed line becomes facts of the book"},
	{dir: "domain/roll", ours: rooms("calendar practice spread bee book rules line"), pure: true, why: "a keeper's list becomes facts of the book, wherever it was read"},
	{dir: "domain/series", ours: rooms("calendar book weather roll"), pure: true, why: "a series of weather becomes facts of the book, wherever it was read"},
	{dir: "domain/founding", ours: rooms("calendar book rules line"), pure: true, why: "what a book begins with is typed, and becomes facts of the book"},
	{dir: "domain/demo", ours: rooms("calendar practice bee book rules"), pure: true, why: "the demo season is made of entries like any book"},

	{dir: "storage", ours: rooms("calendar book yard plan roll series"), libs: []string{
		"modernc.org/sqlite", "github.com/google/uuid", "github.com/gofrs/flock", "github.com/natefinch/atomic", "github.com/arran4/golang-ical",
		"github.com/xuri/excelize/v2", "golang.org/x/text", "golang.org/x/image", "github.com/paulmach/orb",
	}, why: "a book on disk does not know how it is judged or shown"},

	{dir: "ui/scene", pure: true, why: "marks in world units suit any painter, and a painter needs no domain"},
	{dir: "ui/state", ours: append(rooms("calendar practice unit spread bee book weather yard siting course strength plan season line roll series founding rules review handover crew"), "ui/scene"), pure: true, why: "the window as values knows cameras and what is hit, but no view, painter or toolkit"},
	{dir: "ui/view", ours: append(rooms("calendar practice bee book yard course strength plan line roll series founding rules review handover"), "ui/scene", "ui/state"), pure: true, why: "a view is State in, Scene out"},
	{dir: "ui/paint", ours: []string{"ui/scene", "assets"}, libs: []string{"golang.org/x/image"}, why: "pixels come from a Scene alone"},
	{dir: "ui/picture", ours: append(rooms("book calendar roll series"), "ui/scene", "ui/state", "ui/view", "ui/paint"), why: "a picture of the window needs no window"},
	{dir: "ui/paper", ours: append(rooms("calendar practice unit bee book yard line rules plan handover crew"), "ui/scene", "ui/state", "ui/paint", "assets"), libs: []string{
		"codeberg.org/go-pdf/fpdf", "github.com/boombuler/barcode", "golang.org/x/image", "golang.org/x/text",
	}, why: "what is printed comes from a Reading, like the panes"},
	{dir: "ui/window", ours: []string{"ui/scene", "ui/state", "ui/view", "ui/paint", "assets"}, libs: []string{fyne}, why: "the window hosts Scenes and sends Msg; books and files are handed to it by cmd"},

	{dir: "cmd/lidmark", ours: []string{"domain", "storage", "ui", "assets"}, libs: []string{fyne}, why: "a program joins the rooms and builds none"},
	{dir: "cmd/lidbook", ours: []string{"domain", "storage", "ui/state", "ui/picture", "ui/paper"}, libs: []string{"github.com/spf13/cobra", "github.com/spf13/pflag"}, why: "the terminal program runs without toolkit and C compiler"},

	{dir: "assets", why: "icons, fonts and licences know no code"},
}

// rooms are rooms of the domain by name.
func rooms(names string) []string {
	var dirs []string
	for name := range strings.FieldsSeq(names) {
		dirs = append(dirs, "domain/"+name)
	}
	return dirs
}

// forTests is what any test may import besides.
var forTests = []string{
	"pgregory.net/rapid", "github.com/google/go-cmp", "github.com/rogpeppe/go-internal", "github.com/emersion/go-ical", "github.com/makiuchi-d/gozxing",
	"gonum.org/v1/gonum",
}

// reserved packages are for one place only, whatever a row says.
var reserved = map[string]struct{ only, why string }{
	fyne + "/app":  {"cmd/lidmark", "it needs cgo and a display, all else is built and tested without"},
	fyne + "/test": {"tests", "it is no part of a program"},
}

func TestArrows(t *testing.T) {
	used := map[string]bool{}
	for _, p := range list(t, "./...") {
		if len(p.GoFiles)+len(p.CgoFiles) == 0 {
			continue // only tests, of the house
		}
		home := home(p.ImportPath)
		if home.dir == "" {
			t.Errorf("%s has no row in the plan of the house", p.ImportPath)
			continue
		}
		used[home.dir] = true
		for _, path := range p.Imports {
			used[home.dir+"→"+lib(home, path)] = true
			used[home.dir+"→"+room(home, path)] = true
			if why := home.refuses(path, isForTests(p.ImportPath)); why != "" {
				t.Errorf("%s imports %s: %s", p.ImportPath, path, why)
			}
		}
		for _, path := range slices.Concat(p.TestImports, p.XTestImports) {
			if why := home.refuses(path, true); why != "" {
				t.Errorf("a test of %s imports %s: %s", p.ImportPath, path, why)
			}
		}
	}
	for _, l := range plan {
		if !used[l.dir] {
			t.Errorf("the plan has a row for %s, which holds no package: take it out", l.dir)
			continue
		}
		for _, lib := range slices.Concat(l.libs, l.ours) {
			if !used[l.dir+"→"+lib] {
				t.Errorf("the plan lets %s import %s, which it does not: take it out", l.dir, lib)
			}
		}
	}
}

func TestOnlyTheWindowNeedsCgo(t *testing.T) {
	var args []string
	for _, p := range list(t, "./...") {
		if p.ImportPath != module+"cmd/lidmark" {
			args = append(args, p.ImportPath)
		}
	}
	for _, p := range list(t, append([]string{"-deps"}, args...)...) {
		if !p.Standard && len(p.CgoFiles) > 0 {
			t.Errorf("%s has C in it (%s): only cmd/lidmark may need a C compiler", p.ImportPath, p.CgoFiles[0])
		}
	}
}

// refuses says why a package of the layer, or a test of it, may not import
// path; it is empty where it may.
func (l layer) refuses(path string, test bool) string {
	dir, isOurs := strings.CutPrefix(path, module)
	if one, ok := reserved[path]; ok && one.only != l.dir && !(test && one.only == "tests") {
		return one.why
	}
	switch {
	case isOurs && isForTests(path) && !test:
		return "it is for tests"
	case isOurs && within(dir, l.dir), isOurs && slices.ContainsFunc(l.ours, func(d string) bool { return within(dir, d) }):
		return ""
	case isOurs && test && (area(dir) == "domain" || area(l.dir) == area(dir)):
		return ""
	case isOurs:
		return l.why
	case isStandard(path):
		if l.pure && !test {
			return impure(path)
		}
		return ""
	case lib(l, path) != "", test && slices.ContainsFunc(forTests, func(d string) bool { return within(path, d) }):
		return ""
	}
	return l.why
}

// home is the row of the plan a package stands in, or the zero layer.
func home(importPath string) layer {
	dir := strings.TrimPrefix(importPath, module)
	for _, l := range plan {
		if within(dir, l.dir) {
			return l
		}
	}
	return layer{}
}

// lib is the permission in the row that covers path, or empty.
func lib(l layer, path string) string {
	for _, lib := range l.libs {
		if within(path, lib) {
			return lib
		}
	}
	return ""
}

// room is the permission in the row that covers a package of ours, or empty.
func room(l layer, path string) string {
	dir, _ := strings.CutPrefix(path, module)
	for _, ours := range l.ours {
		if within(dir, ours) {
			return ours
		}
	}
	return ""
}

func within(path, dir string) bool { return path == dir || strings.HasPrefix(path, dir+"/") }

func area(dir string) string {
	first, _, _ := strings.Cut(dir, "/")
	return first
}

func isStandard(path string) bool { return !strings.Contains(area(path), ".") }

// isForTests tells the packages of verbs that tests share: booktest and the
// like.
func isForTests(importPath string) bool { return strings.HasSuffix(importPath, "test") }

// pkg is what go list says of a package.
type pkg struct {
	ImportPath   string
	Standard     bool
	GoFiles      []string
	CgoFiles     []string
	Imports      []string
	TestImports  []string
	XTestImports []string
}

func list(t *testing.T, args ...string) []pkg {
	t.Helper()
	args = append([]string{"list", "-json=ImportPath,Standard,GoFiles,CgoFiles,Imports,TestImports,XTestImports"}, args...)
	cmd := exec.Command("go", args...)
	cmd.Dir, cmd.Stderr = root, os.Stderr
	cmd.Env = append(os.Environ(), "CGO_ENABLED=1")
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	var packages []pkg
	for dec := json.NewDecoder(out); ; {
		var p pkg
		if err := dec.Decode(&p); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			t.Fatal(err)
		}
		packages = append(packages, p)
	}
	if err := cmd.Wait(); err != nil {
		t.Fatalf("go %s: %v", strings.Join(args, " "), err)
	}
	if len(packages) == 0 {
		t.Fatal("go list names no package")
	}
	return packages
}
