package review_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/review"
	"lidmark/domain/rules"
)

// morning is the demo season under review on a spring morning on which the hard hour of
// 25 cells has gone and robbers are about in one yard.
func morning(t *testing.T) (*review.Review, *rules.Judged) { return on(t, 0) }

// on is that season so many days later, with nothing done.
func on(t *testing.T, days calendar.Day) (*review.Review, *rules.Judged) {
	zone, err := time.LoadLocation("Europe/Berlin")
	if err != nil {
		t.Fatal(err)
	}
	day := calendar.Date(2027, time.May, 11)
	j := rules.Judge(book.NewSeason(time.LoadLocation, demo.Season(day, zone)).At((day + days).At(7, 30, zone)))
	return review.Of(j, review.InHand(j.Course()), review.Usual(j.Course().View())), j
}

// said are the nucs of a review by name, with the way that the best use takes.
func said(r *review.Review) (nucs map[string]review.Nuc, ways map[string]review.Way) {
	nucs, ways = map[string]review.Nuc{}, map[string]review.Way{}
	for i, n := range r.Nucs {
		nucs[n.Name], ways[n.Name] = n, n.Ways[r.This.Chosen[i]]
	}
	return nucs, ways
}

// TestOneVoice: what the day's work asks of a nuc without a queen, Review advises, in the
// same words and for the same reason.
func TestOneVoice(t *testing.T) {
	r, j := morning(t)
	nucs, ways := said(r)
	for name, want := range map[string]string{
		"T1": "Break down own cells, then cell of batch 5, at dusk, 20:00",
		"C3": "Break down own cells, then cell of batch 5",
		"L2": "Look first for a virgin of its own; none there: give a cell of batch 5",
		"V2": "Look first for a virgin of its own; none there: give a cell of batch 5, at dusk, 20:00",
		"Q3": "Give a cell of batch 5, at dusk, 20:00",
		"H4": "Give a cell of batch 5",
		"W1": "Look whether it lives, then feed fondant, at dusk, 20:00",
		"N1": "Look for eggs by Wed 12 May",
		"D2": "Look; without worker brood shake out or unite, too few bees for a cell",
		"J4": "Take out the drone layer; too few bees for a cell: shake out or unite",
		"H2": "Shake out, make up again",
		"Q1": "Narrow the entrance",
		"K2": "Leave to Wed 19 May",
	} {
		if got := r.Title(ways[name]); got != want {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
	}
	told := 0
	for _, s := range j.Day(r.Day).Stops {
		for _, task := range s.Tasks {
			for _, f := range task.Findings {
				id, isNuc := f.Of.Nuc()
				if !isNuc {
					continue
				}
				n := nucs[j.Course().View().Nuc(id).Name]
				queen := f.Rule == rules.Queenless || f.Rule == rules.DroneLayer || f.Rule == rules.LayingWorkers
				shaken := (queen || f.Rule == rules.VirginsTime) && ways[n.Name].Kind == review.ShakeOut
				if alike := queen && f.Act == rules.ActLookInside || shaken; alike && len(task.Of) == 1 && r.Title(ways[n.Name]) != task.Title {
					t.Errorf("%s: the day says %q, Review %q", n.Name, task.Title, r.Title(ways[n.Name]))
				}
				if !queen {
					continue
				}
				told++
				if why := strings.TrimSuffix(f.Why, "; robbers in the yard"); n.Why != why {
					t.Errorf("%s: the day says %q, Review %q", n.Name, why, n.Why)
				}
			}
		}
	}
	if told < 16 {
		t.Errorf("the day tells of %d nucs without a queen, want 16 and more", told)
	}
}

// TestCellsGoToTheSameNucs: the best use gives cells, at once or after a look, to those nucs
// to which the day's work gives them, and the kit has as many, and more only for nucs that are
// made up that day; before a look that finds no eggs only where no laying queen is more probable than not.
func TestCellsGoToTheSameNucs(t *testing.T) {
	looks := 0
	for _, d := range []calendar.Day{-2, -1, 0, 1, 8, 9} {
		r, j := on(t, d)
		work, madeUp := map[string]bool{}, false
		for _, f := range findingsOf(j.Day(r.Day)) {
			madeUp = madeUp || f.Act == rules.ActMakeUp
			if id, isNuc := f.Of.Nuc(); isNuc && (f.Act == rules.ActGiveCell || f.Then == rules.ActGiveCell) {
				work[j.Course().View().Nuc(id).Name] = true
				if f.Rule == rules.LookEggs {
					looks++
				}
			}
		}
		if kit := kit(j, "ripe cell") + kit(j, "ripe cells"); len(work) == 0 || kit < float64(len(work)) || kit > float64(len(work)) && !madeUp {
			t.Errorf("%s: cells for %d nucs, %g in the kit", r.Day.Short(), len(work), kit)
		}
		for i, n := range r.Nucs {
			w := n.Ways[r.This.Chosen[i]]
			if gives := w.Gives() && !r.Hand.Wares[w.Ware-1].Virgin; gives != work[n.Name] {
				t.Errorf("%s, %s: the day gives a cell: %v; Review: %s", r.Day.Short(), n.Name, work[n.Name], r.Title(w))
			}
		}
	}
	if looks == 0 {
		t.Error("no first look has a cell go along: nothing was tested of that")
	}
}

// findingsOf are what the tasks of a day answer.
func findingsOf(day rules.DayPlan) (all []rules.Finding) {
	for _, s := range day.Stops {
		for _, task := range s.Tasks {
			all = append(all, task.Findings...)
		}
	}
	return all
}

// TestCagesAgree: as many cells are caged as the late day and the day's kit have it, now
// and once all is accepted, and none is kept past its hard hour.
func TestCagesAgree(t *testing.T) {
	r, j := morning(t)
	v := j.Course().View()
	var batch book.BatchID
	for b := range v.Batches() {
		if b.Number == 5 {
			batch = b.Batch
		}
	}
	card, _ := rules.LateDay(v, batch, time.Time{})
	if want := card.Cells - card.Fit; want != 9 || caged(r) != want || kit(j, "cages for cells") != float64(want) {
		t.Errorf("cages: the late day has %d, Review %d, the kit %g", want, caged(r), kit(j, "cages for cells"))
	}
	for i, n := range r.Nucs {
		if w := n.Ways[r.This.Chosen[i]]; w.Gives() && !r.Hand.Wares[w.Ware-1].Virgin && (w.Kind == review.TakeOut || w.On > r.Day) {
			t.Errorf("%s: %s, past the hard hour", n.Name, r.Title(w))
		}
	}
	var said strings.Builder
	for _, l := range r.Left() {
		said.WriteString(r.LeftWords(l) + "\n")
	}
	if want := "Left: 9 cells of batch 5: cage each now; 1 goes along for a look that finds no eggs; give the other 8 to others, or make up some of 10 empty nucs with bees\n"; !strings.Contains(said.String(), want) {
		t.Errorf("said %q", said.String())
	}
	j = rules.Judge(accepted(t, v, r))
	again := review.Of(j, review.InHand(j.Course()), r.By)
	if caged(again) != 9 || kit(j, "cages for cells") != 9 {
		t.Errorf("all accepted: Review cages %d, the kit has %g", caged(again), kit(j, "cages for cells"))
	}
}

func caged(r *review.Review) (n int) {
	for _, l := range r.Left() {
		if w := r.Hand.Wares[l.Ware]; !w.Virgin {
			n += l.Many
		}
	}
	return n
}

func kit(j *rules.Judged, goods string) (amount float64) {
	for _, l := range j.Day(j.Course().View().Today()).Kit {
		if l.Goods == goods {
			amount += l.Amount
		}
	}
	return amount
}

// TestTooFewBeesGetNothing: what is given to a nuc must be kept warm. It is offered with
// the reason why it is not best.
func TestTooFewBeesGetNothing(t *testing.T) {
	r, _ := morning(t)
	nucs, ways := said(r)
	for _, name := range []string{"D2", "J4"} {
		if w := ways[name]; w.Gives() {
			t.Errorf("%s: %s", name, r.Title(w))
		}
		given, why := 0, false
		for _, w := range nucs[name].Ways {
			if !w.Gives() || w.Kind == review.MakeUp {
				continue
			}
			given++
			if !w.Barred {
				t.Errorf("%s is offered: %s", name, r.Title(w))
			}
			for _, said := range w.Warned {
				why = why || strings.HasPrefix(said.Why, "about 270 bees, the night needs 800: too few")
			}
		}
		if given == 0 || !why {
			t.Errorf("%s: %d ways give something, and say why not: %v", name, given, why)
		}
	}
}

// accepted is a view a minute later, with all that a review advises accepted.
func accepted(t *testing.T, v *book.View, r *review.Review) *book.View {
	var facts []book.Fact
	for _, p := range r.Accept(r.This.Ways()) {
		facts = append(facts, p)
	}
	if len(facts) < 20 {
		t.Fatalf("%d decisions", len(facts))
	}
	ids := book.NewIDs(v.On(), v.Season(), [32]byte{1})
	entries := ids.Entries(calendar.Instantly(v.On()), v.On(), "Ida", facts...)
	return v.Season().With(entries...).At(v.On().Add(time.Minute))
}
