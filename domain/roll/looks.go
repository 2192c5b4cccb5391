package roll

import (
	"slices"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// looked tells what was seen in the nuc, a look a day.
func (t *teller) looked() {
	if out := t.on[EmergedOn]; out.said() && t.on[CellGivenOn].said() {
		t.at(out).Cell = book.CellOpenAtTip
	}
	if eggs := t.on[EggsSeenOn]; eggs.said() {
		t.at(eggs).Eggs = book.SingleEggs
	}
	if t.isEmpty() {
		t.leftovers()
	} else {
		t.state()
		t.figures()
	}
	for _, l := range t.looks {
		t.say(l.at, l.Looked)
	}
	if t.note != "" {
		t.say(t.stateDay(), book.Noted{Of: t.nuc.Subject(), Text: t.note})
	}
	t.ends()
}

// at is the look of a day.
func (t *teller) at(day when) *book.Looked {
	for i := range t.looks {
		if t.looks[i].at.day == day.day {
			return &t.looks[i].Looked
		}
	}
	t.looks = append(t.looks, look{day, book.Looked{Nuc: t.nuc}})
	return &t.looks[len(t.looks)-1].Looked
}

// isEmpty tells whether there are no bees, so that nothing of them is seen.
func (t *teller) isEmpty() bool { return t.saysHolds && t.holds == book.Empty }

// leftovers notes the food in an empty nuc.
func (t *teller) leftovers() {
	if t.stores.Some() {
		t.note = strings.TrimPrefix(t.note+"; stores "+t.stores.String(), "; ")
	}
}

// state tells what the nuc holds as it was seen. What follows from a day of its
// own is not said again, unless there was a look.
func (t *teller) state() {
	day, looked := t.stateDay(), t.on[LastLookOn].said()
	if looked {
		t.at(day)
	}
	came := t.on[EmergedOn].said() || t.on[VirginPutInOn].said()
	switch eggs := t.on[EggsSeenOn].said(); {
	case !t.saysHolds:
	case t.holds == book.NoQueen:
		l := t.at(day)
		l.Queen, l.Eggs = book.NoneSeen, book.NoEggs
	case t.holds == book.Virgin && (looked || !came) && t.seen != book.NoneSeen:
		t.at(day).Queen = book.VirginSeen
	case t.holds == book.Laying && (looked || !eggs):
		t.at(day).Eggs = book.SingleEggs
	case t.holds == book.GoodBrood && t.brood.IsZero():
		t.at(day).Brood = book.Said(1) // the least that is some; its words show it
	case t.holds == book.DroneLayer:
		t.at(day).DroneBrood = true
	case t.holds == book.LayingWorkers:
		t.at(day).Eggs = book.ManyEggs
	}
}

// figures tells of the queen, bees, brood and stores, and the note.
func (t *teller) figures() {
	day := t.stateDay()
	switch virgin := t.saysHolds && t.holds == book.Virgin; {
	case t.seen == book.QueenSeen && virgin:
		t.at(day).Queen = book.VirginSeen
	case t.seen != book.Unsaid:
		t.at(day).Queen = t.seen
	}
	if !t.bees.IsZero() || !t.brood.IsZero() || !t.stores.IsZero() {
		l := t.at(day)
		l.Sides, l.Stores = t.bees, t.stores
		if !t.brood.IsZero() {
			l.Brood = t.brood
		}
	}
	if slices.ContainsFunc(t.looks, func(l look) bool { return l.at.day == day.day }) {
		t.at(day).Note, t.note = t.note, ""
	}
}

// ends tells what befell the nuc: robbers, or that it is empty where it had
// lived.
func (t *teller) ends() {
	if !t.saysHolds {
		return
	}
	lived := len(t.facts) > 0 && (t.on[CellGivenOn].said() || t.on[VirginPutInOn].said())
	lived = lived || t.item.there != nil && t.item.there.Holds.Condition != book.Empty
	switch {
	case t.holds == book.BeingRobbed:
		t.say(t.stateDay(), book.Robbed{Nuc: t.nuc})
	case t.isEmpty() && lived:
		t.say(t.stateDay(), book.NucLost{Nuc: t.nuc})
	}
}

func sameDay(a, b calendar.Moment, zone *time.Location) bool { return a.Day(zone) == b.Day(zone) }
