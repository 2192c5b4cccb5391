package main

import (
	"cmp"
	"fmt"
	"os"
	"strings"
	"time"

	"lidmark/domain/founding"
)

// zoneOr is the time zone of a name, or this machine's without one.
func (a *app) zoneOr(name string) (*time.Location, error) {
	if name == "" {
		return a.localZone(), nil
	}
	return founding.Zone(name, time.LoadLocation)
}

// demoZone is the zone of the demo season: this machine's, but where the clock was
// told with another offset the whole hours of that, so that its days begin when
// those of the told clock do.
func (a *app) demoZone() *time.Location {
	zone := a.localZone()
	_, told := a.now.Zone()
	_, here := a.now.In(zone).Zone()
	if told == here || a.now.Location() == time.Local {
		return zone
	}
	const hour = 3600
	named, err := time.LoadLocation(fmt.Sprintf("Etc/GMT%+d", -told/hour)) // west of Greenwich is plus there
	if err != nil || told%hour != 0 {
		return zone
	}
	return named
}

// localZone is this machine's time zone by a name that any machine knows; UTC
// where it tells none.
func (a *app) localZone() *time.Location {
	name := strings.TrimPrefix(a.env("TZ"), ":")
	if link, err := os.Readlink("/etc/localtime"); err == nil && name == "" {
		_, name, _ = strings.Cut(link, "zoneinfo/")
	}
	zone, err := time.LoadLocation(cmp.Or(name, "UTC"))
	if err != nil || zone == time.Local {
		return time.UTC
	}
	return zone
}
