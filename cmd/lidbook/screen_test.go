package main

import (
	"errors"
	"io"
	"strings"
	"testing"
)

func TestShown(t *testing.T) {
	for text, want := range map[string]string{
		"Far Hill\tA1\n": "Far Hill\tA1\n", "Åre ± −": "Åre ± −", "a\x1b[31mb": `a\u001b[31mb`, "a\rb": `a\u000db`, "a\u009bb": `a\u009bb`,
		"a\u202eb\u2066": `a\u202eb\u2066`, "a\xffb": `a\xffb`, "a\ufffdb": `a\ufffdb`,
	} {
		if got := shown(text); got != want {
			t.Errorf("shown(%q) = %q, want %q", text, got, want)
		}
	}
}

// full is a disk without room after some bytes.
type full struct{ room int }

var errFull = errors.New("no space left")

func (f *full) Write(b []byte) (int, error) {
	if f.room -= len(b); f.room < 0 {
		return 0, errFull
	}
	return len(b), nil
}

// What could not be printed is no success, whatever was asked.
func TestFullOutput(t *testing.T) {
	for _, args := range [][]string{{"today", "--demo"}, {"nucs", "--demo"}, {"letters"}, {"numbers", "--demo"}, {"--help"}, {"today", "--demo", "--json"}, {"help", "count"}} {
		a := &app{now: morning, in: strings.NewReader(""), out: &full{room: 100}, errs: io.Discard, env: func(string) string { return "" }}
		if err := a.execute(args); !errors.Is(err, errFull) || exitCode(err) != exitWrong {
			t.Errorf("lidbook %s to a full disk: %v, exit code %d", strings.Join(args, " "), err, exitCode(err))
		}
	}
}

// A command in somebody's note does not reach the terminal.
func TestNotesDoNotCommandTheTerminal(t *testing.T) {
	out, errs, _ := call(t, "", false, "nuc", "\x1b[31m", "--demo")
	if all := out + errs; strings.Contains(all, "\x1b") || !strings.Contains(all, `\u001b`) && !strings.Contains(all, `\x1b`) {
		t.Errorf("%q", all)
	}
}
