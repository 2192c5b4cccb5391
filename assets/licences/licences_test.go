// Package licences_test checks that the licence of everything linked into the
// programs stands in this folder, and of nothing else.
package licences_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// Not modules: this program, its typeface, and the language it is written in.
var besides = []string{"Lidmark", "IBM Plex Sans", "Go"}

// systems are those the programs are built for; each links other modules.
var systems = []string{"linux", "darwin", "windows"}

func TestEveryLinkedModuleHasItsLicence(t *testing.T) {
	listed := index(t)
	for _, system := range systems {
		for module, program := range linked(t, system) {
			if _, ok := listed[module]; !ok {
				t.Errorf("%s is linked into %s on %s: put its licence text here and a row into index.txt", module, program, system)
			}
		}
	}
}

func TestIndexIsNotStale(t *testing.T) {
	used := map[string]bool{}
	for _, system := range systems {
		for module := range linked(t, system) {
			used[module] = true
		}
	}
	listed := index(t)
	for what, file := range listed {
		if !used[what] && !slices.Contains(besides, what) {
			t.Errorf("%s: %s is linked into no program: take the text and its row away", file, what)
		}
	}
	for _, what := range besides {
		if listed[what] == "" {
			t.Errorf("index.txt has no row for %s", what)
		}
	}
}

func TestIndexNamesTheFiles(t *testing.T) {
	named := []string{"index.txt"}
	for what, file := range index(t) {
		named = append(named, file)
		if text, err := os.ReadFile(file); err != nil {
			t.Errorf("%s: %v", what, err)
		} else if len(text) < 200 {
			t.Errorf("%s: %d bytes are no licence text", file, len(text))
		}
	}
	files, err := filepath.Glob("*.txt")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range files {
		if !slices.Contains(named, file) {
			t.Errorf("index.txt has no row for %s", file)
		}
	}
}

func TestReadmeEndsWithOurLicence(t *testing.T) {
	licence, err := os.ReadFile("lidmark.txt")
	if err != nil {
		t.Fatal(err)
	}
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	if !strings.HasSuffix(words(readme), words(licence)) {
		t.Error("README.md does not end with the text of assets/licences/lidmark.txt")
	}
}

// words is a text without its line breaks and Markdown's fences.
func words(text []byte) string {
	return strings.Join(strings.Fields(strings.ReplaceAll(string(text), "```", " ")), " ")
}

// index reads index.txt: what a licence is for, and the file it stands in.
func index(t *testing.T) map[string]string {
	t.Helper()
	text, err := os.ReadFile("index.txt")
	if err != nil {
		t.Fatal(err)
	}
	columns := regexp.MustCompile(`  +`)
	rows := map[string]string{}
	for line := range strings.Lines(string(text)) {
		if row := columns.Split(strings.TrimSpace(line), -1); len(row) == 4 {
			rows[row[1]] = row[0]
		}
	}
	if len(rows) == 0 {
		t.Fatal("index.txt has no rows of file, what, licence, what for")
	}
	return rows
}

// linked gives each module that goes into a program on a system, with one
// program it goes into.
func linked(t *testing.T, system string) map[string]string {
	t.Helper()
	modules := map[string]string{}
	for _, program := range []string{"cmd/lidmark", "cmd/lidbook"} {
		list := exec.Command("go", "list", "-deps", "-f", "{{with .Module}}{{if not .Main}}{{.Path}}{{end}}{{end}}", "./"+program)
		list.Dir = "../.."
		list.Env = append(os.Environ(), "GOOS="+system, "CGO_ENABLED=1")
		list.Stderr = os.Stderr
		out, err := list.Output()
		if err != nil {
			t.Fatalf("go list %s for %s: %v", program, system, err)
		}
		for module := range strings.FieldsSeq(string(out)) {
			modules[module] = program
		}
	}
	if len(modules) == 0 {
		t.Fatalf("go list names no module for %s", system)
	}
	return modules
}
