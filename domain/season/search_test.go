package season_test

import (
	"fmt"
	"math"
	"reflect"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// middling is a season that is too large to be gone through whole.
func middling(t *rapid.T) (world, season.Wanted) {
	w := world{
		nucs: rapid.IntRange(20, 120).Draw(t, "nucs"), starters: rapid.IntRange(0, 4).Draw(t, "starters"), finishers: rapid.IntRange(0, 8).Draw(t, "finishers"),
		givers: rapid.SampledFrom([]int{0, 4, 12}).Draw(t, "givers"), drones: rapid.SampledFrom([]int{0, 8}).Draw(t, "drones"),
	}
	wanted := season.Wanted{Rounds: 5, Nodes: 500, Window: 4, Larvae: []int{24, 48, 72}, Seed: rapid.Uint64().Draw(t, "seed")}
	if rapid.Bool().Draw(t, "hurried") {
		wanted.Minutes = float64(rapid.IntRange(100, 400).Draw(t, "minutes"))
	}
	first, _ := calendar.ParseDay("2027-05-20")
	for range rapid.IntRange(1, 6).Draw(t, "promises") {
		wanted.Promises = append(wanted.Promises, season.Promise{
			Queens: rapid.IntRange(1, 25).Draw(t, "queens"), By: first + calendar.Day(rapid.IntRange(-40, 40).Draw(t, "by")),
			Sure: rapid.SampledFrom([]float64{0, 0.6, 0.8, 0.95}).Draw(t, "sure"), Lines: rapid.SampledFrom([][]string{nil, {"Rook"}, {"Rook", "Plover"}, {"Plover"}}).Draw(t, "lines"),
		})
	}
	return w, wanted
}

// What is found breaks no limit: put on the plan, it clashes with nothing, and no
// day has more minutes than were allowed. Every promise is kept as surely as is
// wished, or said to be short; what is short is never more than was promised.
func TestWhatIsFoundHolds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w, wanted := middling(t)
		pen := w.pen()
		f := season.Search(plannerOf(pen), wanted, nil)
		pen.At("2027-03-31 20:00")
		for i := range f.Batches {
			pen.Write(f.Plan(i, booktest.Batch(fmt.Sprint(i))))
		}
		p := plannerOf(pen)
		all := slices.DeleteFunc(season.Clashes(p), func(c season.Clash) bool { // whether they are ripe hangs on the comb that is put in
			return c.Kind == season.DronesUnripe || c.Kind == season.DronesOld
		})
		if len(all) > 0 {
			t.Fatalf("%d batches: %s", len(f.Batches), all[0].Why)
		}
		minutesHold(t, p, wanted)
		stated := map[int]bool{}
		for _, k := range f.Kept {
			stated[k.Promise] = true
			if sure := f.Promises[k.Promise].Sure - float64(k.Points)/100; k.Chance < sure-1e-9 || k.Points > 2 {
				t.Fatalf("promise %d is kept with %v, %v wished", k.Promise, k.Chance, sure)
			}
			for _, b := range k.Batches {
				if line := f.Batches[b].Line; len(f.Promises[k.Promise].Lines) > 0 && !slices.Contains(f.Promises[k.Promise].Lines, line) {
					t.Fatalf("promise %d gets %q", k.Promise, line)
				}
			}
		}
		for _, s := range f.Short {
			stated[s.Promise] = true
			if p := f.Promises[s.Promise]; s.Queens >= p.Queens || s.Off > p.Queens || len(s.Batches) > 0 && (s.Off == p.Queens || s.Chance < p.Sure*float64(p.Queens-s.Off)/float64(p.Queens)-1e-9 && s.Part < p.Sure-1e-9) || s.Day != 0 && s.Day <= p.By || len(s.Limits) == 0 || s.Why == "" {
				t.Fatalf("short: %+v of %+v", s, p)
			}
		}
		if len(stated) != len(wanted.Promises) || beyond(f) {
			t.Fatalf("%d of %d promises told of; %v minutes, bound %v", len(stated), len(wanted.Promises), f.Minutes, f.Bound)
		}
	})
}

// beyond tells whether an answer is better than its bounds, which none can be.
func beyond(f season.Found) bool {
	_, short := f.Queens()
	return f.Least > short || f.Least == short && f.Bound > f.Minutes+1e-6
}

func minutesHold(t *rapid.T, p *plan.Planner, wanted season.Wanted) {
	days := map[calendar.Day]float64{}
	for b := range p.View().Plans() {
		for _, m := range p.Minutes(p.LadderOf(b), p.SizeOf(b)) {
			days[m.Day] += m.Minutes
		}
	}
	for d, m := range days {
		if wanted.Minutes > 0 && m > wanted.Minutes+1 {
			t.Fatalf("%s: %.0f min, %.0f allowed", d, m, wanted.Minutes)
		}
	}
}

func TestTheSameAnswerTwice(t *testing.T) {
	w := season.Wanted{Rounds: 20, Nodes: 50, Window: 6, Minutes: 250, Seed: 7}
	for i := range 7 {
		w.Promises = append(w.Promises, season.Promise{Queens: 4 + i, By: day(t, "2027-06-01") + calendar.Day(2*i), Sure: 0.8})
	}
	p := plannerOf(world{nucs: 90, starters: 3, finishers: 5}.pen())
	a, b := season.Search(p, w, nil), season.Search(p, w, nil)
	if !reflect.DeepEqual(a.Kept, b.Kept) || !reflect.DeepEqual(a.Short, b.Short) || a.Minutes != b.Minutes || len(a.Batches) != len(b.Batches) {
		t.Errorf("%v and %v", a.Kept, b.Kept)
	}
}

// What is told never gets worse, and saying no stops the search at once with what
// there is.
func TestProgressAndStop(t *testing.T) {
	p, w := big(t)
	w.Rounds = 30
	var all []season.Progress
	season.Search(p, w, func(now season.Progress) bool {
		all = append(all, now)
		return true
	})
	for i, now := range all[1:] {
		if was := all[i]; now.Short > was.Short || now.Short == was.Short && now.Minutes > was.Minutes || now.Short == 0 && now.Bound > now.Minutes {
			t.Errorf("round %d: %d short, %v min, bound %v, after %d and %v", now.Round, now.Short, now.Minutes, now.Bound, was.Short, was.Minutes)
		}
	}
	first := season.Search(p, w, func(season.Progress) bool { return false })
	if kept, short := first.Queens(); first.Exact || kept == 0 || short != all[0].Short || first.Minutes != all[0].Minutes {
		t.Errorf("stopped at once: %d kept, %d short, %v min, first told of %v", kept, short, first.Minutes, all[0].Minutes)
	}
	if got := all[0].Found(); len(got.Batches) == 0 {
		t.Error("the last answer is not to be had")
	}
}

// Each promise that cannot be kept gets the reason, and what comes nearest is true.
func TestWhatCannotBeKept(t *testing.T) {
	far := day(t, "2027-06-14")
	for _, c := range []struct {
		name    string
		world   world
		promise season.Promise
		want    season.Limit
	}{
		{"tomorrow", world{nucs: 60}, season.Promise{Queens: 5, By: day(t, "2027-04-20")}, season.TooLate},
		{"surer than any graft", world{nucs: 60}, season.Promise{Queens: 30, By: far, Sure: 0.9999}, season.TooUnsure},
		{"nucs", world{nucs: 10}, season.Promise{Queens: 20, By: far, Sure: 0.8}, season.NucsLimit},
		{"starters", world{nucs: 300, starters: 1}, season.Promise{Queens: 70, By: far, Sure: 0.8}, season.StartersLimit},
		{"finishers", world{nucs: 200, finishers: 1}, season.Promise{Queens: 30, By: far, Sure: 0.8}, season.FinishersLimit},
		{"bees", world{nucs: 200, givers: 3}, season.Promise{Queens: 20, By: far, Sure: 0.8}, season.BeesLimit},
		{"drones", world{nucs: 200, givers: 60, drones: 1}, season.Promise{Queens: 40, By: far, Sure: 0.8}, season.DronesLimit},
	} {
		p := plannerOf(c.world.pen())
		f := season.Search(p, season.Wanted{Promises: []season.Promise{c.promise}}, nil)
		if len(f.Short) != 1 || !slices.Equal(f.Short[0].Limits, []season.Limit{c.want}) {
			t.Errorf("%s: %+v", c.name, f.Short)
			continue
		}
		short := f.Short[0]
		if fewer := c.promise; short.Queens > 0 {
			fewer.Queens = short.Queens
			if g := season.Search(p, season.Wanted{Promises: []season.Promise{fewer}}, nil); len(g.Short) > 0 {
				t.Errorf("%s: %d were said to be possible: %v", c.name, short.Queens, g.Short)
			}
			fewer.Queens++
			if g := season.Search(p, season.Wanted{Promises: []season.Promise{fewer}}, nil); asWished(g) {
				t.Errorf("%s: %d are possible, said %d", c.name, fewer.Queens, short.Queens)
			}
		}
		if later := c.promise; short.Day > 0 {
			later.By = short.Day
			if g := season.Search(p, season.Wanted{Promises: []season.Promise{later}}, nil); len(g.Short) > 0 {
				t.Errorf("%s: all were said to be possible by %s", c.name, short.Day)
			}
		}
		if more, known := c.world.with(short.Lacks); known {
			if g := season.Search(plannerOf(more.pen()), season.Wanted{Promises: []season.Promise{c.promise}}, nil); len(g.Short) > 0 {
				t.Errorf("%s: %+v more were said to do: %v", c.name, short.Lacks, g.Short)
			}
		}
	}
}

// asWished tells whether all is kept as surely as is wished.
func asWished(f season.Found) bool {
	return len(f.Short) == 0 && !slices.ContainsFunc(f.Kept, func(k season.Kept) bool { return k.Points > 0 })
}

// with is the world with so much more of what it lacks; false where that is no number
// of things.
func (w world) with(lacks []season.Lack) (world, bool) {
	for _, l := range lacks {
		of := map[season.Limit]*int{season.NucsLimit: &w.nucs, season.StartersLimit: &w.starters, season.FinishersLimit: &w.finishers, season.DronesLimit: &w.drones}[l.Limit]
		if of == nil {
			return w, false
		}
		*of += int(l.More)
	}
	return w, len(lacks) > 0
}

// Nobody works on any day but one on which no graft is in time.
func TestDaysOffAreKept(t *testing.T) {
	pen := world{nucs: 60}.pen()
	pen.Write(book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida M.", Free: [7]book.FreeHours{2: {From: 600, Until: 1080}, 5: {From: 600, Until: 1080}}})
	p := plannerOf(pen)
	w := season.Wanted{Promises: []season.Promise{{Queens: 10, By: day(t, "2027-06-14"), Sure: 0.8}}}
	f := season.Search(p, w, nil)
	if len(f.Short) > 0 {
		t.Fatal(f.Short[0].Why)
	}
	for _, b := range f.Batches {
		if p.View().MinutesFree(b.Day) == 0 || b.Rung(plan.GiveCells).NobodyFree {
			t.Errorf("graft on %s, cells out by %s", b.Day, b.Rung(plan.GiveCells).Hard)
		}
	}
	pen.Write(book.DaysOff{Person: booktest.Person("Ida"), From: day(t, "2027-04-01"), To: day(t, "2027-07-01")})
	if f := season.Search(plannerOf(pen), w, nil); len(f.Short) != 1 || f.Short[0].Limits[0] != season.NobodyThere {
		t.Errorf("a season of days off: %+v", f.Short)
	}
}

// promisesOf are the orders of a book for which a graft is needed.
func promisesOf(p *plan.Planner) []season.Promise { return season.Promises(p, handover.New(p), 0) }

// An order for which nothing is planned is a promise; one with a planned batch that is sure enough is
// none. Queens that are sent leave as long before their day as they travel.
func TestOrdersArePromises(t *testing.T) {
	pen := world{nucs: 60}.pen()
	by := day(t, "2027-06-16")
	pen.Write(
		book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 5, Line: "Rook", Substitute: []string{"Plover"}, By: by, Sent: true, Journey: 2},
		book.OrderTaken{Order: booktest.Order("2"), Number: "2", Queens: 5, By: by},
		book.BatchPlanned{Batch: booktest.Batch("b"), Day: by - 60, Larvae: 60, Nucs: 40, Orders: []book.OrderID{booktest.Order("2")}},
	)
	v := pen.View(morning)
	got := promisesOf(plan.New(course.New(v)))
	want := []season.Promise{{Order: booktest.Order("1"), Name: "order 1", Queens: 5, Lines: []string{"Rook", "Plover"}, By: by - 2, Turn: 2}}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("%+v, want %+v", got, want)
	}
}

// What an order waits for on the plan is as sure as a wish for the same graft; one that
// is served after another waits for the queens of both.
func TestHowSureAPlannedOrderIs(t *testing.T) {
	pen := world{nucs: 60}.pen()
	by := day(t, "2027-06-16")
	pen.Write(
		book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 5, By: by},
		book.OrderTaken{Order: booktest.Order("2"), Number: "2", Queens: 4, By: by + 1},
		book.OrderTaken{Order: booktest.Order("3"), Number: "3", Queens: 4, By: by + 2},
		book.BatchPlanned{Batch: booktest.Batch("b"), Day: by - 50, Larvae: 24, Nucs: 12, Orders: []book.OrderID{booktest.Order("1"), booktest.Order("2")}},
	)
	p := plannerOf(pen)
	all := season.EntrustedTo(p, handover.New(plan.New(course.New(p.View()))))
	if len(all) != 2 {
		t.Fatalf("%+v", all)
	}
	for i, queens := range []int{5, 9} {
		b := slices.Collect(p.View().Plans())[0]
		late := 1 - p.LadderOf(b).Laid.InTime(all[i].By, false)
		want := plan.RatesOf(p.View()).Queens(plan.Graft{Larvae: 24, Nucs: 12, Late: late}).AtLeast(queens)
		if got := all[i].Chance; math.Abs(got-want) > 1e-12 || got <= 0 || got >= 1 || all[i].Unsure() != (want < 0.9) {
			t.Errorf("order %d: %v, want %v", i+1, got, want)
		}
	}
}

// Grafted, the batch of an order says how sure that is: until its take is counted as the
// plan did, with few taken less, and one that is planned besides makes it surer. What so few leave
// missing is looked for anew.
func TestHowSureAGraftedOrderIs(t *testing.T) {
	by, b := day(t, "2027-06-16"), booktest.Batch("b")
	graft := by - 50
	sure := func(more bool, taken int) season.Entrusted {
		pen := world{nucs: 60}.pen()
		of := []book.OrderID{booktest.Order("1")}
		pen.Write(book.OrderTaken{Order: of[0], Number: "1", Queens: 5, By: by}, book.BatchPlanned{Batch: b, Day: graft, Larvae: 24, Nucs: 12, Orders: of})
		if more {
			pen.Write(book.BatchPlanned{Batch: booktest.Batch("more"), Day: graft + 3, Larvae: 24, Nucs: 12, Orders: of})
		}
		pen.At(graft.String() + " 12:00").Write(book.Grafted{Batch: b, Number: 7, Larvae: 24})
		if taken > 0 {
			pen.At((graft + 1).String() + " 12:00").Write(book.TakeCounted{Batch: b, Accepted: taken})
		}
		p := plan.New(course.New(pen.View((graft + 1).String() + " 18:00")))
		sheet := handover.New(plan.New(course.New(p.View())))
		all := season.EntrustedTo(p, sheet)
		if len(all) != 1 || !all[0].Grafted {
			t.Fatalf("%+v", all)
		}
		looked := season.Promises(p, sheet, 0)
		if wanted := all[0].Chance < 0.88; len(looked) == 1 != wanted || wanted && (looked[0].Queens != 5 || looked[0].Has == nil) {
			t.Errorf("%d taken, %.3f sure: grafts are looked for of %+v", taken, all[0].Chance, looked)
		}
		return all[0]
	}
	few, uncounted, many, two := sure(false, 6).Chance, sure(false, 0).Chance, sure(false, 22).Chance, sure(true, 6).Chance
	if few <= 0 || few >= uncounted || uncounted >= many || many >= 1 || two <= few {
		t.Errorf("six taken %.3f, not counted %.3f, 22 taken %.3f, six and another graft %.3f", few, uncounted, many, two)
	}
	if said := sure(false, 22).Said(); !strings.HasPrefix(said, "Order 1 waits for what is grafted: 5 queens by ") {
		t.Error(said)
	}
}

// Cells that nobody gave in time serve no order: it wants a graft again.
func TestCellsThatCameTooLateServeNobody(t *testing.T) {
	by, b, o := day(t, "2027-07-16"), booktest.Batch("b"), booktest.Order("1")
	graft := by - 80
	pen := world{nucs: 60}.pen()
	pen.Write(book.OrderTaken{Order: o, Number: "1", Queens: 5, By: by}, book.BatchPlanned{Batch: b, Day: graft, Larvae: 60, Nucs: 40, Orders: []book.OrderID{o}})
	pen.At(graft.String() + " 12:00").Write(book.Grafted{Batch: b, Number: 7, Larvae: 60})
	for on, waits := range map[calendar.Day]bool{graft + 9: true, graft + 20: false} {
		p := plan.New(course.New(pen.View(on.String() + " 08:00")))
		sheet := handover.New(plan.New(course.New(p.View())))
		if got := len(season.EntrustedTo(p, sheet)) == 1; got != waits || season.Waits(p, o) != waits {
			t.Errorf("day %d: it waits %t", on-graft, got)
		}
		if wanted := len(season.Promises(p, sheet, 0)) == 1; wanted == waits {
			t.Errorf("day %d: a graft is wanted %t", on-graft, wanted)
		}
	}
}

// A graft of a line that an order does not take serves it no more than none: the order wants
// one, and the grafts that do serve it are as sure as without it.
func TestAGraftOfAnotherLineServesNobody(t *testing.T) {
	o, on := booktest.Order("1"), day(t, "2027-05-10")
	pen := world{nucs: 60}.pen()
	pen.Write(book.OrderTaken{Order: o, Number: "1", Queens: 5, Line: "Rook", By: on + 60})
	graft := func(name, line string) book.BatchPlanned {
		return book.BatchPlanned{Batch: booktest.Batch(name), Day: on, Larvae: 12, Nucs: 8, Queens: 5, By: on + 60, Line: line, Orders: []book.OrderID{o}}
	}
	of := func() (p *plan.Planner, all []season.Entrusted) {
		p = plannerOf(pen)
		return p, season.EntrustedTo(p, handover.New(p))
	}
	pen.Write(graft("other", "Plover"))
	p, all := of()
	if len(all) != 0 || season.Waits(p, o) || len(promisesOf(p)) != 1 {
		t.Errorf("a graft of Plover: %+v", all)
	}
	its := graft("its", "Rook")
	with := p.Sure(book.BatchPlan{BatchPlanned: its})
	pen.Write(its, book.BatchDropped{Batch: booktest.Batch("other")})
	p, all = of()
	if alone := p.Sure(book.BatchPlan{BatchPlanned: its}); len(all) != 1 || with != alone || alone == 0 {
		t.Errorf("its own graft is %.3f sure with the other one, %.3f alone: %+v", with, alone, all)
	}
}

// Of two orders of one day of which nucs are enough for one, the one that is served first
// is kept, whichever was taken first.
func TestTheOrderServedFirstIsKept(t *testing.T) {
	by := day(t, "2027-06-16")
	for _, first := range []string{"1", "2"} {
		pen := world{nucs: 40, starters: 3, finishers: 6}.pen()
		for _, number := range []string{"1", "2"} {
			o := book.OrderTaken{Order: booktest.Order(number), Number: number, Queens: 8, By: by}
			if number == first {
				o.Priority = 7 // the other has none
			}
			pen.Write(o)
		}
		v := pen.View(morning)
		w := season.Wanted{Promises: promisesOf(plan.New(course.New(v)))}
		f := season.Search(plannerOf(pen), w, nil)
		if len(f.Kept) != 1 || len(f.Short) != 1 || f.Promises[f.Kept[0].Promise].Order != booktest.Order(first) {
			t.Errorf("order %s is served first: kept %+v, short %+v", first, f.Kept, f.Short)
		}
	}
}

// What is passed over, since no graft is in time for it, says so where it is served before what is kept.
func TestWhatIsPassedOverSaysSo(t *testing.T) {
	pen := world{nucs: 40, starters: 3, finishers: 6}.pen()
	by := day(t, "2027-06-16")
	pen.Write(
		book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 60, By: day(t, "2027-04-20"), Priority: 1},
		book.OrderTaken{Order: booktest.Order("2"), Number: "2", Queens: 6, By: by},
	)
	v := pen.View(morning)
	f := season.Search(plannerOf(pen), season.Wanted{Promises: promisesOf(plan.New(course.New(v)))}, nil)
	if len(f.Short) != 1 || len(f.Kept) != 1 || !strings.Contains(f.Short[0].Why, "Until it has its queens, what the grafts for order 2 give is dealt out to it first") {
		t.Errorf("kept %+v, short %+v", f.Kept, f.Short)
	}
}

// With a nuc or two fewer than keep a promise as surely as is wished it is nearly kept and
// says so; with fewer still it is short by a part, and its graft is found all the same.
func TestWhatIsNearlyKeptSaysSo(t *testing.T) {
	nearly, part := 0, 0
	for nucs := 22; nucs > 14; nucs-- {
		w := season.Wanted{Window: 1, Larvae: []int{48}, Promises: []season.Promise{{Queens: 10, By: day(t, "2027-06-16"), Sure: 0.8}}}
		f := season.Search(plannerOf(world{nucs: nucs}.pen()), w, nil)
		_, short := f.Queens()
		switch {
		case len(f.Kept) == 1 && f.Kept[0].Points > 0:
			nearly++
			if k := f.Kept[0]; part > 0 || k.Chance >= 0.8 || k.Chance < 0.78 || k.Chance < 0.795 && !strings.HasPrefix(f.Nearly(k), "nearly kept: 7") {
				t.Errorf("%d nucs: %+v, %q", nucs, k, f.Nearly(k))
			}
		case len(f.Short) == 1 && len(f.Batches) == 1:
			part++
			if short == 0 || short == 10 || f.Short[0].Chance > 0.78 || !strings.Contains(f.Short[0].Why, ", 80 wished") {
				t.Errorf("%d nucs: %+v", nucs, f.Short)
			}
		}
	}
	if nearly == 0 || part == 0 {
		t.Errorf("%d times nearly kept, %d times in part", nearly, part)
	}
}

// The floor of the first answer is a ladder for each day and yard, 1.6 ms each; of
// the rest the sizes of each group of promises.
func BenchmarkFirstAnswer(b *testing.B) {
	p, w := big(b)
	for b.Loop() {
		season.Search(p, w, func(season.Progress) bool { return false })
	}
}

func BenchmarkSearch(b *testing.B) {
	p, w := big(b)
	var f season.Found
	for b.Loop() {
		f = season.Search(p, w, nil)
	}
	_, short := f.Queens()
	b.ReportMetric(100*(f.Minutes/f.Bound-1), "%gap")
	b.ReportMetric(float64(short), "short")
}

// scarce is a season of like promises that the nucs of a yard cannot all keep.
func scarce(t testing.TB, promises int) (*plan.Planner, season.Wanted) {
	w := season.Wanted{Window: 8, Larvae: []int{24, 36, 48}, Rounds: 40, Nodes: 2000}
	for i := range promises {
		w.Promises = append(w.Promises, season.Promise{Queens: 8, By: day(t, "2027-06-10") + calendar.Day(i), Sure: 0.8})
	}
	return plannerOf(world{nucs: 50, starters: 3, finishers: 6}.pen()), w
}

// Of eight promises that want nucs at once, fifty nucs keep some: how many queens are
// short in any plan is known, and near what is found.
func TestWhatIsShortIsBounded(t *testing.T) {
	p, w := scarce(t, 8)
	f := season.Search(p, w, nil)
	_, short := f.Queens()
	if short == 0 || f.Least == 0 || beyond(f) {
		t.Fatalf("%d short, bound %d", short, f.Least)
	}
	if short-f.Least > short/2 {
		t.Errorf("%d short, at least %d in any plan", short, f.Least)
	}
	if f.Least == short && f.Bound == 0 {
		t.Error("nothing is known of the minutes")
	}
}

// BenchmarkScarce finds what can be kept of thirty promises that want nucs at once, and
// how many queens are short at least. Its floor is that of the first answer.
func BenchmarkScarce(b *testing.B) {
	p, w := scarce(b, 30)
	var f season.Found
	for b.Loop() {
		f = season.Search(p, w, nil)
	}
	_, short := f.Queens()
	b.ReportMetric(float64(short), "short")
	b.ReportMetric(float64(f.Least), "least")
}
