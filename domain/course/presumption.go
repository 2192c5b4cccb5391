package course

import (
	"time"

	"lidmark/domain/book"
)

// Presumption is what a nuc most probably holds at an instant. Days are days
// of the nuc's yard: an instant that means a day as a start is its first one,
// as a best its noon, as an end its last second. A zero instant does not
// apply.
type Presumption struct {
	Condition book.Condition // Due included: what a lid and a title say, see [Course.Of]
	Calendar  book.Condition // the same by the clock alone, which the days below follow
	Seen      bool           // somebody saw or did just this, and nothing has changed by the clock since
	Since     time.Time      // when it came into this condition
	Emerged   time.Time      // most probable instant at which she walked; ahead for a cell
	Told      bool           // the hour she emerged was recorded, not reckoned
	Age       int            // her age in whole days; 0 before she walks and when nothing is known of it

	OldEnoughFrom time.Time // the day a virgin usually first flies to mate
	LookFrom      time.Time // the next look that is worth while, first day
	LookBest      time.Time // its best day
	LookBy        time.Time // its last day
	Delayed       bool      // by the weather: the look is later than by the calendar alone
	TooLateAt     time.Time // the day from which a virgin is too late to mate

	NoEggsOn time.Time // a look at a queen old enough to lay found no eggs; zero: none did

	OwnFrom         time.Time // a virgin the nuc raised itself can be out from here; zero: no brood was left to raise one
	LayingWorkersAt time.Time // laying workers are to be expected from here
	ReadyAt         time.Time // a laying queen is ready to be handed over from here, once she is proven
	Proven          bool      // her capped worker brood was seen
	BegunLate       bool      // her first eggs came when she was too old to mate: doubtful until she is proven
	Why             string    // one line in the keeper's words
}

// ReadyOnce says what has to be seen of a laying queen before she is ready; "" where it
// was, or where none lays.
func (p Presumption) ReadyOnce() string {
	switch {
	case p.ReadyAt.IsZero() || p.Proven:
		return ""
	case p.BegunLate:
		return "doubtful until her capped worker brood is seen"
	default:
		return "once her capped worker brood is seen"
	}
}
