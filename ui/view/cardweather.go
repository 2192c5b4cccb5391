package view

import (
	"lidmark/domain/book"
	"lidmark/ui/state"
)

// weather writes a yard's forage and how the day is to fly, and the ways to tell
// of its weather; of all yards that of the home yard, of which what is written is.
func (c *cardDraw) weather(yard book.YardID) {
	y, title := c.r.View.Yard(yard), "Weather"
	if yard.IsZero() {
		if y = c.r.View.HomeYard(); y == nil {
			return
		}
		title += " of " + y.Name
	}
	c.heading(title)
	if y.Forage != 0 {
		c.field("Forage", y.Forage.String()+" since "+y.ForageSince.Day(c.r.View.Zone()).Short(), ink(14), whole)
	}
	c.field("Flying", c.r.FlightOn(y.Yard, c.r.Day).Why, ink(14), whole)
	c.buttonsHere(
		button{"Days in signs + ± −", "weather", false}, button{"A table of days", "weather days", false},
		button{"Usual weather", "usual weather", false}, button{"Bring a file", "take in weather", false},
		button{"Flow or dearth since", "forage", false},
	)
}

// buttonsHere draws buttons side by side, in as many rows as they need; of those that
// cannot run now only the reason of the first.
func (c *cardDraw) buttonsHere(all ...button) {
	x, drawn := c.x, false
	for _, b := range all {
		command, _ := state.CommandNamed(b.command)
		if command.Reason(c.s) != "" {
			continue
		}
		if w := c.buttonWidth(b); x > c.x && x+w > c.x+c.w {
			x, c.y = c.x, c.y+footRow
		}
		x, drawn = c.button(x, c.y-10, b.word, b.command, b.main)+8, true
	}
	if drawn {
		c.y += footRow + 2
		return
	}
	command, _ := state.CommandNamed(all[0].command)
	c.para(command.Reason(c.s), ink2(13), whole)
}
