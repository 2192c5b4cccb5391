package main

import (
	"context"
	"fmt"
	"io"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/crew"
	"lidmark/ui/paper"
	"lidmark/ui/state"
)

// printing is a paper being printed, as the flags want it.
type printing struct {
	paper.Options
	reading *state.Reading
	yard    book.YardID
	batches []book.BatchID
	order   book.OrderID
	skip    int
	crew    crewFlags
	laid    layoutPaper
}

// paperRow is a paper that can be printed.
type paperRow struct {
	name, what string
	of         func(*printing, finder, []string) error // finds what it is of; nil: it is of nothing named
	print      func(context.Context, io.Writer, printing) (int, error)
}

// papers are what can be printed, in the order of the help.
var papers = []paperRow{
	{"route", "the day's work with boxes to tick and cells to write into", nil, func(ctx context.Context, w io.Writer, p printing) (int, error) {
		return paper.Route(ctx, w, p.reading, p.yard, p.Options)
	}},
	{"dense", "the yard, a square of 10 mm a nuc", nil, func(ctx context.Context, w io.Writer, p printing) (int, error) {
		return paper.Dense(ctx, w, p.reading, p.yard, p.Options)
	}},
	{"batch", "a batch: its clock, counts, nucs, and a log to fill in", oneBatch, func(ctx context.Context, w io.Writer, p printing) (int, error) {
		return paper.Batch(ctx, w, p.reading, p.batches[0], p.Options)
	}},
	{"wallet", "cards with the hours of batches and who can be rung, to cut out", anyBatches, func(ctx context.Context, w io.Writer, p printing) (int, error) {
		return paper.Wallet(ctx, w, p.reading, p.Options, p.batches...)
	}},
	{"labels", "labels for lids and boxes with a QR code of the nuc's id", nil, func(ctx context.Context, w io.Writer, p printing) (int, error) {
		return paper.Labels(ctx, w, p.reading, p.yard, p.skip, p.Options)
	}},
	{"week", "seven days: work by yard, steps, hard hours, minutes", nil, func(ctx context.Context, w io.Writer, p printing) (int, error) {
		return paper.Week(ctx, w, p.reading, p.Options)
	}},
	{"plan", "a planned batch: steps, amounts, who gives what, how sure", onePlan, func(ctx context.Context, w io.Writer, p printing) (int, error) {
		return paper.Plan(ctx, w, p.reading, p.batches[0], p.Options)
	}},
	{"buying", "what is to be bought for all planned batches, and by when", nil, func(ctx context.Context, w io.Writer, p printing) (int, error) {
		return paper.Buying(ctx, w, p.reading, p.Options)
	}},
	{"cages", "labels for the cages of the queens that orders get", orderOrAll, func(ctx context.Context, w io.Writer, p printing) (int, error) {
		return paper.Cages(ctx, w, p.reading, p.order, p.skip, p.Options)
	}},
	{"crew", "a short day: a sheet for each person, and what waits", nil, sheetEach},
	{"layout", "a layout: plan to scale, what is carried, staking out", oneLayout, func(ctx context.Context, w io.Writer, p printing) (int, error) {
		return paper.Layout(ctx, w, p.reading, p.laid.Laid, p.Options)
	}},
	{"fronts", "labels for fronts, with the mark as an outline and the QR code", anyFronts, func(ctx context.Context, w io.Writer, p printing) (int, error) {
		return paper.Fronts(ctx, w, p.reading, p.yard, p.laid.fronts, p.skip, p.Options)
	}},
}

// paperNames are the names of all papers.
func paperNames() (names []string) {
	for _, p := range papers {
		names = append(names, p.name)
	}
	return names
}

// papersTold says what each paper is.
func papersTold() string {
	var b strings.Builder
	for _, p := range papers {
		fmt.Fprintf(&b, "  %-7s %s\n", p.name, p.what)
	}
	return b.String()
}

// paperOf is the paper of a name, and finds what it is of.
func (p *printing) paperOf(f finder, args []string) (paperRow, error) {
	for _, row := range papers {
		switch of := args[1:]; {
		case row.name != args[0]:
		case row.of != nil:
			return row, row.of(p, f, of)
		case len(of) > 0:
			return row, &usageError{err: fmt.Errorf("print %s: it takes no batch", row.name)}
		default:
			return row, nil
		}
	}
	return paperRow{}, &usageError{err: fmt.Errorf("print %q: choose %s", args[0], strings.Join(paperNames(), ", "))}
}

// anyBatches finds batches by their numbers.
func anyBatches(p *printing, f finder, numbers []string) error {
	for _, number := range numbers {
		b, err := f.batch(number)
		if err != nil {
			return err
		}
		p.batches = append(p.batches, b.Batch)
	}
	return nil
}

func oneBatch(p *printing, f finder, numbers []string) error {
	if len(numbers) != 1 {
		return &usageError{err: fmt.Errorf("print batch: name one batch, like print batch 4")}
	}
	return anyBatches(p, f, numbers)
}

// onePlan finds a planned batch; the only one there is needs no name.
func onePlan(p *printing, f finder, names []string) error {
	var all []book.BatchPlan
	for b := range f.Plans() {
		all = append(all, b)
	}
	switch {
	case len(names) > 1, len(names) == 0 && len(all) > 1:
		return &usageError{err: fmt.Errorf("print plan: name one planned batch by its day or line, like print plan %s", argument(f.called(all[0])))}
	case len(names) == 0 && len(all) == 0:
		return fmt.Errorf("no graft is planned: plan one with lidbook plan batch")
	case len(names) == 0:
		p.batches = []book.BatchID{all[0].Batch}
		return nil
	}
	b, err := f.plan(names[0])
	p.batches = []book.BatchID{b.Batch}
	return err
}

// orderOrAll finds an order; without a name it is of all.
func orderOrAll(p *printing, f finder, numbers []string) error {
	switch len(numbers) {
	case 0:
		return nil
	case 1:
		o, err := f.order(numbers[0])
		if err == nil {
			p.order = o.Order
		}
		return err
	}
	return &usageError{err: fmt.Errorf("print cages: name one order, or none for all")}
}

// sheetEach prints a sheet for each person.
func sheetEach(ctx context.Context, w io.Writer, p printing) (int, error) {
	hands, err := p.crew.hands(p.reading.View)
	if err != nil {
		return 0, err
	}
	day, err := crew.Plan(p.reading.Judged(), p.reading.Day, hands)
	if err != nil {
		return 0, err
	}
	return paper.Crew(ctx, w, p.reading, day, p.Options)
}
