package main

import (
	"cmp"
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
)

// soldCaution stands where queens are sold or sent.
const soldCaution = "Selling and sending queens is regulated in most places: ask your authority for permits and health certificates."

func (a *app) printSheet(v *book.View, s sheetShape) {
	if len(s.Orders) == 0 {
		a.line("No order is open.")
	}
	for _, o := range s.Orders {
		a.printServed(v, o)
	}
	if len(s.Left) > 0 {
		var rows [][]string
		for _, l := range s.Left {
			rows = append(rows, []string{"  " + l.Line, plural(l.Queens, "queen"), prefixed("in ", list(compact("cages "+strings.Join(l.Cages, " "), len(l.Cages), "nucs "+book.Together(l.Nucs), len(l.Nucs))))})
		}
		a.line("for nobody yet:")
		a.table(rows)
	}
	if len(s.Orders) > 0 {
		a.line("%s", soldCaution)
	}
}

// compact are two texts, each left out where it counts nothing.
func compact(one string, n int, other string, m int) (all []string) {
	if n > 0 {
		all = append(all, one)
	}
	if m > 0 {
		all = append(all, other)
	}
	return all
}

func (a *app) printServed(v *book.View, o servedShape) {
	a.line("order %s  %s, %s open%s; %s", o.Order, o.Customer, plural(o.Open, "queen"), prefixed(", ", lineWords(o.Line, o.Instead)), o.leaves)
	if o.Late > 0 {
		a.line("  %s late: ring %s", plural(o.Late, "day"), o.Customer)
	}
	if o.Warning != "" {
		a.line("  mind: %s", o.Warning)
	}
	var rows [][]string
	for i := 0; i < len(o.Gets); {
		j := i + 1
		for j < len(o.Gets) && o.Gets[i].like(o.Gets[j]) {
			j++
		}
		rows = append(rows, givenRow(v, o, o.Gets[i:j]))
		i = j
	}
	a.table(rows)
	a.printShort(v, o)
}

// like tells whether two queens in nucs stand in one row.
func (g givenShape) like(h givenShape) bool {
	return g.Nuc != "" && h.Nuc != "" && g.Yard == h.Yard && g.Line == h.Line && g.Mark == "" && h.Mark == "" && g.How == h.How
}

func givenRow(v *book.View, o servedShape, all []givenShape) []string {
	g := all[0]
	line := cmp.Or(g.Line, "line not known")
	if g.Substitute {
		line += " in place of " + o.Line
	}
	if g.Nuc == "" {
		where := "caged since " + isoDay(v, g.Caged)
		if g.Bank {
			where = "in a bank since " + isoDay(v, g.Caged)
		}
		return []string{"  " + g.Queen, line, g.Mark, where + prefixed(", ", g.How)}
	}
	var nucs []string
	for _, one := range all {
		nucs = append(nucs, one.Nuc)
	}
	return []string{"  " + book.Together(nucs) + prefixed(" in ", g.Yard), line, g.Mark, g.How}
}

// awaited says how the batches stand that an order waits for, and how sure they are of what it
// misses, and what can be promised where that is too little: "grafted, 67 of 100; promise 5 of 8 with 90 of 100".
func awaited(o servedShape) string {
	if o.Sure == nil {
		return "planned"
	}
	return o.stands + ", " + plan.OfHundred(*o.Sure) + prefixed(": ", o.Less) + prefixed("; ", o.promised)
}

// asItStands says how sure an order that waits for batches is without anything more; "" where it waits
// for none.
func asItStands(o servedShape) string {
	if o.Sure == nil {
		return ""
	}
	return "; as it stands all are there in time with " + plan.OfHundred(*o.Sure)
}

// graftWords say by when to graft so that an order has what it misses by its day.
func graftWords(v *book.View, o servedShape) string {
	see := "see lidbook wish"
	if o.few != "" {
		see = o.few + ", see lidbook season --search"
	}
	return fmt.Sprintf("graft by %s to have %d by %s, %s%s", o.graftBy, o.Short-o.Coming-o.Planned, isoDay(v, o.On), see, asItStands(o))
}

// printShort says what is missing, since when, and what to tell the customer.
func (a *app) printShort(v *book.View, o servedShape) {
	if o.Short == 0 {
		return
	}
	short := fmt.Sprintf("  short by %d%s%s%s", o.Short, prefixed(" ", lineWords(o.Line, o.Instead)), prefixed(" since ", isoDay(v, o.Since)), prefixed(", as ", o.why))
	switch o.stand {
	case handover.LookFirst:
		a.line("%s: first look for capped worker brood in %s: if it is there, none are missing; as it stands all are there in time with %s", short, o.lookAt, plan.OfHundred(o.lookSure))
	case handover.Covered:
		if o.Coming > 0 {
			a.line("%s: %s%d %s", short, stillComing(o), o.Planned, awaited(o))
			return
		}
		a.line("%s: %s", short, awaited(o))
	case handover.GraftFor:
		a.line("%s, %s%d %s: %s", short, stillComing(o), o.Planned, cmp.Or(o.stands, "planned"), graftWords(v, o))
	case handover.RingWithout:
		gives := fmt.Sprintf("what stands in nucs gives them with %s at most", plan.OfHundred(o.Most))
		if o.Sure != nil {
			gives = fmt.Sprintf("what is %s gives them in time with %s", o.stands, plan.OfHundred(*o.Sure))
		}
		a.line("%s: ring %s today: %s; %s, see lidbook wish", short, o.Customer, o.tooLate, gives)
	case handover.RingLater:
		a.line("%s: ring %s today: %s, of what stands in nucs%s", short, o.Customer, o.tooLate, asItStands(o))
	default:
		in := "in time, "
		if o.Late > 0 {
			in = ""
		}
		a.line("%s: still to be expected %sby %s, %s", short, in, isoDay(v, o.Next), plan.OfHundred(o.Chance))
	}
	if o.forIt != "" {
		a.line("  %s", o.forIt)
	}
}

// stillComing begins with what is still to be expected from nucs of what an order misses; "" where
// nothing is.
func stillComing(o servedShape) string {
	if o.Coming == 0 {
		return ""
	}
	return fmt.Sprintf("%d still to be expected in time, ", o.Coming)
}
