package rules

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// hands warns of a planned graft at whose hour nobody is free, or on whose day nobody is where
// no hour is told: it moves all that follows, its hard hour among them.
func (c *checker) hands(b book.BatchPlanned) {
	if !c.view.HoursTold() || b.Day < c.view.Today() {
		return
	}
	said, free := b.Day.ShortFrom(c.view.Today()), c.whoIsFree(b.Day)
	switch at := b.Day.At(b.Minute/60, b.Minute%60, c.view.Zone()); {
	case free == "":
		c.warn("nobody is free on "+said+" to graft", c.freeDay(b.Day), practice.FreeHourAhead)
	case b.Minute > 0 && !isFree(c.view, b.Day, at, c.view.Zone()):
		c.warn(fmt.Sprintf("nobody is free on %s at %s to graft", said, at.Format("15:04")), "Graft while somebody is free that day ("+free+"), or find somebody")
	}
}

// whoIsFree are the hours on a day that are still to come, each with who is free in it:
// "17:00 to 19:30 Ida"; empty where nobody is.
func (c *checker) whoIsFree(d calendar.Day) string {
	var all []string
	for who := range c.view.People() {
		h := who.FreeOn(d)
		if from, until := h.Between(d, c.view.Zone()); h.Minutes() > 0 && until.After(c.now) {
			all = append(all, fmt.Sprintf("%s to %s %s", from.Format("15:04"), until.Format("15:04"), who.Name))
		}
	}
	return strings.Join(all, ", ")
}

// freeDay sends to the day nearest to another one on which somebody is free.
func (c *checker) freeDay(d calendar.Day) string {
	today := c.view.Today()
	for off := range calendar.Day(c.numbers.Days(practice.FreeHourAhead)) {
		for _, near := range [...]calendar.Day{d - off - 1, d + off + 1} {
			if free := c.whoIsFree(near); near >= today && free != "" {
				return fmt.Sprintf("Graft on %s (%s), or find somebody", near.ShortFrom(today), free)
			}
		}
	}
	return "Find somebody"
}
