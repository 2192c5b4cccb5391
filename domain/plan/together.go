package plan

import "lidmark/domain/calendar"

// Together are the needs of several batches as those of one. What is used up is added
// up; of nucs, starters, finishers and places in the incubator it is as many as are wanted at once; the breeder
// and the drone colonies serve all. What there is of a good is there once for all of them.
func Together(batches ...[]Need) (all []Need) {
	of := map[Good][]Need{}
	for _, needs := range batches {
		for _, n := range needs {
			of[n.Good] = append(of[n.Good], n)
		}
	}
	for g := DroneColonies; int(g) < len(goods); g++ {
		if len(of[g]) > 0 {
			all = append(all, together(of[g]))
		}
	}
	return all
}

// together is what is needed of one good, the first batch's first.
func together(needs []Need) Need {
	t := needs[0]
	short, most := 0.0, 0.0
	t.Amount = 0
	for _, n := range needs {
		t.From, t.To, t.OrderBy = min(t.From, n.From), max(t.To, n.To), min(t.OrderBy, n.OrderBy)
		t.Known = t.Known && n.Known
		short, most = short+n.Short(), max(most, n.Have)
		if len(needs) > 1 {
			t.Kinds = nil
		}
		if n.Again() {
			t.Amount = max(t.Amount, n.Amount)
		} else {
			t.Amount += n.Amount
		}
	}
	switch {
	case t.Good == Nucs || t.Good == Starters || t.Good == Finishers || t.Good == InIncubator:
		t.Amount, t.Have = atOnce(needs), most
	case t.Again():
		t.Have = most
	default: // of bees what one gets is not there for the next, so that days of plenty make up for none
		t.Have = max(0, t.Amount-short)
		if short == 0 {
			t.Have = max(most, t.Amount)
		}
	}
	return t
}

// atOnce is how much is wanted on one day at most, each until the day on which it is
// free again.
func atOnce(needs []Need) (most float64) {
	wanted := func(n Need, d calendar.Day) bool { return n.From <= d && (d < n.To || d == n.From) }
	for _, begins := range needs {
		sum := 0.0
		for _, n := range needs {
			if wanted(n, begins.From) {
				sum += n.Amount
			}
		}
		most = max(most, sum)
	}
	return most
}
