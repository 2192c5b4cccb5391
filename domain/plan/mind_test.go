package plan_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
)

func mindsOf(p *plan.Planner, a plan.Answer) string {
	var all []string
	for _, m := range p.Minds(a) {
		all = append(all, m.Why+". "+m.Do)
	}
	return strings.Join(all, "\n")
}

// Days are told by where their weather comes from, and what nobody told is minded.
func TestTheWeatherOfTheFlightsIsToldTruly(t *testing.T) {
	home := booktest.Yard("home")
	pen := yardOf(12)
	for m := 1; m <= 6; m++ {
		pen.Write(book.WeatherNormal{Yard: home, Month: m, Low: book.Said(12), High: book.Said(24), Rainy: book.Said(0.2)})
	}
	for _, d := range []string{"2027-06-24", "2027-06-25"} {
		pen.Write(book.WeatherSeen{Yard: home, Day: day(t, d), Sign: book.Flying, Forecast: true})
	}
	p := plannerOf(pen, "2027-06-01 08:00")
	for _, c := range []struct {
		graft string
		want  plan.Flown
		says  string
		mind  string
	}{
		{"2027-05-16", plan.Flown{Usual: 11}, "by the usual weather", ""},
		{"2027-06-06", plan.Flown{Foretold: 2, Usual: 7, Assumed: 2}, "days: 2 foretold, 7 by the usual weather, 2 assumed", "no weather told for July"},
		{"2027-07-20", plan.Flown{Assumed: 11}, "no weather told: assumed", "no weather told for August"},
	} {
		l := p.Ladder(p.GraftAt(day(t, c.graft)), 1, home)
		f := p.Flown(l, home)
		if f.Seen != c.want.Seen || f.Foretold != c.want.Foretold || f.Usual != c.want.Usual || f.Assumed != c.want.Assumed || f.String() != c.says {
			t.Errorf("grafted on %s, flights from %s to %s: %+v, %q", c.graft, l.Rung(plan.Fly).From, l.Rung(plan.Fly).By, f, f)
		}
		a := p.Answer(plan.Wish{Queens: 5, Graft: day(t, c.graft)})
		if got := mindsOf(p, a); c.mind == "" && got != "" || !strings.Contains(got, c.mind) {
			t.Errorf("grafted on %s, minded: %q", c.graft, got)
		}
	}
	if f := p.Flown(p.Ladder(p.GraftAt(day(t, "2027-07-20")), 1, home), home); len(f.Months) != 1 || f.Months[0] != time.August {
		t.Errorf("months without weather: %v", f.Months)
	}
}

// A graft out of season is told, with the last one that makes sense and the next; one that
// is early for the weather says so.
func TestTheSeasonIsMinded(t *testing.T) {
	p := plannerOf(withMonths(yardOf(64)), "2027-05-11 08:00")
	for _, c := range []struct {
		wish plan.Wish
		want []string
	}{
		{plan.Wish{Queens: 10, By: day(t, "2027-07-10")}, nil},
		{plan.Wish{Queens: 10, By: day(t, "2027-12-25"), Laying: true}, []string{"grafted so early for the weather", "not reckoned"}},
		{plan.Wish{Queens: 10, Graft: day(t, "2027-11-10")}, []string{"grafted on Wed 10 Nov under 1 of 100", "last graft that makes sense is on", "Graft from", "2028"}},
	} {
		got := mindsOf(p, p.Possible(c.wish))
		if c.want == nil && got != "" {
			t.Errorf("%+v: %s", c.wish, got)
		}
		for _, w := range c.want {
			if !strings.Contains(got, w) {
				t.Errorf("%+v: no %q in %s", c.wish, w, got)
			}
		}
	}
	late := plannerOf(withMonths(yardOf(64)), "2027-11-10 08:00")
	a := late.Possible(plan.Wish{Queens: 10, By: day(t, "2027-12-25"), Laying: true})
	if got := mindsOf(late, a); !strings.Contains(got, "no graft from Thu 11 Nov on makes sense before") {
		t.Error(got)
	}
}
