package review

import (
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// evens is the chance from which a thing is more likely than not.
const evens = 0.5

// bar keeps what would most probably be lost out of the best: where a queen is more
// likely than not, and where the rules say that one is there and a look could tell;
// and what opens a box long while robbers are about. Such ways stand last.
func (k *nucCase) bar() {
	look, barred := slices.ContainsFunc(k.ways, func(w Way) bool { return w.Kind == LookFirst }), false
	for i := range k.ways {
		w := &k.ways[i]
		switch {
		case k.opensLong(*w):
			w.Barred = true
			w.Warned = append(w.Warned[:len(w.Warned):len(w.Warned)], robbersAbout(k.numbers))
		case !w.Gives():
		case w.Meets > evens:
			w.Barred = true
			w.Warned = append(w.Warned[:len(w.Warned):len(w.Warned)], k.tornDown(*w))
		case w.Kind == GiveCell, w.Kind == PutInVirgin, w.Kind == BreakDown:
			w.Barred = look && (k.holds.Calendar == book.Virgin || k.holds.Calendar == book.Due)
		}
		barred = barred || w.Barred
	}
	if barred {
		slices.SortStableFunc(k.ways, func(a, b Way) int { return -book.TrueFirst(a.Barred, b.Barred) })
	}
}

// opensLong tells whether a way opens a box for long in a yard with robbers about.
func (k *nucCase) opensLong(w Way) bool {
	most := k.numbers.Get(practice.OpenInDearthMost)
	return k.robbed[k.nuc.Yard] && w.Minutes > most && w.Kind != Leave
}

// robbersAbout is why a box is not opened long.
func robbersAbout(n practice.Numbers) rules.Reason {
	return rules.Reason{
		Why: fmt.Sprintf("robbers are about: no box is opened for more than %g min", n.Get(practice.OpenInDearthMost)),
		Do:  "Narrow the entrance, and wait until they have gone", Used: []practice.Key{practice.OpenInDearthMost, practice.RobbingLasts},
	}
}

// tornDown is why a way is barred.
func (k *nucCase) tornDown(w Way) rules.Reason {
	lost := "a cell would be torn down"
	if k.hand.Wares[w.Ware-1].Virgin {
		lost = "a virgin would be killed"
	}
	return rules.Reason{Why: "most probably holds " + reigning(k.held.Chances()) + ": " + lost, Do: "Leave it to its next look", Used: []practice.Key{practice.LookForEggsNotBefore, practice.AcceptCell}}
}

// reigning is the likeliest of those who suffer nobody beside them.
func reigning(c course.Chances) string {
	most, name := 0.0, ""
	for _, of := range []struct {
		name   string
		chance float64
	}{
		{"a laying queen", c.Lays()},
		{"a virgin", c.Virgin + c.OwnVirgin},
		{"a mated queen", c.Mated + c.OwnMated},
		{"a cell", c.Cell},
		{"a drone layer", c.DroneLayer},
		{"laying workers", c.LayingWorkers},
	} {
		if of.chance > most {
			most, name = of.chance, of.name
		}
	}
	return name
}

// eggsMayBe tells whether the queen awaited is old enough for eggs to be looked for.
func (k *nucCase) eggsMayBe() bool {
	if !k.held.eggLook || k.holds.Emerged.IsZero() {
		return k.held.eggLook
	}
	out := calendar.DayOf(k.holds.Emerged, k.course.Zone(k.nuc.Yard))
	return k.today >= out+calendar.Day(k.numbers.Days(practice.LookForEggsNotBefore))
}
