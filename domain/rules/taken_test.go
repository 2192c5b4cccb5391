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
// day says so; the day's own work stays, and so does what cannot be done any more from the
// day on from which it is looked at.
func TestOnADayAheadPlannedStepsAreTakenAsDone(t *testing.T) {
	date := func(month time.Month, day int) calendar.Day { return calendar.Date(2027, month, day) }
	for name, c := range map[string]struct {
		from, on calendar.Day
		want     string
		taken    bool
	}{
		"the day itself":          {date(time.April, 2), date(time.May, 10), "Graft 40 larvae", true},
		"behind the graft":        {date(time.April, 2), date(time.May, 14), "", true},
		"its nucs":                {date(time.April, 2), date(time.May, 18), "Make up the nucs", true},
		"a month later":           {date(time.April, 2), date(time.June, 10), "", true},
		"none is before it":       {date(time.April, 2), date(time.April, 3), "Hang drone comb into the drone colonies", false},
		"what is past stays so":   {date(time.May, 8), date(time.May, 10), "Lapsed: move the graft of Mon 10 May to Fri 14 May, or drop it", false},
		"today nothing is taken":  {date(time.May, 10), date(time.May, 10), "Lapsed: move the graft of Mon 10 May to Fri 14 May, or drop it", false},
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
