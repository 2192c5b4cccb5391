package season

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

// moveMost is how many days a batch is moved at most to get out of a clash, and
// waysMost how many ways are told. Conventions of the program.
const (
	moveMost = 10
	waysMost = 6
)

// trial tries ways out of clashes.
type trial struct {
	*account
	loads []*load
	found []Clash // without ways
}

// ways are the ways out of a clash that were found by trying, those first that leave
// nothing of it, then those that leave a promise least below what is wished, then those
// that take least from it, then those that move a graft least.
func (t *trial) ways(c Clash) (all []Way) {
	for at, l := range t.loads {
		if !l.grafted && c.has(l.id) {
			all = append(all, t.moves(c, at)...)
			all = append(all, t.fewer(c, at)...)
			all = append(all, t.elsewhere(c, at)...)
		}
	}
	slices.SortStableFunc(all, func(a, b Way) int {
		return cmp.Or(cmp.Compare(a.Left, b.Left), cmp.Compare(math.Round(100*a.Lacks()), math.Round(100*b.Lacks())), cmp.Compare(math.Round(100*a.Loss()), math.Round(100*b.Loss())),
			cmp.Compare(max(a.Days, -a.Days), max(b.Days, -b.Days)))
	})
	all = all[:min(len(all), waysMost)]
	if c.Kind == DronesShort {
		return append(all, t.moreDrones(c)...)
	}
	if c.Kind == IncubatorShort && t.finishersFree(c) {
		all = append([]Way{{What: c.leave()}}, all...)
	}
	if len(all) == 0 && (c.Kind == DronesUnripe || c.Kind == DronesOld) { // no graft can move out of it
		all = append(all, Way{What: "drone colonies with ripe drones, there by " + t.said(c.From)})
	}
	if what := t.more(c); what != "" {
		all = append(all, Way{What: what})
	}
	return all
}

// more is more of what is short, and the day by which it is there.
func (t *trial) more(c Clash) string {
	n, by := math.Ceil(c.Short()), ", there by "+t.said(c.From)
	switch c.Kind {
	case NucsShort, StartersShort, FinishersShort, IncubatorShort, BroodShort:
		return c.said(n, 0, " more ") + by
	case BeesShort:
		return c.amount(c.Short()) + " from elsewhere" + by
	case MinutesOver:
		return c.amount(n) + " of help on " + t.said(c.From)
	case NobodyFree:
		if c.minutes < 0.5 {
			return ""
		}
		return fmt.Sprintf("%.0f min of help%s", c.minutes, t.between(c.From, c.To))
	default:
		return ""
	}
}

// moves are the nearest days, sooner and later, to which a batch can move.
func (t *trial) moves(c Clash, at int) (all []Way) {
	for _, sign := range []int{1, -1} {
		for n := 1; n <= moveMost; n++ {
			b := t.loads[at].planned
			b.Day += calendar.Day(sign * n)
			if b.Day <= t.today {
				break
			}
			if w, ok := t.try(c, at, b); ok {
				w.What = fmt.Sprintf("%s: %s %s, on %s", t.loads[at].title, daysOf(n), [...]string{"sooner", "", "later"}[sign+1], t.said(b.Day))
				w.Days = sign * n
				all = append(all, w)
				break
			}
		}
	}
	return all
}

func daysOf(n int) string {
	if n == 1 {
		return "1 day"
	}
	return fmt.Sprintf("%d days", n)
}

// fewer are fewer nucs, or fewer larvae, of a batch.
func (t *trial) fewer(c Clash, at int) []Way {
	was := t.loads[at].planned
	b := was
	switch c.Kind {
	case NucsShort:
		b.Nucs -= int(math.Ceil(c.Short()))
	case BeesShort, BroodShort, DronesShort, MinutesOver:
		b.Nucs -= int(math.Ceil(float64(b.Nucs) * c.Short() / c.Want))
	case StartersShort, FinishersShort, IncubatorShort:
		b.Larvae -= int(math.Ceil(float64(b.Larvae) * c.Short() / t.takesOf(at, t.goodOf(c))))
	default:
		return nil
	}
	if b.Nucs < 1 || b.Larvae < 1 {
		return nil
	}
	w, ok := t.try(c, at, b)
	if !ok || c.Kind == NucsShort && w.Wished && w.After < givenUp { // it has no more of them already
		return nil
	}
	w.What = fmt.Sprintf("%s: %d nucs instead of %d", t.loads[at].title, b.Nucs, was.Nucs)
	if b.Larvae != was.Larvae {
		w.What = fmt.Sprintf("%s: %d larvae instead of %d", t.loads[at].title, b.Larvae, was.Larvae)
	}
	return []Way{w}
}

// takesOf is how much a batch takes of a good at once.
func (t *trial) takesOf(at, good int) float64 {
	most := 1.0
	for _, s := range t.loads[at].takes {
		if s.good == good {
			most = max(most, float64(s.amount))
		}
	}
	return most
}

// elsewhere are the nucs of other yards.
func (t *trial) elsewhere(c Clash, at int) (all []Way) {
	if c.Kind != NucsShort {
		return nil
	}
	for _, y := range t.ground.yards {
		b := t.loads[at].planned
		if y == b.Yard {
			continue
		}
		b.Yard = y
		if w, ok := t.try(c, at, b); ok {
			w.What = fmt.Sprintf("%s: with the nucs in %s", t.loads[at].title, t.planner.View().Yard(y).Name)
			all = append(all, w)
		}
	}
	return all
}

// try plans a batch otherwise; ok is true when it is out of the clash then, nothing else
// is worse, and the promise is not given up.
func (t *trial) try(c Clash, at int, b book.BatchPlan) (w Way, ok bool) {
	was := t.loads[at]
	ladder := t.ladderOf(b)
	then := t.like(was, standing{id: was.id, title: was.title, planned: b, ladder: ladder, size: t.planner.SizeOf(b), virgins: b.Nucs})
	loads := slices.Clone(t.loads)
	loads[at] = then
	left, ok := outOf(c, was.id, t.found, t.clashes(loads))
	if !ok {
		return w, false
	}
	w = Way{Plan: b.BatchPlanned, Left: left, Wished: b.Queens > 0 && b.By != 0}
	if w.Wished {
		w.Before, w.After = t.planner.Sure(was.planned), t.planner.Sure(b)
		w.Sure = cmp.Or(b.Sure, t.ground.numbers.Get(practice.PlanSure))
	}
	return w, !w.Wished || w.After >= min(givenUp, w.Before)
}

// givenUp is the chance of a promise below which it is given up: who plans so has no way
// out of the clash, but one order less. Common practice, no source.
const givenUp = 0.05

// ladderOf is the ladder of a plan; those of the usual hour are kept.
func (t *trial) ladderOf(b book.BatchPlan) plan.Ladder {
	if b.Minute > 0 {
		return t.planner.LadderOf(b)
	}
	return t.ground.ladder(b.Yard, b.Day, max(1, b.Larvae))
}

// outOf tells whether a batch is out of a clash and in no new one of its kind, and of no
// kind there is more to miss; and how much the others of the clash still miss.
func outOf(c Clash, id book.BatchID, before, after []Clash) (left float64, ok bool) {
	for _, now := range after {
		if now.has(id) && now.Kind == c.Kind && (now.meets(c) || now.isNew(id, before)) {
			return 0, false
		}
		if now.meets(c) && shares(now, c) {
			left = max(left, now.Short())
		}
	}
	was, is := weights(before), weights(after)
	for k := range was {
		if is[k] > was[k]+even {
			return 0, false
		}
	}
	return left, true
}

func (c Clash) has(id book.BatchID) bool { return slices.Contains(c.Batches, id) }

// isNew tells whether a batch was in no such clash on these days.
func (c Clash) isNew(id book.BatchID, before []Clash) bool {
	return !slices.ContainsFunc(before, func(was Clash) bool { return was.has(id) && was.meets(c) })
}

func shares(a, b Clash) bool { return slices.ContainsFunc(a.Batches, b.has) }

// weights are how much is missing of each kind, over the days; a clash of hours
// counts as one. Drones are missing to each batch whose virgins fly, on as many days
// wherever it stands: apart, two are not worse off than together.
func weights(all []Clash) (sum [len(kinds)]float64) {
	for _, c := range all {
		over := float64(1 + c.To.Sub(c.From))
		if c.Kind == DronesShort {
			over = float64(len(c.Batches))
		}
		sum[c.Kind] += max(c.Short(), 1) * over
	}
	return sum
}
