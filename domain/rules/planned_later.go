package rules

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/plan"
)

// laterSteps are what follows the graft of a planned batch, as work on its days, each with the
// minutes that the plan has for it: from today on they lie ahead, and on a day ahead those before
// it are taken as done. Once the batch is grafted its own rules tell.
func (p *pass) laterSteps(b book.BatchPlan, l plan.Ladder, size plan.Size) {
	for _, m := range p.ladders().Minutes(l, size) {
		if m.Step <= plan.GraftLarvae || m.Step == plan.MakeUpNucs {
			continue
		}
		rung := l.Rung(m.Step)
		again := m.Day - rung.Best // a second look is as many days later
		rung.From, rung.Best, rung.By = rung.From+again, m.Day, rung.By+again
		if p.ladders().Taken(rung) {
			p.taken = true
			continue
		}
		y := p.stepYard(b, m.Step)
		f := p.plannedStep(y, b, rung, p.laterDo(m.Step, size), m.Minutes)
		f.Act, f.Goods = ActGoOn, p.goodsOf(b, l, size, m.Step)
		if !rung.Hard.IsZero() {
			f.Hard, f.By, f.What = true, rung.Hard, ripeOut(b)
		}
		p.add(y, f)
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
