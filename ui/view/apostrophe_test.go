package view_test

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestOneApostrophe: nothing that a keeper reads has another apostrophe than the straight
// one, which most words have and keepers type: not the rooms, not what is said beside the
// pointer, not the commands, forms, parts of layouts and rooms of an empty book as they
// were gathered.
func TestOneApostrophe(t *testing.T) {
	all := desks(t)
	for _, command := range []string{"layout", "batch room", "course room"} {
		all[command] = filled(t, command)
	}
	for _, room := range []state.Room{state.Today, state.Yard, state.Plan, state.Review} {
		s := open(t)
		s.Room = room
		all[fmt.Sprint("room ", room)] = s
	}
	said := map[string]string{}
	for name, s := range all {
		for _, p := range walk(t, window(s), s.Size()) {
			switch m := p.mark.(type) {
			case scene.Text:
				said[name] += m.Text + "\n"
			case scene.Rect:
				said[name] += m.Reason + "\n"
			}
		}
	}
	for _, file := range []string{"../state/testdata/commands.txt", "../state/testdata/forms.txt", "../state/testdata/layouts.txt", "testdata/empty.txt"} {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		said[file] = string(text)
	}
	straight := 0
	for name, text := range said {
		straight += strings.Count(text, "'")
		for line := range strings.SplitSeq(text, "\n") {
			if strings.ContainsAny(line, "’‘") {
				t.Errorf("%s says %q", name, line)
			}
		}
	}
	if straight < 10 {
		t.Errorf("%d apostrophes in all", straight)
	}
}
