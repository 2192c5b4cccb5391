// Package journaltest has what every [book.Journal] must do, as tests, and
// entries to do it with.
package journaltest

import (
	"fmt"
	"iter"
	"reflect"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"lidmark/domain/book"
)

// Memory is the plainest journal: a slice. The zero Memory is empty.
type Memory struct{ entries []book.Entry }

// Append adds the entries whose ids are not there yet; none when one of them
// says something else than the entry of its id.
func (m *Memory) Append(entries ...book.Entry) error {
	all := m.entries
	for _, e := range entries {
		i := slices.IndexFunc(all, func(f book.Entry) bool { return f.ID == e.ID })
		switch {
		case i < 0:
			all = append(all, e)
		case !reflect.DeepEqual(all[i], e):
			return fmt.Errorf("entry %s says something else", e.ID)
		}
	}
	m.entries = all
	return nil
}

// Entries yields all entries in the order in which they were appended.
func (m *Memory) Entries() iter.Seq2[book.Entry, error] {
	return func(yield func(book.Entry, error) bool) {
		for _, e := range m.entries {
			if !yield(e, nil) {
				return
			}
		}
	}
}

// Run tests the journals that open makes; each must be empty.
func Run(t *testing.T, open func(t *testing.T) book.Journal) {
	t.Helper()
	some := Some(40, 7)
	t.Run("an empty journal has no entries", func(t *testing.T) {
		Same(t, open(t), nil)
	})
	t.Run("what was appended is there", func(t *testing.T) {
		j := open(t)
		mustAppend(t, j, some[:10]...)
		mustAppend(t, j)
		mustAppend(t, j, some[10:]...)
		Same(t, j, some)
	})
	t.Run("appending again changes nothing", func(t *testing.T) {
		j := open(t)
		mustAppend(t, j, some...)
		mustAppend(t, j, some[3:9]...)
		mustAppend(t, j, some[5], some[5])
		Same(t, j, some)
	})
	t.Run("another entry of the same id is an error, and nothing is added", func(t *testing.T) {
		refusesForgery(t, open(t), some)
	})
	t.Run("an entry twice in one append is kept once", func(t *testing.T) {
		j := open(t)
		mustAppend(t, j, some[0], some[1], some[0])
		Same(t, j, some[:2])
	})
	t.Run("reading may stop early and begin again", func(t *testing.T) {
		j := open(t)
		mustAppend(t, j, some...)
		for n := range 5 {
			for _, err := range j.Entries() {
				if err != nil {
					t.Fatal(err)
				}
				if n--; n < 0 {
					break
				}
			}
		}
		Same(t, j, some)
	})
	t.Run("a journal may be written while it is read", func(t *testing.T) {
		j := open(t)
		mustAppend(t, j, some[:20]...)
		for range j.Entries() {
			mustAppend(t, j, some[20:]...)
		}
		Same(t, j, some)
	})
	t.Run("any appends in any order give the set of all", func(t *testing.T) {
		rapid.Check(t, func(r *rapid.T) { anyAppends(r, open(t), some) })
	})
}

// anyAppends appends what it likes to a journal and to a Memory beside it.
func anyAppends(r *rapid.T, j book.Journal, some []book.Entry) {
	var want Memory
	for _, group := range rapid.SliceOfN(rapid.SliceOfN(rapid.IntRange(0, len(some)-1), 0, 6), 0, 8).Draw(r, "appends") {
		for _, one := range []book.Journal{j, &want} {
			mustAppend(r, one, pick(some, group)...)
		}
	}
	Same(r, j, want.entries)
}

func pick(from []book.Entry, which []int) []book.Entry {
	var all []book.Entry
	for _, i := range which {
		all = append(all, from[i])
	}
	return all
}

// failer is a test of testing or of rapid.
type failer interface {
	Helper()
	Fatalf(format string, args ...any)
}

func mustAppend(t failer, j book.Journal, entries ...book.Entry) {
	t.Helper()
	if err := j.Append(entries...); err != nil {
		t.Fatalf("Append: %v", err)
	}
}

// Same fails the test unless the journal holds exactly the entries of want,
// whatever their order.
func Same(t failer, j book.Journal, want []book.Entry) {
	t.Helper()
	got := All(t, j.Entries())
	want = slices.SortedFunc(slices.Values(want), book.Entry.Compare)
	slices.SortFunc(got, book.Entry.Compare)
	if d := cmp.Diff(want, got, cmp.Comparer(func(a, b book.Amount) bool { return a == b })); d != "" {
		t.Fatalf("the journal holds other entries than it should (-want +got):\n%s", d)
	}
}

// All is what a sequence of entries yields; an error in it fails the test.
func All(t failer, entries iter.Seq2[book.Entry, error]) []book.Entry {
	t.Helper()
	var all []book.Entry
	for e, err := range entries {
		if err != nil {
			t.Fatalf("Entries: %v", err)
		}
		all = append(all, e)
	}
	return all
}

// refusesForgery appends an entry whose id is taken by other words.
func refusesForgery(t *testing.T, j book.Journal, some []book.Entry) {
	t.Helper()
	mustAppend(t, j, some[:2]...)
	forged := some[1]
	forged.Fact = book.Noted{Text: "forged"}
	if err := j.Append(some[2], forged); err == nil {
		t.Error("a second entry of the same id was taken in, or dropped without a word")
	}
	Same(t, j, some[:2])
}
