package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

// batchRow is a batch in a list, in JSON.
type batchRow struct {
	Number  int    `json:"number"`
	ID      string `json:"id"`
	Grafted string `json:"grafted"`
	Line    string `json:"line,omitempty"`
	Larvae  int    `json:"larvae"`
	Taken   *int   `json:"taken,omitempty"`
	Capped  *int   `json:"capped,omitempty"`
	Ripe    *int   `json:"ripe,omitempty"`
	Given   int    `json:"given"`
	PutIn   int    `json:"virginsPutIn"`
	Caged   int    `json:"caged"`
	Culled  int    `json:"culled"`
	Out     int    `json:"emerged"`
	Dead    int    `json:"dead"`
	Left    int    `json:"left"`
}

func rowOfBatch(v *book.View, b *book.Batch) batchRow {
	return batchRow{
		Number: b.Number, ID: b.Batch.String(), Grafted: stamp(b.At.Instant, v.Zone()), Line: b.Line, Larvae: b.Larvae,
		Taken: counted(b.Taken), Capped: counted(b.Capped), Ripe: counted(b.Ripe), Given: given(b, false), PutIn: given(b, true), Caged: len(b.Caged),
		Culled: b.Culled, Out: b.Out, Dead: b.Dead, Left: b.Left(),
	}
}

// given counts the cells of a batch that went into nucs, or the virgins.
func given(b *book.Batch, virgins bool) (n int) {
	for _, g := range b.Given {
		if g.Virgin == virgins {
			n++
		}
	}
	return n
}

func counted(c book.Count) *int {
	if !c.Counted() {
		return nil
	}
	return &c.N
}

// countWords are a batch's counts, those there are.
func countWords(b *book.Batch) []string {
	words := []string{plural(b.Larvae, "graft")}
	add := func(n int, word string) {
		if n > 0 {
			words = append(words, thousands(n)+" "+word)
		}
	}
	if b.Taken.Counted() {
		words = append(words, thousands(b.Taken.N)+" taken")
	}
	if b.Capped.Counted() {
		words = append(words, thousands(b.Capped.N)+" capped")
	}
	add(b.Culled, "culled")
	add(given(b, false), "given")
	add(len(b.Caged), "caged")
	add(given(b, true), "put in as virgins")
	add(b.Out, "emerged outside nucs")
	add(b.Dead, "dead")
	add(b.Lost, "dropped")
	add(b.OnTheWay(), "on the way")
	return append(words, thousands(b.Left())+" still together")
}

func batchesCommand(a *app) *cobra.Command {
	return a.reading(&cobra.Command{
		Use:   "batches",
		Short: "All batches with their counts",
		Args:  cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		rows := []batchRow{}
		var table [][]string
		for b := range v.Batches() {
			rows = append(rows, rowOfBatch(v, b))
			table = append(table, []string{fmt.Sprintf("batch %d", b.Number), b.At.In(v.Zone()), b.Line, strings.Join(countWords(b), ", ")})
		}
		return a.show(rows, func() { a.table(table) })
	})
}
