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

func printCommand(a *app) *cobra.Command {
	var file, page string
	var p printing
	c := a.reading(&cobra.Command{
		Use:   "print PAPER [BATCH|ORDER|LAYOUT ...]",
		Short: "Sheets, cards and labels as PDF: the route, the week, a plan",
		Long: "Writes a paper as a PDF file:\n\n" + papersTold() +
			"\nLabels are for sheets of 3 by 8 (A4, 70 by 37 mm) or 3 by 10 (letter, 2.625 by\n1 inch): print them in full size, not fitted to the page.",
		Example: "  lidbook print route -o today.pdf\n  lidbook print dense -o yard.pdf --yard \"Home Yard\" --on tomorrow --large\n  lidbook print batch 4 -o batch4.pdf\n" +
			"  lidbook print labels -o labels.pdf --page letter --skip 6\n  lidbook print plan 2027-04-19 -o plan.pdf\n  lidbook print cages 12 -o cages.pdf\n" +
			"  lidbook print crew -o sheets.pdf --hours 4 --vans 2\n  lidbook print layout \"by the hedge\" -o layout.pdf --scale 1:100 --peg \"boundary 1\" --peg \"old plum\"",
		Args:      cobra.MinimumNArgs(1),
		ValidArgs: paperNames(),
	}, func(c *cobra.Command, v *book.View, args []string) error {
		var err error
		if p.Page, err = paper.ParsePage(page); err != nil {
			return &usageError{err: fmt.Errorf("--page: %w", err)}
		}
		if file == "" {
			return &usageError{err: fmt.Errorf("say with -o which file to write, like -o %s.pdf", args[0])}
		}
		if err := checkEnding(file, "a paper is", ".pdf"); err != nil {
			return err
		}
		p.crew.given = c.Flags().Changed
		p.Book, p.Printed = a.bookName(), a.now
		p.reading = (&state.Book{Season: v.Season()}).On(a.now, v.Today())
		return a.print(c.Context(), p, args, file)
	})
	f := c.Flags()
	f.StringVarP(&file, "out", "o", "", "write to `FILE`")
	f.StringVar(&file, "to", "", "the same as -o `FILE`")
	f.StringVar(&a.flags.yard, "yard", "", "only this `YARD`")
	f.StringVar(&page, "page", "a4", "the `PAGE`: "+strings.Join(paper.Pages(), " or "))
	f.BoolVar(&p.Large, "large", false, "large print")
	f.BoolVar(&p.Pure, "pure", false, "black and white only, no grey and no colour")
	amount(c, &p.skip, "skip", 0, "labels: how many of the first sheet are used up")
	amount(c, &p.crew.hours, "hours", 0, "crew: nobody has more than so many `HOURS`; 0: nobody works")
	amount(c, &p.crew.vans, "vans", 1, "crew: with so many vans; 0: only what can be walked to")
	f.StringSliceVar(&p.crew.without, "without", nil, "crew: these `PEOPLE` are away")
	f.StringVar(&p.laid.scale, "scale", "", "layout: to this `SCALE`, like 1:100 (else the largest round one that fits on a page)")
	f.StringArrayVar(&p.laid.pegs, "peg", nil, "layout: a `POINT` at which a tape begins, a name like \"boundary 1\" or x,y; said twice (else the best two)")
	hideFlags(c, "json", "known", "to")
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
	row, err := p.paperOf(f, args)
	if err != nil {
		return err
	}
	ctx, stop := signal.NotifyContext(ctx, os.Interrupt)
	defer stop()
	pages := 0
	err = storage.WriteFile(file, func(w io.Writer) (err error) {
		pages, err = row.print(ctx, w, p)
		return err
	})
	if err != nil {
		return err
	}
	a.line("%s: %s", file, plural(pages, "page"))
	return nil
}
