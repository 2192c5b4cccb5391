package season_test

import (
	"fmt"
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// freeOn writes that Ida is free from eight in the morning for so many minutes on each of
// some days.
func freeOn(p *booktest.Pen, from, until calendar.Day, minutes func(calendar.Day) int) *booktest.Pen {
	ida := booktest.Person("Ida")
	p.Write(book.PersonDescribed{Person: ida, Name: "Ida M."})
	for d := from; d <= until; d++ {
		p.Write(book.HoursOn{Person: ida, Day: d, FreeHours: book.FreeHours{From: 480, Until: 480 + minutes(d)}})
	}
	return p
}

// overOn are the days on which there is too little time.
func overOn(all []season.Clash) (days []calendar.Day) {
	for _, c := range all {
		if c.Kind == season.MinutesOver {
			days = append(days, c.From)
		}
	}
	return days
}

// TestHalfAMinuteIsNothing, by hand: sixty larvae at 0.5065 min take 30.39 min and at
// 0.509 min 30.54; of half an hour they are 0.39 and 0.54 min over, and only the second is
// more than a minute said in whole ones. The graft has no other day.
func TestHalfAMinuteIsNothing(t *testing.T) {
	graft := day(t, "2027-05-01")
	for each, over := range map[float64]bool{0.5065: false, 0.509: true} {
		p := freeOn(world{nucs: 60}.pen(), graft-60, graft+90, func(d calendar.Day) int {
			if d == graft {
				return 30
			}
			return 900
		})
		p.Write(book.NumberChanged{Number: "minutes_graft_larva", Value: each})
		if days := overOn(season.Clashes(plannerOf(planned(p, graft)))); (len(days) == 1 && days[0] == graft) != over || len(days) > 1 {
			t.Errorf("a larva takes %g min: over on %v", each, days)
		}
	}
}

// TestTheSecondLookHasItsOwnDays: nucs without eggs are looked at again some days later,
// in a window that is as much later: on its last day there is time for all of it, though
// that of the first look is over, and the day after it is too late.
func TestTheSecondLookHasItsOwnDays(t *testing.T) {
	graft := day(t, "2027-05-01")
	window := func(p *plan.Planner) (from, best, by calendar.Day) {
		for b := range p.View().Plans() {
			l := p.LadderOf(b)
			r := l.Rung(plan.LookForEggs)
			for _, m := range p.Minutes(l, p.SizeOf(b)) {
				if m.Step == plan.LookForEggs {
					best = m.Day // the second is the last of them
				}
			}
			return r.From + best - r.Best, best, r.By + best - r.Best
		}
		return
	}
	free := func(on func(d calendar.Day) bool) *plan.Planner {
		return plannerOf(planned(freeOn(world{nucs: 60}.pen(), graft-60, graft+90, func(d calendar.Day) int {
			if on(d) {
				return 900
			}
			return 0
		}), graft))
	}
	from, best, by := window(free(func(calendar.Day) bool { return true }))
	if by <= best {
		t.Fatalf("the second look is from %s to %s, best on %s", from, by, best)
	}
	for _, c := range []struct {
		on   calendar.Day // of the days from the window's first on, the only one that is free
		over bool
	}{{from, false}, {by, false}, {by + 1, true}} {
		p := free(func(d calendar.Day) bool { return d < from || d == c.on || d > by+30 })
		over := false
		for _, d := range overOn(season.Clashes(p)) {
			over = over || d == best
		}
		if over != c.over {
			t.Errorf("from %s to %s somebody is free on %s alone: over on %s %v", from, by, c.on, best, over)
		}
	}
}

// TestBeesOfAWeekInASearch: two colonies give 2.2 kg a week, twelve nucs want 2.0 and a starter
// 1.2. Of two orders for two lines, each with one day for its graft, the second is kept when
// its starter is set up a week after the nucs of the first are made up, which is ten days
// after the starter of that, and not a day sooner.
func TestBeesOfAWeekInASearch(t *testing.T) {
	first := day(t, "2027-06-10")
	for apart, kept := range map[calendar.Day]int{6: 1, 7: 1, 16: 1, 17: 2} {
		var w season.Wanted
		w.Window, w.Larvae, w.Seed = 1, []int{24}, 1
		for i, line := range []string{"Rook", "Plover"} {
			w.Promises = append(w.Promises, season.Promise{Name: fmt.Sprint("order ", i+1), Queens: 5, Lines: []string{line}, By: first + apart*calendar.Day(i), Sure: 0.8})
		}
		f := season.Search(plannerOf(world{nucs: 90, givers: 2}.pen()), w, nil)
		slices.SortFunc(f.Batches, func(a, b season.Batch) int { return a.Day.Sub(b.Day) })
		if len(f.Kept) != kept || kept == 2 && f.Batches[1].Day-f.Batches[0].Day != 17 {
			t.Errorf("%d days apart %d orders are kept by %d batches: %+v", apart, len(f.Kept), len(f.Batches), f.Short)
		}
	}
}
