package season

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// living is what lives and is short in a search: the bees and combs of brood that
// colonies give within a week, and the virgins that drone colonies serve. A book that
// tells of no colony which gives has not told how many there are, nor of drones where it
// tells of no drone colony near a yard. That drone colonies are fewer than the least for
// any batch is a clash and no limit: no day and no size mends it.
type living struct {
	*ground
	told bool // some colony gives
	made map[madeKey][]plan.MakeUp
	most int // nucs of a batch
}

// madeKey is a batch of the book, or none, with its yard, the day of its graft and the day
// on which its nucs are made up.
type madeKey struct {
	yard      book.YardID
	batch     book.BatchID
	graft, up calendar.Day
}

// Grams are bees, and thousandths combs, in whole numbers: a tenth of what nobody
// weighs.
const parts = 1000

// newLiving sets what lives and can be given by day.
func newLiving(g *ground, most int) *living {
	l := &living{ground: g, made: map[madeKey][]plan.MakeUp{}, most: most}
	if l.told = len(g.planner.Givers(g.first)) > 0; l.told {
		l.give()
	}
	for i, c := range g.circles {
		if c.colonies > 0 {
			g.fill(g.virgins(i), int32(c.colonies*g.numbers.Get(practice.QueensPerDroneColony)))
		}
	}
	return l
}

// give sets what colonies give by day.
func (l *living) give() {
	for d := range l.left[l.besides(bees)] {
		kilograms, combs := 0.0, 0.0
		for _, giver := range l.planner.Givers(l.first + calendar.Day(d)) {
			kilograms, combs = kilograms+giver.Kilograms, combs+giver.Combs
		}
		l.left[l.besides(bees)][d] = int32(parts * (kilograms + little))
		l.left[l.besides(brood)][d] = int32(parts * (combs + little))
	}
}

// takes is what a batch takes of what lives. What its starters are set up with, and its nucs
// made up, is taken from colonies for the week from that day on: so long it counts with what
// others take.
func (l *living) takes(s standing) (all []span) {
	ladder, yard := s.ladder, s.size.Yard
	fly := ladder.Rung(plan.Fly)
	for i, c := range l.circles {
		if c.has(yard) {
			all = append(all, span{l.virgins(i), fly.From, fly.By, int32(s.virgins)})
		}
	}
	if kg := s.starterBees(l.planner); l.told && kg > 0 {
		set := ladder.Rung(plan.SetUpStarter).Best
		all = append(all, span{l.besides(bees), set, set + week - 1, int32(math.Ceil(parts*kg - even))})
	}
	up := ladder.Rung(plan.MakeUpNucs)
	if !l.told || !s.makesUp(l.planner) {
		return all
	}
	made := l.madeUp(ladder, s.size)
	return append(all,
		span{l.besides(bees), up.Best, up.Best + week - 1, int32(math.Ceil(parts*made.Kilograms - even))},
		span{l.besides(brood), up.Best, up.Best + week - 1, int32(math.Ceil(parts*made.Combs - even))})
}

func (l *living) madeUp(ladder plan.Ladder, s plan.Size) plan.MakeUp {
	key := madeKey{s.Yard, s.Not, ladder.Day, ladder.Rung(plan.MakeUpNucs).Best}
	all := l.made[key]
	if s.Nucs >= len(all) {
		all = l.planner.MakeUps(ladder, s, max(s.Nucs, l.most))
		l.made[key] = all
	}
	return all[s.Nucs]
}
