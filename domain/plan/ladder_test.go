package plan_test

import (
	"math"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/demo"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// nobody is a book in which nothing is written.
func nobody(t *testing.T, on string) *plan.Planner {
	t.Helper()
	at, err := time.Parse(time.DateTime, on+" 08:00:00")
	if err != nil {
		t.Fatal(err)
	}
	return plan.New(course.New(book.NewSeason(nil, nil).At(at)))
}

func day(t *testing.T, s string) calendar.Day {
	t.Helper()
	d, err := calendar.ParseDay(s)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// The steps of printed calendars, counted from the graft: a teaching page's
// grafting table; Büchler et al. 2013, J Apic Res 52(1), queen rearing
// 2/1/4, 2/1/5: confine four days before, feed at least three days before, count
// the next day, cells in on day 10, emerge on day 12.
func TestTheLadderKeepsToPrintedCalendars(t *testing.T) {
	p := nobody(t, "2027-03-16")
	graft := day(t, "2027-04-19")
	l := p.Ladder(p.GraftAt(graft), 24, book.YardID{}) // of a hundred cells one walks sooner, and they go in on day 9
	for step, want := range map[plan.Step]int{
		plan.Confine: -4, plan.FeedStarter: -3, plan.GraftLarvae: 0, plan.ToFinisher: 1, plan.CountTake: 1,
		plan.CountCapped: 5, plan.GiveCells: 10, plan.Emerge: 12,
	} {
		if got := l.Rung(step).Best.Sub(graft); got != want {
			t.Errorf("%s: day %d from the graft, printed %d", step, got, want)
		}
	}
}

// Common practice, no source: nucs are made up the day before or two before.
func TestEachStepStandsWhereTheNextNeedsIt(t *testing.T) {
	p := nobody(t, "2027-03-16")
	l := p.Ladder(p.GraftAt(day(t, "2027-04-19")), 96, book.YardID{})
	for _, pair := range [][2]plan.Step{
		{plan.Confine, plan.GraftLarvae},
		{plan.SetUpStarter, plan.GraftLarvae},
		{plan.GraftLarvae, plan.CountCapped},
		{plan.MakeUpNucs, plan.GiveCells},
		{plan.GiveCells, plan.Emerge},
		{plan.Emerge, plan.Fly},
		{plan.Fly, plan.LookForEggs},
		{plan.LookForEggs, plan.Ready},
	} {
		if a, b := l.Rung(pair[0]), l.Rung(pair[1]); a.Best >= b.Best {
			t.Errorf("%s is best on %s, after %s on %s", pair[0], a.Best, pair[1], b.Best)
		}
	}
	for _, r := range l.Rungs {
		if r.From > r.Best || r.Best > r.By {
			t.Errorf("%s runs from %s by %s to %s", r.Step, r.From, r.Best, r.By)
		}
	}
	if hard := l.Rung(plan.GiveCells).Hard; !hard.Before(l.Clock.FirstOut(0.01)) {
		t.Errorf("cells must be out by %s, after the first may walk at %s", hard, l.Clock.FirstOut(0.01))
	}
}

// Drones ripen 40 d from the egg (Büchler et al. 2013, 2/2/3): comb hung in on
// the last day of its window gives ripe ones on the first day of flights.
func TestDroneCombIsInTimeForTheFlights(t *testing.T) {
	p := nobody(t, "2027-03-16")
	l := p.Ladder(p.GraftAt(day(t, "2027-04-19")), 96, book.YardID{})
	if got := l.Rung(plan.Fly).From.Sub(l.Rung(plan.DroneComb).By); got != 40 {
		t.Errorf("drone comb in %d days before the first flights, 40 printed", got)
	}
}

func TestBackwardFindsTheLastGraftInTime(t *testing.T) {
	p := nobody(t, "2027-03-16")
	by := day(t, "2027-05-31")
	l, ok := p.Backward(by, false, 96, book.YardID{}, day(t, "2027-03-16"))
	if !ok {
		t.Fatal("no graft is in time")
	}
	in := func(d calendar.Day) float64 {
		at := p.Ladder(p.GraftAt(d), 96, book.YardID{}).Laid
		return at.Ready(by-2) / at.Ever() // two days are kept in hand
	}
	if in(l.Day) < 0.9 || in(l.Day+1) >= 0.9 {
		t.Errorf("graft on %s: %.2f are ready, a day later %.2f", l.Day, in(l.Day), in(l.Day+1))
	}
	if _, ok := p.Backward(by, false, 96, book.YardID{}, by-15); ok {
		t.Error("fifteen days before the hand-over are enough")
	}
}

// A day on which nobody is free is passed over.
func TestBackwardKeepsToFreeDays(t *testing.T) {
	start := day(t, "2027-05-11")
	season := book.NewSeason(nil, demo.Season(start, time.UTC))
	p := plan.New(course.New(season.At(start.At(8, 0, time.UTC))))
	today := p.View().Today()
	l, ok := p.Backward(today+60, false, 60, book.YardID{}, today)
	if !ok {
		t.Fatal("no graft is in time")
	}
	if free := p.View().MinutesFree(l.Day); free == 0 {
		t.Errorf("the graft is on %s, when nobody is free", l.Day)
	}
}

func TestLaterIsNeverLessReady(t *testing.T) {
	p := nobody(t, "2027-03-16")
	laid := p.Ladder(p.GraftAt(day(t, "2027-04-19")), 96, book.YardID{}).Laid
	was := 0.0
	for d := day(t, "2027-04-19"); d < day(t, "2027-08-01"); d++ {
		now := laid.Ready(d)
		if now < was || now > laid.By(d)+1e-12 {
			t.Fatalf("%s: %.3f ready after %.3f, %.3f laid", d, now, was, laid.By(d))
		}
		was = now
	}
	if math.Abs(was-laid.Ever()) > 1e-9 {
		t.Errorf("in the end %.4f are ready of %.4f", was, laid.Ever())
	}
}

// Who emerges early lays early: on the days when it hangs on both whether she is
// ready, more are than if the one said nothing of the other.
func TestReadyAsksBothOfTheSameQueen(t *testing.T) {
	p, n := nobody(t, "2027-03-16"), practice.Numbers{}
	laid := p.Ladder(p.GraftAt(day(t, "2027-04-19")), 96, book.YardID{}).Laid
	after, age := calendar.Day(n.Days(practice.ReadyAfterFirstEgg)), calendar.Day(n.Days(practice.LeastAgeAtHandOver))
	more := 0
	for d := day(t, "2027-05-20"); d < day(t, "2027-07-01"); d++ {
		apart := laid.By(d-after) * laid.Out().By(d-age)
		if ready := laid.Ready(d); ready < apart-1e-12 || ready > min(laid.By(d-after), laid.Out().By(d-age))+1e-12 {
			t.Errorf("%s: %.4f ready, %.4f if both were independent", d, ready, apart)
		} else if ready > apart+1e-4 {
			more++
		}
	}
	if more == 0 {
		t.Error("on no day are more ready than if both were independent")
	}
}
