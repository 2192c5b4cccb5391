package rules

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// readies are the steps that make ready for a planned batch, and what is done at
// each; the graft itself makes it a batch.
var readies = [...]struct {
	step plan.Step
	do   string
}{
	{plan.DroneComb, "Hang drone comb into the drone colonies"},
	{plan.Confine, "Confine the breeder on an empty comb"},
	{plan.FeedStarter, "Feed the starters"},
	{plan.SetUpStarter, "Set up the starters"},
	{plan.GraftLarvae, ""}, // says how many
	{plan.MakeUpNucs, "Make up the nucs"},
}

// plannedSteps are the steps of the planned batches that make ready for them, as
// work on their days. Once it is grafted the batch's own rules tell.
func (p *pass) plannedSteps() {
	combs := p.combsIn()
	for b := range p.view.Plans() {
		p.plannedBatch(b, combs)
	}
	for _, c := range p.given {
		p.afterGiven(c)
	}
}

// combsIn are the days on which drone comb went in, by the yard its drones fly in.
func (p *pass) combsIn() map[book.YardID][]calendar.Day {
	in := map[book.YardID][]calendar.Day{}
	for _, sub := range slices.Collect(p.view.Subjects(book.KindBatch)) {
		id, _ := sub.Batch()
		if d := plan.CombIn(p.view, id); d != 0 {
			b, _ := p.view.BatchPlan(id)
			yard := p.fliesIn(b)
			in[yard] = append(in[yard], d)
		}
	}
	return in
}

// fliesIn is the yard in which the virgins of a planned batch fly; at home where nobody told.
func (p *pass) fliesIn(b book.BatchPlan) book.YardID { return cmp.Or(b.Yard, p.home().id) }

// wantsComb tells whether drone comb is to be hung in for a batch: it is not too late for
// ripe drones, and no comb of another batch serves its virgins too. What is hung in for it
// is one of the combs then.
func (p *pass) wantsComb(b book.BatchPlan, l plan.Ladder, combs map[book.YardID][]calendar.Day) bool {
	planner, today, yard := p.ladders(), p.today, p.fliesIn(b)
	if planner.Taken(l.Rung(plan.DroneComb)) {
		today = p.view.From()
	}
	serves := func(in calendar.Day) bool { return planner.CombServes(in, l) }
	if planner.CombTooLate(today, l) || slices.ContainsFunc(combs[yard], serves) {
		return false
	}
	combs[yard] = append(combs[yard], max(l.Rung(plan.DroneComb).By, today)) // by then it hangs, and serves for longest
	return true
}

func (p *pass) plannedBatch(b book.BatchPlan, combs map[book.YardID][]calendar.Day) {
	planner := p.ladders()
	l, size := planner.LadderOf(b), planner.SizeOf(b)
	late := p.view.GraftOn(b) - b.Day
	planned := b.At.Day(p.home().zone) + late // so much later its steps too
	first, missed := planner.Missed(b)
	if p.view.NotGrafted(b) {
		p.add(p.home(), p.lapsed(b, l, cmp.Or(first, planner.FirstGraft())))
		return
	}
	for _, rung := range missed {
		p.add(p.home(), p.missed(b, first, rung))
	}
	for _, r := range readies {
		y := p.stepYard(b, r.step)
		rung := l.Rung(r.step)
		if b.Made(r.step.Readied()) || isStep(missed, r.step) || rung.By < planned && r.step != plan.GraftLarvae {
			continue // it was too late for it when the plan was made
		}
		if r.step == plan.DroneComb && !p.wantsComb(b, l, combs) {
			continue
		}
		if planner.Taken(rung) {
			p.taken = true
			continue
		}
		f := p.plannedStep(y, b, rung, r.do, takes(planner.Minutes(l, size), r.step))
		f.Goods = p.goodsOf(b, l, size, r.step)
		if r.step == plan.GraftLarvae && late > 0 {
			p.graftLate(&f, b, late)
		}
		p.add(y, f)
	}
	p.laterSteps(b, l, size)
}

// isStep tells whether a step is among some.
func isStep(among []plan.Rung, s plan.Step) bool {
	return slices.ContainsFunc(among, func(r plan.Rung) bool { return r.Step == s })
}

// stepYard is the yard in which a step of a planned batch happens, whose zone its day
// has: at home up to the ripe cells, where drone colonies stand the drone comb, and from
// the nucs on where they stand.
func (p *pass) stepYard(b book.BatchPlan, step plan.Step) *yardCase {
	switch {
	case b.Yard.IsZero():
		return p.home()
	case step == plan.DroneComb:
		for c := range p.view.Colonies() {
			if c.Is(book.DroneSource) && c.Yard == b.Yard {
				return p.yard(b.Yard)
			}
		}
		return p.home()
	case step >= plan.MakeUpNucs:
		return p.yard(b.Yard)
	default:
		return p.home()
	}
}

// goodsOf are what a step of a planned batch takes along.
func (p *pass) goodsOf(b book.BatchPlan, l plan.Ladder, size plan.Size, step plan.Step) (g Goods) {
	switch step {
	case plan.DroneComb:
		g.DroneCombs = p.ladders().DroneCombs(size)
	case plan.FeedStarter:
		days := l.Rung(plan.SetUpStarter).Best - l.Rung(step).Best
		g.Syrup = plan.StartersFor(b.Larvae, p.numbers) * p.numbers.Get(practice.FeedPerRearer) * float64(max(1, days))
	case plan.GraftLarvae:
		g.CellCups = b.Larvae
	case plan.MakeUpNucs:
		made := p.ladders().MadeUp(l, size)
		g.Cups, g.Combs = made.Cups, made.Combs
	case plan.GiveCells:
		g.RipeCells = cellsOf(size)
	case plan.Ready:
		g.QueenCages = int(math.Round(size.Queens))
	}
	return g
}

// takes are the minutes of a step.
func takes(all []plan.Minutes, step plan.Step) (sum float64) {
	for _, m := range all {
		if m.Step == step {
			sum += m.Minutes
		}
	}
	return sum
}

func (p *pass) plannedStep(y *yardCase, b book.BatchPlan, rung plan.Rung, do string, minutes float64) Finding {
	act, step := ActMakeReady, rung.Step
	if step == plan.GraftLarvae {
		act, do = ActGraft, fmt.Sprintf("Graft %d larvae", b.Larvae)
	}
	f := Finding{
		Rule: PlannedStep, Of: b.Batch.Subject(), Act: act, Takes: minutes,
		Since: b.At.Instant, From: rung.From.Start(y.zone), Best: rung.Best.At(noon, 0, y.zone), By: rung.By.Start(y.zone),
		Step: step, What: "planned: " + step.String(), Do: do + forLine(b.Line),
		Why:  fmt.Sprintf("graft of %d larvae planned for %s%s", b.Larvae, b.Day.ShortFrom(p.today), p.wished(b)),
		Sure: sureCalendar, Used: step.Used(),
	}
	if late := p.today.Sub(rung.By); late > 0 {
		f.Severity = Pressing
		f.Why += fmt.Sprintf("; %s late: %s, or move the plan", count(late, "day"), costOf(step))
	}
	return f
}

// graftLate makes a graft press that was not made on its day and still can be.
func (p *pass) graftLate(f *Finding, b book.BatchPlan, late calendar.Day) {
	by := p.view.GraftBy(b.Day)
	f.Severity, f.By = Pressing, by.Start(p.home().zone)
	f.Why += fmt.Sprintf("; %s late: %s, and from %s on its larvae are too old", count(int(late), "day"), costOf(plan.GraftLarvae), (by + 1).ShortFrom(p.today))
}

// costOf is what it costs that a step is late which can still be done.
func costOf(s plan.Step) string {
	switch s {
	case plan.DroneComb:
		return "its drones are not ripe for the first flights"
	case plan.FeedStarter:
		return "the starters are fed so much shorter"
	default:
		return "the queens are ready so much later"
	}
}

// lapsed is a planned batch that was not grafted, and cannot be any more: one thing to see to, and no
// work.
func (p *pass) lapsed(b book.BatchPlan, l plan.Ladder, first calendar.Day) Finding {
	y, by := p.home(), p.view.GraftBy(b.Day)
	f := p.plannedStep(y, b, l.Rung(plan.GraftLarvae), "", 0)
	f.Severity, f.From = Pressing, (by + 1).Start(y.zone)
	f.Best = f.From
	f.Do = fmt.Sprintf("Lapsed: %s", p.moveOrDrop(b, first))
	f.Why = fmt.Sprintf("graft of %d larvae planned for %s%s; to graft was due by %s: if it was done, write it", b.Larvae, b.Day.ShortFrom(p.today), p.wished(b), by.ShortFrom(p.today))
	return f
}

// missed asks for a step of a planned batch that nobody wrote down and that is past: the graft is
// counted on as long as it has not lapsed.
func (p *pass) missed(b book.BatchPlan, first calendar.Day, by plan.Rung) Finding {
	y := p.home()
	f := p.plannedStep(y, b, by, "", 0)
	f.Severity, f.From = Pressing, (by.By + 1).Start(y.zone)
	f.Best = f.From
	f.Do = fmt.Sprintf("Write it if it was done: %s; else %s", by.Step, p.moveOrDrop(b, first))
	f.Why = fmt.Sprintf("graft of %d larvae planned for %s%s; to %s was due by %s, and is not written down", b.Larvae, b.Day.ShortFrom(p.today), p.wished(b), by.Step, by.By.ShortFrom(p.today))
	return f
}

// moveOrDrop is what can be done with a planned batch that cannot be grafted as it is planned.
func (p *pass) moveOrDrop(b book.BatchPlan, first calendar.Day) string {
	return fmt.Sprintf("move the graft%s of %s to %s, or drop it", forLine(b.Line), b.Day.ShortFrom(p.today), first.ShortFrom(p.today))
}

func forLine(line string) string {
	if line == "" {
		return ""
	}
	return " for " + line
}

// wished is what a planned batch is for.
func (p *pass) wished(b book.BatchPlan) string {
	if b.Queens == 0 || b.By.IsZero() {
		return ""
	}
	return fmt.Sprintf(", %s by %s", count(b.Queens, "queen"), b.By.ShortFrom(p.today))
}

// Readies is the step that a planned task makes ready, for whoever ticks it off; ok
// is false where it is the graft, or no step at all.
func Readies(f Finding) (book.BatchReadied, bool) {
	id, is := f.Of.Batch()
	ready := f.Step.Readied()
	if !is || ready == 0 {
		return book.BatchReadied{}, false
	}
	return book.BatchReadied{Batch: id, Step: ready}, true
}
