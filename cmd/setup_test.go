// Package cmd_test tries the set-up script on machines made of stubs.
package cmd_test

import (
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
)

// A machine is the programs on its PATH, by name, each a line of shell.
type machine map[string]string

var (
	goThere = machine{"go": `[ "$2" = GOVERSION ] && echo go1.30.1 || echo gcc`, "id": "echo 0", "uname": "echo Linux"}
	hasAll  = machine{"gcc": "cat >/dev/null", "pkg-config": ":", "git": ":"}
	lacksX  = machine{"gcc": `case "$(cat)" in *xkbcommon*) exit 1 ;; esac`, "pkg-config": ":", "git": ":"}
	refuses = machine{"id": "echo 1000", "apt-get": "echo apt-get $*", "sudo": "echo sudo $*; exit 1"}
	isMac   = machine{"uname": "echo Darwin"}
)

func TestSetup(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("the stubs are shell scripts found by their bare names")
	}
	for _, c := range []struct {
		name  string
		arg   string
		parts []machine
		says  string // all of it, or a part after "…"
		fails bool
	}{
		{"nothing missing", "test", []machine{goThere, hasAll}, "", false},
		{"no Go", "terminal", nil, "…Go is missing: install Go 1.", true},
		{"old Go", "terminal", []machine{{"go": "echo go1.25.9"}}, "…Go 1.25.9 is too old: install Go 1.", true},
		{"next major release candidate", "terminal", []machine{goThere, {"go": "echo go2rc1"}}, "", false},
		{"no compiler, none wanted", "terminal", []machine{goThere}, "", false},
		{"no compiler, no package manager", "run", []machine{goThere}, "…missing on this machine: gcc pkg-config stdlib.h GL/gl.h", true},
		{"no git, only the checks want it", "run", []machine{goThere, hasAll, {"git": ""}}, "", false},
		{"apt", "run", []machine{goThere, lacksX, {"apt-get": "echo apt-get $*"}}, "…apt-get install -q -y --no-install-recommends libxkbcommon-dev\n", true},
		{"dnf", "run", []machine{goThere, lacksX, {"dnf": "echo dnf $*"}}, "…dnf install -y libxkbcommon-devel\n", true},
		{"pacman", "run", []machine{goThere, lacksX, {"pacman": "echo pacman $*"}}, "…pacman -S --needed --noconfirm libxkbcommon\n", true},
		{"Homebrew", "run", []machine{goThere, lacksX, {"brew": "echo brew $*"}}, "…brew install libxkbcommon\n", true},
		{"installed, and then there", "run", []machine{goThere, lacksX, {"brew": `ln -sf "$(command -v true)" "${0%/*}/gcc"`}}, "cmd/setup: installing libxkbcommon (with brew)\n", false},
		{"installed, and still not there", "run", []machine{goThere, lacksX, {"brew": ":"}}, "…missing on this machine: xkbcommon/xkbcommon.h.", true},
		{"sudo refuses", "run", []machine{goThere, lacksX, refuses}, "…could not install: libxkbcommon-dev.", true},
		{"no right and no sudo", "run", []machine{goThere, lacksX, refuses, {"sudo": ""}}, "…not root, and there is no sudo\ncmd/setup: could not install: libxkbcommon-dev.", true},
		{"Mac without tools", "run", []machine{goThere, isMac, {"xcode-select": "exit 2"}}, "…Xcode command line tools. Run: xcode-select --install\n", true},
		{"Mac with tools", "run", []machine{goThere, isMac, {"xcode-select": ":"}}, "", false},
		{"misspelt", "tset", []machine{goThere}, "cmd/setup: cannot set up 'tset': say terminal, run or test\n", true},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := setUp(t, c.arg, c.parts...)
			if failed := err != nil; failed != c.fails {
				t.Errorf("setup %s: failed = %t, want %t", c.arg, failed, c.fails)
			}
			part, some := strings.CutPrefix(c.says, "…")
			if some && !strings.Contains(got, part) || !some && got != c.says {
				t.Errorf("setup %s said\n%swant\n%s", c.arg, got, c.says)
			}
		})
	}
}

// setUp runs the script on a machine that has the parts, later ones over
// earlier ones, and gives what it said.
func setUp(t *testing.T, arg string, parts ...machine) (string, error) {
	t.Helper()
	path := t.TempDir()
	for tool := range strings.FieldsSeq("sh awk sort head cat paste dirname env ln true") {
		found, err := exec.LookPath(tool)
		if err != nil {
			t.Fatal(err)
		}
		if err := os.Symlink(found, filepath.Join(path, tool)); err != nil {
			t.Fatal(err)
		}
	}
	all := machine{}
	for _, m := range parts {
		maps.Copy(all, m)
	}
	for name, line := range all {
		if line == "" {
			continue // taken away
		}
		if err := os.WriteFile(filepath.Join(path, name), []byte("#!/bin/sh\n"+line+"\n"), 0o755); err != nil {
			t.Fatal(err)
		}
	}
	setup := exec.Command(filepath.Join(path, "sh"), "setup", arg)
	setup.Env = []string{"PATH=" + path}
	said, err := setup.CombinedOutput()
	return string(said), err
}
