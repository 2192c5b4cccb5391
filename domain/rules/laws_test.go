package rules_test

import (
	"fmt"
	"reflect"
	"slices"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// A keeper's deeds at random: three nucs, two batches, a colony, in any order,
// sensible or not.
func deeds(t *rapid.T) []book.Entry {
	p := &booktest.Pen{Writer: "Ida"}
	p.At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: atFar, Name: far, Home: true, Zone: "UTC"},
		book.ColonyDescribed{Colony: booktest.Colony("S1"), Name: "S1", Yard: atFar, Roles: []book.Role{book.CellBuilder}},
		keeper("Ida"),
	)
	names := []string{"A1", "A2", "B1"}
	for _, name := range names {
		p.Write(book.NucNamed{Nuc: booktest.Nuc(name), Name: name, Sides: 6, Side: 2}, book.NucPlaced{Nuc: booktest.Nuc(name), Yard: atFar})
	}
	at := time.Date(2027, 5, 1, 6, 0, 0, 0, time.UTC)
	for range rapid.IntRange(0, 40).Draw(t, "deeds") {
		at = at.Add(time.Duration(rapid.IntRange(0, 72).Draw(t, "hours")) * time.Hour)
		p.At(at.UTC().Format("2006-01-02 15:04")).Write(deed(t, booktest.Nuc(rapid.SampledFrom(names).Draw(t, "nuc"))))
	}
	return p.Entries
}

func deed(t *rapid.T, n book.NucID) book.Fact {
	b := batch(rapid.IntRange(1, 2).Draw(t, "batch"))
	count := rapid.IntRange(0, 5).Draw(t, "count")
	return rapid.SampledFrom([]book.Fact{
		book.Grafted{Batch: b, Number: count, Larvae: count * 4},
		book.NucMadeUp{Nuc: n, Cups: float64(count), Open: float64(count % 2), From: booktest.Colony("S1")},
		book.CellGiven{Nuc: n, Batch: b},
		book.VirginPutIn{Nuc: n, Batch: b},
		book.Looked{Nuc: n, Eggs: book.SingleEggs, Sides: book.Said(float64(count))},
		book.Looked{Nuc: n, Eggs: book.NoEggs, Stores: book.Said(float64(count % 4))},
		book.Looked{Nuc: n, Brood: book.Said(float64(count))},
		book.Looked{Nuc: n, DroneBrood: true},
		book.Looked{Nuc: n, Eggs: book.ManyEggs},
		book.Looked{Nuc: n, Queen: book.NoneSeen, OwnCells: book.Said(float64(count))},
		book.QueenCaught{Nuc: n, Queen: booktest.Queen(fmt.Sprint(count))},
		book.QueenGone{Nuc: n},
		book.OwnCellsBroken{Nuc: n},
		book.BroodGiven{To: n.Subject(), Combs: 1, Open: 2, Capped: 1},
		book.BroodGiven{To: booktest.Colony("S1").Subject(), Combs: 1, Open: 2},
		book.CellsMoved{Batch: b, To: booktest.Colony("S1")},
		book.ClockSeen{Batch: b, Sign: book.SeenWalking},
		book.TakenAlong{What: book.Cells, Batch: b, Count: count},
		book.VirginCaged{Queen: booktest.Queen(fmt.Sprint(count)), Batch: b},
		book.Fed{To: n.Subject(), Litres: 0.3},
		book.ForageSeen{Yard: atFar, Forage: book.InDearth},
		book.Robbed{Nuc: n},
		book.ShakenOut{Nuc: n},
		book.United{Nuc: n, With: booktest.Colony("S1").Subject()},
		book.DiseaseSuspected{Of: n.Subject(), What: "foul brood"},
		book.PutOff{Rule: string(rules.Queenless), Of: n.Subject(), Until: calendar.Date(2027, 6, 1)},
	}).Draw(t, "deed")
}

func drawView(t *rapid.T, entries []book.Entry) *book.View {
	on := time.Date(2027, 5, 1, 12, 0, 0, 0, time.UTC).Add(time.Duration(rapid.IntRange(0, 90*24).Draw(t, "on")) * time.Hour)
	return book.NewSeason(booktest.Zones, entries).At(on)
}

func TestFindingsDoNotDependOnOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		entries := deeds(t)
		v := drawView(t, entries)
		want := rules.Findings(v)
		if again := rules.Findings(v); !reflect.DeepEqual(again, want) {
			t.Fatal("asked twice, answered differently")
		}
		mixed := rapid.Permutation(entries).Draw(t, "order")
		w := book.NewSeason(booktest.Zones, mixed).At(v.On())
		if got := rules.Findings(w); !reflect.DeepEqual(got, want) {
			t.Fatalf("in another order\n%+v\nwant\n%+v", got, want)
		}
		if a, b := rules.Day(v, v.Today()), rules.Day(w, w.Today()); !reflect.DeepEqual(a, b) {
			t.Fatalf("another day's work in another order\n%+v\nwant\n%+v", b, a)
		}
	})
}

func TestFindingsAreWhole(t *testing.T) {
	known := map[rules.Rule]bool{}
	for _, r := range rules.All() {
		known[r.Rule] = true
	}
	rapid.Check(t, func(t *rapid.T) {
		v := drawView(t, deeds(t))
		for _, f := range rules.Findings(v) {
			if id, ok := f.Of.Nuc(); ok && v.Nuc(id).Condition() == book.Empty && f.Rule != rules.Twice && f.Rule != rules.Decided {
				t.Fatalf("speaks of an empty nuc: %+v", f)
			}
			switch {
			case !known[f.Rule]:
				t.Fatalf("a rule that is not in the table: %+v", f)
			case f.What == "" || f.Why == "" || f.Do == "" || f.Sure == "":
				t.Fatalf("without words: %+v", f)
			case !f.By.IsZero() && f.By.Before(f.From) && f.Rule != rules.Queenless && !f.Hard:
				t.Fatalf("ends before it begins: %+v", f)
			case !f.Best.IsZero() && !f.By.IsZero() && f.By.Before(f.Best) && f.Rule != rules.Queenless:
				t.Fatalf("best after its end: %+v", f)
			case f.NeedsYou() && f.Severity != rules.Pressing:
				t.Fatalf("needs you and does not press: %+v", f)
			}
			if i := slices.IndexFunc(f.Used, func(k practice.Key) bool { return !k.Valid() }); i >= 0 {
				t.Fatalf("uses a number that is none: %+v", f)
			}
		}
	})
}

// TestDayHoldsTheWork: each line of a day answers findings that are open, and
// the minutes of its lines and drives are those of the day.
func TestDayHoldsTheWork(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := drawView(t, deeds(t))
		plan := rules.Day(v, v.Today())
		sum := plan.Driving
		for _, s := range plan.Stops {
			if len(s.Tasks) == 0 {
				t.Fatal("a stop without work")
			}
			for _, task := range s.Tasks {
				sum += task.Minutes
				if task.Act == rules.ActNone || len(task.Of) == 0 || len(task.Findings) == 0 {
					t.Fatalf("nothing to do: %+v", task)
				}
				for _, f := range task.Findings {
					if f.From.After(v.On().Add(24 * time.Hour)) {
						t.Fatalf("its window is not open: %+v", f)
					}
				}
			}
		}
		if diff := sum - plan.Minutes; diff > 1e-6 || diff < -1e-6 {
			t.Fatalf("the lines take %g min, the day says %g", sum, plan.Minutes)
		}
	})
}

// TestChecksNeverFail: any plan on any book gets a verdict, and each reason
// has a way out.
func TestChecksNeverFail(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := drawView(t, deeds(t))
		n := booktest.Nuc(rapid.SampledFrom([]string{"A1", "A2", "B1", "Z9"}).Draw(t, "nuc"))
		for _, plan := range []rules.Intent{
			rules.GiveCell{Nuc: n, Batch: batch(1)},
			rules.PutInVirgin{Nuc: n, Batch: batch(2)},
			rules.Catch{Nuc: n},
			rules.SetUp{Nuc: n, Yard: atFar},
			rules.Move{Nuc: n, Yard: atFar},
			rules.Graft{LarvaAge: 30},
			rules.MoveCells{Batch: batch(1)},
			rules.MakeUp{Nucs: []book.NucID{n}, Cups: 1},
			rules.AddBees{Nuc: n, Cups: 1},
			rules.OpenNuc{Nuc: n, Minutes: 9},
			rules.GiveFeed{Nuc: n, Litres: 1},
			rules.HandOver{Queen: booktest.Queen("1")},
		} {
			verdict := rules.Check(v, plan)
			for _, r := range slices.Concat(verdict.Refused, verdict.Warned) {
				if r.Why == "" || r.Do == "" {
					t.Fatalf("%T: a reason without words: %+v", plan, r)
				}
			}
		}
	})
}
