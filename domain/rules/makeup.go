package rules

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// nobodyReady: more cells than nucs. Those that were planned, or of which nothing was
// planned, are made up in time; for cells beyond them there are cages too.
func (p *pass) nobodyReady(b *batchCase) {
	short := p.ripe(b) - b.ready
	if b.over || !b.Walking.IsZero() || short <= 0 {
		return
	}
	f := Finding{
		Rule: NobodyReady, Of: b.Batch.Batch.Subject(), Amount: float64(short),
		From: (b.graft + p.days(practice.GraftToCapped)).Start(b.yard.zone), Best: b.best, By: b.hard, Hard: true,
		What: fmt.Sprintf("%s of %s, %s ready for them", p.ripeWords(b), batchWord(b.Batch), count(b.ready, "nuc")),
		Why:  fmt.Sprintf("half emerge by %s", hour(p.course.Emerges(b.Batch.Batch), b.yard.zone)),
		Do:   fmt.Sprintf("Make up %s, or have %s at hand", count(short, "nuc"), count(short, "cage")),
		Sure: sureRecorded,
		Used: []practice.Key{practice.QueenEmerges, practice.HardChance, practice.HardMargin},
	}
	y := b.yard
	if y.yard.Standstill != nil {
		f.Why += fmt.Sprintf("; %s is on standstill, they stay there", y.yard.Name)
	}
	if up := p.toMakeUp(b); up > 0 {
		y = p.makeUp(&f, b, up)
	}
	if f.Act == ActNone && p.now.Before(f.From) {
		return
	}
	p.add(y, f)
}

// toMakeUp is how many nucs are still to be made up for a batch: as many as its plan says,
// and no more than cells are to be expected; none once the keeper said that they are.
func (p *pass) toMakeUp(b *batchCase) int {
	want := p.ripe(b)
	of, _ := p.view.BatchPlan(b.Batch.Batch)
	if of.Nucs > 0 {
		want = min(want, of.Nucs)
	}
	if of.Made(book.NucsReady) && b.ready > 0 {
		return 0
	}
	return min(want-b.ready, mostMadeUp)
}

// mostMadeUp is how many nucs are reckoned for one batch at most: beyond lies a fault of
// typing. Common practice, no source.
const mostMadeUp = 10_000

// makeUp makes the finding work of the day before the cells are given, in the yard it
// returns. Nucs whose queens are ready by then are not made up: they get the next cell.
func (p *pass) makeUp(f *Finding, b *batchCase, up int) *yardCase {
	of := p.asGrafted(b)
	of.Yard = cmp.Or(of.Yard, b.yard.id)
	l := p.ladders().LadderOf(of)
	made := p.ladders().MadeUp(l, plan.Size{Yard: of.Yard, Nucs: up + p.keptIn(of.Yard)})
	if up = min(up, made.Nucs); up == 0 {
		return b.yard
	}
	share := float64(up) / float64(made.Nucs)
	y, rung := p.yard(of.Yard), l.Rung(plan.MakeUpNucs)
	f.Act, f.Takes, f.Goods = ActMakeUp, made.Minutes*share, Goods{Cups: math.Ceil(made.Cups * share), Combs: made.Combs * share}
	f.From, f.Best = rung.From.Start(y.zone), rung.Best.At(noon, 0, y.zone)
	f.Why = fmt.Sprintf("%s, %s ready for them; %s; made up they take about %s", p.ripeWords(b), count(b.ready, "nuc"), f.Why, count(int(f.Goods.Cups), "cup")+" of bees")
	f.Do = fmt.Sprintf("Make up %s for %s", count(up, "nuc"), batchWord(b.Batch))
	if over := int(f.Amount) - up; over > 0 {
		f.Do += fmt.Sprintf("; have %s at hand", count(over, "cage"))
	}
	f.Used = append(f.Used, slices.Concat(plan.MakeUpNucs.Used(), []practice.Key{practice.MinutesMakeUp, practice.MinutesMakeUpFrameNuc})...)
	return y
}

// keptIn is how many nucs of a yard are ready, each for some batch.
func (p *pass) keptIn(yard book.YardID) (n int) {
	for i := range p.nucs {
		if c := &p.nucs[i]; c.Yard == yard && (c.cell != nil || c.waits != nil) {
			n++
		}
	}
	return n
}

// asGrafted is the plan of a grafted batch, from the hour of its graft on.
func (p *pass) asGrafted(c *batchCase) book.BatchPlan {
	b, _ := p.view.BatchPlan(c.Batch.Batch)
	at := c.At.Instant.In(p.zone)
	b.Day, b.Minute, b.Larvae = c.graft, at.Hour()*60+at.Minute(), c.Larvae
	return b
}
