package season_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// waysOfDrones are the ways out of too few drone colonies for a graft of a day, planned or
// done, that move no batch; and the first day on which its virgins fly.
func waysOfDrones(t *testing.T, write func(pen *booktest.Pen)) (ways []string, flies calendar.Day) {
	t.Helper()
	pen := world{nucs: 60}.pen()
	for _, name := range []string{"D1", "D2", "D3", "D4", "D5", "D6", "D7"} {
		pen.Write(book.ColonyDescribed{Colony: booktest.Colony(name), Name: name, Yard: booktest.Yard("home"), Roles: []book.Role{book.DroneSource}})
	}
	write(pen)
	p := plannerOf(pen)
	c := clash(t, season.Clashes(p), season.DronesShort)
	for _, w := range c.Ways {
		if w.Plan.Batch.IsZero() {
			ways = append(ways, w.What)
		}
	}
	for b := range p.View().Plans() {
		flies = p.LadderOf(b).Rung(plan.Fly).From
	}
	return ways, flies
}

// By hand: drones are ripe 40 days after their comb went in, so that of virgins who first
// fly on a day must hang 40 days before it. The view is of 1 April: where that is past, only
// ripe drones help, or a graft whose virgins first fly on 11 May.
func TestMoreDronesByWhen(t *testing.T) {
	on := func(graft string) func(pen *booktest.Pen) {
		return func(pen *booktest.Pen) {
			pen.Write(book.BatchPlanned{Batch: booktest.Batch("one"), Day: day(t, graft), Larvae: 40, Nucs: 30, Yard: booktest.Yard("home")})
		}
	}
	ways, flies := waysOfDrones(t, on("2027-06-01"))
	if want := []string{"1 more drone colony, its comb in by " + (flies - 40).Short()}; !slices.Equal(ways, want) {
		t.Errorf("in good time: %q, want %q", ways, want)
	}
	ways, flies = waysOfDrones(t, on("2027-04-05"))
	want := []string{
		"1 more drone colony with ripe drones, there by " + flies.Short() + "; too late to raise, its comb was due by " + (flies - 40).Short(),
		"graft of " + (day(t, "2027-04-05") + day(t, "2027-05-11") - flies).Short(),
	}
	if len(ways) != 2 || ways[0] != want[0] || !strings.Contains(ways[1], strings.TrimPrefix(want[1], "graft of ")) {
		t.Errorf("too late: %q, want %q", ways, want)
	}
	ways, _ = waysOfDrones(t, func(pen *booktest.Pen) {
		pen.At("2027-03-13 12:00").Write(book.Grafted{Batch: booktest.Batch("one"), Number: 1, Larvae: 40})
	})
	if len(ways) != 1 || !strings.HasPrefix(ways[0], "virgins fly since ") {
		t.Errorf("flying: %q", ways)
	}
}

// A yard wants eight drone colonies at least. With one the search says that seven more would do; with
// three it finds a graft, and says before that is planned that five are missing, as amounts and the season do
// then; with eight nobody misses any.
func TestOneRuleOfDroneColonies(t *testing.T) {
	wanted := func(drones, queens int) (*booktest.Pen, season.Found, []season.Clash) {
		pen := world{nucs: 120, givers: 60, drones: drones}.pen()
		p := plannerOf(pen)
		f := season.Search(p, season.Wanted{Promises: []season.Promise{{Queens: queens, By: day(t, "2027-07-20"), Sure: 0.9}}}, nil)
		return pen, f, slices.DeleteFunc(f.Clashes(p), func(c season.Clash) bool { return c.Kind != season.DronesShort })
	}
	_, f, _ := wanted(1, 30)
	if len(f.Short) != 1 || len(f.Short[0].Lacks) != 1 || f.Short[0].Lacks[0] != (season.Lack{Limit: season.DronesLimit, More: 7}) {
		t.Errorf("with one: %+v", f.Short)
	}
	for drones, missing := range map[int]float64{3: 5, 8: 0} {
		pen, f, before := wanted(drones, 14)
		if len(f.Batches) != 1 || (len(before) > 0) != (missing > 0) || missing > 0 && before[0].Short() != missing {
			t.Fatalf("with %d: %d grafts, %+v, short %+v", drones, len(f.Batches), before, f.Short)
		}
		p := plannerOf(pen.Write(f.Plan(0, booktest.Batch("0"))))
		for b := range p.View().ToGraft() {
			for _, n := range p.Planned(b).Needs {
				if n.Good == plan.DroneColonies && n.Short() != missing {
					t.Errorf("with %d amounts are short of %v, want %v", drones, n.Short(), missing)
				}
			}
		}
		for _, c := range season.Clashes(p) {
			if c.Kind == season.DronesShort && c.Short() != missing {
				t.Errorf("with %d the season is short of %v, want %v", drones, c.Short(), missing)
			}
		}
	}
}
