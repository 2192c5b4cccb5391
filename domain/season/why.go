package season

import (
	"fmt"
	"slices"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// why says in a sentence why a clash is one, with its figures.
func (a *account) why(c Clash, all []*load) string {
	var in []*load
	var titles []string
	for _, l := range all {
		if slices.Contains(c.Batches, l.id) {
			in, titles = append(in, l), append(titles, l.title)
		}
	}
	switch c.Kind {
	case NobodyFree:
		return a.whyHours(c, titles[0])
	case BeesShort, BroodShort:
		return fmt.Sprintf("%s %s %s for %s in the week to %s, the colonies can give %s.",
			joined(titles), verb(titles, "wants", "want"), c.amount(c.Want), wantedFor(c, in), a.said(c.From), c.amount(c.Have))
	case DronesShort:
		return fmt.Sprintf("Up to %d virgins of %s fly%s and want %s, there %s near %s.",
			flyingMost(in), joined(titles), a.between(c.From, c.To), c.amount(c.Want), thereAre(c.Have), a.planner.View().Yard(c.Yard).Name)
	case DronesUnripe, DronesOld:
		return a.whyDrones(c, in[0], titles[0])
	case MinutesOver:
		return fmt.Sprintf("The work of %s on %s is %.0f min more than people are free then and on the days to which it can move.", joined(titles), a.said(c.From), c.Short())
	default:
		return a.whyGood(c, titles)
	}
}

func (a *account) whyHours(c Clash, title string) string {
	if c.hard.IsZero() {
		return fmt.Sprintf("Nobody is free on %s to graft (%s)%s.", a.said(c.From), title, c.besides())
	}
	hard := calendar.Instantly(c.hard).InFrom(a.today, a.planner.View().Zone())
	return fmt.Sprintf("The cells of %s must be out by %s, and nobody is free from %s until then%s.", title, hard, a.said(c.From), c.besides())
}

// besides is the work of a batch on days on which nobody is free, in words behind others.
func (c Clash) besides() string {
	if c.minutes < 0.5 {
		return ""
	}
	return fmt.Sprintf(": %.0f min of its work", c.minutes)
}

func (a *account) whyDrones(c Clash, l *load, title string) string {
	fly := l.ladder.Rung(plan.Fly)
	if c.Kind == DronesOld {
		last := c.From - calendar.Day(c.Want)
		return fmt.Sprintf("The virgins of %s fly%s; the drones of the last comb are at their best until %s.", title, a.between(fly.From, fly.By), a.said(last))
	}
	ripe := c.From + calendar.Day(c.Want)
	return fmt.Sprintf("The virgins of %s fly%s; drones of a comb hung in on %s are ripe on %s.", title, a.between(fly.From, fly.By), a.said(ripe-a.days(practice.DroneRipe)), a.said(ripe))
}

// flyingMost is how many virgins of some batches fly on one day at most.
func flyingMost(all []*load) (most int) {
	for _, at := range all {
		sum := 0
		for _, l := range all {
			if fly, d := l.ladder.Rung(plan.Fly), at.ladder.Rung(plan.Fly).From; fly.From <= d && d <= fly.By {
				sum += l.virgins
			}
		}
		most = max(most, sum)
	}
	return most
}
