package storage

import (
	"context"
	"fmt"
	"maps"
	"path/filepath"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"lidmark/storage/journaltest"
)

// TestBookAgainstASlice does to a book what a keeper's years may do to it, in
// any order, and to a plain slice the same.
func TestBookAgainstASlice(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		dir, files := t.TempDir(), 0
		name := func() string { files++; return filepath.Join(dir, fmt.Sprintf("%d.lidmark", files)) }
		must := func(err error) {
			if err != nil {
				r.Fatal(err)
			}
		}
		b, err := Create(name())
		must(err)
		shut := func() {
			for _, p := range b.Verify(context.Background()) {
				r.Error(p)
			}
			must(b.Close())
		}
		defer shut()
		var want journaltest.Memory
		draw := rapid.IntRange(0, len(some)-10)
		steps := map[string]func(*rapid.T){
			"append": func(r *rapid.T) {
				i := draw.Draw(r, "from")
				must(b.Append(some[i : i+10]...))
				must(want.Append(some[i : i+10]...))
			},
			"reopen": func(*rapid.T) {
				shut()
				b, err = Open(b.Path(), Options{})
				must(err)
			},
			"go on with a copy": func(*rapid.T) {
				to := name()
				must(b.Copy(context.Background(), to))
				shut()
				b, err = Open(to, Options{})
				must(err)
			},
			"merge": func(r *rapid.T) {
				i := draw.Draw(r, "from")
				var other journaltest.Memory
				must(other.Append(some[i : i+5]...))
				must(b.Merge(&other))
				must(want.Append(some[i : i+5]...))
			},
		}
		// Fewer steps than Repeat would take: each of them syncs to the disk.
		names := rapid.SampledFrom(slices.Sorted(maps.Keys(steps)))
		for _, step := range rapid.SliceOfN(names, 0, 10).Draw(r, "steps") {
			steps[step](r)
			journaltest.Same(r, b, journaltest.All(r, want.Entries()))
		}
	})
}
