package demo

import (
	"strconv"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// bank is the colony that keeps caged queens and virgins.
const bank = "S11"

// mark paints the queen of a nuc in the colour of the year she was born in.
func (v *valley) mark(n *nuc, day int) {
	if !n.queen.IsZero() {
		return
	}
	n.queen = book.QueenID(v.name())
	born := v.emergence(n.batch).In(v.zone).Year()
	v.note(n, v.in(day, calendar.Evening), book.QueenMarked{Queen: n.queen, Nuc: n.id, Colour: bee.MarkColour(born).String()})
}

// catch looks at the brood, marks the queen if she is not, and takes her out
// into a cage and to the bank.
func (v *valley) catch(n *nuc, day int) {
	at := v.in(day, calendar.Evening)
	v.sawBrood(n, day)
	v.mark(n, day)
	v.note(n, at,
		book.QueenCaught{Nuc: n.id, Queen: n.queen, Label: v.nextCage()},
		book.QueenBanked{Queen: n.queen, Bank: v.colonies[bank]},
	)
	v.catches[day] = append(v.catches[day], n)
}

func (v *valley) nextCage() string {
	v.cages++
	return strconv.Itoa(v.cages)
}

var orders = []struct {
	number, customer string
	taken            int
	queens           int
	line             string
	substitute       []string
	from, by         int
	priority         int
}{
	{"31", "Corin A.", -45, 22, siskin, nil, -9, 5, 1},
	{"32", "Beekeepers of Outer Aldervane", -38, 8, "", nil, 6, 13, 2},
	{"33", "Liese P.", -20, 12, plover, []string{yarrow}, 14, 24, 2},
}

// The cages that went out on a day of catching, those that came back empty,
// and so one that nobody can tell of.
const cagesOut, cagesBack = 8, 3

func (v *valley) countCages(day int) {
	v.write(keeper, v.at(day, 16, 45), book.TakenAlong{What: book.Cages, Count: cagesOut})
	v.write(keeper, v.at(day, 20, 15), book.BroughtBack{What: book.Cages, Count: cagesBack})
}

// handedOver are the days on which the queens caught on a day went to the
// first order.
var handedOver = []struct{ caught, day int }{{-10, -8}, {-7, -5}}

// sell writes the orders, what was handed over for the first, a claim, and the
// cages of the last catch.
func (v *valley) sell() {
	ids := make([]book.OrderID, len(orders))
	for i, o := range orders {
		ids[i] = book.OrderID(v.name())
		v.write(keeper, v.in(o.taken, calendar.Evening), book.OrderTaken{
			Order: ids[i], Number: o.number, Customer: o.customer, Queens: o.queens, Line: o.line,
			Substitute: o.substitute, From: v.on(o.from), By: v.on(o.by), Marked: true, Priority: o.priority,
		})
	}
	for _, h := range handedOver {
		for _, n := range v.catches[h.caught] {
			v.write(keeper, v.at(h.day, 10, 15), book.QueenHandedOver{Queen: n.queen, Order: ids[0], With: true})
		}
	}
	v.countCages(-2)
	v.write(keeper, v.at(-3, 20, 10), book.Claimed{Order: ids[0], Queens: 1, Why: "dead in the cage on arrival"})
}
