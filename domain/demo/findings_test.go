package demo_test

import (
	"fmt"
	"slices"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// wanted are the findings that the season is there to show: at least so many,
// pressing or only open, about these nucs, batches or colonies; nil is any.
var wanted = []struct {
	rule     rules.Rule
	severity rules.Severity
	least    int
	of       []string
}{
	{rules.CellsOut, rules.Pressing, 1, []string{"batch 5"}},
	{rules.NobodyReady, rules.Pressing, 1, []string{"batch 5"}},
	{rules.WildCells, rules.Open, 1, []string{"S5"}},
	{rules.OwnCells, rules.Pressing, 3, []string{"C3", "G3", "T1"}},
	{rules.BeingRobbed, rules.Pressing, 1, []string{"T2"}},
	{rules.DroneLayer, rules.Pressing, 1, []string{"J4"}},
	{rules.LayingWorkers, rules.Pressing, 1, []string{"H2"}},
	{rules.Queenless, rules.Pressing, 12, nil},
	{rules.VirginsTime, rules.Pressing, 1, []string{"D2"}},
	{rules.LookEggs, rules.Pressing, 5, nil},
	{rules.Late, rules.Ahead, 2, nil},
	{rules.LookAgain, rules.Ahead, 5, nil},
	{rules.Ready, rules.Open, 4, nil},
	{rules.Weak, rules.Pressing, 2, nil},
	{rules.Light, rules.Open, 2, nil},
	{rules.Robbers, rules.Pressing, 5, nil},
	{rules.BankVirgins, rules.Pressing, 1, []string{"S11"}},
	{rules.Papers, rules.Open, 1, []string{"Pellam Moor"}},
	{rules.Counts, rules.Pressing, 1, nil},
	{rules.Twice, rules.Open, 1, []string{"Q1"}},
	{rules.GapAsks, rules.Pressing, 1, []string{wantedGap}},
}

// unwanted are rules that a well kept season does not break, apart from what
// is wanted.
var unwanted = []rules.Rule{rules.VirginWalks, rules.CheckBees, rules.Standstill, rules.SameNucs, rules.SameFinisher, rules.SameDay}

func (s season) findings(at time.Time) []rules.Finding {
	return rules.Findings(book.NewSeason(time.LoadLocation, s.entries).At(at))
}

// called is what a subject is called.
func (s season) called(of book.Subject) string {
	if id, ok := of.Nuc(); ok {
		return s.Nuc(id).Name
	}
	if id, ok := of.Colony(); ok {
		return s.Colony(id).Name
	}
	if id, ok := of.Batch(); ok {
		return fmt.Sprintf("batch %d", s.Batch(id).Number)
	}
	if id, ok := of.Yard(); ok {
		return s.Yard(id).Name
	}
	return of.String()
}

// TestWhatIsWantedIsFound: in the morning of any day each situation is there,
// at least as pressing as it should be.
func TestWhatIsWantedIsFound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anySeason(t)
		found := s.findings(s.today.At(8, 0, s.zone))
		for _, w := range wanted {
			var of []string
			for _, f := range found {
				if f.Rule == w.rule && f.Severity >= w.severity {
					of = append(of, s.called(f.Of))
				}
			}
			if len(of) < w.least {
				t.Errorf("%q is found %d times as %v, want %d", w.rule, len(of), w.severity, w.least)
			}
			for _, name := range w.of {
				if !slices.Contains(of, name) {
					t.Errorf("%q is found of %v, not of %s", w.rule, of, name)
				}
			}
		}
	})
}

// TestNoFindingIsAbsurd walks all findings at any hour of today.
func TestNoFindingIsAbsurd(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anySeason(t)
		now := s.today.At(rapid.IntRange(0, 23).Draw(t, "hour"), 30, s.zone)
		for _, f := range s.findings(now) {
			if why := s.absurd(f, now); why != "" {
				t.Errorf("%s: %q, %s, %s: %s", s.called(f.Of), f.Rule, f.What, f.Why, why)
			}
		}
	})
}

// absurd says why a finding cannot be meant; it is empty for a sound one.
func (s season) absurd(f rules.Finding, now time.Time) string {
	of := s.called(f.Of)
	switch {
	case f.What == "" || f.Why == "" || f.Do == "" || f.Sure == "":
		return "it says too little"
	case f.Severity != rules.Ahead && f.Since.After(now):
		return "it began ahead of now"
	case slices.Contains(unwanted, f.Rule):
		return "nothing of the kind is told"
	case f.Rule == rules.CellsOut && of != "batch 5" && of != "batch 6":
		return "its cells are out"
	case f.Rule == rules.CellsOut && of == "batch 6" && f.Severity != rules.Ahead:
		return "it was grafted last evening"
	case f.Rule == rules.Counts && f.Of.Kind == book.KindBatch:
		return "its cells are all accounted for"
	}
	if id, ok := f.Of.Nuc(); ok {
		return s.absurdOf(f, s.Nuc(id))
	}
	return ""
}

func (s season) absurdOf(f rules.Finding, n *book.Nuc) string {
	home := s.Yard(n.Yard).Name
	pressing := f.Severity == rules.Pressing
	switch f.Rule {
	case rules.Queenless:
		if n.Condition() != book.NoQueen {
			return "it is " + n.Condition().String()
		}
	case rules.LookEggs:
		if batch := s.Batch(n.Holds.Batch).Number; pressing && batch != 2 {
			return fmt.Sprintf("it holds a queen of batch %d", batch)
		}
	case rules.Weak:
		if days := s.today.Sub(n.Bees.At.Day(s.zone)); f.Severity != rules.Ahead && n.Bees.Value > 3 && days < 5 {
			return fmt.Sprintf("its bees were on %v sides %d days ago", n.Bees.Value, days)
		}
	case rules.Robbers:
		if n.Bees.Value > 3 && home != "Pellam Moor" {
			return "its yard is in flow and it is strong"
		}
	case rules.OwnCells:
		if pressing && !slices.Contains([]string{"C3", "G3", "T1"}, n.Name) {
			return "nobody saw any"
		}
	}
	return ""
}

// TestTheHardHourIsPast: the cells of batch 5 should have been out before the
// night, and the first virgin is not yet likely to be out in the morning.
func TestTheHardHourIsPast(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anySeason(t)
		b := s.BatchNumbered(5)
		c := b.Bee(b.Left()).Clock(s.Numbers())
		if start := s.today.Start(s.zone); c.Hard().After(start) || c.Hard().Before(start.Add(-aDay/2)) {
			t.Errorf("the hard hour is %v, today begins at %v", c.Hard(), start)
		}
		if p := c.FirstBy(s.today.At(8, 0, s.zone)); p < .01 || p > .15 {
			t.Errorf("a virgin is out in the morning with chance %.3f", p)
		}
	})
}

func TestAnOrderIsPartlyServed(t *testing.T) {
	s := seasonOf(someDay, zone(t, "Europe/Berlin"))
	served, caged := 0, 0
	for o := range s.Orders() {
		if len(o.Handed) > 0 && o.Open() > 0 && o.By > s.today {
			served++
		}
	}
	for q := range s.Queens() {
		if q.Caged() && !q.Virgin {
			caged++
		}
		if !q.Handed.IsZero() && q.Descent == book.DescentDoubtful {
			t.Errorf("a queen of doubtful descent was handed over for a line")
		}
	}
	if served == 0 || caged == 0 {
		t.Errorf("%d orders partly served, %d queens in cages", served, caged)
	}
}

func TestTheWeatherHadAColdWeek(t *testing.T) {
	s := seasonOf(someDay, zone(t, "Europe/Berlin"))
	for y := range s.Yards() {
		grounded := 0
		for d := s.today - 23; d < s.today-16; d++ {
			if y.Weather[d].Sign == book.NoFlight {
				grounded++
			}
		}
		if grounded < 5 {
			t.Errorf("%s: %d days without flight three weeks back", y.Name, grounded)
		}
		for d := s.today - 60; d < s.today+5; d++ {
			if y.Weather[d].Sign == 0 {
				t.Errorf("%s: no weather on %v", y.Name, d)
			}
		}
	}
}

// TestTheMorningIsFull: a quarter of the nucs want the keeper, not half of them,
// and no kind of work is most of it.
func TestTheMorningIsFull(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anySeason(t)
		needing, kinds := map[string]bool{}, map[rules.Rule]int{}
		for _, f := range s.findings(s.today.At(8, 0, s.zone)) {
			if _, ok := f.Of.Nuc(); ok && f.NeedsYou() {
				needing[s.called(f.Of)] = true
				kinds[f.Rule]++
			}
		}
		if n := len(needing); n < 25 || n > 37 {
			t.Errorf("%d nucs need the keeper", n)
		}
		for rule, n := range kinds {
			if n > 16 {
				t.Errorf("%q is found of %d nucs", rule, n)
			}
		}
	})
}
