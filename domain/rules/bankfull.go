package rules

import (
	"cmp"
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// BankOver is how many cages more hang in a colony than a bank takes.
func BankOver(c *book.Colony, n practice.Numbers) int {
	return max(0, len(c.Banked)-int(n.Get(practice.BankPlaces)))
}

// bankFull: a bank has more cages than it takes, or all banks together have no place for the
// queens who are to be caught into one for their orders.
func (p *pass) bankFull() {
	for c := range p.view.Colonies() {
		if more := BankOver(c, p.numbers); more > 0 {
			p.tellFull(c, Finding{
				Since: p.view.Queen(c.Banked[len(c.Banked)-more]).Since.Instant,
				What:  fmt.Sprintf("%s too many in %s", count(more, "cage"), c.Name),
				Why:   fmt.Sprintf("queens caged in it: %d, a bank takes %d", len(c.Banked), len(c.Banked)-more),
				Do:    fmt.Sprintf("Hang %d of them into another bank", more),
			}, p.today)
		}
	}
	banks := p.banks()
	if len(banks) == 0 {
		return
	}
	if day, more := p.bankedMost(banks); more > 0 {
		p.tellFull(banks[0], Finding{
			What: fmt.Sprintf("no place in a bank for %s on %s", count(more, "queen"), day.ShortFrom(p.today)),
			Why:  fmt.Sprintf("they are caught for orders that go later; %s, of %s", count(len(banks), "bank"), count(int(p.numbers.Get(practice.BankPlaces)), "cage")),
			Do:   fmt.Sprintf("Make up another bank by %s, or hand queens over sooner", day.ShortFrom(p.today)),
		}, day)
	}
}

// tellFull tells of a bank that is full on a day.
func (p *pass) tellFull(c *book.Colony, f Finding, day calendar.Day) {
	y := p.yard(c.Yard)
	f.Rule, f.Of, f.Act, f.Sure, f.Used = BankFull, c.Colony.Subject(), ActSeeToBank, sureRecorded, []practice.Key{practice.BankPlaces}
	f.From, f.Best, f.By = course.Days(p.today, day, day, y.zone)
	p.add(y, f)
}

// banks are the colonies that are kept as banks.
func (p *pass) banks() (all []*book.Colony) {
	for c := range p.view.Colonies() {
		if c.Is(book.Bank) {
			all = append(all, c)
		}
	}
	return all
}

// bankedMost is the first day on which more queens hang in banks than have a place, and how
// many more: those who are in one until they leave with their order, and those who are hung in
// when they are caught for theirs. Those who are too many already are told by themselves.
func (p *pass) bankedMost(banks []*book.Colony) (day calendar.Day, more int) {
	type change struct {
		day  calendar.Day
		more int
	}
	in := 0
	for _, c := range banks {
		in += len(c.Banked)
	}
	places := max(in, len(banks)*int(p.numbers.Get(practice.BankPlaces)))
	var changes []change
	for _, o := range p.sheet.Orders {
		for _, q := range o.Queens {
			if q.ToBank {
				changes = append(changes, change{max(q.By, p.today), 1})
			}
			if q.ToBank || p.banked(q.ID) {
				changes = append(changes, change{o.On, -1})
			}
		}
	}
	slices.SortFunc(changes, func(a, b change) int { return cmp.Or(cmp.Compare(a.day, b.day), cmp.Compare(a.more, b.more)) })
	for i, c := range changes {
		in += c.more
		if last := i == len(changes)-1 || changes[i+1].day != c.day; last && in > places {
			return c.day, in - places
		}
	}
	return 0, 0
}

// banked tells whether a queen hangs in a colony that is kept as a bank.
func (p *pass) banked(id book.QueenID) bool {
	c, hangs := p.view.Queen(id).Where.Colony()
	return hangs && p.view.Colony(c).Is(book.Bank)
}
