package view

import (
	"fmt"
	"strings"
	"time"

	"lidmark/domain/practice"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// standsOn writes the numbers that a finding stands on: hovering one names its
// source, a click leads to it.
func (c *cardDraw) standsOn(f rules.Finding) { c.numbers(f.Used) }

// numbers writes numbers of the trade.
func (c *cardDraw) numbers(used []practice.Key) {
	const row = 20.0
	numbers := c.r.Numbers()
	for _, k := range used {
		n, top := practice.Of(k), c.y-14
		c.beside(n.Title, ink2(13), numberWords(n, numbers.Get(k)), ink(13), row)
		c.hit(scene.Area{X: c.x, Y: top, W: c.w, H: c.y - 14 - top}, scene.Ref{Kind: state.NumberRef, ID: k.String()}, n.Confidence.String()+": "+n.Source)
	}
	if len(used) > 0 {
		c.y += 4
	}
}

// numberWords is a number of the trade with its unit.
func numberWords(n practice.Number, v float64) string {
	switch n.Unit {
	case practice.Share:
		return fmt.Sprintf("%.0f %%", 100*v)
	case practice.SharePerDay:
		return figure(100*v) + " % a day"
	case practice.ClockHour:
		return fmt.Sprintf("%02d:%02.0f", int(v), 60*(v-float64(int(v))))
	case practice.Ratio, practice.Score:
		return strings.TrimSpace(figure(v) + " " + string(n.Unit))
	}
	return figure(v) + " " + string(n.Unit)
}

// waiting writes what it costs to put a finding off, by the clock.
func (c *cardDraw) waiting(f rules.Finding) {
	costs := c.r.Waiting(f)
	if len(costs) == 0 || len(costs) == 1 && !f.Hard && costs[0].At.Equal(f.By) {
		return // its last day stands beside the work
	}
	c.heading("If put off")
	for _, cost := range costs {
		day, zone := shortDay(c.r.DayOf(cost.At)), c.r.View.Zone()
		if !endOfDay(cost.At, zone) && !endOfDay(cost.At.Add(-time.Second), zone) {
			day = weekdayHour(cost.At, zone)
		}
		c.text(c.x, c.y, day, ink2(13))
		c.y = c.wrap(c.x+fieldNames, c.y, cost.What, ink(14), c.w-fieldNames, whole) + 3
	}
}
