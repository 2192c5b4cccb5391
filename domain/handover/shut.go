package handover

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/strength"
)

// shutUntil is until when robbers keep yards shut; those that are open are left out.
func shutUntil(c *course.Course) map[book.YardID]calendar.Day {
	v, shut := c.View(), map[book.YardID]calendar.Day{}
	for n := range v.Nucs() {
		if n.RobbedAt.IsZero() {
			continue
		}
		zone := c.Zone(n.Yard)
		if open := strength.OpenFrom(v.Yard(n.Yard), n.RobbedAt.Day(zone), v.Numbers()); open > calendar.DayOf(v.On(), zone) {
			shut[n.Yard] = max(shut[n.Yard], open)
		}
	}
	return shut
}

// stays is why a queen may not be caught by a day; "": she may.
func (q Queen) stays(by calendar.Day) string {
	if q.Closed == "" && q.Shut > by {
		return "robbers keep its yard shut until " + q.Shut.Short()
	}
	return q.Closed
}
