package main

import (
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// batchShape is a batch's card in JSON.
type batchShape struct {
	batchRow
	Clock   clockShape     `json:"clock"`
	Nucs    []string       `json:"nucs"`
	Needs   []findingShape `json:"needs"`
	History []lineShape    `json:"history"`
}

func batchCommand(a *app) *cobra.Command {
	return a.completes(a.reading(&cobra.Command{
		Use:     "batch NUMBER",
		Short:   "A batch's card: counts, clock, nucs, history",
		Example: "  lidbook batch 4",
		Args:    cobra.ExactArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		b, err := finder{View: v}.batch(args[0])
		if err != nil {
			return err
		}
		found := about(rules.Findings(v), b.Batch.Subject())
		s := batchShape{
			batchRow: rowOfBatch(v, b), Clock: clockOf(timetableIn(v, b)),
			Nucs: giftNames(v, b), Needs: []findingShape{}, History: history(v, b.Batch.Subject()),
		}
		for _, f := range found {
			s.Needs = append(s.Needs, shapeOf(v, f))
		}
		return a.show(s, func() { a.printBatch(v, b, found) })
	}), batchNumbers)
}

func giftNames(v *book.View, b *book.Batch) []string {
	all := []string{}
	for _, g := range b.Given {
		all = append(all, v.Nuc(g.Nuc).Name)
	}
	return all
}

func (a *app) printBatch(v *book.View, b *book.Batch, found []rules.Finding) {
	a.line("batch %d  grafted %s%s", b.Number, b.At.In(v.Zone()), prefixed("  line ", b.Line))
	a.line("  %s", strings.Join(countWords(b), ", "))
	a.printClock(timetableIn(v, b))
	if nucs := giftNames(v, b); len(nucs) > 0 {
		a.line("  in nucs: %s", strings.Join(nucs, " "))
	}
	a.findings(v, found, false)
	a.printHistory(v, b.Batch.Subject())
}
