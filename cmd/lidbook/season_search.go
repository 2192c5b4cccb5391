package main

import (
	"context"
	"fmt"
	"os"
	"os/signal"
	"time"

	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// tellEvery is how often a long search says how far it is.
const tellEvery = 2 * time.Second

// search looks for the batches that keep all orders, as surely as is asked and with so many
// minutes a day at most.
// What takes long is told on standard error as it goes, and interrupting it takes what is
// found by then.
func (a *app) search(ctx context.Context, p *plan.Planner, f seasonFlags) (season.Found, searchShape) {
	ctx, stop := signal.NotifyContext(ctx, os.Interrupt)
	defer stop()
	sheet := handover.New(p)
	told, said := time.Now(), searchedSoFar
	goOn := func(far season.Progress) bool {
		if time.Since(told) >= tellEvery {
			told = time.Now()
			fmt.Fprintln(a.errs, said(far))
		}
		return ctx.Err() == nil
	}
	found := season.Search(p, season.Wanted{Promises: season.Promises(p, sheet, f.percent/100), Sure: f.percent / 100, Minutes: float64(f.minutes)}, goOn)
	shape := searchedShape(p.View(), found)
	shape.Clashes = shapesOfClashes(p.View(), found.Clashes(p))
	said = func(season.Progress) string {
		return "looking what fewer planned grafts would give; interrupt to leave it"
	}
	if ctx.Err() == nil {
		shape.Without = shapesOfDropped(found.Dropped(p, goOn))
	}
	for _, e := range season.EntrustedTo(p, sheet) {
		shape.Planned = append(shape.Planned, entrustedShape{e.Name, e.Queens, e.By.String(), round(e.Chance), e.Said()})
	}
	for _, w := range p.Unordered() {
		shape.Planned = append(shape.Planned, entrustedShape{"graft of " + w.Day.Short(), w.All, w.By.String(), round(w.Chance), w.Sentence()})
	}
	return found, shape
}

// searchedSoFar is how far a search is in a line.
func searchedSoFar(p season.Progress) string {
	far := "first answer"
	if p.Round > 0 {
		far = fmt.Sprintf("round %d of %d", p.Round, p.Rounds)
	}
	return fmt.Sprintf("%s: %s, %s short, %.0f min; interrupt to take it", far, plural(p.Batches, "graft"), plural(p.Short, "queen"), p.Minutes)
}
