package plan

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// GraftBy is by when to graft for a wish, and what it finds then.
type GraftBy struct {
	Day    calendar.Day // the latest graft in time that leaves the days in hand which the keeper wants, where one does; 0: none is in time
	Last   calendar.Day // the latest in time at all
	Yard   string       // that is wished, else that has most free nucs for a graft of the day; "" of one without a name
	Nucs   int          // of it that are free
	Taken  int          // of it that other grafts of the book want then
	Queens int          // of it that hold queens then, or cells

	wish Wish // filled, in that yard
}

// GraftBy is by when to graft for a wish: the day of which [Planner.Possible] has the first of the wish,
// or would have were nucs free.
func (p *Planner) GraftBy(w Wish) (by GraftBy) {
	yards := p.yardsFor(w)
	w = p.filled(w)
	if by.Day = p.graftBy(w); by.Day == 0 {
		return by
	}
	by.Last = max(by.Day, p.lastInTime(w, w.Yard))
	for i, y := range yards {
		if at := p.nucsFor(w, by.Day, y); i == 0 || at.Nucs > by.Nucs {
			by.Yard, by.Nucs, by.Taken, by.Queens, w.Yard = at.Yard, at.Nucs, at.Taken, at.Queens, y
		}
	}
	by.wish = w
	return by
}

// LadderBy is the ladder of a graft on that day, and the yard in which its queens fly.
func (p *Planner) LadderBy(b GraftBy) (Ladder, book.YardID) {
	return p.Ladder(p.graftOf(b.wish, b.Day), cellsGuess(b.wish), b.wish.Yard), b.wish.Yard
}

// Bounds of what is tried for [Planner.TooFew]: so many larvae a nuc fill all of them but where a graft
// fails, and so many nucs a queen that is wished are enough for any certainty. Conventions of the program.
const (
	larvaeToFill = 3
	nucsAQueen   = 4
)

// filling is the chance that the queens of a filled wish are there in time of a graft of a day that
// gives all of so many nucs a cell.
func (p *Planner) filling(w Wish, d calendar.Day, nucs int) float64 {
	r := p.rates()
	r.Laying = w.Laying
	nucs = min(nucs, nucsAQueen*(w.Queens+1))
	late := 1 - p.Ladder(p.graftOf(w, d), cellsGuess(w), w.Yard).Laid.InTime(w.By, w.Laying)
	return r.Queens(Graft{Larvae: larvaeToFill * nucs, Nucs: nucs, Late: late}).AtLeast(w.Queens)
}

// lastInTime is the latest graft for a wish that is in time in a yard, with no day in hand; 0: none is.
func (p *Planner) lastInTime(w Wish, yard book.YardID) calendar.Day {
	b, _ := backSearch{p, w.By, w.Laying, cellsGuess(w), yard, w.From}.find()
	return b.Day
}

// graftBy is that day; 0: none is in time.
func (p *Planner) graftBy(w Wish) calendar.Day {
	for range possibleRounds + 1 {
		a := Answer{Wish: w}
		p.last(&a)
		if !a.InTime {
			return 0
		}
		late := missed(p.Ladder(p.graftOf(a.Wish, a.Graft), cellsGuess(w), w.Yard), p.view.Today())
		if late == 0 {
			return a.Graft
		}
		w.Graft = a.Graft + late
	}
	return w.Graft
}

// nucsFor are the nucs of a yard for a graft of a wish on a day.
func (p *Planner) nucsFor(w Wish, d calendar.Day, yard book.YardID) (at GraftBy) {
	in := p.Ladder(p.graftOf(w, d), cellsGuess(w), yard).InNucs(Size{})
	free := 0
	for n := range p.view.Nucs() {
		switch {
		case n.Yard != yard:
		case p.freeFrom(n) <= in.From:
			free++
		default:
			at.Queens++
		}
	}
	at.Nucs = p.Free(yard, in.From, in.To, w.Not)
	at.Taken = free - at.Nucs
	if !yard.IsZero() {
		at.Yard = p.view.Yard(yard).Name
	}
	return at
}

// Said is the day, with those that it leaves in hand: "Mon 3 May (1 day in hand, the last is Tue 4 May)".
func (b GraftBy) Said(said func(calendar.Day) string) string { return b.Of(b.Day, said) }

// Of is a day of a graft with those that it leaves in hand; one that is sooner than need be, or later than
// the last, is said alone.
func (b GraftBy) Of(d calendar.Day, said func(calendar.Day) string) string {
	switch hand := b.Last - d; {
	case d < b.Day || hand < 0:
		return said(d)
	case hand == 0:
		return said(d) + " (the last day)"
	case hand == 1:
		return fmt.Sprintf("%s (1 day in hand, the last is %s)", said(d), said(b.Last))
	default:
		return fmt.Sprintf("%s (%d days in hand, the last is %s)", said(d), hand, said(b.Last))
	}
}

// TooFew says what stands in the way of the queens of a wish of a graft by its day where it has fewer nucs
// than that, or so few that all are less sure than is wished; "" where it has enough.
func (p *Planner) TooFew(b GraftBy) string {
	queens := b.wish.Queens
	if b.Nucs < queens {
		return b.tooFew(queens)
	}
	chance := p.filling(b.wish, b.Day, b.Nucs)
	if !Unsure(chance, b.wish.Sure) {
		return ""
	}
	return fmt.Sprintf("%s: enough for %d with %s at most", b.free(), queens, OfHundred(chance))
}

// free says how many nucs are free for it, one or more, and where.
func (b GraftBy) free() string {
	if b.Nucs == 1 {
		return "1 nuc is free for it" + b.in()
	}
	return fmt.Sprintf("%d nucs are free for it%s", b.Nucs, b.in())
}

// tooFew says that its nucs are fewer than so many queens.
func (b GraftBy) tooFew(queens int) string {
	if b.Nucs > 0 {
		return fmt.Sprintf("%s: for %d of %d at most", b.free(), b.Nucs, queens)
	}
	said := "no nuc is free for it"
	switch {
	case b.Taken > 0 && b.Queens > 0:
		return fmt.Sprintf("%s: then other grafts have %d%s, and %d hold queens or cells", said, b.Taken, b.in(), b.Queens)
	case b.Taken > 0:
		return fmt.Sprintf("%s: then other grafts have all %d%s", said, b.Taken, b.in())
	case b.Queens > 0:
		return fmt.Sprintf("%s: then all %d%s hold queens or cells", said, b.Queens, b.in())
	}
	return said + ": the book has none"
}

// in says in which yard.
func (b GraftBy) in() string {
	if b.Yard == "" {
		return ""
	}
	return " in " + b.Yard
}
