package view

import (
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// dueField writes what is due, on which day or since when, and the time there
// is for it.
func (c *cardDraw) dueField(n *state.Nuc) {
	f := n.Due
	if f == nil {
		return
	}
	bold, act, day := ink(14).semi(), f.Act.String(), n.DueDay.Short()
	switch days := c.r.PastDue(*f); {
	case days > 0: // its days past due are counted from its last one
		day = "by " + c.r.DayOf(f.By).Short()
	case n.DueDay < c.r.Day:
		day = "since " + day
	}
	if one := act + " " + day; c.width(one, bold) <= c.w-fieldNames {
		act, day = one, ""
	}
	c.field("Due", act, bold, whole)
	c.y -= 3
	c.field("", day, bold, 1)
	if n.DueDay > c.s.Looked() {
		y := c.y - scene.LineHeight(14)
		c.command(scene.Area{X: c.x + fieldNames - 4, Y: y - 15, W: c.w - fieldNames, H: 24}, "show due")
	}
	font, window := ink2(14), c.window(*f)
	if days := c.r.PastDue(*f); days > 0 {
		window = course.Count(days, "day") + " past due"
		if c.r.Ahead {
			window = "would be " + window
		} else {
			font = ink(14).semi().as(scene.Act)
		}
	}
	c.field("", window, font, whole)
}

// window is from when and until when something is to be done.
func (c *cardDraw) window(f rules.Finding) string {
	if f.Hard {
		return "hard by " + hour(f.By, c.r.View.Zone())
	}
	from, by := c.r.DayOf(f.From), c.r.DayOf(f.By)
	switch {
	case f.From.IsZero() && f.By.IsZero():
		return ""
	case f.By.IsZero() && from == c.r.BestDay(f):
		return "" // it stands beside the act
	case f.By.IsZero():
		return "from " + shortDay(from)
	case f.From.IsZero() || from == by:
		return "at the latest " + shortDay(by)
	default:
		return "from " + shortDay(from) + ", at the latest " + shortDay(by)
	}
}

// calendar writes what the calendar says of the nuc: the days behind and
// before it.
func (c *cardDraw) calendar(n *state.Nuc) {
	p := n.Presumed
	worth := "worth a look"
	if p.Delayed {
		worth += ", later by the weather"
	}
	var waits time.Time
	if d := c.r.CourseOf(n.Nuc.Nuc).WaitUntil; !d.IsZero() {
		waits = d.Start(c.r.Course.Zone(n.Yard))
	}
	ready := "ready to hand over"
	if once := p.ReadyOnce(); once != "" {
		ready += ", " + once
	}
	var rows []event
	for _, e := range []event{
		{p.Emerged, "emerged", "emerges"},
		{p.OwnFrom, "own virgin possible", "own virgin possible"},
		{p.OldEnoughFrom, "old enough to fly", "old enough to fly"},
		{p.LookFrom, worth, worth},
		{waits, "waiting no longer pays", "waiting no longer pays"},
		{p.TooLateAt, "too late to mate", "too late to mate"},
		{p.LayingWorkersAt, "laying workers to be expected", "laying workers to be expected"},
		{p.ReadyAt, ready, ready},
	} {
		if !e.at.IsZero() {
			rows = append(rows, e)
		}
	}
	if len(rows) == 0 {
		return
	}
	slices.SortStableFunc(rows, func(a, b event) int { return a.at.Compare(b.at) })
	c.heading(c.calendarHead(p))
	if c.reckoned(p) || p.Condition == book.NoQueen {
		c.para(sentence(p.Why), ink(14), whole)
	}
	for _, e := range rows {
		c.event(e)
	}
	c.y += 2
}

// event is a day of the calendar, in words for one gone by and one to come.
type event struct {
	at         time.Time
	past, next string
}

func (c *cardDraw) event(e event) {
	d := c.r.DayOf(e.at)
	f, word := ink(13), e.next
	if !e.at.After(c.r.View.On()) {
		f, word = ink2(13), e.past
	}
	c.right(c.x+52, c.y, shortDay(d), f)
	c.y = c.wrap(c.x+66, c.y, word, f, c.w-66, whole) - scene.LineHeight(13) + 19
}

// calendarHead is the heading over the days of the calendar.
func (c *cardDraw) calendarHead(p course.Presumption) string {
	switch {
	case !c.reckoned(p):
		return "The calendar"
	case c.s.Away():
		return "By the calendar, on " + shortDay(c.r.Day)
	default:
		return "By the calendar, today"
	}
}

// reckoned tells whether what a nuc holds is only reckoned, not seen.
func (c *cardDraw) reckoned(p course.Presumption) bool { return !p.Seen || c.r.Ahead }
