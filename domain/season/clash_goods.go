package season

import (
	"fmt"
	"strings"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// goods are the days on which there is less than nothing left of a good, each row
// of such days as one clash; two grafts are one a day.
func (a *account) goods(all []*load) (found []Clash) {
	for good := range a.ground.left {
		if good == a.ground.besides(minutes) {
			continue
		}
		var run *Clash
		for d := a.today; d <= a.ground.last(); d++ {
			left := a.ground.left[good][d-a.ground.first]
			if left >= 0 {
				run = nil
				continue
			}
			if run == nil || run.Kind == TwoGrafts {
				found = append(found, a.good(good, d))
				run = &found[len(found)-1]
			}
			run.To = d
			if short := float64(-left); short > run.Short() {
				run.Want = a.wanted(good, d, all)
				run.Have = run.Want - short
			}
		}
	}
	for i := range found {
		a.name(&found[i], all)
	}
	return found
}

// good is a clash over a good that begins on a day.
func (a *account) good(good int, d calendar.Day) Clash {
	if good < len(a.ground.yards) {
		return Clash{Kind: NucsShort, Yard: a.ground.yards[good], From: d}
	}
	return Clash{Kind: [...]Kind{StartersShort, FinishersShort, IncubatorShort, TwoGrafts}[good-len(a.ground.yards)], From: d}
}

// goodOf is the good of a clash.
func (a *account) goodOf(c Clash) int {
	switch c.Kind {
	case StartersShort:
		return a.ground.besides(starters)
	case FinishersShort:
		return a.ground.besides(finishers)
	case IncubatorShort:
		return a.ground.besides(incubator)
	case TwoGrafts:
		return a.ground.besides(grafts)
	default:
		return a.ground.yard(c.Yard)
	}
}

// wanted is how much batches want of a good on a day.
func (a *account) wanted(good int, d calendar.Day, all []*load) (sum float64) {
	for _, l := range all {
		for _, t := range l.takes {
			if t.good == good && t.from <= d && d <= t.to {
				sum += float64(t.amount)
			}
		}
	}
	return sum
}

// name names the batches of a clash over a good, each with the days of it on which it
// wants some.
func (a *account) name(c *Clash, all []*load) {
	good := a.goodOf(*c)
	for _, l := range all {
		for _, t := range l.takes {
			if t.good == good && t.amount > 0 && t.from <= c.To && c.From <= t.to {
				c.Batches, c.Days = append(c.Batches, l.id), append(c.Days, c.within(t.from, t.to))
				break
			}
		}
	}
}

// whyGood says why a good is short.
func (a *account) whyGood(c Clash, titles []string) string {
	if c.Kind == TwoGrafts {
		return fmt.Sprintf("%s are on one day, %s.", joined(titles), a.said(c.From))
	}
	if c.Kind == IncubatorShort {
		return fmt.Sprintf("The incubator holds %.0f; %s %s places for %.0f capped cells%s.",
			a.ground.numbers.Get(practice.IncubatorPlaces), joined(titles), verb(titles, "wants", "want"), c.Want, a.between(c.From, c.To))
	}
	where := ""
	if c.Kind == NucsShort {
		where = " in " + a.planner.View().Yard(c.Yard).Name
	}
	have := max(0, c.Have)
	return fmt.Sprintf("%s %s %s%s%s, %.0f %s free.",
		joined(titles), verb(titles, "wants", "want"), c.amount(c.Want), where, a.between(c.From, c.To), have, isAre(have))
}

// said is a day as it is written on the account's.
func (a *account) said(d calendar.Day) string { return d.ShortFrom(a.today) }

func (a *account) between(from, to calendar.Day) string {
	if from == to {
		return " on " + a.said(from)
	}
	return fmt.Sprintf(" between %s and %s", a.said(from), a.said(to))
}

func joined(titles []string) string {
	if n := len(titles); n > 1 {
		return strings.Join(titles[:n-1], ", ") + " and " + titles[n-1]
	}
	return strings.Join(titles, "")
}

func verb(of []string, one, many string) string {
	if len(of) == 1 {
		return one
	}
	return many
}

// thereAre is "is none", "is 1" or "are 2".
func thereAre(n float64) string {
	if n < 0.5 {
		return "is none"
	}
	return fmt.Sprintf("%s %.0f", isAre(n), n)
}

func isAre(n float64) string {
	if n == 1 {
		return "is"
	}
	return "are"
}
