package main

import (
	"cmp"
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
