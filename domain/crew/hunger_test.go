package crew_test

import (
	"math"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/crew"
	"lidmark/domain/demo"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// A nuc that had food until today is lost with the days; one that has had none for longer
// than bees may bear costs all that a light nuc which nobody feeds costs, and cannot wait.
// The numbers are common practice, no source.
func TestWhatIsWithoutFoodGoesFirst(t *testing.T) {
	n := practice.Numbers{}
	for _, c := range []struct {
		seen   string
		stores float64
		hard   bool
		want   func(day crew.Day, days float64) float64
	}{
		{"2027-05-05 10:00", 0, true, func(crew.Day, float64) float64 { return n.Get(practice.LightLost) }},
		{"2027-05-10 20:00", 0.2, false, func(_ crew.Day, days float64) float64 {
			return n.Get(practice.LightLost) * days / n.Get(practice.LightBelow)
		}},
	} {
		home, id := booktest.Yard("home"), booktest.Nuc("A1")
		p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
		p.At("2027-05-01 18:00").Write(book.NucNamed{Nuc: id, Name: "A1", Sides: 6}, book.NucPlaced{Nuc: id, Yard: home}, book.NucMadeUp{Nuc: id, Cups: 4, Food: 900})
		p.At(c.seen).Write(book.Looked{Nuc: id, Sides: book.Said(4), Stores: book.Said(c.stores)})
		day, of := waiting(t, p, "2027-05-11 09:00")
		feed := of(rules.ActFeed)
		days := day.Next.Sub(p.View("2027-05-11 09:00").On()).Hours() / 24
		if len(feed) != 1 || feed[0].Hard != c.hard || math.Abs(feed[0].Price.Queens-c.want(day, days)) > 1e-9 {
			t.Errorf("stores %v seen %s: %+v, want hard %v at %.3f", c.stores, c.seen, feed, c.hard, c.want(day, days))
		}
	}
}

// Waiting is priced until somebody is free again, at eight where that is before noon; the
// whole of a day ahead counts, though it is read at its noon.
func TestWaitingEndsWithTheNextFreeHour(t *testing.T) {
	start := calendar.Date(2027, time.May, 11)
	season := book.NewSeason(time.LoadLocation, demo.Season(start, time.UTC))
	v := season.At(start.At(7, 30, time.UTC))
	day, err := crew.Plan(rules.Judge(v), start, nil)
	if err != nil {
		t.Fatal(err)
	}
	if want := (start + 1).At(8, 0, time.UTC); !day.Next.Equal(want) {
		t.Errorf("somebody can come again %v, want %v", day.Next, want)
	}
	noon := (start + 1).At(12, 0, time.UTC)
	for name, c := range map[string]struct {
		view *book.View
		hour int
	}{"a day ahead": {season.Ahead(noon, start), 8}, "at noon": {season.At(noon), 12}} {
		first := time.Time{}
		for _, h := range crew.Ring(c.view, start+1) {
			if first.IsZero() || h.From.Before(first) {
				first = h.From
			}
		}
		if first.Hour() != c.hour {
			t.Errorf("%s: the hours begin at %v", name, first)
		}
	}
}
