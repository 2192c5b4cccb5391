package view

import (
	"fmt"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// nuc draws the card of one nuc.
func (c *cardDraw) nuc(n *state.Nuc) {
	size := c.picture()
	l := c.lidOf(n, at(c.x+size/2+2, c.y+42), size)
	l.Selected, l.Hover, l.Front = false, false, frontMark(n)
	l.Weak = n.Weak()
	l.Robbing = n.Robbers()
	c.add(l)
	c.title(n.Name+"  "+c.holds(n), c.stands(n), c.motherLine(n), c.age(n))
	c.lastSeen(n)
	c.dueField(n)
	c.needs(n)
	c.calendar(n)
	c.flights(n)
	c.book(n.Nuc.Nuc.Subject())
	var buttons [][2]string
	if n.Due != nil && n.DueDay > c.s.Looked() {
		buttons = append(buttons, [2]string{"Look at " + n.DueDay.Short(), "show due"})
	}
	if !n.Holds.Batch.IsZero() {
		buttons = append(buttons, [2]string{"Its batch", "show batch"})
	}
	c.buttons(buttons...)
}

// holds is what the nuc holds, and whether somebody saw it.
func (c *cardDraw) holds(n *state.Nuc) string {
	word := n.Presumed.Condition.String()
	switch {
	case caught(n):
		return word + ", caught"
	case n.Presumed.Condition == book.Due, n.Presumed.Condition == book.Empty:
		return word
	case !n.Presumed.Seen || c.r.Ahead:
		return word + ", by the calendar"
	case n.Presumed.Condition == book.Cell:
		return word + ", given"
	default:
		return word + ", seen"
	}
}

func (c *cardDraw) stands(n *state.Nuc) string {
	var words []string
	if !n.Stand.IsZero() {
		s := c.r.View.Stand(n.Stand)
		words = append(words, "stand "+s.Letter)
		if s.Places > 1 {
			words = append(words, fmt.Sprintf("place %d", n.Place))
		}
	}
	words = append(words, "entrance "+bearing(n.NucNamed.Entrance+c.turnOf(n)))
	return strings.Join(words, ", ")
}

func (c *cardDraw) motherLine(n *state.Nuc) string {
	if n.Holds.Batch.IsZero() {
		return ""
	}
	b := c.r.View.Batch(n.Holds.Batch)
	return fmt.Sprintf("Batch %d · %s", b.Number, b.Line)
}

func (c *cardDraw) age(n *state.Nuc) string {
	p := n.Presumed
	if p.Emerged.IsZero() || p.Age < 1 {
		return ""
	}
	said := course.Count(p.Age, "day") + " old"
	if c.s.Away() {
		said += " on " + shortDay(c.r.Day)
	}
	return said
}

func (c *cardDraw) lastSeen(n *state.Nuc) {
	look, ok := n.LastLook()
	if !ok {
		return
	}
	words := wordsOn(c.r, look.Looked, n.Nuc.Nuc.Subject())
	c.field("Last seen", look.At.Day(c.r.View.Zone()).Short()+", "+words, ink(14), 2)
}

func (c *cardDraw) dueField(n *state.Nuc) {
	f := n.Due
	if f == nil {
		return
	}
	c.field("Due", f.Act.String()+" "+n.DueDay.Short(), ink(14).semi(), 2)
	c.y -= 3
	font, window := ink2(14), c.window(*f)
	if days := c.r.PastDue(*f); days > 0 {
		window = course.Count(days, "day") + " past due"
		if c.r.Ahead {
			window = "would be " + window
		} else {
			font = ink(14).semi().as(scene.Act)
		}
	}
	c.field("", window, font, 2)
}

// window is from when and until when something is to be done.
func (c *cardDraw) window(f rules.Finding) string {
	if f.Hard {
		return "hard, by " + hour(f.By, c.r.View.Zone())
	}
	from, by := c.r.DayOf(f.From), c.r.DayOf(f.By)
	switch {
	case f.From.IsZero() && f.By.IsZero():
		return ""
	case f.From.IsZero() || from == by:
		return "at the latest " + shortDay(by)
	case f.By.IsZero():
		return "from " + shortDay(from)
	default:
		return "from " + shortDay(from) + ", at the latest " + shortDay(by)
	}
}

// needs writes what is the matter, why, and what to do about it.
func (c *cardDraw) needs(n *state.Nuc) {
	for _, f := range n.Findings {
		if !f.NeedsYou() || !c.room(70) {
			continue
		}
		c.y += 2
		c.hair()
		font := ink(14).semi().as(scene.Act)
		if c.r.Ahead {
			font = ink(14).semi()
		}
		c.fit(c.x, c.y, sentence(f.What), font, c.x+c.w)
		c.y += 20
		if !strings.EqualFold(f.Do, f.What) {
			c.para(f.Do, ink(14), 2)
		}
		c.para(f.Why, ink2(13), 3)
	}
}

// calendar writes what the calendar says of the nuc: the days behind and
// before it.
func (c *cardDraw) calendar(n *state.Nuc) {
	p := n.Presumed
	var rows []event
	for _, e := range []event{
		{p.Emerged, "emerged", "emerges"},
		{p.OwnFrom, "own virgin possible", "own virgin possible"},
		{p.OldEnoughFrom, "old enough to fly", "old enough to fly"},
		{p.LookFrom, "worth a look", "worth a look"},
		{p.TooLateAt, "too late to mate", "too late to mate"},
		{p.LayingWorkersAt, "laying workers to be expected", "laying workers to be expected"},
		{p.ReadyAt, "ready to hand over", "ready to hand over"},
	} {
		if !e.at.IsZero() {
			rows = append(rows, e)
		}
	}
	if len(rows) == 0 || !c.heading(c.probably()) {
		return
	}
	c.para(p.Why, ink(14), 2)
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
	if !c.room(18) {
		return
	}
	d := c.r.DayOf(e.at)
	f, word := ink(13), e.next
	if !e.at.After(c.r.View.On()) {
		f, word = ink2(13), e.past
	}
	c.right(c.x+52, c.y, shortDay(d), f)
	c.fit(c.x+66, c.y, word, f, c.x+c.w)
	c.y += 19
}

// probably is the heading over what is only reckoned.
func (c *cardDraw) probably() string {
	if c.s.Away() {
		return "By the calendar, on " + shortDay(c.r.Day)
	}
	return "By the calendar, today"
}
