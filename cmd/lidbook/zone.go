package main

import (
	"cmp"
	"fmt"
	"os"
	"strings"
	"time"
)

// namedZone is the time zone of a name. This machine's own is no name that
// another machine knows.
func namedZone(name string) (*time.Location, error) {
	zone, err := time.LoadLocation(name)
	if err != nil || name == "" || zone == time.Local {
		return nil, fmt.Errorf("zone %q: no such time zone, write one like Europe/Berlin", name)
	}
	return zone, nil
}

// zoneOr is the time zone of a name, or this machine's without one.
func (a *app) zoneOr(name string) (*time.Location, error) {
	if name == "" {
		return a.localZone(), nil
	}
	return namedZone(name)
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
