package book_test

import (
	"slices"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/google/uuid"
	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// drawIDs are ids made in deeds of some size, each deed's apart.
func drawIDs(t *rapid.T, g *book.IDs) (deeds [][]book.EntryID) {
	for _, size := range rapid.SliceOfN(rapid.OneOf(rapid.IntRange(0, 20), rapid.IntRange(4090, 4100)), 1, 5).Draw(t, "deeds") {
		g.Deed()
		var ids []book.EntryID
		for range size {
			ids = append(ids, g.Next())
		}
		deeds = append(deeds, ids)
	}
	return deeds
}

var (
	drawInstant = rapid.Custom(func(t *rapid.T) time.Time {
		return time.UnixMilli(rapid.Int64Range(0, time.Date(2100, time.January, 1, 0, 0, 0, 0, time.UTC).UnixMilli()).Draw(t, "ms"))
	})
	drawSeed = rapid.Custom(func(t *rapid.T) [32]byte {
		return [32]byte(rapid.SliceOfN(rapid.Byte(), 32, 32).Draw(t, "seed"))
	})
)

// TestIDsRise: ids are distinct and rise, are of version 7 and the variant of
// RFC 9562 (section 4.1 and 4.2), and no two deeds share a millisecond.
func TestIDsRise(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		now := drawInstant.Draw(t, "now")
		g := book.NewIDs(now, nil, drawSeed.Draw(t, "seed"))
		var before book.EntryID
		for _, ids := range drawIDs(t, &g) {
			for i, id := range ids {
				u := uuid.UUID(id)
				switch {
				case u.Version() != 7 || u.Variant() != uuid.RFC4122:
					t.Fatalf("%s has version %d, variant %s", id, u.Version(), u.Variant())
				case slices.Compare(before[:], id[:]) >= 0:
					t.Fatalf("%s comes after %s and is not above it", id, before)
				case i == 0 && slices.Equal(before[:6], id[:6]):
					t.Fatalf("%s begins a deed in the millisecond of %s", id, before)
				case i < 4096 && !slices.Equal(ids[0][:6], id[:6]):
					t.Fatalf("id %d of a deed, %s, has left its millisecond", i, id)
				}
				before = id
			}
		}
	})
}

// TestIDsTellTheTime: the first id of a new book has the instant it was made.
func TestIDsTellTheTime(t *testing.T) {
	now := time.Date(2027, time.May, 11, 7, 0, 0, 123e6, time.UTC)
	g := book.NewIDs(now, nil, [32]byte{})
	id := uuid.UUID(g.Next())
	if got := time.Unix(id.Time().UnixTime()); !got.Equal(now) {
		t.Errorf("the id has %s, want %s", got.UTC(), now)
	}
	old := book.NewIDs(time.Date(1960, time.May, 11, 7, 0, 0, 0, time.UTC), nil, [32]byte{})
	if id := uuid.UUID(old.Next()); id[0] != 0 {
		t.Errorf("a clock before 1970 gives %s, which no later clock is above", id)
	}
}

// TestIDsRiseAboveTheBook: after a restart ids are above those of the book, in a
// millisecond of their own, whatever the clock says by then.
func TestIDsRiseAboveTheBook(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := book.NewIDs(drawInstant.Draw(t, "first"), nil, drawSeed.Draw(t, "seed"))
		at := calendar.Instantly(time.Date(2027, time.May, 11, 7, 0, 0, 0, time.UTC))
		var entries []book.Entry
		for range rapid.IntRange(1, 3).Draw(t, "deeds") {
			entries = append(entries, g.Entries(at, at.Instant, "Ida", book.Noted{Text: "x"}, book.Noted{Text: "y"})...)
			g.Deed()
		}
		later := book.NewIDs(drawInstant.Draw(t, "second"), book.NewSeason(nil, entries), drawSeed.Draw(t, "seed"))
		next := book.EntryID(later.Next())
		for _, e := range entries {
			if slices.Compare(e.ID[:6], next[:6]) >= 0 {
				t.Fatalf("the new id %s is not above %s", next, e.ID)
			}
		}
	})
}

// TestACopyMakesTheSameIDs: so that IDs can live in a state; another seed makes
// others.
func TestACopyMakesTheSameIDs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		now, seed := drawInstant.Draw(t, "now"), drawSeed.Draw(t, "seed")
		g := book.NewIDs(now, nil, seed)
		g.Next()
		copied := g
		seed[0]++
		other := book.NewIDs(now, nil, seed)
		other.Next()
		for range 10 {
			a, b, c := g.Next(), copied.Next(), other.Next()
			if a != b {
				t.Fatalf("a copy makes %x, want %x", b, a)
			}
			if a == c {
				t.Fatalf("another seed makes %x as well", a)
			}
		}
	})
}

// TestEntriesOfADeed: facts become entries in their order, written in UTC to the
// second, as entries have it.
func TestEntriesOfADeed(t *testing.T) {
	at := calendar.Instantly(time.Date(2027, time.May, 11, 7, 0, 0, 0, time.UTC))
	written := time.Date(2027, time.May, 11, 9, 30, 15, 999, time.FixedZone("", 7200))
	g := book.NewIDs(written, nil, [32]byte{1})
	same := g
	want := []book.Entry{
		{ID: same.Next(), At: at, Written: time.Date(2027, time.May, 11, 7, 30, 15, 0, time.UTC), Writer: "Ida", Fact: book.Noted{Text: "x"}},
		{ID: same.Next(), At: at, Written: time.Date(2027, time.May, 11, 7, 30, 15, 0, time.UTC), Writer: "Ida", Fact: book.Noted{Text: "y"}},
	}
	if diff := cmp.Diff(want, g.Entries(at, written, "Ida", book.Noted{Text: "x"}, book.Noted{Text: "y"})); diff != "" {
		t.Error(diff)
	}
	if n := testing.AllocsPerRun(100, func() { g.Next() }); n != 0 {
		t.Errorf("an id costs %v allocations, want none", n)
	}
}
