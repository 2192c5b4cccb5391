package main

import (
	"cmp"
	"os"
	"path/filepath"
	"strings"
	"time"

	"lidmark/ui/state"
)

// machine is what the window is told of this computer.
func machine(now time.Time) state.Machine {
	return state.Machine{
		Zone: localZone(os.Getenv("TZ")), Zones: time.LoadLocation,
		Folder: booksFolder() + string(filepath.Separator), IDs: newIDs(now, nil),
	}
}

// localZone is this machine's time zone by a name that any machine knows; UTC
// where it tells none.
func localZone(named string) string {
	name := strings.TrimPrefix(named, ":")
	if link, err := os.Readlink("/etc/localtime"); err == nil && name == "" {
		_, name, _ = strings.Cut(link, "zoneinfo/")
	}
	if zone, err := time.LoadLocation(name); err != nil || zone == time.Local {
		return "UTC"
	}
	return cmp.Or(name, "UTC")
}

// booksFolder is where books are kept unless the keeper says otherwise: with the
// documents, where there is such a folder.
func booksFolder() string {
	home, err := os.UserHomeDir()
	if err != nil {
		return "."
	}
	documents := filepath.Join(home, "Documents")
	if info, err := os.Stat(documents); err == nil && info.IsDir() {
		return documents
	}
	return home
}
