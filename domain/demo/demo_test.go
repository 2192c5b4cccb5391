package demo_test

import (
	"bytes"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
)

// someDay is an ordinary day of the rearing season.
var someDay = calendar.Date(2027, time.May, 20)

// zones are some with and without summer time, north and south, of whole and
// half hours.
var zones = []string{"Europe/Berlin", "America/Chicago", "Australia/Adelaide", "Asia/Kolkata", "UTC"}

func zone(t rapid.TB, name string) *time.Location {
	t.Helper()
	z, err := time.LoadLocation(name)
	if err != nil {
		t.Fatal(err)
	}
	return z
}

// season is a demo season to be examined.
type season struct {
	today   calendar.Day
	zone    *time.Location
	entries []book.Entry
	*book.View
}

func seasonOf(today calendar.Day, zone *time.Location) season {
	entries := demo.Season(today, zone)
	return season{today, zone, entries, book.NewSeason(time.LoadLocation, entries).At(today.Start(zone))}
}

// anySeason draws a day of any year and a zone.
func anySeason(t *rapid.T) season {
	day := rapid.IntRange(int(calendar.Date(2024, time.January, 1)), int(calendar.Date(2033, time.December, 31))).Draw(t, "day")
	return seasonOf(calendar.Day(day), zone(t, rapid.SampledFrom(zones).Draw(t, "zone")))
}

func TestSameDaySameSeason(t *testing.T) {
	berlin := zone(t, "Europe/Berlin")
	once, again := demo.Season(someDay, berlin), demo.Season(someDay, berlin)
	if diff := cmp.Diff(once, again, cmp.AllowUnexported(book.Amount{})); diff != "" {
		t.Errorf("a second season differs:\n%s", diff)
	}
	if next := demo.Season(someDay+1, berlin); next[0].ID == once[0].ID {
		t.Errorf("the next day's season has the id %v again", next[0].ID)
	}
}

func TestNoZoneIsUTC(t *testing.T) {
	if diff := cmp.Diff(demo.Season(someDay, nil), demo.Season(someDay, time.UTC), cmp.AllowUnexported(book.Amount{})); diff != "" {
		t.Errorf("a season without zone is not that of UTC:\n%s", diff)
	}
}

func TestEntriesStandInTheOrderOfWriting(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anySeason(t)
		start := s.today.Start(s.zone)
		for i, e := range s.entries {
			switch {
			case i > 0 && bytes.Compare(s.entries[i-1].ID[:], e.ID[:]) >= 0:
				t.Fatalf("entry %d: id %v does not follow %v", i, e.ID, s.entries[i-1].ID)
			case i > 0 && !s.entries[i-1].Written.Before(e.Written):
				t.Fatalf("entry %d was written at %v, not after the one before", i, e.Written)
			case e.Written.Before(e.At.Instant):
				t.Fatalf("entry %d, %T: happened at %v, written already at %v", i, e.Fact, e.At.Instant, e.Written)
			case !e.Written.Before(start):
				t.Fatalf("entry %d, %T: written at %v, today begins at %v", i, e.Fact, e.Written, start)
			}
		}
	})
}

func TestIDsAreUUIDsOfVersion7(t *testing.T) {
	// RFC 9562, section 5.7: milliseconds, version 7, variant 10.
	for _, e := range demo.Season(someDay, zone(t, "Europe/Berlin")) {
		var ms int64
		for _, b := range e.ID[:6] {
			ms = ms<<8 | int64(b)
		}
		if ms != e.Written.UnixMilli() || e.ID[6]>>4 != 7 || e.ID[8]>>6 != 2 {
			t.Fatalf("id %v of an entry written at %v", e.ID, e.Written)
		}
	}
}

func TestOnlyAForecastTellsOfToday(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anySeason(t)
		ahead := 0
		for _, e := range s.entries {
			f, ok := e.Fact.(book.WeatherSeen)
			if !ok {
				continue
			}
			if f.Forecast != (f.Day >= s.today) {
				t.Fatalf("weather of %v, forecast %v, on %v", f.Day, f.Forecast, s.today)
			}
			if f.Forecast {
				ahead++
			}
		}
		if ahead != 3*5 {
			t.Errorf("%d days foretold, want five in each of three yards", ahead)
		}
	})
}

func TestEveryEntrySurvivesJSON(t *testing.T) {
	for _, e := range demo.Season(someDay, zone(t, "Europe/Berlin")) {
		b, err := e.MarshalJSON()
		if err != nil {
			t.Fatal(err)
		}
		var back book.Entry
		if err := back.UnmarshalJSON(b); err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(e, back, cmp.AllowUnexported(book.Amount{})); diff != "" {
			t.Fatalf("read back otherwise:\n%s", diff)
		}
	}
}

func TestItIsASeasonOfGoodSize(t *testing.T) {
	s := seasonOf(someDay, zone(t, "Europe/Berlin"))
	if n := len(s.entries); n < 700 || n > 2500 {
		t.Errorf("%d entries", n)
	}
	nucs := map[string]int{}
	for n := range s.Nucs() {
		nucs[s.Yard(n.Yard).Name]++
	}
	if len(nucs) != 2 || nucs["Hollin Ledge"]+nucs["Pellam Moor"] < 120 {
		t.Errorf("nucs by yard: %v, want 120 in two mating yards", nucs)
	}
	writers := map[string]bool{}
	for _, e := range s.entries {
		writers[e.Writer] = true
	}
	if len(writers) != 2 {
		t.Errorf("writers %v, want two", writers)
	}
}
