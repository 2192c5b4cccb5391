package view

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// planned draws the card of a batch that is planned and not grafted: what, when, how
// sure, its steps with what is made ready already, what it needs, and what can be done.
func (c *cardDraw) planned(b book.BatchPlan) {
	l := c.s.PlannedLane(b)
	title := "Planned batch"
	if b.Line != "" {
		title += " · " + b.Line
	}
	c.titled(title)
	c.para("graft "+l.Ladder.Graft.In(c.r.View.Zone()).Format("Monday 2 January 15:04"), ink2(14), 2)
	c.y += 4
	c.wanted(l)
	if !l.NotMade { // of one that was not made nothing follows
		c.heading("Its steps")
		for _, r := range l.Ladder.Rungs {
			c.plannedStep(b, r)
		}
		c.y -= 8
	}
	if len(l.Needs) > 0 {
		c.heading("What it needs")
	}
	for _, n := range l.Needs {
		f := ink(14).semi()
		name := n.Good.String()
		if short := n.Short(); n.Known && short > 0 {
			f, name = f.as(scene.Act), fmt.Sprintf("%s, %s short", name, figure(short))
		}
		c.count(name, figure(n.Amount)+unitAfter(n.Unit()), f)
	}
	c.y -= 8
	c.book(b.Batch.Subject())
	c.buttons(button{"Graft it now", "graft", true}, button{"Move or change it", "move plan", false}, button{"Take it off", "drop plan", false}, button{"Print", "print plan", false})
}

func unitAfter(unit string) string {
	if unit == "" {
		return ""
	}
	return " " + unit
}

// wanted are its amounts, and how sure its promise is.
func (c *cardDraw) wanted(l state.PlannedLane) {
	c.hair()
	figures := ink(14).semi()
	c.count("larvae", thousands(l.Larvae), figures)
	c.count("nucs", thousands(l.Nucs), figures)
	if l.NotMade {
		c.count("not made: move it, or take it off", "", figures.as(scene.Act))
		return
	}
	last := l.Stages[len(l.Stages)-1]
	c.count("queens, 10–90 %", fmt.Sprintf("%d (%d–%d)", last.Likely(), last.Low(), last.High()), figures)
	if l.Queens > 0 && l.By != 0 {
		c.count(fmt.Sprintf("%d by %s, reckoned", l.Wished.All, l.Wished.Until.ShortFrom(c.s.Today()))+l.Wished.Together(), plan.OfHundred(l.Chance), figures)
		if l.Sure > 0 {
			c.count("wished", plan.OfHundred(l.Sure), figures)
		}
		if l.Wished.Less != "" {
			c.para(plan.Sentence(l.Wished.Less), ink(13).as(scene.Act), 3)
		}
		c.count("the graft a day later", plan.OfHundred(c.s.DayLater(l.BatchPlan)), figures)
	}
	var names []string
	for _, id := range l.Orders {
		names = append(names, nameOf(c.r.View, id.Subject()))
	}
	if len(names) > 0 {
		c.para("for "+strings.Join(names, ", "), ink2(13), 3)
	}
	c.y -= 8
}

// plannedStep writes a step with its day; one that is made ready says so.
func (c *cardDraw) plannedStep(b book.BatchPlan, r plan.Rung) {
	name, when, f := r.Step.String(), r.Best.ShortFrom(c.s.Today()), ink(13).semi()
	switch {
	case b.Made(r.Step.Readied()):
		name, f = name+", done", f.as(scene.Good)
	case r.Step.Done() && r.By < c.s.Today():
		name, f = name+", past", f.as(scene.Act)
	case r.NobodyFree:
		name, f = name+", nobody free", f.as(scene.Act)
	case !r.Hard.IsZero():
		name, when = name+", hard by", calendar.Instantly(r.Hard).InFrom(c.s.Today(), c.r.View.Zone())
	}
	c.beside(sentence(name), ink(13), when, f, 20)
}
