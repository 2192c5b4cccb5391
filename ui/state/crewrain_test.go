package state_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/state"
)

// helped is Today of a demo in which two people are free from eight to six.
func helped(t testing.TB) *window {
	w := &window{t: t, State: open(t)}
	var facts []book.Fact
	n := 0
	for p := range w.Present().View.People() {
		h := book.HoursOn{Person: p.Person, Day: today}
		if n++; n <= 2 {
			h.FreeHours = book.FreeHours{From: 8 * 60, Until: 18 * 60}
		}
		facts = append(facts, h)
	}
	if n < 2 {
		t.Fatal("the demo has not two people")
	}
	withMore(w, facts...)
	w.send(state.Opened{Book: w.Book}).settled()
	w.Pen.IDs, w.Pen.Writer = book.NewIDs(now, w.Book.Season, [32]byte{1}), "Ida"
	return w.run("today")
}

// It rains until three: nobody begins sooner, and the time there is ends as it did.
func TestItRainsUntilThree(t *testing.T) {
	w := helped(t)
	_, whole, _ := w.Reading().LessTime(state.Less{Hours: 10})
	w.press("R", state.Alt|state.Shift)
	if w.DayPage.Less.From != 15 {
		t.Fatalf("it rains until %d", w.DayPage.Less.From)
	}
	_, free, _ := w.Reading().LessTime(w.DayPage.Less)
	if free != 2*3*60 || whole <= free {
		t.Errorf("%.0f min are left of %.0f", free, whole)
	}
	begun := 0
	for _, stop := range w.Page() {
		if stop.Waits() || stop.Start.IsZero() {
			continue
		}
		begun++
		if stop.Start.In(zone).Hour() < 15 {
			t.Errorf("a stop begins at %s", stop.Start.In(zone).Format("15:04"))
		}
	}
	if begun == 0 {
		t.Error("nothing is done after the rain")
	}
	if w.run("rain longer"); w.DayPage.Less.From != 16 {
		t.Errorf("an hour longer it rains until %d", w.DayPage.Less.From)
	}
	w.run("make the day").settled()
	for h := range w.Present().View.People() {
		if free := h.FreeOn(today); free.Minutes() > 0 && free.From != 16*60 {
			t.Errorf("%s is free from %d", h.Name, free.From/60)
		}
	}
	if words := w.Pen.Done[len(w.Pen.Done)-1].Words; !strings.Contains(words, "from 16:00") {
		t.Errorf("undo says %q", words)
	}
}

// In a small window, where who comes is out of sight, vans have keys and are said.
func TestVansByKeys(t *testing.T) {
	w := helped(t)
	w.Width, w.Height = 800, 560
	if w.press("Up", state.Alt|state.Shift); w.DayPage.Less.Vans != 2 || w.Note.Text != "all drive in 2 vans" {
		t.Errorf("%d vans, says %q", w.DayPage.Less.Vans, w.Note.Text)
	}
	if w.press("Down", state.Alt|state.Shift); w.DayPage.Less.Vans != 1 || w.Note.Text != "all drive in 1 van" {
		t.Errorf("%d vans, says %q", w.DayPage.Less.Vans, w.Note.Text)
	}
	if w.press("Down", state.Alt|state.Shift); !w.DayPage.Less.OnFoot || w.Note.Text != "nobody drives: only what can be walked to" {
		t.Errorf("on foot %v, says %q", w.DayPage.Less.OnFoot, w.Note.Text)
	}
	if w.press("Down", state.Alt|state.Shift); !strings.HasSuffix(w.Note.Text, "no van is used as it is") {
		t.Errorf("says %q", w.Note.Text)
	}
	if w.press("Up", state.Alt|state.Shift); w.DayPage.Less.OnFoot || w.DayPage.Less.VansSaid() != "1 van" {
		t.Errorf("%+v", w.DayPage.Less)
	}
}
