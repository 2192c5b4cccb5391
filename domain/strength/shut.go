package strength

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// OpenFrom is the day from which a yard in which robbers were seen on a day is opened at
// any hour again. In dearth they come back to what they know: it stays as it is until
// somebody has looked into the nuc, or should have; common practice, no source.
func OpenFrom(y *book.Yard, seen calendar.Day, n practice.Numbers) calendar.Day {
	over := seen + calendar.Day(n.Days(practice.RobbingLasts))
	if y.Forage == book.InDearth {
		over = max(over, seen+calendar.Day(n.Days(practice.RobbedLookBy)))
	}
	return over
}
