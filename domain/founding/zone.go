package founding

import (
	"errors"
	"fmt"
	"time"

	"lidmark/domain/book"
)

var errNoZone = errors.New("no such time zone, write one like Europe/Berlin")

// Zone is the time zone of a name. This machine's own, "Local", is no name that
// another machine knows.
func Zone(name string, zones book.Zones) (*time.Location, error) {
	zone, err := zones(name)
	if err != nil || name == "" || name == "Local" {
		return nil, fmt.Errorf("zone %q: %w", name, errNoZone)
	}
	return zone, nil
}
