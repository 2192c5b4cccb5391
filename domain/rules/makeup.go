package rules

import (
	"fmt"
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// nobodyReady: more cells than nucs. Those that were planned, or of which nothing was
// planned, are made up in time; for cells beyond them there are cages too.
func (p *pass) nobodyReady(b *batchCase) {
	if b.over || !b.Walking.IsZero() {
		return
	}
	waits, made := p.toMakeUp(b)
	ready := b.ready
	if made.Nucs > 0 {
		ready = waits.Nucs - made.Nucs
	}
	if made.Nucs > 0 && !stays(b.yard.yard, waits.Yard) && p.ladders().Taken(waits.Rung(plan.MakeUpNucs)) {
		b.ahead, ready, made, p.taken = max(0, min(made.Nucs, p.ripe(b)-b.ready)), waits.Nucs, plan.MakeUp{}, true
	}
	short := p.ripe(b) - max(b.ready, ready)
	if made.Nucs == 0 && short <= 0 {
		return
	}
	f := Finding{
		Rule: NobodyReady, Of: b.Batch.Batch.Subject(), Amount: float64(max(short, made.Nucs)),
		From: (b.graft + p.days(practice.GraftToCapped)).Start(b.yard.zone), Best: b.best, By: b.hard, Hard: true,
		What: fmt.Sprintf("%s of %s, %s ready for them", p.ripeWords(b), batchWord(b.Batch), count(ready, "nuc")),
		Why:  fmt.Sprintf("half emerge by %s", hour(p.today, p.course.Emerges(b.Batch.Batch), b.yard.zone)),
		Do:   fmt.Sprintf("Make up %s, or have %s at hand", count(short, "nuc"), count(short, "cage")),
		Sure: sureRecorded,
		Used: []practice.Key{practice.QueenEmerges, practice.HardChance, practice.HardMargin},
	}
	y := b.yard
	if y.yard.Standstill != nil {
		f.Why += fmt.Sprintf("; %s is on standstill, they stay there", y.yard.Name)
	}
	if made.Nucs > 0 {
		y = p.makeUp(&f, b, waits, made)
	}
	if f.Act == ActNone && p.now.Before(f.From) {
		return
	}
	p.add(y, f)
	if f.Act == ActMakeUp && !stays(b.yard.yard, y.id) {
		b.made, b.into = p.found[len(p.found)-1], max(0, min(made.Nucs, p.ripe(b)-b.ready))
	}
}

// intoMadeUp is how many cells of a batch go on a day into nucs that are still made up: before
// the day, or on it where that is done.
func (p *pass) intoMadeUp(b *batchCase, d calendar.Day, done bool) int {
	switch {
	case b.ahead > 0:
		return b.ahead
	case b.made == nil || !b.made.PutOff.IsZero():
		return 0
	case p.isFor(*b.made, d) && done, p.workDay(*b.made) < d && d > p.yard(b.made.Yard).today:
		return b.into
	default:
		return 0
	}
}

// toMakeUp are the nucs that wait for the cells of a batch, and what of them is still made
// up: as the plan has it, so that both tell one number.
func (p *pass) toMakeUp(b *batchCase) (waits plan.Wanting, made plan.MakeUp) {
	waits = p.ladders().Waiting(b.Batch)
	waits.Nucs = min(waits.Nucs, mostMadeUp)
	return waits, p.ladders().MadeUp(waits.Ladder, waits.Size)
}

// mostMadeUp is how many nucs are reckoned for one batch at most: beyond lies a fault of
// typing. Common practice, no source.
const mostMadeUp = 10_000

// makeUp makes the finding work of the day before the cells are given, in the yard it
// returns. Nucs that are alive, or whose queens are ready by then, are not made up: they get
// the next cell.
func (p *pass) makeUp(f *Finding, b *batchCase, waits plan.Wanting, made plan.MakeUp) *yardCase {
	up, ready := made.Nucs, waits.Nucs-made.Nucs
	y, rung := p.yard(waits.Yard), waits.Rung(plan.MakeUpNucs)
	f.Act, f.Takes, f.Goods = ActMakeUp, made.Minutes, Goods{Cups: math.Ceil(made.Cups), Combs: made.Combs}
	f.From, f.Best = rung.From.Start(y.zone), rung.Best.At(noon, 0, y.zone)
	f.Why = fmt.Sprintf("%s, %s ready for them; %s; made up they take about %s", p.ripeWords(b), count(ready, "nuc"), f.Why, count(int(f.Goods.Cups), "cup")+" of bees")
	f.Do = fmt.Sprintf("Make up %s for %s", count(up, "nuc"), batchWord(b.Batch))
	if over := p.ripe(b) - max(b.ready, waits.Nucs); over > 0 {
		f.Do += fmt.Sprintf("; have %s at hand", count(over, "cage"))
	}
	f.Used = append(f.Used, slices.Concat(plan.MakeUpNucs.Used(), []practice.Key{practice.MinutesMakeUp, practice.MinutesMakeUpFrameNuc})...)
	return y
}

// asGrafted is the plan of a grafted batch, from the hour of its graft on.
func (p *pass) asGrafted(c *batchCase) book.BatchPlan {
	b, _ := p.view.BatchPlan(c.Batch.Batch)
	at := c.At.Instant.In(p.zone)
	b.Day, b.Minute, b.Larvae = c.graft, at.Hour()*60+at.Minute(), c.Larvae
	return b
}
