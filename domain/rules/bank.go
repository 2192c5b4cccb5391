package rules

import (
	"fmt"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/practice"
)

// held is the caged queens of one kind in one place.
type held struct {
	of     book.Subject // the bank colony, or none for cages in the hand
	queens []*book.Queen
	from   calendar.Day // when the first one has been kept well enough
	by     calendar.Day // when the first one must be out
}

// bankVirgins: well for some days, at most a week, and no older than three
// weeks in any case.
func (p *pass) bankVirgins() {
	for _, h := range p.held(func(q *book.Queen) bool { return q.Virgin }) {
		f := Finding{
			Rule: BankVirgins,
			What: fmt.Sprintf("%s caged", count(len(h.queens), "virgin")),
			Why:  fmt.Sprintf("the first one since %s; well for %d days, %d at most", p.home().day(first(h)).ShortFrom(p.today), p.days(practice.VirginBankGood), p.days(practice.VirginBankMost)),
			Do:   p.virginsGo(h),
			Used: []practice.Key{practice.VirginBankGood, practice.VirginBankMost, practice.VirginLate, practice.VirginBankSurvival},
		}
		p.addHeld(h, h.from, f)
	}
}

// virginsGo says what is to be done with the virgins held: those too old to mate are
// culled, the others put in.
func (p *pass) virginsGo(h *held) string {
	old := 0
	for _, q := range h.queens {
		if tooOld(p.course, q) {
			old++
		}
	}
	few := fmt.Sprintf("few virgins of %d days and more mate", p.days(practice.VirginLate))
	switch old {
	case 0:
		return p.putInWhere(h, "the oldest virgins")
	case len(h.queens):
		return "Cull them: " + few
	}
	return fmt.Sprintf("Cull %d of them: %s. %s", old, few, p.putInWhere(h, "the oldest of the others"))
}

// putInWhere names the first nuc that takes a virgin of those held, which no cell is
// kept for; where none does, what else there is to do with them.
func (p *pass) putInWhere(h *held, who string) string {
	from := p.packs
	if c, ok := h.of.Colony(); ok {
		from = p.yard(p.view.Colony(c).Yard).yard
	}
	for i := range p.nucs {
		n := &p.nucs[i]
		if p.takesCell(n) && n.cell == nil && n.waits == nil && !stays(from, n.Yard) {
			return "Put in " + who + ", the first into " + n.Name
		}
	}
	if from.Standstill != nil {
		return "No nuc is free for " + who + ", and none is made up on a standstill: cull them"
	}
	return "No nuc is free for " + who + ": make up a nuc, or cull them"
}

// bankMated: in a bank one to two months.
func (p *pass) bankMated() {
	banked := func(q *book.Queen) bool {
		_, alone := handover.Alone(p.view, q)
		return !q.Virgin && !alone
	}
	for _, h := range p.held(banked) {
		f := Finding{
			Rule: BankMated,
			What: fmt.Sprintf("%s caged", count(len(h.queens), "mated queen")),
			Why:  fmt.Sprintf("the first one since %s; %d days at most", p.home().day(first(h)).ShortFrom(p.today), p.days(practice.MatedBankMost)),
			Do:   "Hand over or use the queens banked first",
			Used: []practice.Key{practice.MatedBankMost, practice.MatedBankSurvival},
		}
		p.addHeld(h, h.from, f)
	}
}

// cagedAlone: mated queens in no bank keep a few days; those who go to an order by then need none.
func (p *pass) cagedAlone() {
	goes := map[book.QueenID]calendar.Day{}
	for _, o := range p.sheet.Orders {
		for _, q := range o.Queens {
			goes[q.ID] = o.On
		}
	}
	left := func(q *book.Queen) bool {
		until, alone := handover.Alone(p.view, q)
		on, ordered := goes[q.Queen]
		return !q.Virgin && alone && (!ordered || on > until)
	}
	for _, h := range p.held(left) {
		f := Finding{
			Rule: CagedAlone,
			What: fmt.Sprintf("%s caged, in no bank", count(len(h.queens), "mated queen")),
			Why:  fmt.Sprintf("the first one since %s; a cage by itself keeps a queen for %s at most", p.home().day(first(h)).ShortFrom(p.today), count(int(p.days(practice.CagedMost)), "day")),
			Do:   p.outOfCages(h),
			Used: []practice.Key{practice.CagedMost},
		}
		p.addHeld(h, max(h.from, h.by-1), f)
	}
}

// outOfCages says what is to be done with queens caged in no bank: those caged for too long are looked at first.
func (p *pass) outOfCages(h *held) string {
	switch one := len(h.queens) == 1; {
	case one && h.by < p.today:
		return "Look how she is, then hang her into a bank, or hand her over"
	case one:
		return "Hang her into a bank, or hand her over"
	case h.by < p.today:
		return "Look how they are, then hang them into a bank, or hand them over"
	}
	return "Hang them into a bank, or hand them over"
}

func first(h *held) time.Time {
	t := h.queens[0].Since.Instant
	for _, q := range h.queens {
		if q.Since.Instant.Before(t) {
			t = q.Since.Instant
		}
	}
	return t
}

// addHeld adds what is to be done with those held, best up to a day: after it, it presses.
func (p *pass) addHeld(h *held, best calendar.Day, f Finding) {
	y := p.home()
	f.Of, f.Act, f.Since, f.Sure = h.of, ActSeeToBank, first(h), sureRecorded
	if c, ok := h.of.Colony(); ok {
		y = p.yard(p.view.Colony(c).Yard)
		f.What += " in " + p.view.Colony(c).Name
	} else {
		f.Of = h.queens[0].Queen.Subject()
	}
	for _, q := range h.queens {
		f.Also = append(f.Also, q.Queen.Subject())
	}
	f.From, f.Best, f.By = course.Days(h.from, best, h.by, y.zone)
	p.add(y, f)
}

// held gathers the caged queens who count by the place they are in.
func (p *pass) held(counts func(*book.Queen) bool) []*held {
	var all []*held
	at := map[book.Subject]*held{}
	for q := range p.view.Queens() {
		if !q.Caged() || !counts(q) {
			continue
		}
		h := at[q.Where]
		if h == nil {
			h = &held{of: q.Where}
			at[q.Where] = h
			all = append(all, h)
		}
		from, by := keeps(p.view, p.course, q)
		if len(h.queens) == 0 || by < h.by {
			h.from, h.by = from, by
		}
		h.queens = append(h.queens, q)
	}
	return all
}
