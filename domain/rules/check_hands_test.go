package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// A graft planned for an hour or a day on which nobody is free is warned of, with the hours or
// the nearest day on which somebody is; nobody is short of hours that nobody told.
func TestAGraftWhenNobodyIsFreeIsWarned(t *testing.T) {
	ida, fri := booktest.Person("Ida"), calendar.Date(2027, 5, 21)
	free := [7]book.FreeHours{1: {From: 8 * 60, Until: 12 * 60}, 5: {From: 17 * 60, Until: 19*60 + 30}}
	p := (&booktest.Pen{}).At("2027-04-01 12:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	minds := func(b book.BatchPlanned) []rules.Reason {
		b.Larvae = 20
		v := p.View("2027-05-05 18:00")
		return rules.Check(v, rules.PlanOf(v, b)).Warned
	}
	if got := minds(book.BatchPlanned{Day: fri, Minute: 3 * 60}); len(got) > 0 {
		t.Errorf("nobody told hours: %+v", got)
	}
	p.At("2027-04-01 13:00").Write(book.PersonDescribed{Person: ida, Name: "Ida", Free: free}, book.DaysOff{Person: ida, From: fri + 6, To: fri + 90})
	for name, c := range map[string]struct {
		day     calendar.Day
		minute  int
		why, do string
	}{
		"in the hours":     {day: fri, minute: 17 * 60},
		"no hour told":     {day: fri},
		"at night":         {fri, 3 * 60, "nobody is free on Fri 21 May at 03:00 to graft", "Graft while somebody is free that day (17:00 to 19:30 Ida), or find somebody"},
		"as they end":      {fri, 19*60 + 30, "nobody is free on Fri 21 May at 19:30 to graft", "Graft while somebody is free that day (17:00 to 19:30 Ida), or find somebody"},
		"the day after":    {fri + 1, 17 * 60, "nobody is free on Sat 22 May to graft", "Graft on Fri 21 May (17:00 to 19:30 Ida), or find somebody"},
		"the day before":   {fri + 2, 0, "nobody is free on Sun 23 May to graft", "Graft on Mon 24 May (08:00 to 12:00 Ida), or find somebody"},
		"off for long":     {fri + 50, 0, "nobody is free on Sat 10 Jul to graft", "Find somebody"},
		"a day that is by": {day: calendar.Date(2027, 5, 4), minute: 3 * 60},
	} {
		got := minds(book.BatchPlanned{Day: c.day, Minute: c.minute})
		if c.why == "" && len(got) > 0 || c.why != "" && (len(got) != 1 || got[0].Why != c.why || got[0].Do != c.do) {
			t.Errorf("%s: %+v", name, got)
		}
	}
}
