package plan

import (
	"cmp"

	"lidmark/domain/calendar"
)

// sizing looks for the larvae of each graft of an answer.
type sizing struct {
	a      *Answer
	open   bool // nobody said how many nucs
	grafts []Graft
	shares []int              // of the nucs, by graft: see [Answer.parted]
	known  map[amount]Chances // what was reckoned
}

// amount is what is tried: larvae of each graft, and nucs.
type amount struct{ larvae, nucs int }

// by sets by which day the queens of the grafts are wanted.
func (z *sizing) by(day calendar.Day, ladders []Ladder) {
	for i, l := range ladders {
		z.grafts[i].Late = 1 - l.Laid.InTime(day, z.a.Laying)
	}
	z.known = map[amount]Chances{}
}

// with are the chances with so many larvae a graft.
func (z sizing) with(larvae int) Chances {
	grafts, key := z.each(larvae), amount{larvae, z.shares[0]}
	c, known := z.known[key]
	if !known {
		c = z.a.Rates.Queens(grafts...)
		z.known[key] = c
	}
	return c
}

// each sets the grafts to so many larvae, but for those of which others are said, and to the
// nucs that are made up for them: of several grafts each has what it and those before it have
// of their own, as far as ripe cells are to be expected for it, and leaves the others to the
// next. That is what is planned of them, so what is planned is as sure.
func (z sizing) each(larvae int) []Graft {
	left := 0
	for i := range z.grafts {
		g := &z.grafts[i]
		g.Larvae = z.a.larvaeOf(i, larvae)
		if g.Again {
			left = 0
		}
		left += z.shares[i]
		g.Nucs = left
		if len(z.grafts) > 1 {
			g.Nucs = min(left, int(z.a.Rates.Ripe(g.Larvae)+1))
		}
		left -= g.Nucs
	}
	return z.grafts
}

// enough tells whether chances are enough for the wish.
func (z sizing) enough(c Chances) bool { return c.AtLeast(z.a.Queens) >= z.a.Sure-rounding }

// bar is by how many larvae several grafts are tried: a bar of a frame. A single
// graft is tried to the larva.
const bar = 12

// find sets the fewest larvae that are enough by the day, else as many as fill the
// nucs, and why none are enough.
func (z sizing) find() {
	a := z.a
	a.Sizing = a.Rates.Larvae(a.Queens, a.Sure, a.Nucs)
	a.Larvae = a.Sizing.Larvae
	by := 1
	if len(z.grafts) > 1 {
		by = bar
	}
	enough := z.fewest(by)
	switch {
	case enough > 0:
		a.Larvae, a.Sizing.Limit = enough, NoLimit
	case len(z.grafts) == 1:
		z.limit()
	case a.Sizing.Limit == NoLimit:
		a.Sizing.Limit = LateLimit // they would be enough without the day
	default:
		a.Larvae = cmp.Or(a.Rates.filling(z.share()), a.Larvae)
		a.Sizing.Nucs = 0 // that was found for one graft
		a.Sizing.Second = z.second(a.Sizing.Larvae)
	}
}

// limit is why no larvae of one graft are enough by the day, and with how many nucs they
// would be: without the day the nucs may be enough, and those that are named may not.
func (z sizing) limit() {
	s, late := &z.a.Sizing, z.grafts[0].Late
	switch s.Nucs, s.With = z.a.Rates.nucs(z.a.Queens, z.a.Sure, late); {
	case s.Nucs > 0:
		s.Limit = NucsLimit
		z.a.Larvae = cmp.Or(z.a.Rates.filling(z.a.Nucs), z.a.Larvae)
	case s.Limit == NoLimit || s.Limit == NucsLimit:
		s.Limit = LateLimit
	}
}

// second are the chances where the first graft fills all nucs that are free for it, and
// the others, as large, have what it leaves and what comes free later.
func (z sizing) second(larvae int) Chances {
	grafts := make([]Graft, len(z.grafts))
	for i, g := range z.grafts {
		grafts[i] = Graft{Larvae: larvae, Late: g.Late}
	}
	grafts[0].Nucs, grafts[len(grafts)-1].Nucs = z.a.first, z.a.Nucs-z.a.first
	return z.a.Rates.Queens(grafts...)
}

// share is the most nucs that one of the grafts has of its own.
func (z sizing) share() (most int) {
	for _, n := range z.shares {
		most = max(most, n)
	}
	return most
}

// fewest is the least number of larvae a graft that is enough, by so many; 0 where
// none is. Where it must lie is found by rates that are integrated roughly, which costs
// a fifth; whether it is enough, and fewer are not, is asked of the whole.
func (z sizing) fewest(by int) int {
	most := largestGraft / by
	n := cmp.Or(fewest(1, most, func(n int) bool {
		return z.enough(z.a.Rates.about(z.each(n * by)...))
	}), most)
	if !z.enough(z.with(n * by)) {
		return by * fewest(n+1, most, func(n int) bool { return z.enough(z.with(n * by)) })
	}
	for n > 1 && z.enough(z.with((n-1)*by)) {
		n--
	}
	return n * by
}

// fewestNucs keeps no more nucs than the wish needs, where as many larvae as are
// grafted are enough with fewer.
func (z sizing) fewestNucs() {
	if !z.enough(z.with(z.a.Larvae)) {
		return
	}
	z.a.Nucs = fewest(1, max(1, z.a.Nucs), func(n int) bool {
		z.shares[0] = n
		return z.enough(z.with(z.a.Larvae))
	})
	z.shares[0] = z.a.Nucs
}
