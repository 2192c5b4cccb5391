package paper

import (
	"context"
	"fmt"
	"io"
	"strings"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// Cages prints a label for the cage of each queen that an order gets as things stand,
// of all open orders for the zero one, on sheets of labels whose first skip labels
// are used up. Its QR code holds the queen's id as a URN (RFC 9562), or that of her
// nuc where she has no record of her own. Labels are of one size: large print changes
// nothing. It tells how many pages it has.
func Cages(ctx context.Context, w io.Writer, r *state.Reading, order book.OrderID, skip int, o Options) (pages int, err error) {
	cages, err := cagesFor(r, order)
	if err != nil {
		return 0, err
	}
	per := LabelsPerPage(o.Page)
	if skip < 0 || skip >= per {
		return 0, fmt.Errorf("skip %d labels: a page has %d, skip 0 to %d", skip, per, per-1)
	}
	o.Large = false
	s := newSheet("Cage labels", r, o)
	for i, c := range cages {
		at := skip + i
		if at%per == 0 || i == 0 {
			if err := ctx.Err(); err != nil {
				return 0, err
			}
			s.page()
		}
		if err := s.cage(r, c, s.place(at%per)); err != nil {
			return 0, err
		}
	}
	return s.finish(w)
}

// cage is a cage to be labelled.
type cage struct {
	handover.Given
	of handover.Served
}

// cagesFor are the cages of an order, of all for the zero one.
func cagesFor(r *state.Reading, order book.OrderID) (all []cage, err error) {
	open := false
	for _, o := range handover.Deal(plan.New(r.Course)).Orders {
		if !order.IsZero() && o.Order.Order != order {
			continue
		}
		open = true
		for _, q := range o.Queens {
			all = append(all, cage{q, o})
		}
	}
	switch {
	case len(all) > 0:
		return all, nil
	case !open:
		return nil, fmt.Errorf("no order is open on %s: no cage to label; take an order first, or another day", r.Day.Short())
	}
	return nil, fmt.Errorf("no queen is there yet for what is ordered on %s: no cage to label; print labels when queens are caged or have proven themselves", r.Day.Short())
}

// code is what the label's code holds.
func (c cage) code() string {
	if c.ID.IsZero() {
		return "urn:uuid:" + c.Nuc.String()
	}
	return "urn:uuid:" + c.ID.String()
}

// cage draws the label of a cage.
func (s *sheet) cage(r *state.Reading, c cage, a scene.Area) error {
	l := labelled[s.Page]
	side := min(a.H-2*l.codeTop, cageCode)
	if _, err := s.qrCode(c.code(), a.X+l.margin, a.Y+(a.H-side)/2, side); err != nil {
		return err
	}
	x, to := a.X+l.margin+side+1, a.Right()-l.margin
	line := a.H * 0.14
	name := c.Line
	if name == "" {
		name = "line not known"
	}
	size := min(14, s.largest(name, to-x, a.H*0.2))
	y := a.Y + a.H*0.26
	s.fit(x, y, name, bold(size), to)
	said := plain(min(8.4, line*0.66/point))
	y += line * 1.06
	s.marked(r, c, x, y, to, said)
	y += line
	s.fit(x, y, c.caught(r), said, to)
	y += line
	s.fit(x, y, "attendants: _____", said, to)
	y += line
	s.fit(x, y, "order "+c.of.Order.Number, semi(said.size), to)
	return nil
}

// cageCode is the side of the code on the label of a cage, mm.
const cageCode = 23.0

// caught is when she was, or will be, caught.
func (c cage) caught(r *state.Reading) string {
	const weekday = len("Mon ")
	if !c.Caged.IsZero() {
		q := r.View.Queen(c.ID)
		day := c.Caged
		if !q.Caught.IsZero() {
			day = q.Caught.Day(r.View.Zone())
		}
		return "caught " + day.Short()[weekday:] + label(c.Label, r.View.Nuc(q.From).Name)
	}
	return "catch " + c.By.Short()[weekday:] + ", " + r.View.Nuc(c.Nuc).Name
}

// label is the number of her cage, else the nuc she was caught from.
func label(cage, nuc string) string {
	switch {
	case cage != "":
		return ", cage " + cage
	case nuc != "":
		return ", from " + nuc
	default:
		return ""
	}
}

// marked draws the colour that is on her, if there is one, and her mark in words.
func (s *sheet) marked(r *state.Reading, c cage, x, y, to float64, said look) {
	colour, words := c.mark(r)
	radius := said.size * point * 0.42
	if colour != "" {
		s.painted(round(1), scene.Point{X: x + radius, Y: y - said.size*point*0.34}, radius, colour)
		x += 2*radius + 1.1
	}
	s.fit(x, y, words, said, to)
}

// mark is the colour that the book has of her, and her mark in words: what is on her,
// and what is yet to be done as the order wants it.
func (c cage) mark(r *state.Reading) (colour, words string) {
	year := c.year(r)
	of := bee.MarkColour(year).String()
	o := c.of.Order
	switch m := c.Mark; {
	case m.Disc != "":
		colour, words = m.Colour, strings.TrimSpace(m.Colour+" disc "+m.Disc)
	case m.Colour != "" && o.Disc:
		colour, words = m.Colour, m.Colour+", disc: ____"
	case m.Colour != "":
		colour, words = m.Colour, fmt.Sprintf("%s, %d", m.Colour, year)
	case o.Disc:
		words = "mark " + of + ", disc: ____"
	case o.Marked:
		words = fmt.Sprintf("to be marked %s, %d", of, year)
	default:
		words = fmt.Sprintf("%d, not marked", year)
	}
	if c.Mark.Clipped {
		words += ", clipped"
	} else if o.Clipped {
		words += ", to clip"
	}
	return colour, words
}

// year is the year of her birth; where that is not known, that in which she was caught.
func (c cage) year(r *state.Reading) int {
	q := r.View.Queen(c.ID)
	day := c.of.Catch
	switch {
	case !c.Born.IsZero():
		day = c.Born
	case !q.Emerged.IsZero():
		day = calendar.DayOf(q.Emerged, r.View.Zone())
	case !q.Born.IsZero():
		day = calendar.DayOf(q.Born, r.View.Zone())
	case !c.Caged.IsZero():
		day = c.Caged
	}
	year, _, _ := day.Date()
	return year
}
