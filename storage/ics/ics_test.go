package ics_test

import (
	"bytes"
	"io"
	"strings"
	"testing"
	"time"
	_ "time/tzdata" // the zones, on machines that have none

	independent "github.com/emersion/go-ical"
	"pgregory.net/rapid"

	"lidmark/domain/calendar"
	"lidmark/storage/ics"
)

var stamp = time.Date(2027, 4, 30, 18, 5, 9, 0, time.UTC)

// zone loads a time zone.
func zone(t testing.TB, name string) *time.Location {
	t.Helper()
	z, err := time.LoadLocation(name)
	if err != nil {
		t.Fatal(err)
	}
	return z
}

// written is the file of the events.
func written(t testing.TB, events []ics.Event, z *time.Location) string {
	t.Helper()
	var out bytes.Buffer
	if err := ics.Write(&out, events, z, stamp); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

// read reads a file with an independent parser, which is strict about what
// each component must have.
func read(t testing.TB, text string) *independent.Calendar {
	t.Helper()
	c, err := independent.NewDecoder(strings.NewReader(text)).Decode()
	if err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	if err := independent.NewEncoder(io.Discard).Encode(c); err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	return c
}

func TestReadBackByAnotherParser(t *testing.T) {
	z := zone(t, "Europe/Berlin")
	graft := ics.Event{
		ID: "batch-7-graft@lidmark", Title: "Graft batch 7; 40 cells, line K2", Hard: true,
		Text:  "Take along:\r\n- grafting tool\n- lamp, cloth; the \\ mark\tand “more” — " + strings.Repeat("čmelák 🐝 ", 30),
		Start: time.Date(2027, 5, 15, 18, 0, 0, 0, z), End: time.Date(2027, 5, 15, 19, 30, 0, 0, z),
		Alarms: []time.Time{time.Date(2027, 5, 14, 19, 0, 0, 0, z), time.Date(2027, 5, 15, 7, 0, 0, 0, z)},
	}
	day := ics.Event{ID: "batch-7-ripe@lidmark", Title: "Cells ripe", Day: calendar.Date(2027, 5, 25)}
	text := written(t, []ics.Event{day, graft}, z)
	events := read(t, text).Events()
	if len(events) != 2 {
		t.Fatalf("%d events, want 2", len(events))
	}
	first := events[0]
	for name, want := range map[string]string{
		"UID": graft.ID, "SUMMARY": graft.Title, "PRIORITY": "1", "TRANSP": "OPAQUE", "DTSTAMP": "20270430T180509Z",
		"DESCRIPTION": strings.NewReplacer("\r\n", "\n", "\t", " ").Replace(graft.Text),
	} {
		p := first.Props.Get(name)
		got := p.Value
		if p.ValueType() == independent.ValueText {
			got, _ = p.Text()
		}
		if got != want {
			t.Errorf("%s is %q, want %q", name, got, want)
		}
	}
	sameTime(t, first.DateTimeStart, graft.Start)
	sameTime(t, first.DateTimeEnd, graft.End)
	if got := first.Props.Get("DTSTART"); got.Value != "20270515T180000" || got.Params.Get("TZID") != "Europe/Berlin" {
		t.Errorf("DTSTART %v", got)
	}
	if n := len(first.Children); n != len(graft.Alarms) {
		t.Fatalf("%d alarms, want %d", n, len(graft.Alarms))
	}
	for i, a := range first.Children {
		got, err := a.Props.DateTime("TRIGGER", nil)
		if a.Name != "VALARM" || err != nil || !got.Equal(graft.Alarms[i]) {
			t.Errorf("alarm %d: %s at %v, %v, want %v", i, a.Name, got, err, graft.Alarms[i])
		}
	}
	start, end := events[1].Props.Get("DTSTART"), events[1].Props.Get("DTEND")
	if start.Value != "20270525" || end.Value != "20270526" || start.ValueType() != independent.ValueDate {
		t.Errorf("all day: %v to %v", start, end)
	}
}

func sameTime(t *testing.T, get func(*time.Location) (time.Time, error), want time.Time) {
	t.Helper()
	if got, err := get(nil); err != nil || !got.Equal(want) {
		t.Errorf("time %v, %v, want %v", got, err, want)
	}
}

// TestAnEventThatIsOff: it keeps its id and day, says that it is cancelled, and is a later
// edition of the one that a calendar has.
func TestAnEventThatIsOff(t *testing.T) {
	d := ics.Deadline{ID: "graft", Day: calendar.Date(2027, 5, 15), What: "Planned: graft", Do: "As planned", Lines: 7}
	off := d
	off.Off, off.Lines = true, 9
	edition := func(d ics.Deadline) independent.Event {
		return read(t, written(t, []ics.Event{d.Event(nil)}, nil)).Events()[0]
	}
	was, now := edition(d), edition(off)
	for name, want := range map[string][2]string{
		"UID": {"graft", "graft"}, "DTSTART": {"20270515", "20270515"}, "SEQUENCE": {"7", "9"}, "STATUS": {"", "CANCELLED"},
		"SUMMARY": {"Planned: graft", "Off: Planned: graft"}, "DESCRIPTION": {"As planned", ""},
	} {
		for i, e := range []independent.Event{was, now} {
			got := ""
			if p := e.Props.Get(name); p != nil {
				got = p.Value
			}
			if got != want[i] {
				t.Errorf("%s is %q, want %q", name, got, want[i])
			}
		}
	}
}

func TestLinesAreAsTheStandardWants(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		e := ics.Event{ID: "1", Title: rapid.String().Draw(r, "title"), Text: rapid.String().Draw(r, "text") + strings.Repeat("ü", 200), Day: 20000}
		text := written(t, []ics.Event{e}, nil)
		for line := range strings.SplitSeq(strings.TrimSuffix(text, "\r\n"), "\r\n") {
			if len(line) > 75 || strings.ContainsAny(line, "\r\n") || strings.ToValidUTF8(line, "") != line {
				r.Fatalf("line %q of %d bytes", line, len(line))
			}
		}
		if got := len(read(t, text).Events()); got != 1 {
			r.Fatalf("%d events in %s", got, text)
		}
	})
}

// TestZonesTellTheTruth reads the zone's rules out of the file, as a calendar
// does that does not know the zone, and compares them with the zone itself.
func TestZonesTellTheTruth(t *testing.T) {
	for _, c := range []struct {
		name  string
		parts int // changes of the clocks in the two years, and the stretch before
	}{
		{"Europe/Berlin", 5},
		{"America/New_York", 5},
		{"Australia/Hobart", 5},
		{"America/Santiago", 5},
		{"Africa/Nairobi", 1},
		{"Asia/Kathmandu", 1},
		{"Australia/Lord_Howe", 5},
		{"Europe/Dublin", 5},
		{"Africa/Casablanca", 5},
	} {
		z := zone(t, c.name)
		var events []ics.Event
		for at := time.Date(2027, 1, 1, 0, 0, 0, 0, z); at.Year() < 2029; at = at.Add(7*time.Hour + 20*time.Minute) {
			events = append(events, ics.Event{ID: at.UTC().String(), Title: "x", Start: at})
		}
		cal := read(t, written(t, events, z))
		tz := cal.Children[0]
		if id, _ := tz.Props.Text("TZID"); tz.Name != "VTIMEZONE" || id != c.name || len(tz.Children) != c.parts {
			t.Errorf("%s: %s %s of %d parts, want %d", c.name, tz.Name, id, len(tz.Children), c.parts)
		}
		for i, e := range cal.Events() {
			if got := instant(t, tz, e.Props.Get("DTSTART")); !got.Equal(events[i].Start) {
				t.Fatalf("%s: %s is read as %s", c.name, events[i].Start, got)
			}
		}
	}
}

// instant is the instant of a DTSTART by the rules in tz alone.
func instant(t *testing.T, tz *independent.Component, p *independent.Prop) time.Time {
	t.Helper()
	if strings.HasSuffix(p.Value, "Z") {
		return parsed(t, "20060102T150405Z", p.Value)
	}
	wall := parsed(t, "20060102T150405", p.Value)
	var began, at time.Time
	for _, part := range tz.Children {
		if start := parsed(t, "20060102T150405", part.Props.Get("DTSTART").Value); !start.After(wall) && start.After(began) {
			began, at = start, wall.Add(-seconds(t, part.Props.Get("TZOFFSETTO").Value))
		}
	}
	// An hour that comes twice is the first: by the rules before the change.
	for _, part := range tz.Children {
		start := parsed(t, "20060102T150405", part.Props.Get("DTSTART").Value)
		from, to := seconds(t, part.Props.Get("TZOFFSETFROM").Value), seconds(t, part.Props.Get("TZOFFSETTO").Value)
		if early := wall.Add(-from); from > to && early.Before(start.Add(-from)) && !wall.Before(start.Add(to-from)) {
			return early
		}
	}
	return at
}

func parsed(t *testing.T, layout, text string) time.Time {
	t.Helper()
	at, err := time.Parse(layout, text)
	if err != nil {
		t.Fatal(err)
	}
	return at
}

func seconds(t *testing.T, offset string) time.Duration {
	t.Helper()
	_, s := parsed(t, "-0700", offset).Zone()
	return time.Duration(s) * time.Second
}

func TestTheHourThatComesTwice(t *testing.T) {
	z := zone(t, "Europe/Berlin")
	first := time.Date(2027, 10, 31, 0, 30, 0, 0, time.UTC) // 02:30 summer time
	text := written(t, []ics.Event{{ID: "1", Start: first}, {ID: "2", Start: first.Add(time.Hour)}}, z)
	for _, want := range []string{"DTSTART;TZID=Europe/Berlin:20271031T023000\r\n", "DTSTART:20271031T013000Z\r\n"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is missing in\n%s", want, text)
		}
	}
}

func TestWithoutAZoneTimesAreUTC(t *testing.T) {
	e := []ics.Event{{ID: "1", Title: "x", Start: stamp}}
	for _, z := range []*time.Location{nil, time.UTC, time.Local} {
		text := written(t, e, z)
		if !strings.Contains(text, "DTSTART:20270430T180509Z\r\n") || strings.Contains(text, "VTIMEZONE") {
			t.Errorf("%v:\n%s", z, text)
		}
	}
}

func TestTheSameEventsGiveTheSameFile(t *testing.T) {
	z := zone(t, "Pacific/Auckland")
	a := ics.Event{ID: "a", Title: "x", Start: stamp}
	b := ics.Event{ID: "b", Title: "y", Start: stamp}
	day := ics.Event{ID: "c", Title: "z", Day: calendar.DayOf(stamp, z)}
	if got, want := written(t, []ics.Event{b, day, a}, z), written(t, []ics.Event{a, b, day}, z); got != want {
		t.Errorf("in another order:\n%s\nwant\n%s", got, want)
	}
}

func TestEventsThatCannotBeWritten(t *testing.T) {
	for want, events := range map[string][]ics.Event{
		`event "x": it has no id; give it one that stays`:                        {{Title: "x", Day: 20000}},
		`event "y": its id "1" belongs to another event; give it one of its own`: {{ID: "1", Day: 20000}, {ID: "1", Title: "y", Day: 20001}},
		`event "x": it has neither a day nor a start; give it one`:               {{ID: "1", Title: "x"}},
		`event "x": it ends before it starts; swap the two`:                      {{ID: "1", Title: "x", Start: stamp, End: stamp.Add(-1)}},
	} {
		var out bytes.Buffer
		if err := ics.Write(&out, events, nil, stamp); err == nil || err.Error() != want || out.Len() > 0 {
			t.Errorf("got %v and %d bytes, want %s", err, out.Len(), want)
		}
	}
}

// TestAHardHourIsToldToTheMinute: as everywhere else, and its quarter of an hour ends there.
func TestAHardHourIsToldToTheMinute(t *testing.T) {
	hard := time.Date(2027, 5, 15, 14, 4, 38, 0, time.UTC)
	e := ics.Deadline{ID: "cells", At: hard, Hard: true, What: "cells must be out"}.Event(time.UTC)
	if want := "By Sat 15 May 14:04: cells must be out"; e.Title != want || !e.End.Equal(hard.Truncate(time.Minute)) {
		t.Errorf("%q until %s, want %q", e.Title, e.End, want)
	}
}
