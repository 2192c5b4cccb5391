package book_test

import (
	"encoding/json"
	"math/rand/v2"
	"slices"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

// deeds draws a history of a small yard that need not make sense.
func deeds(t *rapid.T) []book.Entry {
	nucs := []string{"A1", "A2"}
	start := time.Date(2027, 5, 1, 8, 0, 0, 0, time.UTC)
	pen := &booktest.Pen{Writer: "Ida M."}
	for range rapid.IntRange(1, 25).Draw(t, "entries") {
		hours := rapid.IntRange(0, 60*24).Draw(t, "hour")
		pen.At(start.Add(time.Duration(hours) * time.Hour).Format("2006-01-02 15:04"))
		n := booktest.Nuc(rapid.SampledFrom(nucs).Draw(t, "nuc"))
		pen.Write(deed(t, n, pen.Entries))
	}
	return pen.Entries
}

func deed(t *rapid.T, n book.NucID, before []book.Entry) book.Fact {
	facts := []book.Fact{
		book.NucNamed{Nuc: n, Name: "A1", Sides: 6},
		book.NucPlaced{Nuc: n, Yard: booktest.Yard("low"), Stand: booktest.Stand("A"), Place: 1},
		book.NucMadeUp{Nuc: n, Cups: 2, Open: 1, From: booktest.Colony("S1")},
		book.CellGiven{Nuc: n, Batch: booktest.Batch("4")},
		book.VirginPutIn{Nuc: n, Queen: booktest.Queen("7")},
		book.Looked{Nuc: n, Eggs: book.SingleEggs, Sides: book.Said(4)},
		book.Looked{Nuc: n, Queen: book.NoneSeen, Eggs: book.NoEggs, OwnCells: book.Said(2)},
		book.Looked{Nuc: n, Brood: book.Said(3), DroneBrood: true},
		book.QueenCaught{Nuc: n, Queen: booktest.Queen("8")},
		book.QueenHandedOver{Queen: booktest.Queen("8"), With: true},
		book.United{Nuc: n, With: booktest.Nuc("A2").Subject()},
		book.Robbed{Nuc: n},
		book.Treated{Of: n.Subject(), With: "oxalic acid", Wait: 14},
		book.ShakenOut{Nuc: n},
		book.BroodGiven{To: n.Subject(), Open: 2, From: booktest.Colony("S1").Subject()},
		book.DiseaseSuspected{Of: n.Subject(), What: "foulbrood"},
		book.SuspicionEnded{Of: n.Subject()},
		book.NumberChanged{Number: "look_for_eggs_from", Value: 15},
		book.Grafted{Batch: booktest.Batch("4"), Number: 4, Larvae: 30},
		book.YardDescribed{Yard: booktest.Yard("low"), Name: "Low", Zone: "Europe/Berlin"},
	}
	if len(before) > 0 {
		facts = append(facts, book.Struck{Entry: rapid.SampledFrom(before).Draw(t, "struck").ID})
	}
	return rapid.SampledFrom(facts).Draw(t, "fact")
}

// robbed are the nucs at which robbers were.
func robbed(v *book.View) (nucs []book.NucID) {
	for _, n := range v.Robberies() {
		nucs = append(nucs, n)
	}
	return nucs
}

// told is all that a view says, as JSON, so that two views can be compared.
func told(t interface{ Fatal(...any) }, v *book.View) string {
	said := map[string]any{
		"nucs": slices.Collect(v.Nucs()), "yards": slices.Collect(v.Yards()),
		"batches": slices.Collect(v.Batches()), "queens": slices.Collect(v.Queens()),
		"colonies": slices.Collect(v.Colonies()), "trace": v.Trace(booktest.Colony("S1").Subject(), time.Time{}),
		"numbers": v.Numbers().Days(lookForEggsFrom), "orders": slices.Collect(v.Orders()), "people": slices.Collect(v.People()),
		"stand": v.Stand(booktest.Stand("A")), "box": v.Box(book.BoxID(booktest.Nuc("box"))), "left": v.Batch(booktest.Batch("4")).Left(),
		"put off": slices.Collect(v.PutOffs()), "robbed": robbed(v),
	}
	b, err := json.Marshal(said)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

var end = time.Date(2027, 8, 1, 0, 0, 0, 0, time.UTC)

func TestAnyOrderOfArrivalMakesTheSameSeason(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		entries := deeds(t)
		want := told(t, book.NewSeason(booktest.Zones, entries).At(end))

		shuffled := slices.Clone(entries)
		r := rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "seed"), 1))
		r.Shuffle(len(shuffled), func(i, j int) { shuffled[i], shuffled[j] = shuffled[j], shuffled[i] })
		cut := rapid.IntRange(0, len(shuffled)).Draw(t, "cut")
		merged := book.NewSeason(booktest.Zones, shuffled[:cut]).With(shuffled[cut:]...).With(shuffled[:cut]...)
		if merged.Len() != len(entries) {
			t.Fatalf("merged %d entries, want %d", merged.Len(), len(entries))
		}
		if got := told(t, merged.At(end)); got != want {
			t.Fatalf("the merged season differs:\n%s", cmp.Diff(want, got))
		}
	})
}

func TestSeasonsThatShareEntriesDoNotDisturbEachOther(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		entries := deeds(t)
		base := book.NewSeason(booktest.Zones, entries[:len(entries)/2])
		before := told(t, base.At(end))
		base.With(entries[len(entries)/2:]...)
		base.With(entries[len(entries)/2+len(entries)%2:]...)
		if got := told(t, base.At(end)); got != before {
			t.Fatalf("adding to a season changed it:\n%s", cmp.Diff(before, got))
		}
	})
}

func TestAStrikeUndoes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		entries := deeds(t)
		pen := &booktest.Pen{Writer: "Ida M.", Entries: entries}
		pen.At("2027-07-30 19:00").Write(deed(t, booktest.Nuc("A1"), nil)) // no strike
		pen.At("2027-07-30 20:00").Strike()
		without := book.NewSeason(booktest.Zones, entries).At(end)
		struck := book.NewSeason(booktest.Zones, pen.Entries).At(end)
		want, got := facts(without), facts(struck)
		if d := cmp.Diff(want, got, cmpopts.EquateComparable(book.Amount{})); d != "" {
			t.Fatalf("what counts after a strike:\n%s", d)
		}
		if want, got := told(t, without), told(t, struck); got != want {
			t.Fatalf("a struck entry still tells:\n%s", cmp.Diff(want, got))
		}
	})
}

func TestEntryFindsItsOwn(t *testing.T) {
	pen := &booktest.Pen{}
	pen.At("2027-05-01 10:00").Write(book.Noted{Text: "first"}, book.Noted{Text: "second"})
	s := book.NewSeason(nil, pen.Entries)
	if e, ok := s.Entry(pen.Entries[1].ID); !ok || e.Fact != (book.Noted{Text: "second"}) {
		t.Errorf("found %+v, %v", e, ok)
	}
	if _, ok := s.Entry(book.EntryID{1}); ok {
		t.Error("found an entry nobody wrote")
	}
}

// facts are the entries that count, strikes left out.
func facts(v *book.View) (all []string) {
	for e := range v.All() {
		if _, strike := e.Fact.(book.Struck); !strike {
			all = append(all, e.ID.String())
		}
	}
	return all
}

func TestADayIsTheFoldOfTheEntriesUpToIt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		entries := deeds(t)
		day := end.AddDate(0, 0, -rapid.IntRange(0, 95).Draw(t, "days back"))
		var upTo []book.Entry
		for _, e := range entries {
			_, strike := e.Fact.(book.Struck)
			if strike || !e.At.Instant.After(day) {
				upTo = append(upTo, e)
			}
		}
		want := told(t, book.NewSeason(booktest.Zones, upTo).At(day))
		if got := told(t, book.NewSeason(booktest.Zones, entries).At(day)); got != want {
			t.Fatalf("the season as of %v differs:\n%s", day, cmp.Diff(want, got))
		}
	})
}

func TestAsKnownThenIsTheFoldOfWhatWasWrittenThen(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		entries := deeds(t)
		for i := range entries { // written up to nine days late
			late := rapid.IntRange(0, 200).Draw(t, "late")
			entries[i].Written = entries[i].At.Instant.Add(time.Duration(late) * time.Hour)
		}
		known := end.AddDate(0, 0, -rapid.IntRange(0, 95).Draw(t, "days back"))
		var written []book.Entry
		for _, e := range entries {
			if !e.Written.After(known) {
				written = append(written, e)
			}
		}
		want := told(t, book.NewSeason(booktest.Zones, written).At(end))
		if got := told(t, book.NewSeason(booktest.Zones, entries).AsKnown(end, known)); got != want {
			t.Fatalf("as known on %v it differs:\n%s", known, cmp.Diff(want, got))
		}
	})
}

func TestOfDayFindsTheDaysEntries(t *testing.T) {
	pen := &booktest.Pen{Zone: mustZone(t, "Europe/Berlin")}
	yard := booktest.Yard("low")
	pen.At("2027-05-14 23:59").Write(book.YardDescribed{Yard: yard, Name: "Low", Zone: "Europe/Berlin"})
	pen.At("2027-05-15 00:00").Write(book.ForageSeen{Yard: yard, Forage: book.InFlow})
	pen.At("2027-05-15 23:59").Write(book.Noted{Of: yard.Subject(), Text: "late"})
	pen.At("2027-05-16 00:00").Write(book.Noted{Of: yard.Subject(), Text: "next"})
	v := pen.View("2027-05-20 00:00")
	if got := len(slices.Collect(v.OfDay(day("2027-05-15")))); got != 2 {
		t.Errorf("the 15th has %d entries, want 2", got)
	}
}
