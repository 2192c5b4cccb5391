package practice_test

import (
	"flag"
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"lidmark/domain/practice"
)

var update = flag.Bool("update", false, "write the golden file anew")

// TestTheTableReads prints every number as prose, to be read when it changes:
// one that nobody meant to change shows itself.
func TestTheTableReads(t *testing.T) {
	const file = "testdata/numbers.txt"
	var b strings.Builder
	group := ""
	for r := range practice.All() {
		if g := r.Group.String(); g != group {
			group = g
			fmt.Fprintf(&b, "%s\n\n", group)
		}
		front := ""
		if r.Front {
			front = ", in front"
		}
		fmt.Fprintf(&b, "%s%s. %s: %g %s, from %g to %g. %s: %s. Used: %s.\n\n",
			r.Name, front, r.Title, r.Default, r.Unit, r.Min, r.Max, r.Confidence, r.Source, r.Used)
	}
	if *update {
		if err := os.WriteFile(file, []byte(b.String()), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), b.String()); diff != "" {
		t.Errorf("%s differs (go test -update writes it anew):\n%s", file, diff)
	}
}
