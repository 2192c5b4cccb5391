package rules

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// moveToFinisher: the cells leave the starter on their day. A move that was missed is not
// asked for once cells are capped: those are only kept warm; common practice, no source.
func (p *pass) moveToFinisher(b *batchCase) {
	if p.gone(b, bee.ToFinisher) {
		return
	}
	f := p.step(b, bee.ToFinisher, ActMoveCells)
	f.Rule, f.What = MoveToFinisher, fmt.Sprintf("cells of %s go to a finisher", batchWord(b.Batch))
	to := "a finisher"
	free := p.finishers(b)
	switch {
	case len(free) == 1 && p.movesAlone(b):
		to = "finisher " + free[0].Name
		f.Also = []book.Subject{free[0].Colony.Subject()}
	case len(free) > 0:
		f.Why += "; free: " + colonyNames(free)
	case slices.ContainsFunc(slices.Collect(p.view.Colonies()), finishes):
		f.Why += "; no finisher is free"
	}
	f.Do = fmt.Sprintf("Move the cells of %s to %s", batchWord(b.Batch), to)
	p.add(b.yard, f)
}

// countTake: the larvae that the bees took are counted on their day.
func (p *pass) countTake(b *batchCase) { p.count(b, bee.CountTake, CountTake, "take") }

// countCapped: capped cells are counted before they are left alone.
func (p *pass) countCapped(b *batchCase) { p.count(b, bee.CellsCapped, CountCapped, "capped cells") }

func (p *pass) count(b *batchCase, s bee.Step, r Rule, what string) {
	if p.gone(b, s) {
		return
	}
	f := p.step(b, s, ActCountCells)
	f.Rule, f.What = r, fmt.Sprintf("the %s of %s to be counted", what, batchWord(b.Batch))
	f.Do = fmt.Sprintf("Count the %s of %s", what, batchWord(b.Batch))
	p.add(b.yard, f)
}

// settled tells whether nothing of a step of a batch is left to do: it was done, or what
// the book knows of the cells makes it pointless.
func (p *pass) settled(b *batchCase, s bee.Step) bool {
	switch s {
	case bee.ToFinisher:
		return !b.Moved.IsZero() || p.rearsOn(b.Starter) || b.left == 0 || capped(b.Batch)
	case bee.CountTake:
		return b.Taken.Counted() || b.left == 0 || capped(b.Batch)
	case bee.CellsCapped:
		return b.Capped.Counted() || b.left == 0 || ripened(b.Batch)
	default:
		return b.left == 0
	}
}

// gone tells whether a step is not asked for any more: it is settled, or was missed and
// gives way to the next one, the count of the capped cells to the days on which they are
// left alone. What lives is counted again before they are collected.
func (p *pass) gone(b *batchCase, s bee.Step) bool {
	until, _, last := p.span(b, bee.CellsCapped)
	if s == bee.CellsCapped {
		until = last + 1
	}
	return b.yard.today >= until || p.settled(b, s) || p.takenAsDone(b, s)
}

// takenAsDone tells whether a step of a batch is taken as done, since a day ahead is looked at.
func (p *pass) takenAsDone(b *batchCase, s bee.Step) bool {
	from, best, by := p.span(b, s)
	taken := p.ladders().Taken(plan.Rung{From: from, Best: best, By: by})
	p.taken = p.taken || taken
	return taken
}

// span are the first, the best and the last day of a step. Capped cells are counted before
// the days on which they are left alone.
func (p *pass) span(b *batchCase, s bee.Step) (from, best, by calendar.Day) {
	w := p.window(s)
	if s == bee.CellsCapped {
		last := p.window(bee.HandsOff).From - 1
		w.From, w.Best, w.By = min(w.From, last), min(w.Best, last), min(w.By, last)
	}
	return b.graft + calendar.Day(w.From), b.graft + calendar.Day(w.Best), b.graft + calendar.Day(w.By)
}

// capped tells whether the book knows that cells of a batch are capped.
func capped(b *book.Batch) bool {
	return b.Capped.Counted() || ripened(b) || len(b.Signs) > 0
}

// ripened tells whether the book knows that cells of a batch are ripe, or were: they were
// counted, given or caged, taken along, a tip was bare or a virgin out.
func ripened(b *book.Batch) bool {
	late := func(e bee.Evidence) bool { return e.Sign != bee.SeenCapped }
	return b.Ripe.Counted() || len(b.Given) > 0 || len(b.Caged) > 0 || b.Along > 0 || b.Out > 0 || slices.ContainsFunc(b.Signs, late)
}

// rearsOn tells whether a starter keeps its cells until they are capped.
func (p *pass) rearsOn(starter book.ColonyID) bool {
	return !starter.IsZero() && finishes(p.view.Colony(starter))
}

func finishes(c *book.Colony) bool { return c.Is(book.Finisher) || c.Is(book.CellBuilder) }

// window are the days of a step from the graft.
func (p *pass) window(s bee.Step) bee.Window {
	for _, w := range bee.Windows(p.numbers) {
		if w.Step == s {
			return w
		}
	}
	return bee.Window{}
}

// step is a step of a batch on its days, at as many finishers as its cells want.
func (p *pass) step(b *batchCase, s bee.Step, act Act) Finding {
	from, best, by := p.span(b, s)
	takes, said := p.takesOf(b)
	in := plan.FinishersFor(takes, p.numbers)
	f := Finding{
		Of: b.Batch.Batch.Subject(), Act: act, Takes: in * act.Minutes(p.numbers, false), Since: b.At.Instant,
		Why:  fmt.Sprintf("grafted %s; %s: %s", b.At.InFrom(p.today, b.yard.zone), said, count(int(in), "finisher")),
		Sure: sureCalendar,
		Used: append(slices.Clone(plan.StepOf(s).Used()), practice.CellsPerFinisher),
	}
	if !b.Taken.Counted() {
		f.Used = append(f.Used, practice.Take, practice.PriorWeight)
	}
	if s == bee.CellsCapped {
		f.Used = append(f.Used, practice.HandsOffFrom)
	}
	f.From, f.Best, f.By = course.Days(from, best, by, b.yard.zone)
	if late := b.yard.today.Sub(by); late > 0 {
		f.Why += fmt.Sprintf("; %s late", count(late, "day"))
	}
	return f
}

// takesOf are the accepted grafts of a batch as they were counted, else as they are to be
// expected, and in words.
func (p *pass) takesOf(b *batchCase) (takes float64, said string) {
	if b.Taken.Counted() {
		return float64(b.Taken.N), fmt.Sprintf("%d taken", b.Taken.N)
	}
	takes = p.reared().Takes(b.Larvae)
	return takes, fmt.Sprintf("of %d about %.0f live", b.Larvae, takes)
}

// finishers are the colonies that can take the cells of a batch: no other cells hang in
// them. Those of its own yard come before all others, and on a standstill there are none
// but those.
func (p *pass) finishers(b *batchCase) (free []*book.Colony) {
	var away []*book.Colony
	for c := range p.view.Colonies() {
		switch {
		case !finishes(c) || c.Colony == b.Starter || p.rears(c.Colony):
		case c.Yard == b.yard.id:
			free = append(free, c)
		case !stays(b.yard.yard, c.Yard):
			away = append(away, c)
		}
	}
	if len(free) > 0 {
		return free
	}
	return away
}

// movesAlone tells whether no other batch waits for a finisher.
func (p *pass) movesAlone(b *batchCase) bool {
	for _, o := range p.batches {
		if o != b && !p.gone(o, bee.ToFinisher) {
			return false
		}
	}
	return true
}

func colonyNames(all []*book.Colony) string {
	names := make([]string, len(all))
	for i, c := range all {
		names[i] = c.Name
	}
	return strings.Join(names, ", ")
}

// Moves is the move of cells that a task asks for, for whoever ticks it off; ok is false
// where it is none, or leaves open into which finisher.
func Moves(f Finding) (moved book.CellsMoved, ok bool) {
	if f.Act != ActMoveCells || len(f.Also) == 0 {
		return moved, false
	}
	moved.Batch, _ = f.Of.Batch()
	moved.To, ok = f.Also[0].Colony()
	return moved, ok
}
