package review

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// asks is what the rules ask of a nuc: Review says the same, for the same reason.
type asks struct {
	queen, feed *rules.Finding
	late        *rules.Finding // a virgin who can mate no more
}

// asked are the findings that Review goes by, by nuc. Of its queen the rules say one
// thing, or what was decided.
func asked(found []rules.Finding) map[book.NucID]asks {
	all := map[book.NucID]asks{}
	for i := range found {
		f := &found[i]
		id, isNuc := f.Of.Nuc()
		if !isNuc {
			continue
		}
		a := all[id]
		switch f.Rule {
		case rules.Light:
			a.feed = f
		case rules.VirginsTime:
			a.late = f
		case rules.Queenless, rules.LookEggs, rules.Late, rules.DroneLayer, rules.LayingWorkers, rules.Decided:
			a.queen = f
		default:
			continue
		}
		all[id] = a
	}
	return all
}

// ownFirst tells whether nothing is given before a look for a virgin of the nuc's own.
func (a asks) ownFirst() bool { return a.queen != nil && a.queen.OwnFirst }

// times are the hours that bind what is done today: the hard ones of the wares, and
// those before which no box of a yard is opened.
type times struct {
	hard []time.Time                 // by ware; zero: it has none
	next time.Time                   // when somebody can come again
	dusk map[book.YardID][]time.Time // by ware counted from 1, the first for what gives none
}

func timesOf(j *rules.Judged, hand Hand) times {
	c := j.Course()
	v := c.View()
	t := times{hard: make([]time.Time, len(hand.Wares)), next: rules.NextFree(v), dusk: map[book.YardID][]time.Time{}}
	for i, w := range hand.Wares {
		if !w.Virgin && !v.Batch(w.Batch).At.IsZero() {
			t.hard[i] = c.Clock(w.Batch).Hard()
		}
	}
	for y := range v.Yards() {
		dusk := []time.Time{j.Dusk(y.Yard, time.Time{})}
		for _, by := range t.hard {
			dusk = append(dusk, j.Dusk(y.Yard, by))
		}
		t.dusk[y.Yard] = dusk
	}
	return t
}

// of is the hard hour of what a way gives; zero where it has none.
func (t times) of(w Way) time.Time {
	if !w.Gives() {
		return time.Time{}
	}
	return t.hard[w.Ware-1]
}

// duskOf is the hour of today before which the box of a way is not opened; zero: at any.
func (k *nucCase) duskOf(w Way) time.Time {
	if w.Kind == Leave || w.Kind == Narrow {
		return time.Time{}
	}
	if all := k.times.dusk[k.nuc.Yard]; len(all) > w.Ware {
		return all[w.Ware]
	}
	return time.Time{}
}
