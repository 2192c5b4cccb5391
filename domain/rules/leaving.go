package rules

import (
	"cmp"
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/practice"
)

// leaving: the queens of an open order leave the keeper's hands on a day. Where none is there, there is
// nothing to hand over, and the order is seen to.
func (p *pass) leaving() {
	for i, o := range p.sheet.Orders {
		y, on := p.home(), o.Leaves()
		if p.view.From() <= on && on < p.today && o.Missing() == 0 {
			p.taken = true // on a day ahead who is there, or planned, has left
			continue
		}
		f := Finding{
			Rule: Leaving, Of: o.Order.Order.Subject(), Act: ActHandOver, Amount: float64(o.Order.Open()), Since: o.Order.Taken.Instant,
			Takes: p.numbers.Get(practice.MinutesHandOver) * float64(min(1, len(o.Queens))),
			What:  leavingWhat(o), Do: p.handOut(i), Why: p.leavingWhy(o, on), Sure: sureRecorded,
			Used: []practice.Key{practice.MinutesHandOver},
		}
		if o.Order.Sent {
			f.Used = append(f.Used, practice.JourneyUsual, practice.SentFrom, practice.SentUntil, practice.HeatStop)
		}
		if there(o) == 0 {
			f.Act = ActSeeToOrder
		}
		f.From, f.Best, f.By = course.Days(on, on, on, y.zone)
		p.add(y, f)
	}
}

// leavingDeadlines are the days on which the queens of open orders leave, with alarms.
func (p *pass) leavingDeadlines() (all []Deadline) {
	y := p.home()
	for _, o := range p.sheet.Orders {
		of, on := o.Order.Order.Subject(), o.Leaves()
		all = append(all, Deadline{
			ID: leavingID(of), Of: of, Yard: y.id, Day: on, At: on.Start(y.zone), Done: on < y.today,
			What: fmt.Sprintf("%s: %s, %s", sentence(p.name(of)), leavingWhat(o), p.dealt(o)), Do: p.leavingWhy(o, on), Alarms: p.alarms(y, on.At(noon, 0, y.zone)),
		})
	}
	return all
}

// leavingID names the event of an order for good.
func leavingID(of book.Subject) string { return fmt.Sprintf("%s %s", of, Leaving) }

// leavingWhat is how many queens go to whom.
func leavingWhat(o handover.Served) string {
	gets := "fetched by"
	if o.Order.Sent {
		gets = "sent to"
	}
	return fmt.Sprintf("%s to be %s %s", count(o.Order.Open(), "queen"), gets, customer(o.Order))
}

// there is how many of the queens of an order are there on its day, as far as is known.
func there(o handover.Served) int { return o.Order.Open() - o.Missing() }

// handOut is what is to be done for the order of a place on the day on which its queens leave: who is there
// is handed over. Before that day it is said with the order what to do for the others, see [pass.ordersShort].
func (p *pass) handOut(i int) string {
	o := p.sheet.Orders[i]
	n, open, tell := there(o), o.Order.Open(), ""
	if n < open && o.Leaves() <= p.today {
		tell = "; " + p.tell(i)
	}
	do, queens := "Hand %s over to %s: %s%s", count(n, "queen")
	if o.Order.Sent {
		do = "Send %s to %s: %s%s"
	}
	switch {
	case open == 1 && n == 0:
		return fmt.Sprintf("The queen for %s is not there%s", customer(o.Order), tell)
	case n == 0:
		return fmt.Sprintf("None of %s for %s is there%s", count(open, "queen"), customer(o.Order), tell)
	case n < open:
		queens = fmt.Sprintf("%d of %s", n, count(open, "queen"))
	}
	return fmt.Sprintf(do, queens, customer(o.Order), p.dealt(o), tell)
}

// tell is what to do for the queens that the order of a place misses on its day: a look that may show them,
// or whom to ring, and which day to name.
func (p *pass) tell(i int) string {
	p.sheet.Explain(p.ladders(), i)
	o := p.sheet.Orders[i]
	if len(o.Look) > 0 {
		return "look first for capped worker brood in " + o.LookAt()
	}
	ring := "ring " + customer(o.Order)
	if o.Soonest.Day > p.today {
		ring += ": " + o.Soonest.Said(func(d calendar.Day) string { return d.ShortFrom(p.today) })
	}
	return ring
}

func customer(o *book.Order) string { return cmp.Or(o.Customer, "the customer") }

// leavingWhy is when the queens leave, and what speaks against it.
func (p *pass) leavingWhy(o handover.Served, on calendar.Day) string {
	why := "promised by " + o.Order.By.ShortFrom(p.today)
	if claim := o.Order.Reopened; !claim.IsZero() {
		why = fmt.Sprintf("claimed %s, to be replaced by %s", claim.Day(p.home().zone).ShortFrom(p.today), o.Order.By.ShortFrom(p.today))
	}
	if o.Order.Sent {
		why = fmt.Sprintf("sent %s, %s on the way, %s", on.ShortFrom(p.today), count(int(o.Arrive-o.On), "day"), why)
	}
	if o.Warning != "" {
		why += "; " + o.Warning
	}
	return why
}

// dealt are the queens that an order gets in words: in which cages they are, and in which
// nucs, and how many are missing.
func (p *pass) dealt(o handover.Served) string {
	var cages, bare, nucs []string
	for _, q := range o.Queens {
		switch {
		case !q.Nuc.IsZero():
			nucs = append(nucs, p.name(q.Nuc.Subject()))
		case q.Label != "":
			cages = append(cages, q.Label)
		default:
			bare = append(bare, p.view.CageOf(p.view.Queen(q.ID)))
		}
	}
	var all []string
	if len(cages) > 0 {
		all = append(all, plural(cages, "cage")+" "+strings.Join(cages, " "))
	}
	if len(bare) > 0 {
		all = append(all, "caged from "+book.Together(bare))
	}
	if len(nucs) > 0 {
		all = append(all, "from "+book.Together(nucs))
	}
	if come := toCome(o); come != "" {
		all = append(all, come)
	}
	if n := o.Missing(); n > 0 {
		all = append(all, fmt.Sprintf("short by %d", n))
	}
	return strings.Join(all, ", ")
}

// toCome are the queens of those that an order misses who are on the way: "2 to come from nucs, 3 planned".
func toCome(o handover.Served) string {
	var all []string
	if o.Coming > 0 {
		all = append(all, fmt.Sprintf("%d to come from nucs", o.Coming))
	}
	if o.Planned > 0 {
		all = append(all, fmt.Sprintf("%d grafted or planned", o.Planned))
	}
	return strings.Join(all, ", ")
}

func plural(of []string, thing string) string {
	if len(of) == 1 {
		return thing
	}
	return thing + "s"
}
