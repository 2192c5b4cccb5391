package review

import (
	"fmt"
	"math"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// evens is the chance from which a thing is more likely than not.
const evens = 0.5

// bar keeps out of the best what would most probably be lost, and what the rules have
// something else come first of. Such ways stand last, and say why.
func (k *nucCase) bar() {
	barred := false
	looks := slices.ContainsFunc(k.ways, func(w Way) bool { return w.Kind == LookFirst })
	for i := range k.ways {
		w := &k.ways[i]
		if why, bars := k.bars(*w, looks); bars {
			w.Barred, barred = true, true
			if why.Why != "" {
				w.Warned = append(w.Warned[:len(w.Warned):len(w.Warned)], why)
			}
		}
	}
	if barred {
		slices.SortStableFunc(k.ways, func(a, b Way) int { return -book.TrueFirst(a.Barred, b.Barred) })
	}
}

// bars tells whether a way is barred, and why, where that is not said of it already:
// it opens a box long while robbers are about; a queen who would tear down what it gives
// is more likely than not there, or may be, and a look could tell; too few bees are left
// to keep it warm; its cell would be kept past the hard hour; a standstill keeps its bees
// apart.
func (k *nucCase) bars(w Way, looks bool) (why rules.Reason, bars bool) {
	straight := w.Kind == GiveCell || w.Kind == PutInVirgin || w.Kind == BreakDown
	switch {
	case (w.Kind == Unite || w.Kind == ShakeOut) && k.view.Yard(k.nuc.Yard).Standstill != nil:
		return rules.Reason{Why: "a disease is suspected in its yard: no bees are put together that were apart", Do: "Wait until the suspicion has ended"}, true
	case k.opensLong(w):
		return robbersAbout(k.numbers), true
	case k.few && w.Kind == GiveBrood:
		return k.tooFew(), true
	case !w.Gives():
		return why, false
	case w.Meets > evens:
		return k.tornDown(w), true
	case k.few && w.Kind != MakeUp && w.Kind != ShakeOut:
		return k.tooFew(), true
	case k.keptTooLong(w):
		return k.tooLate(w), true
	case w.Kind == LookFirst && !w.Own && !w.OwnFirst && k.awaited() && !k.held.Chances().Wanting(!k.holds.NoEggsOn.IsZero()):
		return rules.Reason{Why: "most probably she lays, or is still to: what goes along would come back", Do: "Look first", Used: []practice.Key{practice.LookForEggsChance}}, true
	case straight && k.ask.ownFirst():
		return rules.Reason{Why: k.ask.queen.Why, Do: k.ask.queen.Do, Used: k.ask.queen.Used}, true
	default:
		return why, straight && looks && (k.holds.Calendar == book.Virgin || k.holds.Calendar == book.Due)
	}
}

// tooFew is why nothing is given to a nuc.
func (k *nucCase) tooFew() rules.Reason {
	a := k.numbers.Get(practice.BeesPerCup)
	return rules.Reason{
		Why: fmt.Sprintf("about %.0f bees, the night needs %.0f: too few to keep what is given warm", math.Round(k.cups*a/10)*10, k.need),
		Do:  "Add bees first, or unite it", Used: []practice.Key{practice.AddBeesUnder, practice.BeesPerCup},
	}
}

// keptTooLong tells whether a way would keep a cell past the hard hour of its batch:
// it gives it another day, when somebody can come again.
func (k *nucCase) keptTooLong(w Way) bool {
	hard := k.times.of(w)
	return w.Kind == TakeOut && !hard.IsZero() && hard.Before(k.givenAt(w))
}

// givenAt is when a way that waits a day for what it gives can give it.
func (k *nucCase) givenAt(w Way) time.Time {
	next := (w.On + 1).Start(k.course.Zone(k.nuc.Yard))
	if k.times.next.After(next) {
		return k.times.next
	}
	return next
}

// tooLate is why a cell is not kept for another day.
func (k *nucCase) tooLate(w Way) rules.Reason {
	hard := k.times.of(w).In(k.view.Zone())
	return rules.Reason{
		Why: fmt.Sprintf("its cell may not be kept until %s: its hard hour is %s %s", (w.On + 1).Short(), calendar.DayOf(hard, k.view.Zone()).Short(), hard.Format("15:04")),
		Do:  "Give it to another nuc, or cage it by then", Used: []practice.Key{practice.HardChance, practice.HardMargin},
	}
}

// opensLong tells whether a way opens a box for long in a yard with robbers about. A
// cell that has a hard hour cannot wait until they have gone: it is given at dusk.
func (k *nucCase) opensLong(w Way) bool {
	presses := !k.times.of(w).IsZero() && w.Kind != TakeOut
	return k.robbed[k.nuc.Yard] && w.Minutes > k.numbers.Get(practice.OpenInDearthMost) && w.Kind != Leave && !presses
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
