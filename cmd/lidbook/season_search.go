package main

import (
	"context"
	"fmt"
	"os"
	"os/signal"
	"time"

	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// tellEvery is how often a long search says how far it is.
const tellEvery = 2 * time.Second

// search looks for batches. What takes long is told on standard error as it goes, and
// interrupting it takes what is found by then.
func (a *app) search(ctx context.Context, p *plan.Planner, w season.Wanted) season.Found {
	ctx, stop := signal.NotifyContext(ctx, os.Interrupt)
	defer stop()
	told := time.Now()
	return season.Search(p, w, func(far season.Progress) bool {
		if time.Since(told) >= tellEvery {
			told = time.Now()
			fmt.Fprintln(a.errs, searchedSoFar(far))
		}
		return ctx.Err() == nil
	})
}

// searchedSoFar is how far a search is in a line.
func searchedSoFar(p season.Progress) string {
	far := "first answer"
	if p.Round > 0 {
		far = fmt.Sprintf("round %d of %d", p.Round, p.Rounds)
	}
	return fmt.Sprintf("%s: %s, %s short, %.0f min; interrupt to take it", far, plural(p.Batches, "graft"), plural(p.Short, "queen"), p.Minutes)
}
