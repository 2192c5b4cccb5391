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

// cancelled tells whether an event is struck, and that it then rings no more.
func cancelled(t *testing.T, e independent.Event) bool {
	t.Helper()
	status := e.Props.Get("STATUS")
	off := status != nil && status.Value == "CANCELLED"
	if off && len(e.Children) > 0 {
		t.Errorf("%s is struck and rings", e.Props.Get("UID").Value)
	}
	return off
}

// stands are the events of the calendar that are not struck.
func (d diary) stands(t *testing.T) (n int) {
	t.Helper()
	for _, e := range d {
		if !cancelled(t, e) {
			n++
		}
	}
	return n
}

// told are the titles of the events that stand, without the hour and whose they are.
func (d diary) told(t *testing.T) map[string]int {
	t.Helper()
	all := map[string]int{}
	for _, e := range d {
		title, _ := e.Props.Text("SUMMARY")
		if _, after, cut := strings.Cut(title, ": "); cut && strings.HasPrefix(title, "By ") {
			title = after
		}
		if _, after, cut := strings.Cut(title, ": "); cut {
			title = after
		}
		if !cancelled(t, e) {
			all[title]++
		}
	}
	return all
}

// terminal is a book that is written day by day, and a calendar that takes each of its
// files in.
type terminal struct {
	*testing.T
	dir, book string
	day       int
	diary     diary
}

func onTerminal(t *testing.T) *terminal {
	dir := t.TempDir()
	k := &terminal{t, dir, filepath.Join(dir, "hill.lidmark"), 0, diary{}}
	k.run("new", strings.TrimSuffix(k.book, ".lidmark"), "--yard", "Home", "--zone", "Europe/Berlin", "--since", "2027-05-01", "--person", "Ida Mon-Sun 18:00-20:00")
	return k
}

func (k *terminal) run(args ...string) {
	k.Helper()
	var o, e bytes.Buffer
	a := &app{now: morning.AddDate(0, 0, k.day), in: strings.NewReader(""), out: &o, errs: &e, env: func(string) string { return "" }}
	if err := a.execute(append([]string{"--book", k.book}, args...)); err != nil {
		k.Fatalf("lidbook %s: %v", strings.Join(args, " "), err)
	}
}

// export is the ids in the file of the next day.
func (k *terminal) export(more ...string) map[string]bool {
	k.Helper()
	k.day++
	file := filepath.Join(k.dir, fmt.Sprintf("%d.ics", k.day))
	k.run(append([]string{"calendar", file, "--days", "120"}, more...)...)
	return k.diary.take(k.T, file)
}

// TestAMovedPlanMovesInTheCalendar: after a planned batch was moved its events are the
// same ones a week later, none is doubled, the hard hour rings; dropped, all are struck.
func TestAMovedPlanMovesInTheCalendar(t *testing.T) {
	k := onTerminal(t)
	d := k.diary
	k.run("plan", "batch", "--on", "2027-06-21 15:00", "--larvae", "40", "--nucs", "20")
	first := k.export()
	before := map[string]time.Time{}
	for id := range first {
		before[id] = startOf(t, d[id])
	}
	if len(first) < 8 {
		t.Fatalf("%d events of a planned batch", len(first))
	}
	k.run("plan", "move", "2027-06-21", "2027-06-28")
	second := k.export()
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
	k.run("plan", "drop", "2027-06-28")
	if off := k.export(); len(off) != len(first) || d.stands(t) != 0 {
		t.Errorf("dropped, %d of %d events are told and %d stand", len(off), len(first), d.stands(t))
	}
}

// TestAStepIsOneEventFromPlanToQueens: planned, moved, and grafted on another day than
// planned, each step stays the one event it was; only what a plan did not tell is new.
func TestAStepIsOneEventFromPlanToQueens(t *testing.T) {
	k := onTerminal(t)
	k.run("plan", "batch", "--on", "2027-05-24 15:00", "--larvae", "40", "--nucs", "20", "--line", "Rook")
	planned := k.export()
	k.run("plan", "move", "2027-05-24", "2027-05-25")
	k.export()
	for k.day < 12 {
		k.export()
	}
	k.run("graft", "--plan", "2027-05-25", "--larvae", "38")
	grafted := k.export()
	for id := range k.diary {
		if !planned[id] && !strings.HasSuffix(id, " hands off") {
			t.Errorf("%s is new with the graft", id)
		}
	}
	for id := range planned {
		if day := startOf(t, k.diary[id]); !grafted[id] && day.After(morning.AddDate(0, 0, k.day)) {
			t.Errorf("%s is ahead, on %s, and not told any more", id, day)
		}
	}
	for title, n := range k.diary.told(t) {
		if n > 1 {
			t.Errorf("%q stands %d times", title, n)
		}
	}
	if told := k.diary.told(t); told["38 cells of batch 1 must be out"] != 1 || told["make up nucs"] != 1 || told["ready"] != 1 {
		t.Errorf("grafted, the calendar tells %v", told)
	}
	sequence := func() int {
		n := 0
		for id := range grafted {
			at, err := k.diary[id].Props.Get("SEQUENCE").Int()
			if err != nil {
				t.Fatal(err)
			}
			n = max(n, at)
		}
		return n
	}
	before := sequence()
	k.run("count", "1", "--take", "30")
	k.export()
	if sequence() <= before {
		t.Errorf("after another line the events are of edition %d, before %d", sequence(), before)
	}
}

// TestWhatMovesOutOfTheDaysTold: a plan that is moved to after the last day of the file
// takes its events along; one that was written by mistake, and an order for which nothing
// is owed, are struck.
func TestWhatMovesOutOfTheDaysTold(t *testing.T) {
	k := onTerminal(t)
	k.run("plan", "batch", "--on", "2027-05-24 15:00", "--larvae", "40", "--nucs", "20")
	first := k.export("--days", "60")
	k.run("plan", "move", "2027-05-24", "2027-07-25")
	k.export("--days", "60")
	for id := range first {
		if day := startOf(t, k.diary[id]); day.Before(time.Date(2027, 6, 1, 0, 0, 0, 0, time.UTC)) && !strings.HasSuffix(id, "drone comb in") {
			t.Errorf("moved by two months, %s is still on %s", id, day)
		}
	}
	k.run("strike", "last", "--why", "by mistake")
	k.run("strike", "last", "--why", "by mistake")
	k.export()
	if n := k.diary.stands(t); n != 0 {
		t.Errorf("the plan undone, %d events stand", n)
	}
	k.run("order", "1", "--customer", "Club", "--queens", "2", "--until", "2027-06-20")
	k.export()
	if n := k.diary.stands(t); n != 1 {
		t.Fatalf("%d events of an order", n)
	}
	k.run("order", "1", "--close", "they found others")
	k.export()
	if n := k.diary.stands(t); n != 0 {
		t.Error("an order that is closed still leaves")
	}
}
