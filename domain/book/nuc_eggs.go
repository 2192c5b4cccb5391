package book

import (
	"fmt"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Brooded is brood by whose age a queen's first eggs are dated: capped worker brood or
// larvae, and when they were seen. The zero Brooded is none.
type Brooded struct {
	Seen   calendar.Moment
	Capped bool // worker brood; else larvae
}

// EggsSeen says how it is known since when a queen lays, in words of today and on days of a zone:
// "eggs seen Wed 12 May", or "eggs since Mon 3 May at the latest, by capped brood seen Wed 12 May".
func (h Holding) EggsSeen(today calendar.Day, zone *time.Location) string {
	on := h.FirstEggs.Day(zone).ShortFrom(today)
	if h.EggsBy.Seen.IsZero() {
		return "eggs seen " + on
	}
	brood := "larvae"
	if h.EggsBy.Capped {
		brood = "capped brood"
	}
	return fmt.Sprintf("eggs since %s at the latest, by %s seen %s", on, brood, h.EggsBy.Seen.Day(zone).ShortFrom(today))
}

// dateEggs dates the first eggs of her who lays: at a look, or as long before it as the
// brood seen is old at the least, where that can be no other queen's, but not before she
// could lay. What is known to be earlier stays.
func (n *nucFold) dateEggs(l Look) {
	eggs, by := l.At, Brooded{}
	if age, capped := n.broodAge(l); age > 0 {
		earliest := n.canLay()
		if at := l.At.Instant.Add(-age); at.After(earliest) {
			earliest = at
		}
		if earliest.Before(eggs.Instant) {
			eggs, by = calendar.Moment{Instant: earliest}, Brooded{l.At, capped}
		}
	}
	if was := n.Holds.FirstEggs; was.IsZero() || eggs.Instant.Before(was.Instant) {
		n.Holds.FirstEggs, n.Holds.EggsBy = eggs, by
	}
}

// broodAge is how old the brood of a look is at the least that only she who lays can have
// laid, and whether that is capped; 0: none is seen.
func (n *nucFold) broodAge(l Look) (age time.Duration, capped bool) {
	switch {
	case l.Brood.Some() && n.outlived(n.Brood.Capped, l.At, practice.WorkerEmerges):
		return n.numbers.Duration(practice.EggToCappedWorkerBrood), true
	case l.Larvae && n.outlived(n.Brood.Open, l.At, practice.WorkerCapped):
		return n.numbers.Duration(practice.WorkerHatches), false
	default:
		return 0, false
	}
}

// canLay is the earliest instant at which she who lays usually could: so long after she
// was given, walked, or the nuc lost its queen, and not before a look that found no eggs,
// or her a virgin; the zero instant where nothing is known of her.
func (n *nucFold) canLay() (t time.Time) {
	switch h := n.Holds; {
	case !h.Emerged.IsZero():
		t = h.Emerged.Add(n.numbers.Duration(practice.LookForEggsNotBefore))
	case !h.Given.IsZero():
		t = h.Given.Instant.Add(n.numbers.Duration(practice.LookForEggsNotBefore))
	case !n.Queenless.IsZero():
		t = n.ownQueenLays(n.Queenless.Instant)
	}
	for _, before := range n.Looks[:len(n.Looks)-1] {
		if (before.Eggs == NoEggs || before.Queen == VirginSeen) && before.At.Instant.After(t) {
			t = before.At.Instant
		}
	}
	return t
}
