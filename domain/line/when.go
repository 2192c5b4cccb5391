package line

import (
	"fmt"
	"time"

	"lidmark/domain/calendar"
)

// When says a moment as seen from a day: "today 18:00", "yesterday, morning",
// "Sat 15 May, 12 days ago", "Mon 17 May 04:00, in 2 days".
func When(m calendar.Moment, on calendar.Day, zone *time.Location) string {
	if m.IsZero() {
		return "not known when"
	}
	said := m.In(zone)
	rest := said[len(m.Day(zone).Short()):]
	switch n := m.Day(zone).Sub(on); {
	case n == 0:
		return "today" + rest
	case n == -1:
		return "yesterday" + rest
	case n == 1:
		return "tomorrow" + rest
	case n < 0:
		return fmt.Sprintf("%s, %d days ago", said, -n)
	default:
		return fmt.Sprintf("%s, in %d days", said, n)
	}
}
