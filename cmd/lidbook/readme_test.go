package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/spf13/cobra"
)

// typed parts a line as a shell does: blanks part words, quotes keep them, and
// a # begins a remark.
func typed(line string) (words []string) {
	word, open, quote := "", false, rune(0)
	for _, r := range line + " " {
		switch {
		case quote != 0 && r == quote:
			quote = 0
		case quote == 0 && (r == '"' || r == '\''):
			quote, open = r, true
		case quote == 0 && r == '#' && !open:
			return words
		case quote == 0 && r == ' ':
			if open {
				words = append(words, word)
			}
			word, open = "", false
		default:
			word, open = word+string(r), true
		}
	}
	return words
}

// commandsIn are the commands that a text shows behind a prefix, one a line. A
// gap of three blanks parts a command from what is said of it.
func commandsIn(text, prefix string) (all []string) {
	for line := range strings.SplitSeq(strings.ReplaceAll(text, "\\\n", " "), "\n") {
		if command, ok := strings.CutPrefix(line, prefix); ok {
			all = append(all, command)
		}
	}
	return all
}

// typeIn runs a command line at an instant, with somebody there who answers all
// questions with Enter.
func typeIn(t *testing.T, now time.Time, command string) {
	t.Helper()
	var out, errs bytes.Buffer
	a := &app{
		now: now, in: strings.NewReader(strings.Repeat("\n", 20)), out: &out, errs: &errs,
		env: func(string) string { return "" }, asks: true,
	}
	if err := a.execute(typed(command)); err != nil {
		t.Errorf("on %s lidbook %s: %v\n%s%s", now.Format(time.RFC3339), command, err, out.String(), errs.String())
	}
	if strings.Contains(errs.String(), "column") {
		t.Errorf("on %s lidbook %s: %s", now.Format(time.RFC3339), command, errs.String())
	}
}

// The commands of the first page, and of the help, work one after the other on
// whatever day they are tried.
func TestFirstPage(t *testing.T) {
	page, err := os.ReadFile(filepath.Join("..", "..", "README.md"))
	if err != nil {
		t.Fatal(err)
	}
	for name, commands := range map[string][]string{
		"README": commandsIn(string(page), "    ./lidbook "),
		"help":   commandsIn(rootHelp, "  lidbook "),
	} {
		if len(commands) < 5 {
			t.Fatalf("%s: %d commands, want a whole page of them", name, len(commands))
		}
		for _, at := range []string{"2027-05-15T08:00:00+02:00", "2027-05-15T22:30:00+02:00", "2027-01-01T00:30:00+01:00", "2028-02-29T12:00:00+01:00", "2026-11-25T15:00:00+01:00"} {
			now, err := time.Parse(time.RFC3339, at)
			if err != nil {
				t.Fatal(err)
			}
			t.Run(name+" "+at[:10], func(t *testing.T) {
				t.Chdir(t.TempDir())
				for i, command := range commands {
					command, _, _ = strings.Cut(command, "   ")
					typeIn(t, now.Add(time.Duration(i)*time.Minute), command)
				}
			})
		}
	}
}

// Every example in the help has the flags and arguments that its command takes.
func TestExamplesAreUnderstood(t *testing.T) {
	seen := 0
	var walk func(*cobra.Command)
	walk = func(c *cobra.Command) {
		for _, example := range commandsIn(c.Example, "  lidbook ") {
			seen++
			example, _, _ = strings.Cut(example, "   ")
			example, _, _ = strings.Cut(example, " < ")
			example, _, _ = strings.Cut(example, " > ")
			root := (&app{now: time.Now(), env: os.Getenv}).root()
			found, args, err := root.Find(noFlags(typed(example)))
			if err == nil {
				err = found.ParseFlags(args)
			}
			if err == nil {
				err = found.ValidateArgs(found.Flags().Args())
			}
			if err != nil || !found.Runnable() {
				t.Errorf("example of %s: lidbook %s: %v", c.CommandPath(), example, err)
			}
		}
		for _, sub := range c.Commands() {
			walk(sub)
		}
	}
	walk((&app{now: time.Now(), env: os.Getenv}).root())
	if seen < 60 {
		t.Errorf("%d examples, want those of all commands", seen)
	}
}
