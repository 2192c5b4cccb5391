package state

import (
	"cmp"
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

// ServedOf says how many queens an order is owed, and of which line.
func ServedOf(o handover.Served) string {
	return fmt.Sprintf("%d owed, %s", o.Order.Open(), cmp.Or(o.Order.Lines(), "any line"))
}

// Short says how many queens of an order are missing, of those that are neither to be expected nor planned,
// and since when; how many are to come where all of them are; "" where none are missing.
func (p *OrderSheet) Short(o handover.Served) string {
	switch {
	case o.Short == 0:
		return ""
	case o.Missing() <= 0 && !InVain(o):
		return fmt.Sprintf("%d to come", o.Short)
	}
	n := o.Missing()
	if n <= 0 { // in vain
		n = o.Short
	}
	says := fmt.Sprintf("%d short", n)
	if since := p.Since[o.Order.Order]; since != 0 {
		says += " since " + p.said(since)
	}
	return says
}

// Fell says which batches give an order fewer than was planned; "" where none is known to.
func Fell(o handover.Served) string {
	why := o.FellWords()
	if why == "" {
		return ""
	}
	return plan.Sentence(why)
}

// InVain tells whether what an order misses cannot be there in time any more: its
// customer waits in vain until somebody rings.
func InVain(o handover.Served) bool { return o.Lost }

// Ring is what a customer is to be told of the queens that are missing, and how sure
// what is planned for them is; "" where none are.
func (p *OrderSheet) Ring(o handover.Served) string {
	for _, e := range p.Waits {
		if e.Order != o.Order.Order {
			continue
		}
		gives := "the plan gives them "
		said := p.missing(o, e.Stands())
		switch stand := o.Stand(); {
		case stand == handover.LookFirst:
			return said
		case stand.Rings():
			gives = "as it stands they are there in time "
		case e.Grafted:
			gives = "the graft gives them "
		}
		return said + "; " + gives + plan.OfHundred(e.Chance) + " times"
	}
	return p.missing(o, "planned")
}

// missing is what is to be told of the queens that are missing; stands is how the batches stand
// that give some of them: planned, or grafted.
func (p *OrderSheet) missing(o handover.Served, stands string) string {
	more := fmt.Sprintf("%d more", o.Short)
	if lines := o.Order.Lines(); lines != "" {
		more += " " + lines
	}
	whom := "Ring " + cmp.Or(o.Order.Customer, "the customer") + " today: "
	switch o.Stand() {
	case handover.NoneShort:
		return ""
	case handover.LookFirst:
		return fmt.Sprintf("First look for capped worker brood in %s: if it is there, none are missing; as it stands they are there in time %s times", o.LookAt(), plan.OfHundred(o.Sure))
	case handover.Covered:
		return onPlan(o, stands) + more
	case handover.GraftFor:
		said := plan.Sentence(fmt.Sprintf("%sgraft for %d by %s", partly(o, more, stands), o.Missing(), o.GraftBy.Said(p.said)))
		if few := p.of.planner().TooFew(o.GraftBy); few != "" {
			said += "; " + few
		}
		return said
	case handover.RingWithout:
		return whom + o.TooLate().Said(p.said) + "; what stands in nucs gives them with " + plan.OfHundred(o.Next.Most) + " at most"
	case handover.RingLater:
		return whom + o.TooLate().Said(p.said) + ", of what stands in nucs"
	default:
		return "Still to be expected in time: " + more + " by " + p.said(o.Next.Day) + ", " + plan.OfHundred(o.Next.Chance)
	}
}

// partly begins what is said of queens of whom some are to be expected, planned or grafted; "" where none are.
func partly(o handover.Served, more, stands string) string {
	switch {
	case o.Coming > 0 && o.Planned > 0:
		return fmt.Sprintf("%d of %s to be expected in time, %d %s: ", o.Coming, more, o.Planned, stands)
	case o.Coming > 0:
		return fmt.Sprintf("%d of %s to be expected in time: ", o.Coming, more)
	case o.Planned > 0:
		return fmt.Sprintf("%d of %s %s: ", o.Planned, more, stands)
	}
	return ""
}

// said is a day as it is written on the sheet's.
func (p *OrderSheet) said(d calendar.Day) string { return d.ShortFrom(p.of.View.Today()) }

// onPlan begins what is said of queens who are on the plan, or grafted, or stand in nucs.
func onPlan(o handover.Served, stands string) string {
	if o.Coming > 0 {
		return fmt.Sprintf("%s, %d of them to be expected from nucs: ", plan.Sentence(stands), o.Coming)
	}
	return plan.Sentence(stands) + ": "
}

// holder is where a queen is who can be handed over: her nuc, or she herself.
func holder(q handover.Queen) book.Subject {
	if q.Nuc.IsZero() {
		return q.ID.Subject()
	}
	return q.Nuc.Subject()
}

// ServedQueen is a queen who goes to an order: where she is, her line, her marks and
// what is to be done with her.
type ServedQueen struct {
	To                book.Subject
	Where, Line, Mark string
	When              string
}

// ServedQueens are the queens of an order, those in cages first.
func (r *Reading) ServedQueens(o handover.Served) (all []ServedQueen) {
	for _, q := range o.Queens {
		to := holder(q.Queen)
		one := ServedQueen{To: to, Where: r.whereQueen(q.Queen), Line: cmp.Or(q.Line, "line not known"), Mark: markWords(q.Mark)}
		if q.Substitute {
			one.Line += " in place of " + o.Order.Line
		}
		switch {
		case q.Nuc.IsZero() && q.Bank:
			one.When = "in a bank since " + q.Caged.ShortFrom(r.Day)
		case q.Nuc.IsZero():
			one.When = "caged since " + q.Caged.ShortFrom(r.Day)
		}
		if how := q.Words(); one.When == "" {
			one.When = how
		} else if how != "" {
			one.When += ", " + how
		}
		all = append(all, one)
	}
	return all
}

// whereQueen is where a queen is who can be handed over, in words.
func (r *Reading) whereQueen(q handover.Queen) string {
	if q.Nuc.IsZero() && q.Label != "" {
		return "cage " + q.Label
	}
	return rules.Name(r.View, holder(q))
}

// markWords are the marks on a queen: "blue, disc 12, a wing clipped".
func markWords(m book.QueenMarked) string {
	var all []string
	if m.Colour != "" {
		all = append(all, m.Colour)
	}
	if m.Disc != "" {
		all = append(all, "disc "+m.Disc)
	}
	if m.Clipped {
		all = append(all, "a wing clipped")
	}
	return strings.Join(all, ", ")
}

// claimWords are how a queen was claimed; "" where she was not.
func claimWords(g handover.Gone) string {
	switch g.Claimed {
	case book.DeadOnArrival:
		return "dead on arrival"
	case book.NotAccepted:
		return "not accepted"
	case book.SoonSuperseded:
		return "superseded"
	default:
		return ""
	}
}
