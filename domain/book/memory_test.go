package book_test

import (
	"slices"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

// more draws deeds that deeds does not know: of what a fold keeps in lists, and
// of the numbers by which nucs are folded.
func more(t *rapid.T, n book.NucID) book.Fact {
	batch, queen, s1 := booktest.Batch("4"), booktest.Queen("8"), booktest.Colony("S1")
	return rapid.SampledFrom([]book.Fact{
		book.NumberChanged{Number: "egg_to_capped_worker_brood", Value: 12},
		book.NumberChanged{Number: "egg_to_capped_worker_brood", Back: true},
		book.QueenGone{Nuc: n},
		book.CellGiven{Nuc: n, Batch: batch},
		book.TakenAlong{What: book.Cells, Batch: batch, Count: 9},
		book.RipeCounted{Batch: batch, Ripe: 12},
		book.ClockSeen{Batch: batch, Sign: book.SeenWalking},
		book.VirginCaged{Queen: queen, Batch: batch, Bank: s1},
		book.QueenBanked{Queen: queen, Bank: s1},
		book.BroodGiven{To: s1.Subject(), Combs: 1, Open: 2, From: n.Subject()},
		book.WildCellsSearched{In: s1.Subject(), Found: 1},
		book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 2},
		book.QueenHandedOver{Queen: queen, Order: booktest.Order("1")},
		book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida M."},
		book.DaysOff{Person: booktest.Person("Ida"), From: 20_940, To: 20_950},
		book.StandSet{Stand: booktest.Stand("A"), Yard: booktest.Yard("low"), Letter: "A", Places: 4},
		book.BoxBuilt{Box: book.BoxID(booktest.Nuc("box")), Number: "7"},
		book.PutOff{Rule: "weak", Of: n.Subject(), Until: 20_950},
	}).Draw(t, "more")
}

// longer are deeds of both kinds, written down at the time or late.
func longer(t *rapid.T) []book.Entry {
	pen := &booktest.Pen{Writer: "Ida M.", Entries: deeds(t)}
	for range rapid.IntRange(0, 25).Draw(t, "more entries") {
		at := time.Date(2027, 5, 1, rapid.IntRange(0, 60*24).Draw(t, "hour"), 0, 0, 0, time.UTC)
		pen.At(at.Format("2006-01-02 15:04"))
		n := booktest.Nuc(rapid.SampledFrom([]string{"A1", "A2"}).Draw(t, "nuc"))
		if rapid.Bool().Draw(t, "strikes") {
			pen.Write(book.Struck{Entry: rapid.SampledFrom(pen.Entries).Draw(t, "struck").ID})
			continue
		}
		pen.Write(more(t, n))
	}
	for i := range pen.Entries {
		late := time.Duration(rapid.SampledFrom([]int{0, 0, 1, 200}).Draw(t, "late")) * time.Hour
		pen.Entries[i].Written = pen.Entries[i].Written.Add(late)
	}
	if rapid.Bool().Draw(t, "as it happened") {
		slices.SortFunc(pen.Entries, book.Entry.Compare)
		return pen.Entries
	}
	return rapid.Permutation(pen.Entries).Draw(t, "order of arrival")
}

// TestViewsRemember: whatever was asked before, of this season or of those it
// was made from, of whatever instant and knowledge, a view says what it says in
// a season of which nothing was asked yet; and goes on saying it.
func TestViewsRemember(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		left, all := longer(t), []book.Entry(nil)
		season := book.NewSeason(booktest.Zones, nil)
		type answer struct {
			view *book.View
			said string
		}
		var answers []answer
		for range rapid.IntRange(1, 8).Draw(t, "steps") {
			n := rapid.IntRange(0, min(6, len(left))).Draw(t, "written")
			if rapid.Bool().Draw(t, "all") {
				n = len(left)
			}
			season, all, left = season.With(left[:n]...), append(all, left[:n]...), left[n:]
			on, known := instant(t, "on"), time.Time{}
			if rapid.IntRange(0, 3).Draw(t, "as known") == 0 {
				known = instant(t, "known")
			}
			want := told(t, book.NewSeason(booktest.Zones, slices.Clone(all)).AsKnown(on, known))
			v := season.AsKnown(on, known)
			if got := told(t, v); got != want {
				t.Fatalf("a view that remembers differs:\n%s", cmp.Diff(want, got))
			}
			answers = append(answers, answer{v, want})
		}
		for _, a := range answers {
			if got := told(t, a.view); got != a.said {
				t.Fatalf("a view changed what it says:\n%s", cmp.Diff(a.said, got))
			}
		}
	})
}

func instant(t *rapid.T, label string) time.Time {
	return time.Date(2027, 4, 30, rapid.IntRange(0, 64*24).Draw(t, label), 0, 0, 0, time.UTC)
}

// TestForksRememberApart: two seasons made from one, with different entries,
// share what was folded and do not disturb each other.
func TestForksRememberApart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		all := longer(t)
		third := len(all) / 3
		base := book.NewSeason(booktest.Zones, all[:third])
		told(t, base.At(end))
		one, two := base.With(all[third:2*third]...), base.With(all[2*third:]...)
		for range 2 {
			for _, s := range []*book.Season{one, two, base} {
				on := instant(t, "on")
				want := told(t, book.NewSeason(booktest.Zones, slices.Collect(s.Entries())).At(on))
				if got := told(t, s.At(on)); got != want {
					t.Fatalf("a fork differs:\n%s", cmp.Diff(want, got))
				}
			}
		}
	})
}

// TestRememberedLooksStay: a new life begins with new looks, and leaves those
// alone that an earlier view has.
func TestRememberedLooksStay(t *testing.T) {
	pen := &booktest.Pen{}
	a1 := booktest.Nuc("A1")
	pen.At("2027-05-01 10:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3})
	pen.At("2027-05-08 10:00").Write(book.Looked{Nuc: a1, Sides: book.Said(4)})
	pen.At("2027-05-20 10:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3})
	pen.At("2027-05-28 10:00").Write(book.Looked{Nuc: a1, Sides: book.Said(2)})
	season := book.NewSeason(nil, pen.Entries)
	first := season.At(pen.Entries[1].At.Instant).Nuc(a1)
	season.At(pen.Entries[3].At.Instant).Nuc(a1)
	if got := first.Looks[0].Sides; got != book.Said(4) {
		t.Errorf("the look of the first life says %v sides, want 4", got)
	}
}

// TestRememberedGapsStay: the answer to a gap's question leaves it open in an
// earlier view.
func TestRememberedGapsStay(t *testing.T) {
	pen := &booktest.Pen{}
	a1 := booktest.Nuc("A1")
	pen.At("2027-05-01 10:00").Write(book.QueenPutIn{Queen: booktest.Queen("7"), To: a1.Subject()})
	pen.At("2027-05-08 10:00").Write(book.CellGiven{Nuc: a1})
	pen.At("2027-05-09 10:00").Write(book.QueenGone{Nuc: a1})
	season := book.NewSeason(nil, pen.Entries)
	asks := season.At(pen.Entries[1].At.Instant).Nuc(a1)
	if answered := season.At(pen.Entries[2].At.Instant).Nuc(a1); !asks.Gaps[0].Asks || answered.Gaps[0].Asks {
		t.Errorf("the gap asks %v, and %v when it is answered", asks.Gaps[0].Asks, answered.Gaps[0].Asks)
	}
}

// TestNumbersFoldAnew: a number changed after a look changes what the look says,
// though no line of the nuc is new.
func TestNumbersFoldAnew(t *testing.T) {
	pen := &booktest.Pen{}
	a1 := booktest.Nuc("A1")
	pen.At("2027-05-01 10:00").Write(book.QueenPutIn{Queen: booktest.Queen("7"), To: a1.Subject()},
		book.BroodGiven{To: a1.Subject(), Capped: 1})
	pen.At("2027-05-11 10:00").Write(book.Looked{Nuc: a1, Brood: book.Said(1)})
	pen.At("2027-05-12 10:00").Write(book.NumberChanged{Number: "egg_to_capped_worker_brood", Value: 11})
	season := book.NewSeason(nil, pen.Entries)
	brood := season.At(pen.Entries[2].At.Instant).Nuc(a1).Holds.Condition
	none := season.At(pen.Entries[3].At.Instant).Nuc(a1).Holds.Condition
	if brood != book.GoodBrood || none != book.Laying {
		t.Errorf("%v by the default and %v by the changed number, want good brood and laying", brood, none)
	}
}
