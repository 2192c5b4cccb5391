package view

import (
	"slices"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// mostLines is how many lines of the book a card shows.
const mostLines = 60

// book writes the lines of the book about a subject, the latest first; those of another year
// stand below its figure.
func (c *cardDraw) book(s book.Subject) {
	lines := slices.Collect(c.r.View.History(s))
	if len(lines) == 0 {
		return
	}
	c.heading("The book")
	names, left := line.In(c.r.View), max(0, len(lines)-mostLines)
	year := yearOf(c.r.Day)
	for _, l := range slices.Backward(lines[left:]) {
		if y := yearOf(l.At.Day(c.r.View.Zone())); y != year {
			year = y
			c.text(c.x, c.y, strconv.Itoa(year), ink2(13).semi())
			c.y += scene.LineHeight(14)
		}
		c.bookLine(l, s, names)
	}
	c.more(left)
}

func yearOf(d calendar.Day) int {
	year, _, _ := d.Date()
	return year
}

func (c *cardDraw) bookLine(l book.Line, s book.Subject, names line.Names) {
	y := c.y
	c.text(c.x, y, shortDay(l.At.Day(c.r.View.Zone())), ink2(13))
	x, to := c.x+58, c.x+c.w-strikeWide
	f := ink(14)
	if l.Struck {
		f = ink3(14)
	}
	words := line.WordsOn(l.Fact, names, s)
	if code := line.Codes(l.Fact, names); code != "" && c.width(code+words, f)+codeGap < to-x {
		end := c.text(x, y, code, f.medium())
		if l.Struck {
			c.rule(x, y-5, end, y-5, scene.Ink3)
		}
		x = end + codeGap
	}
	for _, part := range scene.Wrap(c.measure, c.say(words), f.size, f.weight, to-x) {
		end := c.text(x, c.y, part, f)
		if l.Struck {
			c.rule(x, c.y-5, end, c.y-5, scene.Ink3)
		}
		c.y += scene.LineHeight(f.size)
	}
	c.strike(l, scene.Area{X: to + 4, Y: y - 17, W: strikeWide, H: 24})
	c.y += 2
}

// codeGap parts a line as it is typed from its words, dp.
const codeGap = 12.0

// strikeWide is the width kept for the sign that strikes a line, dp.
const strikeWide = 28.0

// strike draws the sign behind a line that strikes it, or puts it back.
func (c *cardDraw) strike(l book.Line, a scene.Area) {
	ref := state.StrikeOf(l.ID)
	sign, reason := "×", "strike this line: it counts as never written, and stays to be read"
	if l.Struck {
		sign, reason = "undo", "put this line back: it counts again"
	}
	if why := c.s.CannotStrike(l); why != "" {
		reason = "cannot be struck: " + why
	}
	f := ink3(14)
	if c.hovers(ref) || c.s.Focus == ref {
		f = ink(13).medium().as(scene.Act)
	}
	c.right(a.Right()-6, a.Y+17, sign, f)
	c.hit(a, ref, reason)
}

// wordsOn says a fact on the card of a subject.
func wordsOn(r *state.Reading, f book.Fact, s book.Subject) string {
	return line.WordsOn(f, line.In(r.View), s)
}

// codes are a fact as it is typed.
func codes(r *state.Reading, f book.Fact) string { return line.Codes(f, line.In(r.View)) }
