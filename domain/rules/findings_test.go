package rules_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// found is one row: what is written on a fresh book, and what a rule then says
// at a moment. An empty what says that the rule is silent.
type found struct {
	rule     rules.Rule
	name     string
	write    func(p *booktest.Pen)
	at       string
	severity rules.Severity
	what     string
}

func look(name string, l book.Looked) book.Looked {
	l.Nuc = booktest.Nuc(name)
	return l
}

var noEggs = book.Looked{Eggs: book.NoEggs}

// celled makes up A1 on 13 May and gives it a cell of batch 4 on Sat 15 May;
// she emerges on Tue 18 May by the clock.
func celled(p *booktest.Pen) {
	p.At("2027-05-05 18:00").Write(graft(4, 1))
	p.At("2027-05-13 18:00").Write(madeUp("A1")...)
	p.At("2027-05-15 10:00").Write(cells(4, "A1")...)
}

func layingOn1June(p *booktest.Pen) {
	celled(p)
	p.At("2027-06-01 18:00").Write(look("A1", book.Looked{Eggs: book.SingleEggs}))
}

// fetched is an order of two queens for Sun 16 May of which one is in a cage.
func fetched(p *booktest.Pen) {
	p.At("2027-05-12 18:00").Write(
		book.OrderTaken{Order: booktest.Order("31"), Number: "31", Customer: "Corin A.", Queens: 2, By: calendar.Date(2027, 5, 16)},
		book.QueenDescribed{Queen: booktest.Queen("b"), Born: time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)},
		book.QueenCaught{Nuc: a1, Queen: booktest.Queen("b"), Label: "23"})
}

var table = []found{
	{
		rules.CellsOut, "ripe cells, day before the best hour", func(p *booktest.Pen) { p.At("2027-05-05 18:00").Write(graft(4, 24)) },
		"2027-05-14 09:00", rules.Open, "24 cells of batch 4 must be out (as grafted; about 18 live)",
	},
	{
		rules.CellsOut, "past the best hour", func(p *booktest.Pen) { p.At("2027-05-05 18:00").Write(graft(4, 24)) },
		"2027-05-15 09:00", rules.Pressing, "24 cells of batch 4 must be out (as grafted; about 18 live)",
	},
	{
		rules.MoveToFinisher, "the day after the graft", func(p *booktest.Pen) { p.At("2027-05-05 18:00").Write(graft(4, 24)) },
		"2027-05-06 09:00", rules.Open, "cells of batch 4 go to a finisher",
	},
	{
		rules.CountTake, "the day after the graft", func(p *booktest.Pen) { p.At("2027-05-05 18:00").Write(graft(4, 24)) },
		"2027-05-06 09:00", rules.Open, "the take of batch 4 to be counted",
	},
	{
		rules.CountTake, "a day late", func(p *booktest.Pen) { p.At("2027-05-05 18:00").Write(graft(4, 24)) },
		"2027-05-07 09:00", rules.Pressing, "the take of batch 4 to be counted",
	},
	{
		rules.CountCapped, "the first day", func(p *booktest.Pen) { p.At("2027-05-05 18:00").Write(graft(4, 24)) },
		"2027-05-09 09:00", rules.Open, "the capped cells of batch 4 to be counted",
	},
	{rules.PlannedStep, "a graft ahead, four days before", func(p *booktest.Pen) {
		p.At("2027-05-01 18:00").Write(book.BatchPlanned{Batch: batch(9), Day: calendar.Date(2027, 5, 20), Larvae: 48, Nucs: 30})
	}, "2027-05-16 09:00", rules.Open, "planned: confine the breeder"},
	{rules.OrderShort, "before the take is counted", func(p *booktest.Pen) { poorTake(p, 0) }, "2027-05-06 18:00", rules.Open, "12 less sure than is wished"},
	{rules.OrderShort, "a poor take", func(p *booktest.Pen) { poorTake(p, 3) }, "2027-05-07 18:00", rules.Pressing, "short by 12 since Thu 6 May"},
	{rules.OrderShort, "a good take", func(p *booktest.Pen) { poorTake(p, 55) }, "2027-05-07 18:00", 0, ""},
	{rules.Leaving, "fetched, the day before", fetched, "2027-05-15 09:00", rules.Ahead, "2 queens to be fetched by Corin A."},
	{rules.Leaving, "fetched, on its day", fetched, "2027-05-16 09:00", rules.Open, "2 queens to be fetched by Corin A."},
	{rules.Leaving, "fetched, a day late", fetched, "2027-05-17 09:00", rules.Pressing, "2 queens to be fetched by Corin A."},
	{rules.Leaving, "closed", func(p *booktest.Pen) {
		fetched(p)
		p.Write(book.OrderClosed{Order: booktest.Order("31")})
	}, "2027-05-16 09:00", 0, ""},
	{rules.Leaving, "sent, two days on the way", func(p *booktest.Pen) {
		fetched(p)
		p.Write(book.OrderTaken{Order: booktest.Order("31"), Number: "31", Customer: "Corin A.", Queens: 2, By: calendar.Date(2027, 5, 16), Sent: true, Journey: 2})
	}, "2027-05-14 09:00", rules.Open, "2 queens to be sent to Corin A."},
	{rules.LayoutStep, "a front to be marked", func(p *booktest.Pen) {
		p.At("2027-05-13 18:00").Write(madeUp("A1")...)
		p.At("2027-05-13 19:00").Write(
			book.LayoutTried{Layout: booktest.Layout("blue"), Yard: atFar, Name: "blue", Fronts: []book.FrontMarked{{Nuc: a1, Shape: "disc", Colour: "blue"}}},
			book.LayoutPlanned{Layout: booktest.Layout("blue"), Yard: atFar, From: calendar.Date(2027, 5, 15)})
	}, "2027-05-15 08:00", rules.Open, "front to be marked"},
	{rules.ShutIn, "shut at noon, at dusk", func(p *booktest.Pen) {
		p.At("2027-05-13 18:00").Write(madeUp("A1")...)
		p.At("2027-05-15 12:00").Write(book.EntranceSet{Nuc: a1})
	}, "2027-05-15 20:30", rules.Pressing, "the entrance of A1 is shut"},
	{rules.ShutIn, "opened again", func(p *booktest.Pen) {
		p.At("2027-05-13 18:00").Write(madeUp("A1")...)
		p.At("2027-05-15 12:00").Write(book.EntranceSet{Nuc: a1})
		p.At("2027-05-15 20:00").Write(book.EntranceSet{Nuc: a1, Area: 1})
	}, "2027-05-15 20:30", 0, ""},
	{rules.CellsOut, "all given", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 2))
		p.At("2027-05-13 18:00").Write(madeUp("A1", "A2")...)
		p.At("2027-05-14 19:00").Write(cells(4, "A1", "A2")...)
	}, "2027-05-15 09:00", 0, ""},
	{rules.VirginWalks, "one seen out", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 24))
		p.At("2027-05-17 07:00").Write(book.ClockSeen{Batch: batch(4), Sign: book.SeenWalking})
	}, "2027-05-17 07:10", rules.Pressing, "a virgin is out among 24 cells of batch 4"},
	{rules.VirginWalks, "to be expected", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 24))
	}, "2027-05-17 12:00", rules.Pressing, "expect a virgin loose among 24 cells of batch 4"},
	{rules.VirginWalks, "the night before", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 24))
	}, "2027-05-16 06:00", 0, ""},
	{rules.VirginWalks, "half are out", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 24))
	}, "2027-05-18 01:00", 0, ""},
	{rules.CellsOut, "half are out", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 24))
	}, "2027-05-18 01:00", 0, ""},
	{rules.Counts, "half are out", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 24))
	}, "2027-05-18 01:00", rules.Pressing, "24 cells of batch 4 lost?"},
	{rules.NobodyReady, "three cells, two nucs", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 4))
		p.At("2027-05-12 18:00").Write(madeUp("A1", "A2")...)
	}, "2027-05-13 09:00", rules.Open, "about 3 cells (4 as grafted) of batch 4, 2 nucs ready for them"},
	{rules.NobodyReady, "enough nucs", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 2))
		p.At("2027-05-12 18:00").Write(madeUp("A1", "A2")...)
	}, "2027-05-13 09:00", 0, ""},
	{rules.WildCells, "open brood beside a cell", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-05-16 10:00").Write(book.BroodGiven{To: booktest.Nuc("A1").Subject(), Combs: 1, Open: 2})
	}, "2027-05-20 09:00", rules.Open, "cells can be on the brood it was given"},
	{rules.OwnCells, "caught on eggs", func(p *booktest.Pen) {
		layingOn1June(p)
		p.At("2027-06-20 18:00").Write(book.QueenCaught{Nuc: booktest.Nuc("A1"), Queen: booktest.Queen("a")})
	}, "2027-06-25 09:00", rules.Open, "it can raise a queen of its own"},
	{rules.Decided, "a look, then a cell", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 24))
		p.At("2027-05-13 18:00").Write(madeUp("A1")...)
		p.At("2027-05-15 10:00").Write(book.Planned{Nuc: booktest.Nuc("A1"), What: book.PlanLookOrGive, Batch: batch(4), Day: calendar.Date(2027, 5, 15), Why: "78 of 100 laying by 8 June"})
	}, "2027-05-15 11:00", rules.Pressing, "decided Sat 15 May"},
	{rules.Decided, "looked, nothing found: the cell is next", func(p *booktest.Pen) {
		p.At("2027-05-13 18:00").Write(madeUp("A1")...)
		p.At("2027-05-15 10:00").Write(book.Planned{Nuc: booktest.Nuc("A1"), What: book.PlanLookOrGive, Batch: batch(4), Day: calendar.Date(2027, 5, 15)})
		p.At("2027-05-15 10:30").Write(look("A1", noEggs))
	}, "2027-05-15 11:00", rules.Open, "decided Sat 15 May"},
	{rules.Decided, "done", func(p *booktest.Pen) {
		p.At("2027-05-13 18:00").Write(madeUp("A1")...)
		p.At("2027-05-15 10:00").Write(book.Planned{Nuc: booktest.Nuc("A1"), What: book.PlanGiveCell, Batch: batch(4), Day: calendar.Date(2027, 5, 15)})
		p.At("2027-05-15 10:30").Write(cells(4, "A1")...)
	}, "2027-05-15 11:00", 0, ""},
	{rules.Decided, "lapsed", func(p *booktest.Pen) {
		p.At("2027-05-13 18:00").Write(madeUp("A1")...)
		p.At("2027-05-15 10:00").Write(book.Planned{Nuc: booktest.Nuc("A1"), What: book.PlanGiveCell, Batch: batch(4), Day: calendar.Date(2027, 5, 15)})
	}, "2027-05-23 11:00", 0, ""},
	{rules.OwnCells, "broken down on day 5", func(p *booktest.Pen) {
		layingOn1June(p)
		p.At("2027-06-20 18:00").Write(book.QueenCaught{Nuc: booktest.Nuc("A1"), Queen: booktest.Queen("a")})
		p.At("2027-06-25 18:00").Write(book.OwnCellsBroken{Nuc: booktest.Nuc("A1")})
	}, "2027-06-26 09:00", 0, ""},
	{rules.OwnCells, "broken down too early", func(p *booktest.Pen) {
		layingOn1June(p)
		p.At("2027-06-20 18:00").Write(book.QueenCaught{Nuc: booktest.Nuc("A1"), Queen: booktest.Queen("a")})
		p.At("2027-06-23 18:00").Write(book.OwnCellsBroken{Nuc: booktest.Nuc("A1")})
	}, "2027-06-26 09:00", rules.Pressing, "it can raise a queen of its own"},
	{rules.OwnCells, "own cells seen where no brood was written", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-05-19 18:00").Write(look("A1", book.Looked{Queen: book.NoneSeen, Cell: book.CellTornAtSide, OwnCells: book.Said(2), Sides: book.Said(4)}))
	}, "2027-05-19 19:00", rules.Open, "own cells seen Wed 19 May"},
	{rules.OwnCells, "seen and broken down", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-05-19 18:00").Write(look("A1", book.Looked{Queen: book.NoneSeen, Cell: book.CellTornAtSide, OwnCells: book.Said(2), Sides: book.Said(4)}))
		p.At("2027-05-19 18:05").Write(book.OwnCellsBroken{Nuc: booktest.Nuc("A1")})
	}, "2027-05-19 19:00", 0, ""},
	{rules.BeingRobbed, "robbers seen two days ago", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-05-20 14:00").Write(book.Robbed{Nuc: booktest.Nuc("A1")})
	}, "2027-05-22 15:00", rules.Pressing, "robbed Thu 20 May"},
	{rules.BeingRobbed, "robbers seen", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-05-20 14:00").Write(book.Robbed{Nuc: booktest.Nuc("A1")})
	}, "2027-05-20 15:00", rules.Pressing, "robbers"},
	{rules.DroneLayer, "drone brood only", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-06-20 18:00").Write(look("A1", book.Looked{DroneBrood: true}))
	}, "2027-06-20 19:00", rules.Pressing, "drone layer"},
	{rules.LayingWorkers, "many eggs a cell", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-06-20 18:00").Write(look("A1", book.Looked{Eggs: book.ManyEggs}))
	}, "2027-06-20 19:00", rules.Pressing, "laying workers"},
	{
		rules.LayingWorkers, "three weeks without a queen", func(p *booktest.Pen) { p.At("2027-05-01 18:00").Write(madeUp("A1")...) },
		"2027-05-22 09:00", rules.Pressing, "laying workers are to be expected",
	},
	{
		rules.Queenless, "made up and waiting", func(p *booktest.Pen) { p.At("2027-05-01 18:00").Write(madeUp("A1")...) },
		"2027-05-02 09:00", rules.Pressing, "no queen",
	},
	{rules.Queenless, "a cell was given", celled, "2027-05-15 18:00", 0, ""},
	{rules.VirginsTime, "13 days old", celled, "2027-05-31 09:00", 0, ""},
	{rules.VirginsTime, "14 days old", celled, "2027-06-01 09:00", rules.Open, "14 days old and not seen laying"},
	{rules.VirginsTime, "22 days old", celled, "2027-06-09 09:00", rules.Pressing, "22 days old and not seen laying"},
	{rules.VirginsTime, "28 days old", celled, "2027-06-15 09:00", rules.Pressing, "too late to mate"},
	{rules.LookEggs, "8 days old", celled, "2027-05-26 09:00", rules.Ahead, "a look for eggs is ahead"},
	{rules.LookEggs, "14 days old", celled, "2027-06-01 09:00", rules.Open, "due for a look"},
	{rules.LookEggs, "17 days old", celled, "2027-06-04 09:00", rules.Pressing, "due for a look"},
	{rules.VirginsTime, "no eggs when it was too late", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-06-16 18:00").Write(look("A1", book.Looked{Eggs: book.NoEggs, Queen: book.VirginSeen}))
	}, "2027-06-17 09:00", rules.Pressing, "too late to mate"},
	{rules.Late, "no eggs at 16 days, next day", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-06-03 18:00").Write(look("A1", noEggs))
	}, "2027-06-04 09:00", rules.Ahead, "late: no eggs yet"},
	{rules.Late, "no eggs at 16 days, three days on", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-06-03 18:00").Write(look("A1", noEggs))
	}, "2027-06-06 09:00", rules.Open, "late: no eggs yet"},
	{rules.Late, "no eggs at 5 days says nothing", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-05-23 18:00").Write(look("A1", noEggs))
	}, "2027-06-06 09:00", 0, ""},
	{rules.LookAgain, "nine days after eggs", layingOn1June, "2027-06-10 09:00", rules.Open, "not proven yet"},
	{rules.LookAgain, "capped brood seen", func(p *booktest.Pen) {
		layingOn1June(p)
		p.At("2027-06-11 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
	}, "2027-06-12 09:00", 0, ""},
	{rules.Ready, "proven and 28 days old", func(p *booktest.Pen) {
		layingOn1June(p)
		p.At("2027-06-11 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
	}, "2027-06-15 09:00", rules.Open, "ready to hand over"},
	{rules.Ready, "proven, 26 days old", func(p *booktest.Pen) {
		layingOn1June(p)
		p.At("2027-06-11 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
	}, "2027-06-13 09:00", rules.Ahead, "ready to hand over"},
	{rules.Full, "laying for a week", layingOn1June, "2027-06-08 09:00", rules.Open, "small combs fill up"},
	{rules.Full, "laying for a week, too few bees to keep brood", func(p *booktest.Pen) {
		layingOn1June(p)
		p.At("2027-06-07 18:00").Write(look("A1", book.Looked{Sides: book.Said(0.5)}))
	}, "2027-06-08 09:00", 0, ""},
	{
		rules.CheckBees, "bees of a far yard", func(p *booktest.Pen) { p.At("2027-05-01 18:00").Write(madeUp("A1")...) },
		"2027-05-02 09:00", 0, "",
	},
	{rules.CheckBees, "bees of the same yard", stockedAtHome, "2027-05-02 09:00", rules.Open, "some of its bees fly home"},
	{rules.Weak, "cold night", func(p *booktest.Pen) {
		p.At("2027-05-01 18:00").Write(madeUp("A1")...)
		p.Write(book.WeatherSeen{Yard: atFar, Day: calendar.Date(2027, 5, 3), Low: book.Said(8)})
		p.At("2027-05-02 18:00").Write(look("A1", book.Looked{Sides: book.Said(3)}))
	}, "2027-05-02 19:00", rules.Pressing, "weak: about 750 bees, the night needs 1 500"},
	{rules.Weak, "cold night, within the error of a look", func(p *booktest.Pen) {
		p.At("2027-05-01 18:00").Write(madeUp("A1")...)
		p.Write(book.WeatherSeen{Yard: atFar, Day: calendar.Date(2027, 5, 3), Low: book.Said(8)})
		p.At("2027-05-02 18:00").Write(look("A1", book.Looked{Sides: book.Said(5)}))
	}, "2027-05-02 19:00", 0, ""},
	{rules.Weak, "mild night", func(p *booktest.Pen) {
		p.At("2027-05-01 18:00").Write(madeUp("A1")...)
		p.Write(book.WeatherSeen{Yard: atFar, Day: calendar.Date(2027, 5, 3), Low: book.Said(16)})
		p.At("2027-05-02 18:00").Write(look("A1", book.Looked{Sides: book.Said(4)}))
	}, "2027-05-02 19:00", 0, ""},
	{
		rules.Weak, "dwindled by reckoning", func(p *booktest.Pen) {
			p.At("2027-05-01 18:00").Write(madeUp("A1")...)
			for d := calendar.Date(2027, 5, 1); d < calendar.Date(2027, 5, 20); d++ {
				p.Write(book.WeatherSeen{Yard: atFar, Day: d, Sign: book.Flying})
			}
		},
		"2027-05-20 09:00", rules.Open, "weak: about 650 bees, the night needs 1 000",
	},
	{
		rules.Weak, "will dwindle in two days", func(p *booktest.Pen) { p.At("2027-05-01 18:00").Write(madeUp("A1")...) },
		"2027-05-20 09:00", rules.Ahead, "weak from Sat 22 May",
	},
	{rules.Weak, "will dwindle later than is told", func(p *booktest.Pen) { p.At("2027-05-01 18:00").Write(madeUp("A1")...) }, "2027-05-18 09:00", 0, ""},
	{rules.Weak, "seen too long ago", func(p *booktest.Pen) {
		p.At("2027-05-01 18:00").Write(madeUp("A1")...)
		p.At("2027-05-02 18:00").Write(look("A1", book.Looked{Sides: book.Said(2)}))
	}, "2027-05-31 09:00", 0, ""},
	{rules.NotLooked, "the last day on which the look counts", func(p *booktest.Pen) { unseen(p, true) }, "2027-05-30 09:00", 0, ""},
	{rules.NotLooked, "29 days later", func(p *booktest.Pen) { unseen(p, true) }, "2027-05-31 09:00", rules.Open, "not looked at since Sun 2 May"},
	{rules.NotLooked, "looked at since, without a word of bees", func(p *booktest.Pen) {
		unseen(p, true)
		p.At("2027-05-20 18:00").Write(look("A1", book.Looked{Queen: book.NoneSeen}))
	}, "2027-05-31 09:00", 0, ""},
	{rules.NotLooked, "other work looks into it", func(p *booktest.Pen) { unseen(p, false) }, "2027-05-31 09:00", 0, ""},
	{rules.Light, "no food seen", func(p *booktest.Pen) {
		p.At("2027-05-01 18:00").Write(madeUp("A1")...)
		p.At("2027-05-10 18:00").Write(look("A1", book.Looked{Sides: book.Said(6), Stores: book.Said(0)}))
	}, "2027-05-10 19:00", rules.Pressing, "no food since Mon 10 May"},
	{rules.Light, "no food seen three days ago", func(p *booktest.Pen) {
		p.At("2027-05-01 18:00").Write(madeUp("A1")...)
		p.At("2027-05-10 18:00").Write(look("A1", book.Looked{Sides: book.Said(6), Stores: book.Said(0)}))
	}, "2027-05-13 19:00", rules.Pressing, "no food since Mon 10 May: starved?"},
	{rules.Light, "fed since", func(p *booktest.Pen) {
		p.At("2027-05-01 18:00").Write(madeUp("A1")...)
		p.At("2027-05-10 18:00").Write(look("A1", book.Looked{Sides: book.Said(6), Stores: book.Said(0)}))
		p.At("2027-05-11 18:00").Write(book.Fed{To: booktest.Nuc("A1").Subject(), Litres: 0.3})
	}, "2027-05-12 19:00", 0, ""},
	{rules.Light, "light again in three days", func(p *booktest.Pen) {
		p.At("2027-05-01 18:00").Write(madeUp("A1")...)
		p.At("2027-05-10 18:00").Write(look("A1", book.Looked{Sides: book.Said(6), Stores: book.Said(0)}))
		p.At("2027-05-11 18:00").Write(book.Fed{To: booktest.Nuc("A1").Subject(), Litres: 0.3})
	}, "2027-05-13 19:00", rules.Ahead, "light from Sun 16 May"},
	{rules.Light, "stores seen", func(p *booktest.Pen) {
		p.At("2027-05-01 18:00").Write(madeUp("A1")...)
		p.At("2027-05-10 18:00").Write(look("A1", book.Looked{Sides: book.Said(6), Stores: book.Said(2)}))
	}, "2027-05-10 19:00", 0, ""},
	{rules.Robbers, "wide door, syrup, dearth", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-05-16 18:00").Write(book.ForageSeen{Yard: atFar, Forage: book.InDearth},
			book.EntranceSet{Nuc: booktest.Nuc("A1"), Area: 9}, book.Fed{To: booktest.Nuc("A1").Subject(), Litres: 0.3})
	}, "2027-05-17 09:00", rules.Pressing, "robbing likely"},
	{rules.Robbers, "flow", celled, "2027-05-17 09:00", 0, ""},
	{rules.BankVirgins, "five days in the bank", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 2))
		p.At("2027-05-17 18:00").Write(book.VirginCaged{Queen: booktest.Queen("v1"), Batch: batch(4), Label: "1", Bank: booktest.Colony("K1")})
	}, "2027-05-22 09:00", rules.Pressing, "1 virgin caged in K1"},
	{rules.BankMated, "46 days in the bank", func(p *booktest.Pen) {
		layingOn1June(p)
		p.At("2027-06-20 18:00").Write(book.QueenCaught{Nuc: booktest.Nuc("A1"), Queen: booktest.Queen("a"), Label: "7"},
			book.QueenBanked{Queen: booktest.Queen("a"), Bank: booktest.Colony("K1")})
	}, "2027-08-05 09:00", rules.Pressing, "1 mated queen caged in K1"},
	{rules.CagedAlone, "on the day of the catch", caughtOn20June, "2027-06-20 19:00", rules.Open, "1 mated queen caged, in no bank"},
	{rules.CagedAlone, "the day before the last", caughtOn20June, "2027-06-22 19:00", rules.Open, "1 mated queen caged, in no bank"},
	{rules.CagedAlone, "on the last day", caughtOn20June, "2027-06-23 08:00", rules.Pressing, "1 mated queen caged, in no bank"},
	{rules.CagedAlone, "longer than a cage keeps her", caughtOn20June, "2027-06-24 08:00", rules.Pressing, "1 mated queen caged, in no bank"},
	{rules.CagedAlone, "in a bank", func(p *booktest.Pen) {
		caughtOn20June(p)
		p.Write(book.QueenBanked{Queen: booktest.Queen("a"), Bank: booktest.Colony("K1")})
	}, "2027-06-24 08:00", 0, ""},
	{rules.CagedAlone, "for an order that is fetched in time", func(p *booktest.Pen) {
		caughtOn20June(p)
		p.Write(book.OrderTaken{Order: booktest.Order("40"), Number: "40", Queens: 1, By: calendar.Date(2027, 6, 23)})
	}, "2027-06-21 08:00", 0, ""},
	{rules.CagedAlone, "for an order a day later", func(p *booktest.Pen) {
		caughtOn20June(p)
		p.Write(book.OrderTaken{Order: booktest.Order("40"), Number: "40", Queens: 1, By: calendar.Date(2027, 6, 24)})
	}, "2027-06-21 08:00", rules.Open, "1 mated queen caged, in no bank"},
	{rules.BankFull, "two cages where one is taken", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 2), book.NumberChanged{Number: practice.BankPlaces.String(), Value: 1})
		p.At("2027-05-17 18:00").Write(book.VirginCaged{Queen: booktest.Queen("v1"), Batch: batch(4), Label: "1", Bank: booktest.Colony("K1")})
		p.At("2027-05-17 19:00").Write(book.VirginCaged{Queen: booktest.Queen("v2"), Batch: batch(4), Label: "2", Bank: booktest.Colony("K1")})
	}, "2027-05-17 20:00", rules.Open, "1 cage too many in K1"},
	{rules.AfterTreatment, "a nuc", treatedA1, "2027-06-25 18:00", rules.Open, "wait after treatment until Sat 26 Jun"},
	{rules.AfterTreatment, "the wait is over", treatedA1, "2027-06-26 00:00", 0, ""},
	{rules.AfterTreatment, "a yard", func(p *booktest.Pen) {
		p.At("2027-05-03 18:00").Write(book.Treated{Of: atFar.Subject(), With: "thymol", Wait: 300})
	}, "2027-05-04 09:00", rules.Open, "wait after treatment until Sun 27 Feb 2028"},
	{rules.AfterTreatment, "a colony", func(p *booktest.Pen) {
		p.At("2027-05-03 18:00").Write(book.Treated{Of: booktest.Colony("S2").Subject(), With: "thymol", Wait: 1})
	}, "2027-05-03 19:00", rules.Open, "wait after treatment until Tue 4 May"},
	{rules.AfterTreatment, "no wait", func(p *booktest.Pen) {
		p.At("2027-05-03 18:00").Write(book.Treated{Of: booktest.Colony("S2").Subject(), With: "thymol"})
	}, "2027-05-03 19:00", 0, ""},
	{rules.Ready, "treated", treatedA1, "2027-06-20 18:00", rules.Open, "ready to hand over"},
	{rules.Standstill, "suspected", func(p *booktest.Pen) {
		p.At("2027-05-03 18:00").Write(book.DiseaseSuspected{Of: booktest.Colony("S2").Subject(), What: "foul brood"})
	}, "2027-05-04 09:00", rules.Pressing, "standstill: nothing leaves this yard"},
	{rules.Papers, "a week to go", func(p *booktest.Pen) {
		p.Write(book.PaperHeld{Yard: atFar, Name: "health certificate", Expires: calendar.Date(2027, 6, 1)})
	}, "2027-05-25 09:00", rules.Open, "health certificate runs out"},
	{rules.Papers, "renewed", func(p *booktest.Pen) {
		p.Write(book.PaperHeld{Yard: atFar, Name: "health certificate", Expires: calendar.Date(2027, 6, 1)},
			book.PaperHeld{Yard: atFar, Name: "health certificate", Expires: calendar.Date(2028, 6, 1)})
	}, "2027-05-25 09:00", rules.Ahead, "health certificate runs out"},
	{rules.Counts, "one missing", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-05-15 08:00").Write(book.TakenAlong{What: book.Cells, Batch: batch(4), Count: 2})
	}, "2027-05-15 20:00", rules.Open, "2 = 1 placed + 1 not accounted for"},
	{
		rules.Counts, "batch long out", func(p *booktest.Pen) { p.At("2027-05-05 18:00").Write(graft(4, 3)) },
		"2027-05-25 20:00", rules.Pressing, "3 cells of batch 4 lost?",
	},
	{rules.Twice, "two writers", func(p *booktest.Pen) {
		celled(p)
		p.Writer = "Jon"
		p.At("2027-05-15 12:00").Write(cells(4, "A1")...)
	}, "2027-05-15 20:00", rules.Open, "1 nuc written twice"},
	{rules.Twice, "one writer, the same within the evening", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-05-16 18:00").Write(look("A1", book.Looked{Sides: book.Said(4)}), look("A1", book.Looked{Sides: book.Said(4)}))
	}, "2027-05-16 20:00", rules.Open, "1 nuc written twice"},
	{rules.Twice, "one writer, other words", func(p *booktest.Pen) {
		celled(p)
		p.At("2027-05-16 18:00").Write(look("A1", book.Looked{Sides: book.Said(4)}), look("A1", book.Looked{Sides: book.Said(5)}))
	}, "2027-05-16 20:00", 0, ""},
	{rules.GapAsks, "cell into a laying nuc", func(p *booktest.Pen) {
		layingOn1June(p)
		p.At("2027-06-05 18:00").Write(cells(4, "A1")...)
	}, "2027-06-05 20:00", rules.Pressing, "not as the book says"},
	{rules.SameNucs, "two ripe batches, two nucs", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 2))
		p.At("2027-05-06 18:00").Write(graft(5, 2))
		p.At("2027-05-12 18:00").Write(madeUp("A1", "A2")...)
	}, "2027-05-14 12:00", rules.Open, "batch 4 and batch 5 want the same nucs"},
	{rules.SameNucs, "two ripe batches, no nuc: there is nothing to want", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 3))
		p.At("2027-05-06 18:00").Write(graft(5, 2))
		p.At("2027-05-12 18:00").Write(madeUp("A1")...)
		p.At("2027-05-14 11:00").Write(cells(4, "A1")...)
	}, "2027-05-14 12:00", 0, ""},
	{rules.SameNucs, "nucs for both", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 2))
		p.At("2027-05-06 18:00").Write(graft(5, 2))
		p.At("2027-05-12 18:00").Write(madeUp("A1", "A2", "A3", "A4")...)
	}, "2027-05-14 12:00", 0, ""},
	{rules.SameFinisher, "both in S1", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 2))
		p.At("2027-05-06 18:00").Write(book.CellsMoved{Batch: batch(4), To: booktest.Colony("S1")}, graft(5, 2))
		p.At("2027-05-07 18:00").Write(book.CellsMoved{Batch: batch(5), To: booktest.Colony("S1")})
	}, "2027-05-08 12:00", rules.Open, "batch 4 and batch 5 hang in S1"},
	{rules.SameDay, "an evening too short", func(p *booktest.Pen) {
		p.At("2027-05-02 18:00").Write(graft(4, 80))
		p.Write(graft(5, 80))
	}, "2027-05-09 12:00", rules.Open, "batch 4 and batch 5 both on Tue 11 May"},
	{rules.NoHands, "away that day", func(p *booktest.Pen) {
		p.At("2027-05-05 18:00").Write(graft(4, 24), book.DaysOff{Person: booktest.Person("Ida"), From: calendar.Date(2027, 5, 15), To: calendar.Date(2027, 5, 16)})
	}, "2027-05-14 09:00", rules.Open, "nobody is free on Sat 15 May before 18:16"},
	{
		rules.NoHands, "free that day", func(p *booktest.Pen) { p.At("2027-05-05 18:00").Write(graft(4, 24)) },
		"2027-05-14 09:00", 0, "",
	},
}

// TestWeakAndLightArePastDue: the last day is counted from the day it came to
// that, and does not move along with today.
func TestWeakAndLightArePastDue(t *testing.T) {
	p := pen(t)
	p.At("2027-05-01 18:00").Write(madeUp("A1")...)
	p.At("2027-05-10 18:00").Write(look("A1", book.Looked{Sides: book.Said(2), Stores: book.Said(0)}))
	for _, on := range []string{"2027-05-11 09:00", "2027-05-15 09:00"} {
		v := p.View(on)
		for _, r := range []rules.Rule{rules.Weak, rules.Light} {
			if f := of(v, r); len(f) != 1 || day(f[0].By) != "2027-05-10" || !f[0].PastDue(v.On()) {
				t.Errorf("%s on %s: %+v, want it past due since 10 May", r, on, f)
			}
		}
	}
}

// stockedAtHome makes up a nuc in the yard its bees come from.
func stockedAtHome(p *booktest.Pen) {
	p.At("2027-05-01 18:00").Write(book.NucPlaced{Nuc: booktest.Nuc("A1"), Yard: atHome})
	p.Write(madeUp("A1")...)
}

func TestEachRule(t *testing.T) {
	for _, row := range table {
		t.Run(string(row.rule)+"/"+row.name, func(t *testing.T) {
			p := pen(t)
			row.write(p)
			found := of(p.View(row.at), row.rule)
			if row.what == "" {
				if len(found) > 0 {
					t.Fatalf("found %q, want nothing", found[0].What)
				}
				return
			}
			if len(found) == 0 {
				t.Fatalf("found nothing, want %q", row.what)
			}
			f := found[0]
			if f.What != row.what || f.Severity != row.severity {
				t.Errorf("found %q (%v), want %q (%v)", f.What, f.Severity, row.what, row.severity)
			}
			if f.Why == "" || f.Do == "" || f.Sure == "" {
				t.Errorf("why %q, do %q, sure %q: none may be empty", f.Why, f.Do, f.Sure)
			}
		})
	}
}

// poorTake is a batch for an order of twelve, with so many of sixty grafts taken; 0: not counted.
func poorTake(p *booktest.Pen, taken int) {
	id, one := batch(4), booktest.Order("1")
	p.At("2027-04-20 09:00").Write(
		book.OrderTaken{Order: one, Number: "1", Customer: "Club", Queens: 12, Line: "Rook", By: calendar.Date(2027, 7, 20)},
		book.BatchPlanned{Batch: id, Day: calendar.Date(2027, 5, 5), Line: "Rook", Larvae: 60, Nucs: 30, Queens: 12, Orders: []book.OrderID{one}})
	p.At("2027-05-05 18:00").Write(book.Grafted{Batch: id, Number: 4, Line: "Rook", Larvae: 60})
	if taken > 0 {
		p.At("2027-05-06 18:00").Write(book.TakeCounted{Batch: id, Accepted: taken})
	}
}

// TestAShortOrderIsWorkAtTheDesk: a poor take is in the day's work from that evening on, with the last
// graft that helps, which is the one the sheet of the orders names, by the day on which its breeder is
// confined.
func TestAShortOrderIsWorkAtTheDesk(t *testing.T) {
	p := pen(t)
	poorTake(p, 3)
	v := p.View("2027-05-06 20:00")
	want := handover.New(plan.New(course.New(v))).Orders[0]
	if want.GraftBy.Day == 0 {
		t.Fatal("no graft helps")
	}
	told := false
	for _, s := range rules.Day(v, v.Today()).Stops {
		for _, task := range s.Tasks {
			if task.Act == rules.ActSeeToOrder {
				told = true
				confined := want.GraftBy.Day - calendar.Day(v.Numbers().Days(practice.ConfineBreederBefore))
				if s.Round != rules.AtDesk || calendar.DayOf(task.By, v.Zone()) != confined || !strings.Contains(task.Title, want.GraftBy.Day.Short()) || !strings.Contains(task.Why, "3 cells and queens left") {
					t.Errorf("at %q by %s: %s; %s; want it by %s", s.Round, task.By, task.Title, task.Why, want.GraftBy.Day.Short())
				}
			}
		}
	}
	if !told {
		t.Error("it is not in the day's work")
	}
}

// TestAnOrderNobodyPlannedForIsWork: it is in the day's work from the day on which it was taken, and needs
// the keeper when the breeder is soon to be confined.
func TestAnOrderNobodyPlannedForIsWork(t *testing.T) {
	p := pen(t)
	p.At("2027-04-20 09:00").Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Customer: "Club", Queens: 12, Line: "Rook", By: calendar.Date(2027, 7, 20)})
	of := func(at string) (all []rules.Finding) {
		for _, f := range rules.Findings(p.View(at)) {
			if f.Rule == rules.OrderShort {
				all = append(all, f)
			}
		}
		return all
	}
	far := of("2027-04-21 08:00")
	if len(far) != 1 || far[0].Severity != rules.Open || !strings.HasPrefix(far[0].Do, "Plan a graft for 12 queens more, by ") || !strings.Contains(far[0].Do, "its breeder is confined on ") {
		t.Fatalf("weeks ahead: %+v", far)
	}
	if near := of(far[0].By.AddDate(0, 0, -3).Format("2006-01-02 08:00")); len(near) != 1 || !near[0].NeedsYou() {
		t.Errorf("some days ahead: %+v", near)
	}
	if lost := of("2027-07-10 08:00"); len(lost) != 1 || !lost[0].NeedsYou() || !strings.HasPrefix(lost[0].Do, "Ring Club: ") {
		t.Errorf("too late: %+v", lost)
	}
}

// TestEveryRuleIsTried walks the table of rules: each has a doc and at least
// one row here that makes it speak.
func TestEveryRuleIsTried(t *testing.T) {
	all := rules.All()
	if len(all) == 0 {
		t.Fatal("no rules")
	}
	for _, r := range all {
		speaks := slices.ContainsFunc(table, func(f found) bool { return f.rule == r.Rule && f.what != "" })
		if !speaks {
			t.Errorf("no row makes %q speak", r.Rule)
		}
		if r.Doc == "" {
			t.Errorf("%q has no doc", r.Rule)
		}
	}
	for i, r := range all {
		if slices.ContainsFunc(all[:i], func(o rules.Described) bool { return o.Rule == r.Rule }) {
			t.Errorf("%q stands twice in the table", r.Rule)
		}
	}
}

func TestPutOffIsSilentUntilItsDayAndSaysSo(t *testing.T) {
	p := pen(t)
	celled(p)
	p.At("2027-06-03 20:00").Write(book.PutOff{Rule: string(rules.LookEggs), Of: booktest.Nuc("A1").Subject(), Until: calendar.Date(2027, 6, 8)})
	f := of(p.View("2027-06-05 09:00"), rules.LookEggs)
	if len(f) != 1 || f[0].NeedsYou() || f[0].PutOff != calendar.Date(2027, 6, 8) {
		t.Fatalf("put off: %+v", f)
	}
	if want := "18 days old by the calendar, due for a look; put off until Tue 8 Jun"; f[0].Why != want {
		t.Errorf("why %q, want %q", f[0].Why, want)
	}
	if f := of(p.View("2027-06-08 09:00"), rules.LookEggs); len(f) != 1 || !f[0].NeedsYou() {
		t.Errorf("on its day: %+v, want it to speak", f)
	}
}
