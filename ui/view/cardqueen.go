package view

import (
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
)

// queenCalled is what a queen is called on a card.
func queenCalled(v *book.View, q *book.Queen) string {
	switch {
	case q.Name != "" && !q.Virgin:
		return q.Name
	case q.Mark.Disc != "":
		return strings.TrimSpace("disc " + q.Mark.Colour + " " + q.Mark.Disc)
	case q.Label != "" && q.Virgin:
		return "virgin " + q.Label
	case q.Label != "":
		return "cage " + q.Label
	case !q.Caught.IsZero():
		return "queen " + v.CatchWords(q)
	}
	return "a queen without a name"
}

// caged are queens as links.
func (c *cardDraw) caged(ids []book.QueenID) (all []linked) {
	for _, id := range ids {
		all = append(all, c.to(id.Subject()))
	}
	return all
}

// queen draws the card of a queen: who she is and where, and her life line.
func (c *cardDraw) queen(q *book.Queen) {
	o := at(c.x+c.picture()/2+2, c.y+42)
	colour, ok := colours[q.Mark.Colour]
	if !ok {
		colour = scene.Panel
	}
	c.add(scene.Circle{At: o, Radius: 26, Fill: colour, Stroke: stroke(scene.Ink, 2)})
	if q.Mark.Disc != "" {
		c.rect(scene.Area{X: o.X - 17, Y: o.Y - 11, W: 34, H: 22}, scene.Panel)
		c.centre(o.X, o.Y+5.5, q.Mark.Disc, ink(15).bold())
	}
	c.title(sentence(queenCalled(c.r.View, q)), "", linked{text: c.queenState(q)}, linked{text: q.Line}, c.to(q.Batch.Subject()))
	c.queenLife(q)
	for _, f := range c.r.About(q.Queen.Subject()) {
		c.finding(f)
		c.standsOn(f)
	}
	c.tests(q)
	c.book(q.Queen.Subject())
}

// queenState is what she is now.
func (c *cardDraw) queenState(q *book.Queen) string {
	switch {
	case !q.Ended.IsZero():
		return q.How.String() + " " + q.Ended.Day(c.r.View.Zone()).ShortFrom(c.r.Day)
	case !q.Handed.IsZero():
		return "handed over " + q.Handed.Day(c.r.View.Zone()).ShortFrom(c.r.Day)
	case q.Caged() && q.Virgin:
		return "virgin, in a cage"
	case q.Caged():
		return "mated, in a cage"
	}
	return ""
}

// queenLife writes her life from her birth on.
func (c *cardDraw) queenLife(q *book.Queen) {
	zone := c.r.View.Zone()
	day := func(m calendar.Moment) string {
		if m.IsZero() {
			return ""
		}
		return m.Day(zone).ShortFrom(c.r.Day)
	}
	born := ""
	switch {
	case !q.Born.IsZero():
		born = calendar.DayOf(q.Born, zone).Short() + " " + strconv.Itoa(q.Born.In(zone).Year())
	case !q.Emerged.IsZero():
		born = hour(q.Emerged, zone)
	}
	c.field("Born", born, ink(14), 1)
	c.fieldTo("Mother", c.to(q.Mother.Subject()), "")
	c.field("Descent", q.Descent.String(), ink(14), 1)
	c.field("Drones", q.DroneLine, ink(14), 1)
	mated := ""
	if q.MatedYear > 0 {
		mated = strconv.Itoa(q.MatedYear)
	}
	c.fieldTo("Mated at", c.to(q.MatedAt.Subject()), mated)
	c.field("First eggs", day(q.FirstEggs), ink(14), 1)
	c.field("Mark", markWords(q.Mark), ink(14), whole)
	c.fieldTo("Caught from", c.to(q.From.Subject()), day(q.Caught))
	if q.InHand() {
		if q.Label != "" && q.Caged() {
			c.field("Cage", q.Label, ink(14), 1)
		}
		c.fieldTo("Is in", c.to(q.Where), sinceWords(day(q.Since)))
	}
	c.fieldTo("For", c.to(q.Order.Subject()), q.HandedTo)
}

func sinceWords(day string) string {
	if day == "" {
		return ""
	}
	return "since " + day
}

func markWords(m book.QueenMarked) string {
	var words []string
	if m.Colour != "" {
		words = append(words, m.Colour)
	}
	if m.Disc != "" {
		words = append(words, "disc "+m.Disc)
	}
	if m.Clipped {
		words = append(words, "wing clipped")
	}
	return strings.Join(words, ", ")
}

func (c *cardDraw) tests(q *book.Queen) {
	if len(q.Tests) == 0 {
		return
	}
	c.heading("Tests")
	for _, t := range q.Tests {
		c.count(t.What, figure(t.Score), ink(14).semi())
	}
	c.y -= 8
}
