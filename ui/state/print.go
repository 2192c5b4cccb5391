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
}

func noPrint(s State) string {
	switch {
	case s.Book == nil:
		return "no book is open; open one with Ctrl+O"
	case s.Busy != nil:
		return "something is under way: wait for it, or stop it in the foot"
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
	case s.Fill == LateFill, s.Fill == BatchFill, batch:
		return BatchPaper
	case s.Room == Yard:
		return DensePaper
	}
	return RoutePaper
}

func printed(p Paper) func(State) (State, []Effect) {
	return func(s State) (State, []Effect) { return s.print(p) }
}

// paperNames are what the papers are called while they are made.
var paperNames = [...]string{"Route", "Yard sheet", "Batch sheet", "Wallet card", "Labels"}

func (s State) print(p Paper) (State, []Effect) {
	r := s.Reading()
	e := Print{
		Paper: p, Name: paperNames[p] + " " + r.Day.Short(), Reading: r, Book: s.Book.Name, Yard: s.Filled(),
		Large: s.Large, Letter: s.Letter, Units: s.Units,
	}
	if p == BatchPaper || p == WalletPaper {
		e.Batches = []book.BatchID{s.printBatch()}
	}
	s.Busy = &Busy{Words: "printing " + e.Name, Share: -1}
	return s, []Effect{e}
}
