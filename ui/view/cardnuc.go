package view

import (
	"fmt"
	"slices"
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
	holds, how := c.holds(n)
	c.title(n.Name+"  "+holds, how, linked{text: c.stands(n)}, c.motherLine(n), linked{text: c.age(n)})
	c.lastSeen(n)
	c.dueField(n)
	c.whyAll(n.Findings, n.Due)
	c.calendar(n)
	c.flights(n)
	c.book(n.Nuc.Nuc.Subject())
	if c.s.Book.ReadOnly == "" {
		c.foot.typed = true
		if c.foot.shut == "" && c.s.Typed(c.s.CardField()) != "" {
			c.foot.said = 2
		}
	}
}

// holds is what the nuc holds, and how that is known.
func (c *cardDraw) holds(n *state.Nuc) (word, how string) {
	word = n.Presumed.Condition.String()
	switch {
	case caught(n):
		return word, "caught"
	case n.Presumed.Condition == book.Due, n.Presumed.Condition == book.Empty:
		return word, ""
	case n.Presumed.Condition == book.Virgin && !c.r.Ahead:
		return word, c.virginKnown(n)
	case !n.Presumed.Seen || c.r.Ahead:
		return word, "by the calendar"
	case n.Presumed.Condition == book.Cell:
		return word, "given"
	default:
		return word, "seen"
	}
}

// virginKnown says what is known of a virgin: she was seen herself, only the cell
// she left, or she was looked for and not found.
func (c *cardDraw) virginKnown(n *state.Nuc) string {
	for _, l := range slices.Backward(n.Looks) {
		switch {
		case n.Presumed.Seen, l.At.Before(n.Holds.Given):
			return seenOrNot(n.Presumed.Seen)
		case l.Queen == book.NoneSeen:
			return "not found " + shortDay(c.r.DayOf(l.At.Instant))
		case l.Cell == book.CellOpenAtTip:
			return "cell open " + shortDay(c.r.DayOf(l.At.Instant))
		}
	}
	return seenOrNot(n.Presumed.Seen)
}

func seenOrNot(seen bool) string {
	if seen {
		return "seen"
	}
	return "by the calendar"
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
	words = append(words, "entrance "+bearing(n.NucNamed.Entrance+n.Turn()))
	return strings.Join(words, ", ")
}

func (c *cardDraw) motherLine(n *state.Nuc) linked {
	if n.Holds.Batch.IsZero() {
		return c.to(n.Holds.Queen.Subject())
	}
	b := c.r.View.Batch(n.Holds.Batch)
	return linked{batchWord(b), b.Batch.Subject()}
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

// lastSeen writes the last look since the queen, or the lack of one, was last
// changed: what was seen before tells of another queen.
func (c *cardDraw) lastSeen(n *state.Nuc) {
	look, ok := n.LastLook()
	if !ok || look.At.Before(n.Holds.Given) || look.At.Before(n.Queenless) || look.At.Before(n.MadeUp) {
		return
	}
	words := wordsOn(c.r, look.Looked, n.Nuc.Nuc.Subject())
	c.field("Last seen", look.At.Day(c.r.View.Zone()).Short()+", "+words, ink(14), lookLines)
}

// lookLines is how many lines a look has on a card: one with everything in it.
const lookLines = 8

// dueField writes what is due, on which day or since when, and the time there
// is for it.
func (c *cardDraw) dueField(n *state.Nuc) {
	f := n.Due
	if f == nil {
		return
	}
	bold, act, day := ink(14).semi(), f.Act.String(), n.DueDay.Short()
	if n.DueDay < c.r.Day {
		day = "since " + day
	}
	if one := act + " " + day; c.width(one, bold) <= c.w-fieldNames {
		act, day = one, ""
	}
	c.field("Due", act, bold, 2)
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
	if len(rows) == 0 {
		return
	}
	slices.SortStableFunc(rows, func(a, b event) int { return a.at.Compare(b.at) })
	c.heading(c.probably(p))
	if c.reckoned(p) || p.Condition == book.NoQueen {
		c.para(sentence(p.Why), ink(14), 2)
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
	c.fit(c.x+66, c.y, word, f, c.x+c.w)
	c.y += 19
}

// probably is the heading over the days of the calendar.
func (c *cardDraw) probably(p course.Presumption) string {
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
