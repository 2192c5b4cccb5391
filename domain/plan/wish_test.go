package plan_test

import (
	"fmt"
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
	"lidmark/domain/plan"
)

// yardOf is a book with so many empty nucs.
func yardOf(nucs int) *booktest.Pen {
	p := (&booktest.Pen{}).At("2027-03-01 12:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	for i := range nucs {
		n := booktest.Nuc(fmt.Sprint(i))
		p.Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("A%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: booktest.Yard("home")})
	}
	return p
}

func plannerOf(p *booktest.Pen, on string) *plan.Planner { return plan.New(course.New(p.View(on))) }

// 64 nucs, forty queens ready by a day in fair weather. 96 larvae are
// about as sure as a promise two times in three, and no number of larvae of one
// graft is nine times in ten: one in twelve fails outright.
func TestAWishIsAnswered(t *testing.T) {
	p := plannerOf(yardOf(64), "2027-03-16 08:00")
	a := p.Answer(plan.Wish{Queens: 40, By: day(t, "2027-06-14"), Larvae: 96})
	if !a.InTime || a.Free != 64 || a.Nucs != 64 || len(a.Batches) != 1 {
		t.Fatalf("in time %v, %d nucs free, %d used, %d batches", a.InTime, a.Free, a.Nucs, len(a.Batches))
	}
	t.Logf("96 larvae: %.3f; grafted %s; late %.3f", a.Chance, a.Batches[0].Day, a.Batches[0].Late)
	b := p.Answer(plan.Wish{Queens: 40, By: day(t, "2027-06-14")})
	if b.Chance >= 0.9 && b.Sizing.Limit != plan.NoLimit || b.Chance < 0.9 && b.Sizing.Limit == plan.NoLimit {
		t.Errorf("%d larvae: %.3f, %s", b.Larvae, b.Chance, b.Sizing.Limit)
	}
	if b.Chance < a.Chance-1e-9 {
		t.Errorf("found %d larvae, %.3f, 96 give %.3f", b.Larvae, b.Chance, a.Chance)
	}
	two := p.Answer(plan.Wish{Queens: 40, By: day(t, "2027-06-14"), Grafts: 2, Larvae: 70})
	if len(two.Batches) != 2 || two.Batches[1].Day.Sub(two.Batches[0].Day) != 7 || two.Chance <= a.Chance {
		t.Errorf("two grafts: %d batches, %.3f; one of 96: %.3f", len(two.Batches), two.Chance, a.Chance)
	}
}

// An impossible day gets the nearest possible one.
func TestAnImpossibleDay(t *testing.T) {
	p := plannerOf(yardOf(64), "2027-03-16 08:00")
	a := p.Answer(plan.Wish{Queens: 40, By: day(t, "2027-04-10")})
	if a.InTime || a.Nearest <= day(t, "2027-04-10") {
		t.Fatalf("in time %v, nearest %s", a.InTime, a.Nearest)
	}
	if b := p.Answer(plan.Wish{Queens: 40, By: a.Nearest}); !b.InTime {
		t.Errorf("by %s, said to be the nearest, is not in time", a.Nearest)
	}
}

// What is offered where a day is impossible is of the size of a wish for the nearest day: no
// more nucs than that needs, and where all are too few with how many it would be enough.
func TestAnImpossibleDayIsSizedForTheNearest(t *testing.T) {
	p := plannerOf(yardOf(64), "2027-03-16 08:00")
	for _, queens := range []int{6, 20, 60} {
		for _, larvae := range []int{0, 60} {
			late := p.Answer(plan.Wish{Queens: queens, By: day(t, "2027-04-10"), Larvae: larvae})
			then := p.Answer(plan.Wish{Queens: queens, By: late.Nearest, Larvae: larvae, Graft: late.Batches[0].Day})
			if late.Nucs != then.Nucs || late.Larvae != then.Larvae || late.Sizing.Nucs != then.Sizing.Nucs {
				t.Errorf("%d queens: %d larvae, %d nucs, %d enough; by the nearest day %d, %d, %d",
					queens, late.Larvae, late.Nucs, late.Sizing.Nucs, then.Larvae, then.Nucs, then.Sizing.Nucs)
			}
			if queens == 6 && late.Nucs >= 64 || queens == 60 && larvae == 0 && late.Sizing.Nucs <= 64 {
				t.Errorf("%d queens, %d nucs, %d enough", queens, late.Nucs, late.Sizing.Nucs)
			}
			if larvae == 0 && late.Sizing.Limit != plan.LateLimit || late.Chance > 0.01 {
				t.Errorf("by the day that was wished %.3f, %q", late.Chance, late.Sizing.Limit)
			}
		}
	}
}

// Forwards from a graft: its queens are ready, nine in ten, by the day it says.
func TestForwardsFromAGraft(t *testing.T) {
	p := plannerOf(yardOf(64), "2027-03-16 08:00")
	a := p.Answer(plan.Wish{Queens: 20, Graft: day(t, "2027-05-03"), Larvae: 60})
	if a.By != a.Batches[0].Laid.ReadyDay(0.9) || !a.InTime {
		t.Errorf("by %s, ready %s", a.By, a.Batches[0].Laid.ReadyDay(0.9))
	}
	laying := p.Answer(plan.Wish{Queens: 20, Graft: day(t, "2027-05-03"), Larvae: 60, Laying: true})
	if laying.By >= a.By {
		t.Errorf("laying by %s, ready by %s", laying.By, a.By)
	}
}

// A planned batch takes its nucs from those that are free.
func TestPlannedBatchesTakeNucs(t *testing.T) {
	pen := yardOf(30)
	batch := booktest.Batch("first")
	pen.At("2027-03-15 20:00").Write(book.BatchPlanned{Batch: batch, Day: day(t, "2027-04-26"), Larvae: 30, Nucs: 20, Yard: booktest.Yard("home")})
	p := plannerOf(pen, "2027-03-16 08:00")
	a := p.Answer(plan.Wish{Queens: 5, By: day(t, "2027-06-14"), Graft: day(t, "2027-05-03")})
	if a.Free != 10 {
		t.Errorf("%d of 30 nucs are free, 20 are planned for", a.Free)
	}
	if b := p.Answer(plan.Wish{Queens: 5, By: day(t, "2027-06-14"), Graft: day(t, "2027-05-03"), Not: batch}); b.Free != 30 {
		t.Errorf("%d are free for the batch itself", b.Free)
	}
}

// The floor is the chances of one graft of the size found.
func BenchmarkAnswer(b *testing.B) {
	p := plannerOf(yardOf(64), "2027-03-16 08:00")
	by := p.View().Today() + 90
	for b.Loop() {
		p.Answer(plan.Wish{Queens: 30, By: by})
	}
}

// BenchmarkAnswerOfSeveral finds the larvae for 300 queens of three grafts from 600
// nucs. Its floor is one exact answer of the size found; it was 12 s of work where
// each size tried was reckoned exactly.
func BenchmarkAnswerOfSeveral(b *testing.B) {
	p := plannerOf(yardOf(600), "2027-03-16 08:00")
	by := p.View().Today() + 90
	for _, sure := range []float64{0.75, 0.9} {
		b.Run(fmt.Sprint(sure), func(b *testing.B) {
			for b.Loop() {
				p.Answer(plan.Wish{Queens: 300, By: by, Grafts: 3, Sure: sure})
			}
		})
	}
}

// Nucs whose queens are ready between two grafts are there for the second, whose cells
// they get; each of the two has half of all.
func TestALaterGraftHasNucsThatComeFree(t *testing.T) {
	pen := yardOf(64)
	for i := range 24 {
		pen.At("2027-05-10 12:00").Write(book.Looked{Nuc: booktest.Nuc(fmt.Sprint(i)), Eggs: book.SingleEggs})
	}
	p := plannerOf(pen, "2027-05-11 08:00")
	w := plan.Wish{Queens: 40, By: day(t, "2027-07-30"), Graft: day(t, "2027-05-12"), Larvae: 96, Grafts: 2}
	a := p.Answer(w)
	if a.Free != 64 || a.Nucs != 64 || a.Batches[0].Graft.Nucs != 32 || a.Batches[1].Graft.Nucs != 32 {
		t.Fatalf("%d free, %d used: %d for the first and %d more for the second", a.Free, a.Nucs, a.Batches[0].Graft.Nucs, a.Batches[1].Graft.Nucs)
	}
	if a.Batches[0].Size.Nucs > 32 || a.Batches[0].Size.Nucs+a.Batches[1].Size.Nucs > 64 {
		t.Errorf("%d and %d nucs are made up of 32 and 32 more", a.Batches[0].Size.Nucs, a.Batches[1].Size.Nucs)
	}
	again := p.Answer(a.Wish)
	if again.Chance != a.Chance {
		t.Errorf("asked again with what was found: %.3f, then %.3f", a.Chance, again.Chance)
	}
	w.Nucs = 40
	if few := p.Answer(w); few.Chance >= a.Chance {
		t.Errorf("40 nucs: %.3f; with 24 more for the second: %.3f", few.Chance, a.Chance)
	}
}

// Few nucs are shared: each of some grafts has nucs of its own, and larvae for no more
// than those; what no nuc is free for sooner is left to the later ones.
func TestGraftsShareTheNucs(t *testing.T) {
	p := plannerOf(yardOf(64), "2027-03-16 08:00")
	one := p.Answer(plan.Wish{Queens: 45, By: day(t, "2027-06-14")})
	a := p.Answer(plan.Wish{Queens: 45, By: day(t, "2027-06-14"), Grafts: 2})
	if a.Batches[0].Size.Nucs != 32 || a.Batches[1].Size.Nucs != 32 || a.Sizing.Limit == plan.NoLimit {
		t.Fatalf("%d and %d nucs of 64, %s", a.Batches[0].Size.Nucs, a.Batches[1].Size.Nucs, a.Sizing.Limit)
	}
	if a.Larvae*3 > one.Larvae*2 {
		t.Errorf("%d larvae each time for 32 nucs, %d for 64", a.Larvae, one.Larvae)
	}
	pen := yardOf(64)
	for i := range 54 {
		pen.At("2027-05-10 12:00").Write(book.Looked{Nuc: booktest.Nuc(fmt.Sprint(i)), Eggs: book.SingleEggs})
	}
	b := plannerOf(pen, "2027-05-11 08:00").Answer(plan.Wish{Queens: 40, By: day(t, "2027-07-30"), Graft: day(t, "2027-05-12"), Grafts: 2})
	if b.Batches[0].Graft.Nucs != 10 || b.Batches[1].Graft.Nucs != 54 {
		t.Errorf("10 are free for the first, which has %d, the second %d", b.Batches[0].Graft.Nucs, b.Batches[1].Graft.Nucs)
	}
}

// Grafts may be of unlike size: each in its turn has a nuc for each ripe cell that is to be
// expected of its larvae, by hand 60.8 of 80 and 45.6 of 60, and what the first leaves is the
// second's. Each has the hard hour of its own cells.
func TestGraftsOfUnlikeSize(t *testing.T) {
	p := plannerOf(yardOf(72), "2027-03-16 08:00")
	w := plan.Wish{Queens: 40, By: day(t, "2027-07-30"), Graft: day(t, "2027-05-03"), Laying: true}.WithLarvae(80, 60)
	a := p.Answer(w)
	if got := a.Grafted(); len(got) != 2 || got[0] != 80 || got[1] != 60 || a.Batches[1].Day.Sub(a.Batches[0].Day) != 7 {
		t.Fatalf("%v larvae are grafted", got)
	}
	first, second := a.Batches[0], a.Batches[1]
	if first.Graft.Nucs != 61 || second.Graft.Nucs != 11 || first.Size.Nucs != 61 || second.Size.Nucs != 11 {
		t.Errorf("%d nucs and %d more, %d and %d made up of 72", first.Graft.Nucs, second.Graft.Nucs, first.Size.Nucs, second.Size.Nucs)
	}
	near(t, "chance", a.Chance, a.Rates.Queens(
		plan.Graft{Larvae: 80, Nucs: 61, Late: first.Late}, plan.Graft{Larvae: 60, Nucs: 11, Late: second.Late}).AtLeast(40), 1e-12)
	if again := p.Answer(a.Wish); again.Chance != a.Chance {
		t.Errorf("asked again with what was found: %.3f, then %.3f", a.Chance, again.Chance)
	}
	if alone := p.Answer(w.WithLarvae(60)).Batches[0].Clock.Hard(); !alone.Before(a.Batches[0].Clock.Hard().AddDate(0, 0, 1)) || !alone.After(a.Batches[0].Clock.Hard()) {
		t.Errorf("80 larvae are hard by %s, 60 by %s", a.Batches[0].Clock.Hard(), alone)
	}
	w.Nucs = 200
	if many := p.Answer(w); many.Batches[0].Graft.Nucs != 61 || many.Batches[1].Graft.Nucs != 46 {
		t.Errorf("of 200 nucs %d and %d", many.Batches[0].Graft.Nucs, many.Batches[1].Graft.Nucs)
	}
}

// Where nucs are few one graft for all of them, and another only if it fails, is surer
// than two that share them; nothing is said of it where it is not, or they are enough.
func TestOneGraftAndInsurance(t *testing.T) {
	p := plannerOf(yardOf(72), "2027-03-16 08:00")
	w := plan.Wish{Queens: 40, By: day(t, "2027-07-30"), Grafts: 2, Laying: true}
	for name, w := range map[string]plan.Wish{"found": w, "70 each": w.WithLarvae(70)} {
		w.Grafts = 2
		a := p.Answer(w)
		got := a.Insured()
		if got <= a.Chance || got >= 1 {
			t.Errorf("%s: %.3f with two that share the nucs, %.3f with one and insurance", name, a.Chance, got)
		}
		n := a.Sizing.Larvae
		near(t, name, got, a.Rates.Queens(
			plan.Graft{Larvae: n, Nucs: 72, Late: a.Batches[0].Late}, plan.Graft{Larvae: n, Late: a.Batches[1].Late}).AtLeast(40), 1e-12)
	}
	few := w
	few.Queens, few.Sure = 5, 0.6
	early := w
	early.By = day(t, "2027-04-10")
	for name, w := range map[string]plan.Wish{"sure enough": few, "one graft": {Queens: 40, By: w.By}, "one by one": w.WithLarvae(80, 60), "not in time": early} {
		if got := p.Answer(w).Insured(); got != 0 {
			t.Errorf("%s: insurance is told, %.3f", name, got)
		}
	}
}

// The hard hour of an answer is that of the larvae found: the plan that is made of it has
// the same.
func TestAnAnswerAndItsPlanHaveOneHardHour(t *testing.T) {
	pen := yardOf(64)
	a := plannerOf(pen, "2027-03-16 08:00").Answer(plan.Wish{Queens: 40, By: day(t, "2027-06-14")})
	b := book.BatchPlanned{Batch: booktest.Batch("first"), Day: a.Batches[0].Day, Larvae: a.Larvae, Nucs: a.Nucs, Yard: booktest.Yard("home")}
	pen.At("2027-03-16 07:00").Write(b)
	p := plannerOf(pen, "2027-03-16 08:00")
	for planned := range p.View().Plans() {
		if got, want := p.LadderOf(planned).Clock.Hard(), a.Batches[0].Clock.Hard(); !got.Equal(want) {
			t.Errorf("hard by %s as planned, %s as wished", got, want)
		}
		if got, want := p.SizeOf(planned).Caged, a.Batches[0].Size.Caged; got != want || got < a.Chances.Quantile(0.5) {
			t.Errorf("%d cages as planned, %d as wished, %d queens most probably", got, want, a.Chances.Quantile(0.5))
		}
		near(t, "queens as planned and as wished", p.SizeOf(planned).Queens, a.Batches[0].Size.Queens, 1e-9)
	}
}

// What is past is no work any more.
func TestWorkAheadHasNoPast(t *testing.T) {
	p := plannerOf(yardOf(64), "2027-05-11 08:00")
	b := p.Answer(plan.Wish{Queens: 40, By: day(t, "2027-07-30"), Graft: day(t, "2027-05-15")}).Batches[0]
	all, ahead := p.Minutes(b.Ladder, b.Size), p.Ahead(b.Ladder, b.Size)
	if all[0].Step != plan.DroneComb || ahead[0].Step != plan.Confine || len(ahead) != len(all)-1 {
		t.Errorf("%d steps from %s, ahead %d from %s", len(all), all[0].Step, len(ahead), ahead[0].Step)
	}
}

// Forty nucs and two grafts: a week apart they share them, and two months apart, when the
// queens of the first are out long before the cells of the second, each has all of them.
// Of fixed shares without luck or failures both grafts fill all nucs then, and as many
// queens come as of the two of them alone.
func TestNucsServeTwiceWhereGraftsAreFarApart(t *testing.T) {
	p := plannerOf(yardOf(40), "2027-03-16 08:00")
	of := func(apart int) plan.Answer {
		return p.Answer(plan.Wish{Queens: 40, By: day(t, "2027-08-20"), Graft: day(t, "2027-04-20"), Larvae: 96, Grafts: 2, Apart: apart})
	}
	near, far := of(7), of(60)
	if near.Turns() != 1 || near.Batches[0].Graft.Nucs+near.Batches[1].Graft.Nucs != 40 {
		t.Errorf("a week apart: %d turns, nucs %d and %d", near.Turns(), near.Batches[0].Graft.Nucs, near.Batches[1].Graft.Nucs)
	}
	if far.Turns() != 2 || far.Batches[0].Graft.Nucs != 40 || far.Batches[1].Graft.Nucs != 40 || far.Batches[1].Size.Nucs != 40 || far.Insured() != 0 {
		t.Errorf("two months apart: %d turns, nucs %d and %d", far.Turns(), far.Batches[0].Graft.Nucs, far.Batches[1].Graft.Nucs)
	}
	if far.Chance <= near.Chance || far.Chances.Most() != 80 || near.Chances.Most() != 40 {
		t.Errorf("chance %v and %v, at most %d and %d", near.Chance, far.Chance, near.Chances.Most(), far.Chances.Most())
	}
	r := far.Rates
	for l := range r.Link {
		r.Link[l].Weight, r.Link[l].Luck = math.Inf(1), 0
	}
	both, one := r.Queens(far.Batches[0].Graft, far.Batches[1].Graft), r.Queens(far.Batches[0].Graft)
	two := r.Queens(plan.Graft{Larvae: far.Batches[1].Graft.Larvae, Nucs: 40, Late: far.Batches[1].Graft.Late})
	for n := range 81 {
		want := 0.0
		for k := range n + 1 {
			want += one.Exactly(k) * two.Exactly(n-k)
		}
		if got := both.Exactly(n); math.Abs(got-want) > 1e-9 {
			t.Fatalf("%d queens with %v, of each graft for itself %v", n, got, want)
		}
	}
}

// The hour of a graft that is said moves the hard hour of its cells with it.
func TestAWishIsGraftedAtItsHour(t *testing.T) {
	p := plannerOf(yardOf(40), "2027-03-16 08:00")
	w := plan.Wish{Queens: 10, By: day(t, "2027-08-20"), Graft: day(t, "2027-04-20"), Larvae: 24, Grafts: 2}
	usual := p.Answer(w)
	w.Minute = 9*60 + 30
	for i, b := range p.Answer(w).Batches {
		was := usual.Batches[i]
		if got := b.Ladder.Graft.In(p.View().Zone()); got.Hour() != 9 || got.Minute() != 30 || b.Day != was.Day {
			t.Errorf("grafted %v, want 9:30 on %s", got, was.Day)
		}
		if moved := was.Clock.Hard().Sub(b.Clock.Hard()); moved != was.Ladder.Graft.Sub(b.Ladder.Graft) || moved <= 0 {
			t.Errorf("the hard hour moved by %v", moved)
		}
	}
}

// The nucs and larvae with which a wish would be sure enough are enough when they are had, by
// the day of the wish.
func TestWithTheNucsThatAreNamedItIsEnough(t *testing.T) {
	p := plannerOf(yardOf(30), "2027-03-16 08:00")
	named := 0
	for _, queens := range []int{10, 15, 20, 25} {
		for _, by := range []string{"2027-05-20", "2027-06-12"} {
			w := plan.Wish{Queens: queens, By: day(t, by)}
			few := p.Answer(w)
			if few.Sizing.Limit == plan.NoLimit {
				continue
			}
			named++
			if few.Sizing.Nucs <= few.Nucs || few.Sizing.With == 0 {
				t.Fatalf("%d by %s: %v, %d nucs and %d larvae", queens, by, few.Sizing.Limit, few.Sizing.Nucs, few.Sizing.With)
			}
			w.Nucs = few.Sizing.Nucs
			if a := p.Answer(w); a.Sizing.Limit != plan.NoLimit || a.Chance < a.Sure-1e-6 || a.Larvae > few.Sizing.With {
				t.Errorf("%d by %s: with %d nucs %.3f of %d larvae, %v", queens, by, w.Nucs, a.Chance, a.Larvae, a.Sizing.Limit)
			}
			w.Larvae = few.Sizing.With
			if a := p.Answer(w); a.Chance < a.Sure-1e-6 {
				t.Errorf("%d by %s: with %d nucs and %d larvae %.3f", queens, by, w.Nucs, w.Larvae, a.Chance)
			}
		}
	}
	if named < 4 {
		t.Errorf("%d of 8 wishes want more nucs", named)
	}
}
