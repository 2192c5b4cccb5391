package siting

// prune takes back what does not pay: all that was done to a stand where that gains
// less than the task's least, and of the rest each part that gains nothing. Nothing is
// disturbed where a stand is still to be set up: there any gain will do.
func (t *trial) prune() {
	for again := true; again; {
		again = false
		for i := range t.layout.Stands {
			if !t.free(i) {
				again = t.spare(t.undone(i), t.task.Least) || again
			}
			for _, part := range t.undone(i) {
				again = t.spare([]change{part}, 0) || again
			}
		}
	}
}

// undone are the changes that leave a stand as it was; an added stand has no place
// to go back to.
func (t *trial) undone(stand int) (all []change) {
	s, was := &t.layout.Stands[stand], &t.was.Stands[stand]
	if !t.fresh(stand) && (s.At != was.At || s.Turn != was.Turn) {
		all = append(all, change{stand: stand, nuc: -1, at: was.At, turn: was.Turn})
	}
	for k := range s.Nucs {
		if s.Nucs[k].Mark != was.Nucs[k].Mark {
			all = append(all, t.marked(stand, k, was.Nucs[k].Mark))
		}
		if s.Nucs[k].Bearing != was.Nucs[k].Bearing {
			all = append(all, t.faced(stand, k, was.Nucs[k].Bearing))
		}
	}
	return all
}

// spare does changes where they cost no more than a least gain, and tells whether it
// did.
func (t *trial) spare(all []change, least float64) bool {
	if len(all) == 0 {
		return false
	}
	was, fits := t.queens, true
	back := t.applyAll(all)
	for _, c := range all {
		fits = fits && (c.nuc >= 0 || t.fits(c.stand))
	}
	if fits && t.queens <= was+max(least, tiny) {
		return true
	}
	t.applyAll(back)
	return false
}

// applyAll does changes and gives those that take them back, in order.
func (t *trial) applyAll(all []change) (back []change) {
	for _, c := range all {
		back = append([]change{t.apply(c)}, back...)
	}
	return back
}
