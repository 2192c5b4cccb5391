package cmd_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
)

// builder is a Go whose programs say their name and what they were given.
const builder = `#!/bin/sh
[ "$1" = build ] || { echo go1.99.0; exit; }
printf '#!/bin/sh\necho %s "$@"\n' "${5##*/}" >"$5"
chmod +x "$5"
`

// ran runs the script in a folder of its own, with a builder for Go, and gives
// what it said with the folder written as HERE.
func ran(t *testing.T, script string, env []string, args ...string) (string, error) {
	t.Helper()
	here := t.TempDir()
	if err := os.WriteFile(filepath.Join(here, "go"), []byte(builder), 0o755); err != nil {
		t.Fatal(err)
	}
	uname := "#!/bin/sh\necho Linux\n"
	if err := os.WriteFile(filepath.Join(here, "uname"), []byte(uname), 0o755); err != nil {
		t.Fatal(err)
	}
	run := exec.Command("sh", append([]string{script}, args...)...)
	run.Env = []string{"PATH=" + here + string(os.PathListSeparator) + os.Getenv("PATH")}
	for _, e := range env {
		run.Env = append(run.Env, strings.ReplaceAll(e, "HERE", here))
	}
	said, err := run.CombinedOutput()
	return strings.ReplaceAll(string(said), here, "HERE"), err
}

func TestRunWithoutADisplay(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("the stubs are shell scripts found by their bare names")
	}
	home := []string{"HOME=HERE"}
	for _, c := range []struct {
		name string
		env  []string
		args string
		says string // a part
		code bool   // fails
	}{
		{"the demo", home, "", "\nlidbook today --demo\nlidbook picture HERE/.cache/lidmark/today.png --room today --demo\n", false},
		{"a book", home, "my.lidmark", "\nlidbook today --book my.lidmark\n", false},
		{"a book and a day", home, "my.lidmark -on +3", "\nlidbook today --book my.lidmark --on +3\n", false},
		{"a day before the demo", home, "--on 2027-05-15 --demo", "\nlidbook today --demo --on 2027-05-15\n", false},
		{"dark is for pictures", home, "-dark -demo", "\nlidbook today --demo\nlidbook picture HERE/.cache/lidmark/today.png --room today --dark --demo\n", false},
		{"text size", home, "--text 150 --size=800x600", " --room yard --text=150 --size=800x600 --demo\n", false},
		{"help is one page", home, "--help", "opens its window on the demo season", false},
		{"a flag of the window alone", home, "-picture x.png", "cmd/run: no --picture without a display: say BOOK, --demo", true},
		{"no day", home, "-on", "cmd/run: --on wants something behind it", true},
		{"no home", nil, "", "cmd/run: HOME is not set", true},
		{"a cache", []string{"XDG_CACHE_HOME=HERE/c"}, "", "painted HERE/c/lidmark/table.png\n", false},
		{"a relative cache counts as none", []string{"HOME=HERE", "XDG_CACHE_HOME=c"}, "", "painted HERE/.cache/lidmark/table.png\n", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			said, err := ran(t, "run", c.env, strings.Fields(c.args)...)
			if (err != nil) != c.code || !strings.Contains(said, c.says) {
				t.Errorf("run %s: %v, said\n%swant\n%s", c.args, err, said, c.says)
			}
			if c.args == "--help" && strings.Contains(said, "lidbook") {
				t.Errorf("help built and ran a program:\n%s", said)
			}
		})
	}
}

func TestRunThroughALink(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("links need rights there")
	}
	script, err := filepath.Abs("run")
	if err != nil {
		t.Fatal(err)
	}
	link := filepath.Join(t.TempDir(), "lid mark")
	if err := os.Symlink(script, link); err != nil {
		t.Fatal(err)
	}
	if said, err := ran(t, link, []string{"HOME=HERE"}); err != nil || !strings.Contains(said, "lidbook today --demo") {
		t.Errorf("%v, said\n%s", err, said)
	}
}
