package rules_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// seen are the planned steps that are work of a day, as it is looked at from another.
func seen(p *booktest.Pen, from, on calendar.Day) (all []string, plan rules.DayPlan) {
	season := book.NewSeason(time.LoadLocation, p.Entries)
	plan = rules.Day(season.Ahead(on.At(12, 0, time.UTC), from), on)
	for _, s := range plan.Stops {
		for _, t := range s.Tasks {
			if t.Findings[0].Rule == rules.PlannedStep {
				all = append(all, t.Title)
			}
		}
	}
	return all, plan
}

// graftPlanned is a book with a graft planned for the 10th of May.
func graftPlanned() *booktest.Pen {
	home := booktest.Yard("home")
	return (&booktest.Pen{}).At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"},
		book.BatchPlanned{Batch: booktest.Batch("b"), Day: calendar.Date(2027, time.May, 10), Minute: 15 * 60, Yard: home, Larvae: 40, Nucs: 12},
	)
}

// On a day ahead what is planned for days before it is taken as done, the graft too, and the
// day says so; the day's own work stays. What was missed before is asked for today alone.
func TestOnADayAheadPlannedStepsAreTakenAsDone(t *testing.T) {
	date := func(month time.Month, day int) calendar.Day { return calendar.Date(2027, month, day) }
	for name, c := range map[string]struct {
		from, on calendar.Day
		want     string
		taken    bool
	}{
		"the day itself":          {date(time.April, 2), date(time.May, 10), "Graft 40 larvae", true},
		"behind the graft":        {date(time.April, 2), date(time.May, 14), "Count the capped cells", true},
		"while cells ripen":       {date(time.April, 2), date(time.May, 16), "", true},
		"its nucs":                {date(time.April, 2), date(time.May, 18), "Make up the nucs", true},
		"a month later":           {date(time.April, 2), date(time.June, 10), "", true},
		"none is before it":       {date(time.April, 2), date(time.April, 3), "Hang drone comb into the drone colonies", false},
		"what was missed too":     {date(time.May, 8), date(time.May, 10), "Graft 40 larvae", true},
		"its cells":               {date(time.May, 8), date(time.May, 14), "Count the capped cells", true},
		"the breeder is confined": {date(time.May, 6), date(time.May, 7), "Feed the starters", true},
	} {
		t.Run(name, func(t *testing.T) {
			all, plan := seen(graftPlanned(), c.from, c.on)
			if got := strings.Join(all, "; "); got != c.want || plan.Taken != c.taken {
				t.Errorf("%q, taken as done %v; want %q, %v", got, plan.Taken, c.want, c.taken)
			}
		})
	}
}

// A comb that is taken as hung in serves the virgins of the next graft too: from a day ahead
// no more combs are asked for than from today.
func TestACombTakenAsHungInServesTheNextGraft(t *testing.T) {
	p := graftPlanned().Write(book.BatchPlanned{Batch: booktest.Batch("c"), Day: calendar.Date(2027, time.May, 13), Minute: 15 * 60, Yard: booktest.Yard("home"), Larvae: 40, Nucs: 12})
	for on := calendar.Date(2027, time.April, 2); on < calendar.Date(2027, time.May, 1); on++ {
		all, _ := seen(p, calendar.Date(2027, time.April, 2), on)
		if len(all) > 1 {
			t.Errorf("%s: %d combs are asked for: %q", on.Short(), len(all), all)
		}
	}
	if _, plan := seen(p, calendar.Date(2027, time.April, 2), calendar.Date(2027, time.May, 1)); !plan.Taken {
		t.Error("no comb was asked for")
	}
}

// What follows a graft that is taken as done goes on: its work is on its days with its minutes, and
// ripe cells have their hard hour. From the day of the plan every step is on one day.
func TestWhatFollowsAPlannedGraftIsWorkOfItsDays(t *testing.T) {
	p, from := graftPlanned(), calendar.Date(2027, time.April, 2)
	want := []string{"Move the cells", "Count the take", "Count the capped cells", "Give about", "Look for eggs", "Look for eggs", "Catch about"}
	var told []string
	hard := 0
	for on := calendar.Date(2027, time.May, 11); on < calendar.Date(2027, time.July, 1); on++ {
		_, plan := seen(p, from, on)
		for _, f := range plan.Hard {
			hard++
			if f.By.Before(on.Start(time.UTC)) || f.By.After((on + 2).Start(time.UTC)) {
				t.Errorf("%s: %s has its hard hour %s", on.Short(), f.Do, f.By)
			}
		}
		for _, s := range plan.Stops {
			for _, task := range s.Tasks {
				if task.Minutes <= 0 {
					t.Errorf("%s: %s takes no time", on.Short(), task.Title)
				}
				if f := task.Findings[0]; f.Act == rules.ActGoOn && calendar.DayOf(f.Best, time.UTC) == on {
					told = append(told, task.Title)
				}
			}
		}
	}
	if len(told) != len(want) {
		t.Fatalf("told %q", told)
	}
	for i, begins := range want {
		if !strings.HasPrefix(told[i], begins) {
			t.Errorf("step %d is %q, want %q", i, told[i], begins)
		}
	}
	if hard == 0 {
		t.Error("no hard hour is told")
	}
}

// A graft that was not made on its day is made on the next; once its larvae are too old nothing is left
// but to move or drop it: in the work, among the events, and for the nucs.
func TestAGraftThatWasNotMadeHasNoCells(t *testing.T) {
	p := graftPlanned()
	p.At("2027-05-06 10:00").Write(
		book.BatchReadied{Batch: booktest.Batch("b"), Step: book.BreederConfined},
		book.BatchReadied{Batch: booktest.Batch("b"), Step: book.StarterSetUp},
	)
	for on, made := range map[string]bool{"2027-05-10 18:00": true, "2027-05-11 08:00": true, "2027-05-12 08:00": false, "2027-05-20 08:00": false} {
		v := p.View(on)
		steps, events, lapsed := map[string]bool{}, map[string]bool{}, false
		for _, f := range rules.Findings(v) {
			if f.Rule == rules.PlannedStep {
				steps[f.What] = true
				lapsed = lapsed || strings.HasPrefix(f.Do, "Lapsed: move the graft of Mon 10 May to ")
			}
		}
		for _, d := range rules.Deadlines(v, v.Today()-30, v.Today()+60) {
			events[d.What] = true
		}
		if made != (len(steps) > 1) || made != (len(events) > 1) || made == lapsed {
			t.Errorf("%s: work %v, events %v", on, steps, events)
		}
		if !made && !events["Planned: graft, not made"] {
			t.Errorf("%s: events %v", on, events)
		}
	}
}
