package siting

import (
	"cmp"
	"math"
	"slices"

	"lidmark/domain/yard"
)

// Step is what changes in a row, or at stands to which the same is done, and what it
// gains.
type Step struct {
	Row      string   // the letter that its stands share; "" where they are no row
	Letters  []string // of the stands
	Nucs     int      // all of the row
	Added    bool     // they stand nowhere yet
	Carried  int      // nucs
	Nearest  float64  // m, the least that a nuc is carried
	Furthest float64  // m, the most
	Turned   int      // nucs, where they stand
	Degrees  float64  // by which all of them are turned, clockwise; 0: by different angles
	Faced    int      // boxes turned on their places, where the stand stays as it is
	Painted  int      // fronts
	Mended   int      // stands that stood where no box may stand, and do no more
	Windy    int      // fewer fronts in the wind

	DriftWas, Drift float64 // workers at a wrong door, 0 to 1, the mean of the nucs
	LostWas, Lost   float64 // virgins
	Gain            float64 // queens, work paid: what it would cost to leave these as they were, faults apart
}

// steps are the changes by rows and like stands, what mends places first, then what gains most, and the
// letters of the stands that could be changed and are left.
func (t *trial) steps() (all []Step, left []string) {
	begun := newTrial(t.plot, t.begun, nil)
	may := t.mayBe()
	groups, keys := map[string][]int{}, []string{}
	for i := range t.layout.Stands {
		key := t.group(i)
		if key == "" {
			if may[i] {
				left = append(left, t.layout.Stands[i].Letter)
			}
			continue
		}
		if groups[key] == nil {
			keys = append(keys, key)
		}
		groups[key] = append(groups[key], i)
	}
	for _, k := range keys {
		all = append(all, t.step(begun, groups[k]))
	}
	slices.SortStableFunc(all, func(a, b Step) int { return cmp.Or(cmp.Compare(b.Mended, a.Mended), cmp.Compare(b.Gain, a.Gain)) })
	return all, left
}

// mayBe tells of each stand whether the task lets it be changed.
func (t *trial) mayBe() []bool {
	may := make([]bool, len(t.layout.Stands))
	for _, i := range slices.Concat(t.turns, t.moves) {
		may[i] = true
	}
	for _, p := range t.paints {
		may[p[0]] = true
	}
	return may
}

// group is what a changed stand is told of with: the other changed stands of its row,
// or those to which the same is done.
func (t *trial) group(stand int) string {
	s, was := &t.layout.Stands[stand], &t.was.Stands[stand]
	done := ""
	switch {
	case t.fresh(stand):
		done = "added"
	case s.At != was.At:
		done = "carried"
	case s.Turn != was.Turn:
		done = "turned"
	}
	faced := otherwise(s, was, bearingOf)
	if done == "" && faced > 0 {
		done = "faced"
	}
	if otherwise(s, was, markOf) > 0 {
		done += " painted"
	}
	if row := row(s); row != "" && done != "" && !t.fresh(stand) {
		return "row " + row
	}
	return done
}

// row is the letter that the stands of a row share: they are named by it and a figure.
func row(s *yard.Stand) string {
	if row := stem(s.Letter); row != s.Letter {
		return row
	}
	return ""
}

func (t *trial) step(begun *trial, stands []int) Step {
	st := Step{Row: row(&t.layout.Stands[stands[0]]), Added: t.fresh(stands[0])}
	var back []change
	turns := []float64{}
	for _, i := range stands {
		s := &t.layout.Stands[i]
		st.Letters = append(st.Letters, s.Letter)
		st.Nucs += len(s.Nucs)
		back = append(back, t.undone(i)...)
		turns = t.tell(&st, i, turns)
		for k := range s.Nucs {
			door := t.first[i] + k
			st.DriftWas, st.Drift = st.DriftWas+begun.workers.Wrong(door), st.Drift+t.workers.Wrong(door)
			st.LostWas += s.Nucs[k].Virgins * begun.layout.Lost(begun.virgins, door)
			st.Lost += s.Nucs[k].Virgins * t.layout.Lost(t.virgins, door)
		}
		if row(s) != st.Row {
			st.Row = ""
		}
	}
	n := float64(max(1, st.Nucs))
	st.DriftWas, st.Drift = st.DriftWas/n, st.Drift/n
	if len(turns) > 0 && slices.Max(turns) == slices.Min(turns) {
		st.Degrees = turns[0]
	}
	was, now := t.queens, t.faultsOf(stands)
	again := t.applyAll(back)
	before := t.faultsOf(stands)
	st.Mended, st.Windy = before.NoRoom-now.NoRoom, before.Windy-now.Windy
	st.Gain = t.queens - was - (t.weight(before) - t.weight(now))
	t.applyAll(again)
	return st
}

// tell adds what is done to a stand, and the angle by which it is turned.
func (t *trial) tell(st *Step, stand int, turns []float64) []float64 {
	s, was := &t.layout.Stands[stand], &t.was.Stands[stand]
	st.Painted += otherwise(s, was, markOf)
	faced := otherwise(s, was, bearingOf)
	switch {
	case t.fresh(stand):
	case s.At != was.At:
		d := far(s.At, was.At)
		if st.Carried == 0 || d < st.Nearest {
			st.Nearest = d
		}
		st.Furthest = max(st.Furthest, d)
		st.Carried += len(s.Nucs)
	case s.Turn != was.Turn:
		st.Turned += len(s.Nucs)
		turns = append(turns, math.Mod(s.Turn-was.Turn+2*circle, circle))
	case faced > 0:
		st.Faced += faced
	}
	return turns
}
