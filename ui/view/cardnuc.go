package view

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/rules"
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
	c.yardRobbed(n)
	c.lastSeen(n)
	c.dueField(n)
	if !n.NeedsYou { // else why it does comes first
		c.probably(n)
	}
	c.whyAll(n.Findings, n.Due)
	if n.NeedsYou {
		c.probably(n)
	}
	c.calendar(n)
	c.book(n.Nuc.Nuc.Subject())
	if c.s.Book.ReadOnly == "" {
		c.foot.typed = true
		if c.foot.shut == "" && c.s.Typed(c.s.CardField()) != "" {
			c.foot.said = 2
		}
	}
}

// yardRobbed writes of robbers in the nuc's yard before all else: no work of its own is
// done while they are about.
func (c *cardDraw) yardRobbed(n *state.Nuc) {
	yard := n.Yard.Subject()
	for _, f := range c.r.About(yard) {
		if f.Rule == rules.BeingRobbed && f.Of == yard {
			c.finding(f)
			c.y += 4
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
	case n.Presumed.Condition != n.Presumed.Calendar:
		return word, "most probably"
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
