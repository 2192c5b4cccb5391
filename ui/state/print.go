package state

import (
	"lidmark/domain/book"
	"lidmark/domain/unit"
)

// Paper is a kind of paper that can be printed. The zero Paper is the route.
type Paper uint8

// The papers.
const (
	RoutePaper  Paper = iota // the day's work, with boxes to tick
	DensePaper               // the yard, a square a nuc
	BatchPaper               // a batch: clock, counts, nucs
	WalletPaper              // cards with the hours of batches
	LabelsPaper              // labels for lids and boxes
	WeekPaper                // seven days: work, steps, hard hours, minutes
	PlanPaper                // a planned batch: steps, amounts, how sure
	BuyingPaper              // what is to be bought for batches and orders
	CagesPaper               // labels for the cages of the queens that orders get
	CrewPaper                // a sheet for each person, and what waits
	LayoutPaper              // a layout: plan to scale, what is carried, staking out
)

// Print is the effect that prints a paper and shows it. Its end comes back as
// [Worked].
type Print struct {
	Paper   Paper
	Name    string // what it is, for its file and while it is made
	Reading *Reading
	Book    string // what its foot calls the book
	Yard    book.YardID
	Batches []book.BatchID
	Order   book.OrderID // whose cages are labelled; zero: those of all
	Layout  Laid         // of [LayoutPaper]
	Hours   int          // nobody has more on the day; 0: each as is told
	Less    Less         // how much less time there is on the day
	Large   bool
	Letter  bool // US letter instead of A4
	Units   unit.System
}

func (Print) effect() {}

// printCommands print.
var printCommands = []Command{
	{Name: "print", Does: "print what is shown", Keys: "Ctrl+P", Word: "Print", Why: noPrint, Do: func(s State) (State, []Effect) { return s.print(s.shownPaper()) }},
	{Name: "print route", Does: "print the route of the day", Word: "Print the sheet", Why: noPrint, Do: printed(RoutePaper)},
	{Name: "print dense", Does: "print the yard, a square a nuc", Word: "Print the yard", Why: noPrint, Do: printed(DensePaper)},
	{Name: "print labels", Does: "print labels for lids and boxes", Word: "Print labels", Why: noPrint, Do: printed(LabelsPaper)},
	{Name: "print batch", Does: "print the sheet of the batch", Word: "Print its sheet", Why: noBatchPrint, Do: printed(BatchPaper)},
	{Name: "print wallet", Does: "print the card of the batch for the wallet", Word: "Wallet card", Why: noBatchPrint, Do: printed(WalletPaper)},
	{Name: "print week", Does: "print the week from the day on", Word: "Print the week", Why: noPrint, Do: printed(WeekPaper)},
	{Name: "print plan", Does: "print the sheet of the planned batch", Word: "Print the plan", Why: noPlanPrint, Do: printed(PlanPaper)},
	{Name: "print buying", Does: "print the buying list of batches and orders", Word: "Buying list", Why: noBuying, Do: printed(BuyingPaper)},
	{Name: "print cages", Does: "print labels for the cages of ordered queens", Word: "Cage labels", Why: noCages, Do: printed(CagesPaper)},
	{Name: "print crew", Does: "print a sheet for each person, and what waits", Word: "Print a sheet each", Why: noCrew, Do: printed(CrewPaper)},
	{Name: "print layout", Does: "print the try-out: plan, what is carried, staking out", Word: "Print the layout", Why: noLayoutPrint, Do: State.printLayout},
}

func noPrint(s State) string {
	switch {
	case s.Book == nil:
		return "no book is open; open one with Ctrl+O"
	case s.Busy != nil:
		return "something is under way: wait for it, or stop it in the bottom line"
	}
	return ""
}

func noBatchPrint(s State) string {
	if why := noPrint(s); why != "" {
		return why
	}
	if s.printBatch().IsZero() {
		return "select a batch, or a nuc that holds one of its queens"
	}
	return ""
}

func noPlanPrint(s State) string {
	if why := noPrint(s); why != "" {
		return why
	}
	if s.printPlan().IsZero() {
		return "choose a planned batch in Plan first"
	}
	return ""
}

func noBuying(s State) string {
	if why := noPrint(s); why != "" {
		return why
	}
	v := s.Reading().View
	for range v.Plans() {
		return ""
	}
	for o := range v.Orders() {
		if o.Open() > 0 {
			return ""
		}
	}
	for b := range v.Batches() {
		if b.Living() > 0 {
			return ""
		}
	}
	return "no batch is planned or lives, and no order is open: there is nothing to buy"
}

func noCages(s State) string {
	if why := noPrint(s); why != "" {
		return why
	}
	for o := range s.Reading().View.Orders() {
		if o.Open() > 0 {
			return ""
		}
	}
	return "no order is open: there is no cage to label"
}

func noCrew(s State) string {
	if why := noPrint(s); why != "" {
		return why
	}
	v := s.Reading().View
	switch {
	case !v.HoursTold() && s.lessHours() == 0:
		return "nobody's free hours are known: say how many there are with Alt+H"
	case v.HoursTold() && v.MinutesFree(s.Reading().Day) == 0:
		return "nobody is free on that day"
	}
	return ""
}

// lessHours is how many hours there are on the day shown, where it was said.
func (s State) lessHours() int {
	if s.DayPage.Day != s.Looked() {
		return 0
	}
	return s.DayPage.Less.Hours
}

// printPlan is the planned batch that would be printed: the one in Plan, else the
// one chosen.
func (s State) printPlan() book.BatchID {
	for _, id := range []book.BatchID{s.Planning.Batch, s.chosenBatch()} {
		if _, stands := s.Reading().View.BatchPlan(id); stands {
			return id
		}
	}
	return book.BatchID{}
}

// printBatch is the batch that would be printed: the one that fills the room,
// else the one chosen.
func (s State) printBatch() book.BatchID {
	if id, ok := s.FillOf.Batch(); ok && (s.Fill == LateFill || s.Fill == BatchFill) {
		return id
	}
	return s.chosenBatch()
}

// shownPaper is the paper of what is shown.
func (s State) shownPaper() Paper {
	_, batch := s.Selection.Last().Batch()
	switch {
	case s.OnLayout():
		return LayoutPaper
	case s.Fill == LateFill, s.Fill == BatchFill, batch:
		return BatchPaper
	case s.Room == Yard:
		return DensePaper
	case s.Room == Plan && !s.printPlan().IsZero():
		return PlanPaper
	case s.Room == Plan:
		return WeekPaper
	}
	return RoutePaper
}

func printed(p Paper) func(State) (State, []Effect) {
	return func(s State) (State, []Effect) { return s.print(p) }
}

// paperNames are what the papers are called while they are made.
var paperNames = [...]string{"Route", "Yard sheet", "Batch sheet", "Wallet card", "Labels", "Week", "Plan", "Buying list", "Cage labels", "Sheets", "Layout"}

func (s State) print(p Paper) (State, []Effect) {
	if p == LayoutPaper {
		return s.printLayout()
	}
	r := s.Reading()
	e := Print{
		Paper: p, Name: paperNames[p] + " " + r.Day.Short(), Reading: r, Book: s.Book.Name, Yard: s.Filled(),
		Large: s.Large, Letter: s.Letter, Units: s.Units,
	}
	switch p {
	case BatchPaper, WalletPaper:
		e.Batches = []book.BatchID{s.printBatch()}
	case PlanPaper:
		e.Batches = []book.BatchID{s.printPlan()}
	case CagesPaper:
		if id, ok := s.Selection.Last().Order(); ok {
			e.Order = id
		}
	case CrewPaper:
		e.Hours = s.lessHours()
		if e.Hours > 0 || s.DayPage.Day == s.Looked() {
			e.Less = s.DayPage.Less
		}
	}
	s.Busy = &Busy{Words: "printing " + e.Name, Share: -1}
	return s, []Effect{e}
}
