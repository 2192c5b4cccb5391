package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"os/signal"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/storage"
	"lidmark/ui/paper"
	"lidmark/ui/state"
)

// papers are what can be printed, in the order of the help.
var papers = []string{"route", "dense", "batch", "wallet", "labels"}

// printing is a paper being printed, as the flags want it.
type printing struct {
	paper.Options
	reading *state.Reading
	yard    book.YardID
	batches []book.BatchID
	skip    int
}

func printCommand(a *app) *cobra.Command {
	var file, page string
	var p printing
	c := a.reading(&cobra.Command{
		Use:   "print PAPER [BATCH ...]",
		Short: "Sheets, cards and labels as PDF: the route, the yard, a batch",
		Long: "Writes a paper as a PDF file:\n\n" +
			"  route   the day's work with boxes to tick and cells to write into\n" +
			"  dense   the yard, a square of 10 mm a nuc\n" +
			"  batch   a batch: its clock, counts, nucs, and a log to fill in\n" +
			"  wallet  cards with the hours of batches and who can be rung, to cut out\n" +
			"  labels  labels for lids and boxes with a QR code of the nuc's id\n\n" +
			"Labels are for sheets of 3 by 8 (A4, 70 by 37 mm) or 3 by 10 (letter, 2.625 by\n1 inch): print them in full size, not fitted to the page.",
		Example:   "  lidbook print route -o today.pdf\n  lidbook print dense -o yard.pdf --yard \"Home Yard\" --on tomorrow --large\n  lidbook print batch 4 -o batch4.pdf\n  lidbook print labels -o labels.pdf --page letter --skip 6",
		Args:      cobra.MinimumNArgs(1),
		ValidArgs: papers,
	}, func(c *cobra.Command, v *book.View, args []string) error {
		var err error
		if p.Page, err = paper.ParsePage(page); err != nil {
			return &usageError{err: fmt.Errorf("--page: %w", err)}
		}
		if file == "" {
			return &usageError{err: fmt.Errorf("say with -o which file to write, like -o %s.pdf", args[0])}
		}
		p.Book, p.Printed = a.bookName(), a.now
		p.reading = (&state.Book{Season: v.Season()}).On(a.now, v.Today())
		return a.print(c.Context(), p, args, file)
	})
	f := c.Flags()
	f.StringVarP(&file, "out", "o", "", "write to `FILE`")
	f.StringVar(&a.flags.yard, "yard", "", "only this `YARD`")
	f.StringVar(&page, "page", "a4", "the `PAGE`: "+strings.Join(paper.Pages(), " or "))
	f.BoolVar(&p.Large, "large", false, "large print")
	f.BoolVar(&p.Pure, "pure", false, "black and white only, no grey and no colour")
	amount(c, &p.skip, "skip", 0, "labels: how many of the first sheet are used up")
	hideFlags(c, "json", "known")
	return c
}

// print writes a paper to a file and says how many pages it has; it can be
// interrupted.
func (a *app) print(ctx context.Context, p printing, args []string, file string) error {
	f, err := a.finder(p.reading.View)
	if err != nil {
		return err
	}
	p.yard = f.in
	for _, number := range args[1:] {
		b, err := f.batch(number)
		if err != nil {
			return err
		}
		p.batches = append(p.batches, b.Batch)
	}
	write, err := p.paper(args[0])
	if err != nil {
		return &usageError{err: err}
	}
	ctx, stop := signal.NotifyContext(ctx, os.Interrupt)
	defer stop()
	pages := 0
	err = storage.WriteFile(file, func(w io.Writer) (err error) {
		pages, err = write(ctx, w)
		return err
	})
	if err != nil {
		return err
	}
	a.line("%s: %s", file, plural(pages, "page"))
	return nil
}

// paper is what writes a paper of a name, for as many batches as it takes.
func (p printing) paper(name string) (func(context.Context, io.Writer) (int, error), error) {
	switch n := len(p.batches); {
	case name == "batch" && n != 1:
		return nil, fmt.Errorf("print batch: name one batch, like print batch 4")
	case name != "batch" && name != "wallet" && n > 0:
		return nil, fmt.Errorf("print %s: it takes no batch", name)
	}
	switch name {
	case "route":
		return func(ctx context.Context, w io.Writer) (int, error) {
			return paper.Route(ctx, w, p.reading, p.yard, p.Options)
		}, nil
	case "dense":
		return func(ctx context.Context, w io.Writer) (int, error) {
			return paper.Dense(ctx, w, p.reading, p.yard, p.Options)
		}, nil
	case "batch":
		return func(ctx context.Context, w io.Writer) (int, error) {
			return paper.Batch(ctx, w, p.reading, p.batches[0], p.Options)
		}, nil
	case "wallet":
		return func(ctx context.Context, w io.Writer) (int, error) {
			return paper.Wallet(ctx, w, p.reading, p.Options, p.batches...)
		}, nil
	case "labels":
		return func(ctx context.Context, w io.Writer) (int, error) {
			return paper.Labels(ctx, w, p.reading, p.yard, p.skip, p.Options)
		}, nil
	default:
		return nil, fmt.Errorf("print %q: choose %s", name, strings.Join(papers, ", "))
	}
}
