package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	independent "github.com/emersion/go-ical"
)

// diary is a calendar that takes a file in as calendars do (RFC 5546, 3.2.1): an
// event of an id it has takes the place of that one.
type diary map[string]independent.Event

// take reads a file with another parser and gives the ids in it.
func (d diary) take(t *testing.T, file string) (ids map[string]bool) {
	t.Helper()
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	c, err := independent.NewDecoder(bytes.NewReader(text)).Decode()
	if err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	ids = map[string]bool{}
	for _, e := range c.Events() {
		id := e.Props.Get("UID").Value
		if ids[id] {
			t.Errorf("%s stands twice in %s", id, file)
		}
		if was, known := d[id]; known && stampOf(t, e).Before(stampOf(t, was)) {
			t.Errorf("%s is written as older than the one it takes the place of", id)
		}
		ids[id], d[id] = true, e
	}
	return ids
}

// stampOf is when an event was written last: where there is no method, DTSTAMP is what
// LAST-MODIFIED is (RFC 5545, 3.8.7.2).
func stampOf(t *testing.T, e independent.Event) time.Time {
	t.Helper()
	at, err := e.Props.DateTime("DTSTAMP", time.UTC)
	if err != nil {
		t.Fatal(err)
	}
	return at
}

func startOf(t *testing.T, e independent.Event) time.Time {
	t.Helper()
	at, err := e.DateTimeStart(time.UTC)
	if err != nil {
		t.Fatal(err)
	}
	return at
}

// TestAMovedPlanMovesInTheCalendar: after a planned batch was moved its events are the
// same ones a week later, none is doubled, the hard hour rings; dropped, the file has
// none of them left.
func TestAMovedPlanMovesInTheCalendar(t *testing.T) {
	dir := t.TempDir()
	book, d := filepath.Join(dir, "hill.lidmark"), diary{}
	day := 0
	run := func(args ...string) {
		t.Helper()
		var o, e bytes.Buffer
		a := &app{now: morning.AddDate(0, 0, day), in: strings.NewReader(""), out: &o, errs: &e, env: func(string) string { return "" }}
		if err := a.execute(append([]string{"--book", book}, args...)); err != nil {
			t.Fatalf("lidbook %s: %v", strings.Join(args, " "), err)
		}
	}
	export := func() map[string]bool {
		day++
		file := filepath.Join(dir, fmt.Sprintf("%d.ics", day))
		run("calendar", file, "--days", "120")
		return d.take(t, file)
	}
	run("new", strings.TrimSuffix(book, ".lidmark"), "--yard", "Home", "--zone", "Europe/Berlin", "--since", "2027-05-01", "--person", "Ida Mon-Sun 18:00-20:00")
	run("plan", "batch", "--on", "2027-06-21 15:00", "--larvae", "40", "--nucs", "20")
	first := export()
	before := map[string]time.Time{}
	for id := range first {
		before[id] = startOf(t, d[id])
	}
	if len(first) < 8 {
		t.Fatalf("%d events of a planned batch", len(first))
	}
	run("plan", "move", "2027-06-21", "2027-06-28")
	second := export()
	if len(d) != len(first) {
		t.Errorf("%d events after the move, %d before", len(d), len(first))
	}
	rings := 0
	for id := range first {
		if !second[id] {
			t.Errorf("%s is gone after the move", id)
		}
		if moved := startOf(t, d[id]).Sub(before[id]); moved != 7*24*time.Hour {
			t.Errorf("%s moved by %v", id, moved)
		}
		if title, _ := d[id].Props.Text("SUMMARY"); strings.HasPrefix(title, "By ") {
			rings += len(d[id].Children)
		}
	}
	if rings != 2 {
		t.Errorf("the hard hour rings %d times, want the evening before and the morning", rings)
	}
	run("plan", "drop", "2027-06-28")
	if left := export(); len(left) != 0 {
		t.Errorf("dropped, and the file has %d of its events", len(left))
	}
}
