package review

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// held is what nucs of one history at one yard come to, by way. It depends on
// nothing else of a nuc, so it is reckoned once for all of them.
type held struct {
	*course.Held
	of      *reckoner
	horizon *horizon
	now     *outlook
	ownLook bool // a look for opened own cells can tell more than one for eggs
	eggLook bool // a look for eggs can tell something
	figures map[wayKey]figure
}

type wayKey struct {
	kind Kind
	ware int
}

// reckon goes through all ways. A nuc without a life in the book has only what
// begins anew.
func (h *held) reckon() {
	h.figures = map[wayKey]figure{}
	if h.From != 0 {
		h.now = h.horizon.on(h.Row)
		h.sees()
		h.figures[wayKey{kind: Leave}] = h.now.of(&h.Belief)
		h.figures[wayKey{kind: ShakeOut}] = figure{}
		h.figures[wayKey{ShakeOut, unlaid}] = h.shakenUnlaid()
		h.figures[wayKey{kind: GiveBrood}] = h.acted(0, func(b *course.Belief) { h.of.model.GiveBrood(b) })
		h.figures[wayKey{kind: Catch}] = h.caught()
	}
	for ware := range len(h.of.hand.Wares) + 1 {
		if h.From != 0 {
			h.giving(ware)
		}
		if ware > 0 {
			anew := h.of.model.Queenless(false)
			row := h.row()
			h.give(&anew, ware, row)
			f := h.horizon.on(row).of(&anew)
			f.given = 1
			h.figures[wayKey{MakeUp, ware}] = f
		}
	}
}

// row is the day at whose start what is done now counts.
func (h *held) row() calendar.Day {
	if h.From != 0 {
		return h.Row
	}
	return h.of.today
}

// giving reckons the ways that give a ware, or nothing, to what is there.
func (h *held) giving(ware int) {
	m := h.of.model
	if ware > 0 {
		h.figures[wayKey{GiveCell, ware}] = h.acted(ware, func(*course.Belief) {})
	}
	h.figures[wayKey{LookFirst, ware}] = h.looked(ware)
	h.figures[wayKey{BreakDown, ware}] = h.acted(ware, func(b *course.Belief) {
		m.BreakDown(b, h.Row < h.From+calendar.Day(h.of.numbers.Days(practice.BreakDownOwnCellsFrom)))
	})
	taken := h.Belief
	taken.TakeOut(h.of.reigns)
	taken = taken.After(h.of.course.Step(h.horizon.at, h.Row))
	meets := taken.Expect(h.of.queen)
	h.give(&taken, ware, h.Row+1)
	f := h.horizon.on(h.Row + 1).of(&taken)
	f.given, f.meets = given(ware), meets
	if ware > 0 {
		f.again = h.later(&taken)
	}
	h.figures[wayKey{TakeOut, ware}] = f
}

// unlaid stands for a ware in the key of what is done only where a look finds no worker
// brood.
const unlaid = -1

// shakenUnlaid is a nuc that is shaken out unless a look finds worker brood: else its
// bees go to the neighbours, and its box is free.
func (h *held) shakenUnlaid() figure {
	nothing, something := h.Split(h.of.idle)
	f := h.now.of(&something)
	f.found = nothing.Expect(h.of.one)
	return f
}

func given(ware int) float64 {
	if ware > 0 {
		return 1
	}
	return 0
}

// acted is something done, and a ware given then.
func (h *held) acted(ware int, do func(*course.Belief)) figure {
	b := h.Belief
	do(&b)
	meets := b.Expect(h.of.queen)
	h.give(&b, ware, h.Row)
	f := h.now.of(&b)
	if ware > 0 {
		f.given, f.meets, f.again = 1, meets, h.later(&b)
	}
	return f
}

// looked splits by what a look finds: where it finds nothing, something is
// given, and the rest is left.
func (h *held) looked(ware int) figure {
	nothing, something := h.Split(h.unseen())
	left := h.now.of(&something)
	found := nothing.Expect(h.of.isNone)
	share, meets := nothing.Expect(h.of.one), nothing.Expect(h.of.queen)
	h.give(&nothing, ware, h.Row)
	f := left.plus(h.now.of(&nothing))
	f.again = h.later(&nothing) + h.later(&something)
	if ware > 0 {
		f.given = share
		if share > 0 {
			f.meets = meets / share
		}
		return f
	}
	f.found = found
	return f
}

// unseen is the chance by state that a look finds nothing.
func (h *held) unseen() *course.Figure {
	switch {
	case h.ownLook && h.eggLook:
		return h.of.nothing
	case h.ownLook:
		return h.of.noOpened
	default:
		return h.of.noEggs
	}
}

// sees settles what a look can tell: one for eggs that was made today tells
// nothing new.
func (h *held) sees() {
	h.eggLook, h.ownLook = h.Chances().Lays() >= eggsPossible, h.Expect(h.of.isOwn) >= ownPossible
	for _, w := range h.Weighed {
		if w.Day >= h.of.today {
			h.eggLook = h.eggLook && w.Sight.Eggs == book.EggsUnsaid && w.Sight.Queen == book.Unsaid
			h.ownLook = h.ownLook && w.Sight.OwnCells == course.NotSaid
		}
	}
}

// ownPossible is the chance of an own queen from which her cell is looked for:
// under it nobody would. Common practice, no source.
const ownPossible = 0.05

// eggsPossible is the chance of a laying queen from which her eggs are looked for.
// Common practice, no source.
const eggsPossible = 0.05

// caught is a nuc without its queen, on her brood.
func (h *held) caught() figure {
	left := h.of.model.Queenless(true)
	f := h.now.of(&left)
	f.queens += h.Expect(h.of.worthNow)
	f.caught = h.Chances().Lays()
	return f
}

// give gives a ware to what is there at the start of a row.
func (h *held) give(b *course.Belief, ware int, row calendar.Day) {
	if ware == 0 {
		return
	}
	w := h.of.hand.Wares[ware-1]
	if w.Virgin {
		h.of.model.PutInVirgin(b, w.Age+row.Sub(h.of.today))
		return
	}
	h.of.model.GiveCell(b, h.of.emerging(h.horizon.at.Yard, w, row))
}
