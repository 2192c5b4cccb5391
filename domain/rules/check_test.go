package rules_test

import (
	"fmt"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// A plan and what the rules say of it: the first refusal, or else the first
// warning; nothing when it is plain.
type planned struct {
	name    string
	write   func(p *booktest.Pen)
	at      string
	plan    rules.Intent
	refused string
	warned  string
	do      string
}

var a1 = booktest.Nuc("A1")

// waiting is A1 made up, a batch with ripe cells, warm nights.
func waiting(p *booktest.Pen) {
	p.At("2027-05-05 18:00").Write(graft(4, 4))
	p.At("2027-05-13 18:00").Write(madeUp("A1")...)
}

// treatedA1 is A1 with a proven queen, treated on 12 June with 14 days to wait.
func treatedA1(p *booktest.Pen) {
	layingOn1June(p)
	p.At("2027-06-11 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
	p.At("2027-06-12 18:00").Write(book.Treated{Of: a1.Subject(), With: "oxalic acid", Wait: 14})
}

// toGraft means to graft a batch on the day for which it is to be planned.
func toGraft(b book.BatchPlanned) rules.Graft {
	b.Batch = batch(9)
	return rules.Graft{On: b.Day, Yard: b.Yard, Plan: book.BatchPlan{BatchPlanned: b}}
}

// grafted is A1 made up and without a queen for days, and a batch of 5 May.
func grafted(p *booktest.Pen) {
	p.At("2027-05-04 18:00").Write(madeUp("A1")...)
	p.At("2027-05-05 18:00").Write(graft(4, 4))
}

func caughtOn20June(p *booktest.Pen) {
	layingOn1June(p)
	p.At("2027-06-20 18:00").Write(book.QueenCaught{Nuc: a1, Queen: booktest.Queen("a"), Label: "7"})
}

var plans = []planned{
	{name: "a cell", write: waiting, at: "2027-05-14 19:00", plan: rules.GiveCell{Nuc: a1, Batch: batch(4)}},
	{
		name: "a cell into an empty nuc", write: waiting, at: "2027-05-14 19:00", plan: rules.GiveCell{Nuc: booktest.Nuc("A2"), Batch: batch(4)},
		refused: "A2 is empty", do: "Make it up first",
	},
	{
		name: "a cell beside a laying queen", write: layingOn1June, at: "2027-06-02 18:00", plan: rules.GiveCell{Nuc: a1},
		refused: "A1 has a laying queen, eggs seen Tue 1 Jun; a cell would be lost", do: "Catch her, then wait 6 h",
	},
	{
		name: "a virgin beside a drone layer", write: func(p *booktest.Pen) {
			celled(p)
			p.At("2027-06-10 18:00").Write(look("A1", book.Looked{DroneBrood: true}))
		}, at: "2027-06-11 18:00", plan: rules.PutInVirgin{Nuc: a1},
		refused: "A1 has a drone layer; a virgin would be lost", do: "Take her out, then wait 6 h",
	},
	{
		name: "a cell of a batch with none left", write: func(p *booktest.Pen) {
			celled(p)
			p.At("2027-05-13 18:00").Write(madeUp("A2")...)
		}, at: "2027-05-15 18:00", plan: rules.GiveCell{Nuc: booktest.Nuc("A2"), Batch: batch(4)},
		refused: "batch 4 has no cell left: of 1 all are given, caged or gone", do: "Count the cells again, or take another batch",
	},
	{
		name: "a cell of a batch grafted two days ago", write: grafted, at: "2027-05-07 18:00", plan: rules.GiveCell{Nuc: a1, Batch: batch(4)},
		refused: "batch 4 is on day 2 from the graft; its cells are not capped yet", do: "Wait until Fri 14 May",
	},
	{
		name: "a cell on the first day it can be capped", write: grafted, at: "2027-05-09 08:00", plan: rules.GiveCell{Nuc: a1, Batch: batch(4)},
		warned: "batch 4 is on day 4 from the graft; its cells are not ripe yet", do: "Wait until Fri 14 May",
	},
	{
		name: "a cell counted as capped early", write: func(p *booktest.Pen) {
			grafted(p)
			p.At("2027-05-07 08:00").Write(book.CappedCounted{Batch: batch(4), Capped: 4})
		}, at: "2027-05-07 18:00", plan: rules.GiveCell{Nuc: a1, Batch: batch(4)},
		warned: "batch 4 is on day 2 from the graft; its cells are not ripe yet", do: "Wait until Fri 14 May",
	},
	{
		name: "a cell on the last day of emergence", write: grafted, at: "2027-05-19 20:00", plan: rules.GiveCell{Nuc: a1, Batch: batch(4)},
		warned: "half of batch 4 emerged by Tue 18 May 00:34", do: "Look first whether she is still in the cell, alive",
	},
	{
		name: "a capped cell that is not ripe", write: grafted, at: "2027-05-10 18:00", plan: rules.GiveCell{Nuc: a1, Batch: batch(4)},
		warned: "batch 4 is on day 5 from the graft; its cells are not ripe yet", do: "Wait until Fri 14 May",
	},
	{
		name: "a cell when half of them are out", write: grafted, at: "2027-05-18 18:00", plan: rules.GiveCell{Nuc: a1, Batch: batch(4)},
		warned: "half of batch 4 emerged by Tue 18 May 00:34", do: "Look first whether she is still in the cell, alive",
	},
	{
		name: "a cell when all must be out", write: grafted, at: "2027-05-20 08:00", plan: rules.GiveCell{Nuc: a1, Batch: batch(4)},
		refused: "all cells of batch 4 must have emerged by Wed 19 May", do: "Count them: out, dead",
	},
	{
		name: "a cell two hours after the catch", write: caughtOn20June, at: "2027-06-20 20:00", plan: rules.GiveCell{Nuc: a1},
		refused: "the queen of A1 was taken 2 h ago; the bees would destroy a cell", do: "Wait until Mon 21 Jun 00:00",
	},
	{
		name: "a cell an hour after the make-up", write: waiting, at: "2027-05-13 19:00", plan: rules.GiveCell{Nuc: a1},
		warned: "A1 has been without a queen for 1 h only", do: "Wait until Fri 14 May 00:00",
	},
	{
		name: "a cell beside a cell", write: celled, at: "2027-05-16 18:00", plan: rules.GiveCell{Nuc: a1},
		warned: "A1 holds a queen already: cell of batch 4, emerges Tue 18 May by the calendar", do: "Look first: a cell beside her would be lost",
	},
	{
		name: "a cell where workers may lay", write: waiting, at: "2027-06-10 18:00", plan: rules.GiveCell{Nuc: a1},
		warned: "A1: no queen since Thu 13 May, 28 days: laying workers to be expected", do: "Look first; shake it out and make it up again",
	},
	{
		name: "a cell where an own queen may be", write: caughtOn20June, at: "2027-07-05 18:00", plan: rules.GiveCell{Nuc: a1},
		warned: "A1 may have raised a queen of its own: most probably queenright by now; no queen since Sun 20 Jun; a virgin of its own is possible from Fri 2 Jul", do: "Look for an opened own cell first",
	},
	{
		name: "a virgin 23 days old", write: func(p *booktest.Pen) {
			waiting(p)
			p.At("2027-06-09 18:00").Write(madeUp("A2")...)
		}, at: "2027-06-10 18:00", plan: rules.PutInVirgin{Nuc: booktest.Nuc("A2"), Batch: batch(4)},
		warned: "she is 23 days old; few mate from 21", do: "Cull her, and take a younger one",
	},
	{
		name: "cells on day 7", write: waiting, at: "2027-05-12 18:00", plan: rules.MoveCells{Batch: batch(4)},
		warned: "batch 4 is on day 7 from the graft; a jolt can cripple the queens", do: "Leave the cells alone until Fri 14 May",
	},
	{name: "cells on day 9", write: waiting, at: "2027-05-14 18:00", plan: rules.MoveCells{Batch: batch(4)}},
	{
		name: "an order for a line of which none is bred", write: func(p *booktest.Pen) {
			p.At("2027-04-02 08:00").Write(book.ColonyDescribed{Colony: booktest.Colony("S3"), Name: "S3", Yard: atHome, Line: "Sorrel", Roles: []book.Role{book.Breeder}})
		}, at: "2027-04-10 18:00", plan: rules.TakeOrder{OrderTaken: book.OrderTaken{Line: "Rook"}},
		warned: "no breeder is of Rook: the book has breeders of Sorrel", do: "Mend the line, or write down the colony whose larvae are to be grafted",
	},
	{
		name: "a second graft of a day", write: func(p *booktest.Pen) {
			p.At("2027-04-10 08:00").Write(book.BatchPlanned{Batch: batch(7), Day: calendar.Date(2027, 6, 10), Minute: 18 * 60, Line: "Sorrel", Larvae: 24})
		}, at: "2027-04-10 18:00", plan: toGraft(book.BatchPlanned{Day: calendar.Date(2027, 6, 10), Larvae: 1, Line: "Sorrel"}),
		warned: "another graft for Sorrel is planned for Thu 10 Jun, of 24 larvae", do: "Graft both together as one, or tell them apart by their larvae",
	},
	{
		name: "a graft that takes the nucs of one behind it", write: func(p *booktest.Pen) {
			waiting(p)
			p.At("2027-05-14 08:00").Write(book.BatchPlanned{Batch: batch(7), Day: calendar.Date(2027, 6, 14), Larvae: 20, Nucs: 10, Yard: atFar})
		}, at: "2027-05-14 18:00", plan: toGraft(book.BatchPlanned{Day: calendar.Date(2027, 6, 10), Larvae: 20, Nucs: 11, Yard: atFar}),
		warned: "it wants nucs that others want: the graft of Mon 14 Jun has 1 of its 10 nucs then", do: "Move one of them, or take a way out that the season tells",
	},
	{
		name: "a graft for more nucs than stand there", write: waiting, at: "2027-05-14 18:00", plan: toGraft(book.BatchPlanned{Day: calendar.Date(2027, 6, 10), Larvae: 20, Nucs: 400, Yard: atFar}),
		warned: "planned for 400 nucs, and 12 stand in Quillbank", do: "Plan fewer, or add boxes there by then",
	},
	{
		name: "a graft that was planned for a day long past", write: func(p *booktest.Pen) {
			p.At("2027-05-01 08:00").Write(book.BatchPlanned{Batch: batch(7), Day: calendar.Date(2027, 5, 10), Larvae: 24})
		}, at: "2027-05-14 18:00", plan: rules.Graft{For: calendar.Date(2027, 5, 10), Plan: book.BatchPlan{BatchPlanned: book.BatchPlanned{Batch: batch(7), Day: calendar.Date(2027, 5, 14), Larvae: 24}}},
		warned: "the graft planned for Mon 10 May was not made by Tue 11 May: after that its larvae are too old",
		do:     "Take just hatched larvae and a starter set up anew; if it was made in time, write its own day",
	},
	{
		name: "a graft that gives its queens hardly", write: waiting, at: "2027-05-14 18:00",
		plan:   toGraft(book.BatchPlanned{Day: calendar.Date(2027, 6, 10), Larvae: 2, Nucs: 2, Yard: atFar, Queens: 2, By: calendar.Date(2027, 8, 10), Sure: 0.9}),
		warned: "the graft of Thu 10 Jun gives its 2 queens by Tue 10 Aug 23 of 100, 90 wished", do: "Graft earlier or more, or promise fewer",
	},
	{name: "larvae of 18 h", write: waiting, at: "2027-05-14 18:00", plan: rules.Graft{LarvaAge: 18}},
	{
		name: "larvae of 30 h", write: waiting, at: "2027-05-14 18:00", plan: rules.Graft{LarvaAge: 30},
		warned: "larvae of 30 h make lesser queens and walk earlier", do: "Take larvae under 24 h",
	},
	{
		name: "larvae of 40 h", write: waiting, at: "2027-05-14 18:00", plan: rules.Graft{LarvaAge: 40},
		refused: "larvae of 40 h make no queens worth the name; 36 h at most", do: "Take younger larvae, just hatched",
	},
	{
		name: "a catch before eggs", write: celled, at: "2027-05-30 18:00", plan: rules.Catch{Nuc: a1},
		refused: "nobody has seen a queen laying in A1", do: "Look for eggs first; a virgin is caught as a virgin",
	},
	{name: "a virgin caught on purpose", write: celled, at: "2027-05-30 18:00", plan: rules.Catch{Nuc: a1, AsVirgin: true}},
	{
		name: "a catch before capped brood", write: layingOn1June, at: "2027-06-05 18:00", plan: rules.Catch{Nuc: a1},
		warned: "A1 is not proven: no capped worker brood seen, eggs seen Tue 1 Jun", do: "Look for capped worker brood from Thu 10 Jun",
	},
	{
		name: "a catch at 25 days", write: func(p *booktest.Pen) {
			layingOn1June(p)
			p.At("2027-06-11 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
		}, at: "2027-06-12 18:00", plan: rules.Catch{Nuc: a1},
		warned: "she is 25 days old; fewer of the queens caught under 28 days live", do: "Catch her from Tue 15 Jun",
	},
	{
		name: "a taken place", write: waiting, at: "2027-05-14 18:00", plan: rules.SetUp{Nuc: a1, Yard: atFar, Stand: booktest.Stand("A"), Place: 2},
		refused: "place A2 is taken by A2", do: "Take a free place, or move A2 first",
	},
	{name: "its own place", write: waiting, at: "2027-05-14 18:00", plan: rules.SetUp{Nuc: a1, Yard: atFar, Stand: booktest.Stand("A"), Place: 1}},
	{
		name: "a flying virgin moved within the yard", write: celled, at: "2027-05-26 18:00", plan: rules.Move{Nuc: a1, Yard: atFar},
		refused: "the virgin of A1 is 8 days old and may be flying; she would fly back to the old place", do: "Move it 5 km or more, or wait until she lays",
	},
	{name: "a flying virgin moved far", write: celled, at: "2027-05-26 18:00", plan: rules.Move{Nuc: a1, Yard: atHome}},
	{
		name: "a cell moved within the yard", write: celled, at: "2027-05-16 18:00", plan: rules.Move{Nuc: a1, Yard: atFar},
		warned: "its fliers know the old place, nearer than 5 km", do: "Move it in the evening and shut it in, or further away",
	},
	{
		name: "a look at noon while she may fly", write: celled, at: "2027-05-26 12:30", plan: rules.OpenNuc{Nuc: a1},
		warned: "a virgin of 8 days may be out on a flight between 11 and 16 h", do: "Look in the morning or the evening",
	},
	{name: "a look in the evening", write: celled, at: "2027-05-26 18:30", plan: rules.OpenNuc{Nuc: a1}},
	{
		name: "syrup in dearth", write: func(p *booktest.Pen) {
			waiting(p)
			p.Write(book.ForageSeen{Yard: atFar, Forage: book.InDearth})
		}, at: "2027-05-14 18:00", plan: rules.GiveFeed{Nuc: a1, Litres: 0.3},
		warned: "dearth since Thu 13 May: syrup calls robbers", do: "Give fondant, or syrup inside at dusk with the entrance narrowed",
	},
	{
		name: "open long in dearth", write: func(p *booktest.Pen) {
			waiting(p)
			p.Write(book.ForageSeen{Yard: atFar, Forage: book.InDearth})
		}, at: "2027-05-14 18:00", plan: rules.OpenNuc{Nuc: a1, Minutes: 5},
		warned: "open for more than 3 min in dearth calls robbers", do: "Open early or late, and not longer",
	},
	{
		name: "bees of the same yard", write: stockedAtHome, at: "2027-05-02 18:00", plan: rules.AddBees{Nuc: a1, Cups: 2, From: booktest.Colony("S1").Subject()},
		warned: "of 1 400 bees about 1 000 stay: their fliers know the way home", do: "Take young bees from brood combs and shut them in, or bees of a far yard",
	},
	{
		name: "a catch in the wait after a treatment", write: treatedA1, at: "2027-06-20 18:00", plan: rules.Catch{Nuc: a1},
		warned: "A1 was treated with oxalic acid on Sat 12 Jun; its label asks to wait 14 days", do: "Wait until Sat 26 Jun, unless the label allows it",
	},
	{name: "a catch after the wait", write: treatedA1, at: "2027-06-26 18:00", plan: rules.Catch{Nuc: a1}},
	{
		name: "a queen of a treated yard handed over", write: func(p *booktest.Pen) {
			caughtOn20June(p)
			p.Write(book.Treated{Of: atFar.Subject(), With: "oxalic acid", Wait: 3})
		}, at: "2027-06-21 18:00", plan: rules.HandOver{Queen: booktest.Queen("a")},
		warned: "Quillbank was treated with oxalic acid on Sun 20 Jun; its label asks to wait 3 days", do: "Wait until Wed 23 Jun, unless the label allows it",
	},
	{
		name: "a queen handed over out of a treated bank", write: func(p *booktest.Pen) {
			caughtOn20June(p)
			p.Write(book.QueenBanked{Queen: booktest.Queen("a"), Bank: booktest.Colony("K1")}, book.Treated{Of: booktest.Colony("K1").Subject(), With: "thymol", Wait: 1})
		}, at: "2027-06-20 19:00", plan: rules.HandOver{Queen: booktest.Queen("a")},
		warned: "K1 was treated with thymol on Sun 20 Jun; its label asks to wait 1 day", do: "Wait until Mon 21 Jun, unless the label allows it",
	},
	{
		name: "a queen of another line for an order", write: queenForRook("Linnet", book.DescentSure), at: "2027-06-20 19:00",
		plan:   rules.HandOver{Queen: booktest.Queen("a"), Order: booktest.Order("12")},
		warned: "the queen in cage 7 is of line Linnet; order 12 is for line Rook", do: "Take one of that line",
	},
	{
		name: "a queen of doubtful descent for an order of her line", write: queenForRook("Rook", book.DescentDoubtful), at: "2027-06-20 19:00",
		plan:   rules.HandOver{Queen: booktest.Queen("a"), Order: booktest.Order("12")},
		warned: "the queen in cage 7 is of doubtful descent; order 12 is for line Rook", do: "Take one whose descent is sure",
	},
	{
		name: "a queen of the line of her order", write: queenForRook("Rook", book.DescentSure), at: "2027-06-20 19:00",
		plan: rules.HandOver{Queen: booktest.Queen("a"), Order: booktest.Order("12")},
	},
	{
		name: "a queen without a mark for an order of marked ones", write: queenForMarked(book.QueenMarked{}), at: "2027-06-20 19:00",
		plan:   rules.HandOver{Queen: booktest.Queen("a"), Order: booktest.Order("40")},
		warned: "order 40 wants a mark; of hers the book has none", do: "First mark her, and write it down",
	},
	{
		name: "a marked queen for an order of marked ones", write: queenForMarked(book.QueenMarked{Queen: booktest.Queen("a"), Colour: "yellow"}), at: "2027-06-20 19:00",
		plan: rules.HandOver{Queen: booktest.Queen("a"), Order: booktest.Order("40")},
	},
	{
		name: "a queen without a disc and a clipped wing for an order of both", write: func(p *booktest.Pen) {
			queenForMarked(book.QueenMarked{Queen: booktest.Queen("a"), Colour: "yellow"})(p)
			p.Write(book.OrderTaken{Order: booktest.Order("40"), Number: "40", Queens: 1, Disc: true, Clipped: true, By: calendar.Date(2027, 6, 28)})
		}, at: "2027-06-20 19:00",
		plan:   rules.HandOver{Queen: booktest.Queen("a"), Order: booktest.Order("40")},
		warned: "order 40 wants a disc, a clipped wing; of hers the book has none", do: "First give a disc, clip a wing, and write it down",
	},
	{
		name: "a clipped queen for an order that does not ask for it", write: queenForMarked(book.QueenMarked{Queen: booktest.Queen("a"), Colour: "yellow", Clipped: true}), at: "2027-06-20 19:00",
		plan:   rules.HandOver{Queen: booktest.Queen("a"), Order: booktest.Order("40")},
		warned: "a wing of the queen in cage 7 is clipped; order 40 does not ask for it", do: "Take one who is whole, or ask who gets her",
	},
	{
		name: "a queen for an order that has all", write: func(p *booktest.Pen) {
			queenForMarked(book.QueenMarked{Queen: booktest.Queen("a"), Colour: "yellow"})(p)
			p.Write(book.QueenHandedOver{Queen: booktest.Queen("b"), Order: booktest.Order("40")})
		}, at: "2027-06-20 19:00",
		plan:   rules.HandOver{Queen: booktest.Queen("a"), Order: booktest.Order("40")},
		warned: "order 40 has all its queens", do: "Look for whom she is meant",
	},
	{
		name: "a virgin handed over", write: func(p *booktest.Pen) {
			p.At("2027-05-05 18:00").Write(graft(4, 1))
			p.At("2027-05-17 18:00").Write(book.VirginCaged{Queen: booktest.Queen("v"), Batch: batch(4), Label: "1"})
		}, at: "2027-05-21 18:00", plan: rules.HandOver{Queen: booktest.Queen("v")},
		warned: "the queen in cage 1 is a virgin: nobody saw her lay", do: "Take a queen who lays",
	},
	{
		name: "a queen caged by herself on the last day that a cage keeps her", write: caughtOn20June, at: "2027-06-23 18:00",
		plan: rules.HandOver{Queen: booktest.Queen("a")},
	},
	{
		name: "a queen caged by herself a day longer", write: caughtOn20June, at: "2027-06-24 08:00", plan: rules.HandOver{Queen: booktest.Queen("a")},
		warned: "caged since Sun 20 Jun, in no bank: a cage keeps a queen for 3 days at most", do: "Look how she is before she goes",
	},
	{
		name: "a queen in a bank for as long", write: func(p *booktest.Pen) {
			caughtOn20June(p)
			p.Write(book.QueenBanked{Queen: booktest.Queen("a"), Bank: booktest.Colony("K1")})
		}, at: "2027-06-24 08:00", plan: rules.HandOver{Queen: booktest.Queen("a")},
	},
	{
		name: "a queen handed over twice", write: func(p *booktest.Pen) {
			caughtOn20June(p)
			p.Write(book.QueenHandedOver{Queen: booktest.Queen("a"), To: "a neighbour"})
		}, at: "2027-06-21 18:00", plan: rules.HandOver{Queen: booktest.Queen("a")},
		refused: "the queen once in cage 7 is no longer in hand", do: "Take another queen",
	},
}

// queenForMarked is a queen caught, marked so where the mark is hers, and an order of one
// marked queen.
func queenForMarked(m book.QueenMarked) func(*booktest.Pen) {
	return func(p *booktest.Pen) {
		caughtOn20June(p)
		p.Write(book.OrderTaken{Order: booktest.Order("40"), Number: "40", Queens: 1, By: calendar.Date(2027, 6, 28), Marked: true})
		if !m.Queen.IsZero() {
			p.Write(m)
		}
	}
}

// queenForRook is a queen in a cage, of a line and descent, beside an order for line Rook.
func queenForRook(line string, descent book.Descent) func(*booktest.Pen) {
	return func(p *booktest.Pen) {
		caughtOn20June(p)
		p.Write(book.QueenDescribed{Queen: booktest.Queen("a"), Line: line, Descent: descent}, book.OrderTaken{Order: booktest.Order("12"), Number: "12", Queens: 1, Line: "Rook"})
	}
}

func TestCheck(t *testing.T) {
	for _, row := range plans {
		t.Run(row.name, func(t *testing.T) {
			p := pen(t)
			row.write(p)
			got := rules.Check(p.View(row.at), row.plan)
			first := func(all []rules.Reason) (why, do string) {
				if len(all) > 0 {
					return all[0].Why, all[0].Do
				}
				return "", ""
			}
			refused, do := first(got.Refused)
			warned, doWarned := first(got.Warned)
			if refused == "" {
				do = doWarned
			}
			if refused != row.refused || row.refused == "" && warned != row.warned || do != row.do {
				t.Errorf("refused %q, warned %q, do %q\nwant    %q,        %q,    %q", refused, warned, do, row.refused, row.warned, row.do)
			}
		})
	}
}

// TestStocking: 40 nucs in thin boxes, three cups of bees of the same yard, a
// night of 8 °C. The figures are 2 100 bees less 30 or 8 %, against 1500 × 1.5;
// 40 × 700 bees at 8300 a kilogram, 1.1 kg a colony.
func TestStocking(t *testing.T) {
	p := pen(t)
	p.At("2027-05-09 08:00").Write(book.WeatherSeen{Yard: atHome, Day: calendar.Date(2027, 5, 11), Low: book.Said(8), Forecast: true})
	box := book.BoxID(booktest.Nuc("a thin box"))
	p.Write(book.BoxBuilt{Box: box, Number: "1", Nucs: 1, Thin: true})
	var nucs []book.NucID
	for i := range 40 {
		id := booktest.Nuc(fmt.Sprint("thin ", i))
		nucs = append(nucs, id)
		p.Write(book.NucNamed{Nuc: id, Name: fmt.Sprint("Y", i), Box: box, Sides: 6, Side: 2}, book.NucPlaced{Nuc: id, Yard: atHome})
	}
	plan := rules.MakeUp{Nucs: nucs, Cups: 3, From: booktest.Colony("S1")}
	got := rules.Check(p.View("2027-05-10 18:00"), plan)
	if len(got.Warned) != 1 {
		t.Fatalf("%+v, want one warning", got)
	}
	want := rules.Reason{
		Why: "3 cups leave 1 470 bees the next morning, 1 932 if shut in; a night of 8 °C forecast needs 2 250: short by 2 cups, shut in 1 cup",
		Do:  "4 cups and shut in: 2 576, enough; for 40 nucs 40 cups more: 28 000 bees, 3.4 kg, from 3 to 4 colonies",
	}
	if w := got.Warned[0]; w.Why != want.Why || w.Do != want.Do {
		t.Errorf("%s / %s\nwant %s / %s", w.Why, w.Do, want.Why, want.Do)
	}
	plan.Cups, plan.Shut = 4, true
	if got := rules.Check(p.View("2027-05-10 18:00"), plan); len(got.Warned) != 0 {
		t.Errorf("four cups shut in: %+v, want no warning", got)
	}
}

func TestSense(t *testing.T) {
	p := pen(t)
	celled(p)
	v := p.View("2027-05-20 18:00")
	now := v.On()
	entry := func(at string, f book.Fact) book.Entry {
		q := booktest.Pen{Zone: p.Zone}
		return q.At(at).Write(f).Entries[0]
	}
	for _, row := range []struct {
		name string
		e    book.Entry
		want string
	}{
		{"a look", entry("2027-05-20 17:00", look("A1", book.Looked{Sides: book.Said(6)})), ""},
		{"a cell where a queen lays is no nonsense", entry("2027-05-20 17:00", book.CellGiven{Nuc: a1, Batch: batch(4)}), ""},
		{"tomorrow", entry("2027-05-21 17:00", look("A1", book.Looked{})), "Fri 21 May 17:00 lies ahead: write down what has happened"},
		{"seven sides of six", entry("2027-05-20 17:00", look("A1", book.Looked{Sides: book.Said(7)})), "7 sides in A1: it has 6"},
		{"as much brood as it holds", entry("2027-05-20 17:00", look("A1", book.Looked{Brood: book.Said(12)})), ""},
		{"more palms than it has room for", entry("2027-05-20 17:00", look("A1", book.Looked{Brood: book.Said(99)})), "99 palms of brood in A1: its 6 sides hold 24 at most"},
		{"a nuc nobody named", entry("2027-05-20 17:00", look("Z9", book.Looked{})), "the nuc is not in the book: name it first"},
		{"a batch nobody grafted", entry("2027-05-20 17:00", book.CellGiven{Nuc: a1, Batch: batch(9)}), "the batch is not in the book: write down its graft first"},
		{"a graft planned", entry("2027-05-20 17:00", book.BatchPlanned{Batch: batch(9), Day: calendar.Date(2027, 6, 1), Larvae: 24, By: calendar.Date(2027, 7, 10)}), ""},
		{"a graft planned for today", entry("2027-05-20 17:00", book.BatchPlanned{Batch: batch(9), Day: calendar.Date(2027, 5, 20), Larvae: 24}), ""},
		{"a graft planned for no day", entry("2027-05-20 17:00", book.BatchPlanned{Batch: batch(9), Larvae: 24}), "the graft is planned for no day: say for which"},
		{"a graft planned behind", entry("2027-05-20 17:00", book.BatchPlanned{Batch: batch(9), Day: calendar.Date(2027, 5, 19), Larvae: 24}), "a graft on 2027-05-19 lies behind: plan it for a day to come"},
		{"a graft in ten years", entry("2027-05-20 17:00", book.BatchPlanned{Batch: batch(9), Day: calendar.Date(2037, 5, 19), Larvae: 24}), "a graft on 2037-05-19 is more than 3 years ahead: write a nearer day"},
		{"queens before their graft", entry("2027-05-20 17:00", book.BatchPlanned{Batch: batch(9), Day: calendar.Date(2027, 6, 1), By: calendar.Date(2027, 5, 30), Larvae: 24}), "queens by 2027-05-30 of a graft on 2027-06-01: write a later day for them"},
		{"a graft that was made", entry("2027-05-20 17:00", book.BatchPlanned{Batch: batch(4), Day: calendar.Date(2027, 6, 1), Larvae: 24}), "batch 4 is grafted: it is no longer planned"},
		{"a grafted batch dropped", entry("2027-05-20 17:00", book.BatchDropped{Batch: batch(4)}), "batch 4 is grafted: it is no longer planned"},
		{"ready for a batch nobody planned", entry("2027-05-20 17:00", book.BatchReadied{Batch: batch(9), Step: book.NucsReady}), "the batch is not on the plan: plan its graft first"},
		{"nucs made up for a grafted batch", entry("2027-05-20 17:00", book.BatchReadied{Batch: batch(4), Step: book.NucsReady}), ""},
		{"starters for a grafted batch", entry("2027-05-20 17:00", book.BatchReadied{Batch: batch(4), Step: book.StarterSetUp}), "batch 4 is grafted: it is no longer planned"},
		{"hours of no day", entry("2027-05-20 17:00", book.HoursOn{Person: booktest.Person("Ida")}), "the hours are of no day: say of which"},
		{"a new nuc", entry("2027-05-20 17:00", book.NucNamed{Nuc: booktest.Nuc("Z9"), Name: "Z9"}), ""},
	} {
		got := ""
		if err := rules.Sense(v, now, row.e); err != nil {
			got = err.Error()
		}
		if got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// Daughters of a queen who mate with drones of hers, or of her sister's colony,
// lose brood: a quarter for like sex alleles of one mother, and of the rest the
// share of strangers. Elsewhere nothing is said.
func TestAGraftIsWarnedOfKin(t *testing.T) {
	p := pen(t)
	mother, stranger := booktest.Queen("Rook 1"), booktest.Queen("Linnet 1")
	p.At("2027-04-01 12:00").Write(
		book.QueenDescribed{Queen: mother, Name: "Rook 1"}, book.QueenDescribed{Queen: stranger, Name: "Linnet 1"},
		book.ColonyDescribed{Colony: booktest.Colony("S2"), Name: "S2", Yard: atHome, Queen: mother, Roles: []book.Role{book.Breeder, book.DroneSource}},
		book.YardDescribed{Yard: booktest.Yard("lone"), Name: "Lone Hill"},
	)
	v := p.View("2027-05-05 18:00")
	graft := rules.PlanOf(v, book.BatchPlanned{Breeder: booktest.Colony("S2"), Yard: atHome})
	got := rules.Check(v, graft)
	if len(got.Warned) != 1 || !strings.HasPrefix(got.Warned[0].Why, "daughters of Rook 1 mated in "+home+" would lose about 29 of 100 of their brood to like sex alleles") {
		t.Errorf("%+v", got)
	}
	for name, other := range map[string]rules.Intent{
		"a stranger": rules.Graft{Mother: stranger, Yard: atHome}, "mated elsewhere": rules.Graft{Mother: mother, Yard: booktest.Yard("lone")}, "nobody": rules.Graft{},
	} {
		if got := rules.Check(v, other); len(got.Warned) > 0 {
			t.Errorf("%s: %+v", name, got)
		}
	}
	batch := booktest.Batch("planned")
	p.At("2027-05-06 12:00").Write(
		book.BatchPlanned{Batch: batch, Day: calendar.Date(2027, 5, 8), Larvae: 10, Yard: booktest.Yard("lone")},
		book.Grafted{Batch: batch, Number: 44, Larvae: 10, Mother: mother},
	)
	v = p.View("2027-05-06 13:00")
	if got := rules.Check(v, rules.PlanOf(v, book.Grafted{Batch: batch, Mother: mother})); len(got.Warned) > 0 {
		t.Errorf("a batch planned for another yard: %+v", got)
	}
}
