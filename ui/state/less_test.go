package state_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/state"
)

// onlyOn is a window on a Tuesday morning on which cells must be given: Ida is free that
// day from an hour of the clock on, and no other day of the week.
func onlyOn(t *testing.T, from int) *window {
	home := booktest.Yard("home")
	ida := book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida"}
	ida.Free[time.Tuesday] = book.FreeHours{From: from, Until: from + 120}
	p := (&booktest.Pen{Zone: zone}).At("2027-03-20 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "Europe/Berlin"}, ida)
	p.At("2027-05-02 06:00").Write(book.Grafted{Batch: booktest.Batch("ripe"), Number: 3, Line: "Rook", Larvae: 12})
	for i := range 12 {
		id := booktest.Nuc(fmt.Sprint(i))
		p.At("2027-03-20 08:00").Write(book.NucNamed{Nuc: id, Name: fmt.Sprint("A", i+1), Sides: 6}, book.NucPlaced{Nuc: id, Yard: home})
		p.At("2027-05-09 12:00").Write(book.NucMadeUp{Nuc: id})
	}
	season := book.NewSeason(time.LoadLocation, p.Entries)
	w := start(t)
	w.send(state.Opened{Book: &state.Book{Season: season, Name: "S7"}, IDs: book.NewIDs(now, season, [32]byte{1})})
	return w.run("today")
}

// TestTonightOrToday: what has its last chance on the day has it tonight where the day's
// work ends at six in the evening or later; it takes 24 minutes.
func TestTonightOrToday(t *testing.T) {
	for from, want := range map[int]string{
		8 * 60: "today", 17*60 + 20: "today", 17*60 + 35: "today", 17*60 + 36: "tonight", 18 * 60: "tonight", 20 * 60: "tonight",
	} {
		w := onlyOn(t, from)
		home := w.Reading().Plan().Home.In(zone)
		if got := home.Hour()*60 + home.Minute(); got != from+24 {
			t.Fatalf("begun at %d min of the day, home at %d", from, got)
		}
		if says, _ := w.Reading().LessSays(state.Less{Nobody: true}); !strings.HasPrefix(says, want+" is the last chance: collect ripe cells") {
			t.Errorf("home at %s: %q, want %s", home.Format("15:04"), says, want)
		}
	}
}

// TestHowFewAndHowManyHours: hours go from one to twelve and no further, and at either end
// the window says why.
func TestHowFewAndHowManyHours(t *testing.T) {
	for _, c := range []struct {
		command string
		ends    int
		why     string
	}{
		{"hour more", 12, "that is a day's work"},
		{"hour less", 1, "less than an hour: choose Nobody comes"},
	} {
		w := onlyOn(t, 8*60).run("only hours")
		for range 15 {
			w.run(c.command)
		}
		if got := w.DayPage.Less.Hours; got != c.ends || !strings.HasSuffix(w.Note.Text, ": "+c.why) {
			t.Errorf("%s, fifteen times: %d hours, says %q; want %d and %q", c.command, got, w.Note.Text, c.ends, c.why)
		}
	}
}

// TestRainFromMorningToEvening: it rains until eight at the soonest and eight in the
// evening at the latest.
func TestRainFromMorningToEvening(t *testing.T) {
	for command, ends := range map[string]int{"rain longer": 20, "rain shorter": 8} {
		w := onlyOn(t, 8*60).run("rain until")
		for range 15 {
			w.run(command)
		}
		if w.DayPage.Less.From != ends || w.Note.Text == "" {
			t.Errorf("%s, fifteen times: until %d, says %q; want %d", command, w.DayPage.Less.From, w.Note.Text, ends)
		}
	}
}
