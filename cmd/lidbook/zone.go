package main

import (
	"cmp"
	"os"
	"strings"
	"time"
)

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
