package rules

import (
	"fmt"
	"iter"
	"math"

	"lidmark/domain/book"
	"lidmark/domain/plan"
)

// laterSteps are what follows the graft of a planned batch, as work on its days, each with the
// minutes that the plan has for it: from today on they lie ahead, and on a day ahead those before
// it are taken as done. Once the batch is grafted its own rules tell, see [pass.afterGiven].
func (p *pass) laterSteps(b book.BatchPlan, l plan.Ladder, size plan.Size) {
	for rung, minutes := range p.stillToDo(l, size, plan.GraftLarvae) {
		y := p.stepYard(b, rung.Step)
		f := p.plannedStep(y, b, rung, p.laterDo(rung.Step, size), minutes)
		f.Act, f.Goods = ActGoOn, p.goodsOf(b, l, size, rung.Step)
		if !rung.Hard.IsZero() {
			f.Hard, f.By, f.What = true, rung.Hard, ripeOut(b)
		}
		p.add(y, f)
	}
}

// stillToDo are the steps after another of a batch of a size that are not taken as done, each on
// its best day, but making up nucs, and their minutes.
func (p *pass) stillToDo(l plan.Ladder, size plan.Size, after plan.Step) iter.Seq2[plan.Rung, float64] {
	return func(yield func(plan.Rung, float64) bool) {
		for _, m := range p.ladders().Minutes(l, size) {
			if m.Step <= after || m.Step == plan.MakeUpNucs {
				continue
			}
			rung := l.Rung(m.Step)
			again := m.Day - rung.Best // a second look is as many days later
			rung.From, rung.Best, rung.By = rung.From+again, m.Day, rung.By+again
			if p.ladders().Taken(rung) {
				p.taken = true
			} else if !yield(rung, m.Minutes) {
				return
			}
		}
	}
}

// afterGiven are what follows the cells of a grafted batch that are taken as given, as work on its
// days, at as many nucs and queens as it most probably comes to.
func (p *pass) afterGiven(c *batchCase) {
	p.taken = true
	w, left := p.ladders().Grafted(c.Batch), p.ladders().Left(c.Batch)
	w.Queens = p.ladders().Unlearnt(left, 0, true, 0, false).Mean()
	b := p.asGrafted(c)
	b.Batch, b.Yard, b.Line = c.Batch.Batch, w.Yard, c.Line
	for rung, minutes := range p.stillToDo(w.Ladder, w.Size, plan.GiveCells) {
		y := p.yard(w.Yard)
		f := p.plannedStep(y, b, rung, p.laterDo(rung.Step, w.Size), minutes)
		f.Act, f.Goods, f.Since = ActGoOn, p.goodsOf(b, w.Ladder, w.Size, rung.Step), c.At.Instant
		f.What = fmt.Sprintf("%s: %s", batchWord(c.Batch), rung.Step)
		f.Why = fmt.Sprintf("grafted %s; its cells are taken as given as planned", c.At.InFrom(p.today, c.yard.zone))
		p.add(y, f)
	}
}

// shareGiven keeps the nucs without a queen, in walking order, that are taken as given a cell on a
// day ahead: by then they are no trouble.
func (p *pass) shareGiven() {
	for _, c := range p.given {
		w := p.ladders().Waiting(c.Batch)
		for i := range p.nucs {
			n := &p.nucs[i]
			if w.Nucs == 0 {
				break
			}
			if n.given == nil && n.Nuc.Yard == w.Yard && n.Holds.Condition == book.NoQueen && n.Queenless.Instant.Before(c.best) {
				n.given = c
				w.Nucs--
			}
		}
	}
}

// ripeOut says what a planned batch has a hard hour for.
func ripeOut(b book.BatchPlan) string {
	return "planned" + forLine(b.Line) + ": ripe cells must be out"
}

// laterDo is what to do at a step after the graft of a batch of a size.
func (p *pass) laterDo(step plan.Step, size plan.Size) string {
	switch step {
	case plan.ToFinisher:
		return "Move the cells to " + count(int(plan.FinishersFor(size.Takes, p.numbers)), "finisher")
	case plan.CountTake:
		return "Count the take"
	case plan.CountCapped:
		return "Count the capped cells"
	case plan.GiveCells:
		return "Give about " + count(cellsOf(size), "ripe cell")
	case plan.LookForEggs:
		return "Look for eggs"
	default:
		return "Catch about " + count(int(math.Round(size.Queens)), "queen")
	}
}

// cellsOf are the cells that nucs are given of a batch.
func cellsOf(s plan.Size) int { return int(math.Round(min(float64(s.Nucs), s.Cells))) }
