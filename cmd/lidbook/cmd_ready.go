package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

// readyNames are the steps that make ready for a planned batch, by their short names.
var readyNames = []struct {
	name string
	step book.ReadyStep
}{
	{"drone comb", book.DroneCombIn},
	{"breeder", book.BreederConfined},
	{"feed", book.StarterFed},
	{"starter", book.StarterSetUp},
	{"nucs", book.NucsReady},
}

func readyCommand(a *app) *cobra.Command {
	return a.writing(&cobra.Command{
		Use:   "ready BATCH STEP",
		Short: "Write down that a step for a planned graft is done",
		Long: "Write down that a step that makes ready for a planned graft is done: drone comb,\n" +
			"breeder, feed, starter or nucs. BATCH is the day of the graft, its line, or both;\n" +
			"for nucs the number of a grafted batch too.",
		Example: "  lidbook ready 2027-05-03 \"drone comb\"\n  lidbook ready \"Rook 12\" starter --on yesterday\n  lidbook ready 4 nucs",
		Args:    cobra.ExactArgs(2),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		step, err := readyStep(args[1])
		if err != nil {
			return err
		}
		f := finder{View: d.view()}
		if b, err := f.batch(args[0]); err == nil && step == book.NucsReady {
			return d.write(book.BatchReadied{Batch: b.Batch, Step: step})
		}
		p, err := f.plan(args[0])
		if err != nil {
			return err
		}
		return d.write(book.BatchReadied{Batch: p.Batch, Step: step})
	})
}

// readyStep finds a step by its short name, or as the book calls it.
func readyStep(name string) (book.ReadyStep, error) {
	names := make([]string, len(readyNames))
	for i, r := range readyNames {
		if strings.EqualFold(name, r.name) || strings.EqualFold(name, r.step.String()) {
			return r.step, nil
		}
		names[i] = r.name
	}
	return 0, fmt.Errorf("%q is no step before a graft: write %s", name, strings.Join(names, ", "))
}
