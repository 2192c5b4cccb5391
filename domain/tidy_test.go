package house_test

import (
	"bytes"
	"go/ast"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// What stands at the top, besides names that begin with a dot.
var top = strings.Fields("cmd ui domain storage assets testdata go.mod go.sum README.md DEVELOPERS.md FyneApp.toml")

// The sizes outside tests, in lines; beyond them is more than one idea.
const (
	longestFile     = 400
	longestFunction = 60
)

// What no file holds, and why. (?:) keeps a row from finding itself.
var strange = []struct {
	what *regexp.Regexp
	why  string
}{
	{regexp.MustCompile(`(?:^|[^\w.$}-])/[A-Za-z]+/\b`), "the path is of one machine"},
	{regexp.MustCompile(`\b[A-Z][A-Z-]+(?:)\.md\b`), "the page is not in this repository: cite the literature, or README.md or DEVELOPERS.md"},
	{regexp.MustCompile(`\b(?:TO(?:)DO|FIX(?:)ME|XX(?:)X|not (?:)implemented|no(?:)lint)\b`), "it reads as unfinished: finish it, or leave it out"},
}

// What a line may name all the same: the pages, folders every machine has, and those
// of books and lists in examples.
var (
	pages   = []string{"README.md", "DEVELOPERS.md"}
	folders = strings.Fields("/bin/ /usr/ /dev/ /etc/ /books/ /lists/ /sheets/ /media/ /out/ /else/ /x/ /testdata/ /spread/ /sd/")
)

func TestTopLevelHoldsOnlyWhatBelongs(t *testing.T) {
	var have []string
	for _, name := range tracked(t) {
		first := area(name)
		if !strings.HasPrefix(first, ".") && !slices.Contains(have, first) {
			have = append(have, first)
		}
	}
	for _, name := range have {
		if !slices.Contains(top, name) {
			t.Errorf("%s stands at the top level: it belongs in one of %v", name, top)
		}
	}
	for _, name := range top {
		if !slices.Contains(have, name) {
			t.Errorf("%s is missing at the top level", name)
		}
	}
}

func TestNothingStrangeIsKept(t *testing.T) {
	for _, name := range tracked(t) {
		if within(name, "assets/licences") {
			continue // the words of others
		}
		if strings.Contains(name, "testdata/rapid/") {
			t.Errorf("%s: what is kept of one failed run: make a test of it", name)
		}
		text, err := os.ReadFile(filepath.Join(root, name))
		if err != nil || bytes.IndexByte(text, 0) >= 0 {
			continue // taken away and not yet committed, or no text
		}
		n := 0
		for line := range strings.Lines(string(text)) {
			n++
			for _, fault := range oddities(line) {
				t.Errorf("%s:%d: %s", name, n, fault)
			}
		}
	}
}

func TestOdditiesAreFound(t *testing.T) {
	for _, line := range []string{
		"see /" + "mnt/disk/list", "see /" + "work/list", "x := \"/" + "tmp/book\"", "file:///" + "home/ida/book", "NOTES" + ".md says", "// TO" + "DO: later", "//no" + "lint:all",
	} {
		if len(oddities(line)) == 0 {
			t.Errorf("oddities(%q) = none, want one", line)
		}
	}
	for _, line := range []string{
		"https://example.org/home/list", "https://example.org/work/list", "$WORK/tmp/x", "${TMPDIR:-/tmp}/lidmark", "README.md", "domain/rules", "a/home/b",
	} {
		if faults := oddities(line); len(faults) > 0 {
			t.Errorf("oddities(%q) = %q, want none", line, faults)
		}
	}
}

func TestFilesAndFunctionsAreShort(t *testing.T) {
	for _, dir := range []string{"domain", "storage", "ui", "cmd", "assets"} {
		for _, f := range sources(t, dir) {
			lines := func(n ast.Node) int {
				return f.places.Position(n.End()).Line - f.places.Position(n.Pos()).Line + 1
			}
			if n := f.places.Position(f.FileEnd).Line; n > longestFile {
				t.Errorf("%s has %d lines, more than %d: is it one idea?", f.path, n, longestFile)
			}
			for _, d := range f.Decls {
				if fn, ok := d.(*ast.FuncDecl); ok && lines(fn) > longestFunction {
					t.Errorf("%s: %s has %d lines, more than %d: which parts have a name?", f.at(fn), fn.Name.Name, lines(fn), longestFunction)
				}
			}
		}
	}
}

// oddities lists what a line holds that does not belong in the repository.
func oddities(line string) []string {
	var faults []string
	for _, s := range strange {
		for _, found := range s.what.FindAllString(line, -1) {
			if !slices.Contains(pages, found) && !slices.Contains(folders, found[max(0, strings.LastIndex(strings.TrimSuffix(found, "/"), "/")):]) {
				faults = append(faults, strings.TrimSpace(found)+": "+s.why)
			}
		}
	}
	return faults
}

// tracked lists the files the repository holds, seen from the module's folder.
func tracked(t *testing.T) []string {
	t.Helper()
	// A build machine may run as another user than the one who cloned.
	git := exec.Command("git", "-c", "safe.directory=*", "ls-files", "-z")
	git.Dir, git.Stderr = root, os.Stderr
	out, err := git.Output()
	if err != nil {
		t.Fatalf("git ls-files: %v", err)
	}
	names := strings.FieldsFunc(string(out), func(r rune) bool { return r == 0 })
	if len(names) == 0 {
		t.Fatal("git knows no file here")
	}
	return names
}
