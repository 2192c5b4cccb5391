package state_test

import (
	"strings"
	"testing"
)

// TestAnEntranceIsSaidOnceInTheWalk: rows below one that says how wide say no more than
// the word; one that is shut, or of another width, is said in full.
func TestAnEntranceIsSaidOnceInTheWalk(t *testing.T) {
	w := start(t).run("type it in")
	said, brief, full := "", 0, 0
	for _, row := range w.Walk.Rows {
		for part := range strings.SplitSeq(row.Planned, ", ") {
			switch {
			case part == "shut the entrance":
				said = ""
			case strings.HasPrefix(part, "entrance to "):
				has := strings.Contains(row.Brief, part)
				if want := part != said; has != want {
					t.Errorf("%s says %q, above it stood %q", row.Title, row.Brief, said)
				}
				if has {
					full++
				} else {
					brief++
				}
				said = part
			case !strings.Contains(row.Brief, part):
				t.Errorf("%s says %q, of %q", row.Title, row.Brief, row.Planned)
			}
		}
	}
	if brief < 10 || full == 0 || full > 5 {
		t.Errorf("said in full %d times, briefly %d times", full, brief)
	}
}
