package rules_test

import (
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// hardOf is the hard hour of batch 4 as rules, clock, card and calendar tell it;
// they must tell the same.
func hardOf(t rapid.TB, v *book.View) time.Time {
	t.Helper()
	hard := v.Batch(batch(4)).Clock(v.Numbers()).Hard()
	for _, f := range of(v, rules.CellsOut) {
		if !f.By.Equal(hard) {
			t.Errorf("cells out by %v, the clock says %v", f.By, hard)
		}
	}
	if card, ok := rules.LateDay(v, batch(4), time.Time{}); ok && !card.Hard.Equal(hard) {
		t.Errorf("the late day's card says %v, the clock %v", card.Hard, hard)
	}
	for _, d := range rules.Deadlines(v, calendar.Date(2027, 5, 1), calendar.Date(2027, 5, 31)) {
		if d.Hard && d.Of == batch(4).Subject() && !d.At.Equal(hard) {
			t.Errorf("the calendar says %v, the clock %v", d.At, hard)
		}
	}
	return hard
}

// TestPlacingCellsMovesNoHardHour: cells that were placed, culled or dropped
// leave the hard hour of the others where it was.
func TestPlacingCellsMovesNoHardHour(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 24))
	p.At("2027-05-10 18:00").Write(book.CappedCounted{Batch: batch(4), Capped: 20})
	p.At("2027-05-13 18:00").Write(madeUp("A1")...)
	p.Write(madeUp("A2")...)
	want := hardOf(t, p.View("2027-05-14 09:00"))
	for _, step := range []struct {
		at   string
		fact book.Fact
	}{
		{"2027-05-15 10:00", book.CellGiven{Nuc: booktest.Nuc("A1"), Batch: batch(4)}},
		{"2027-05-15 11:00", book.CellsCulled{Batch: batch(4), Cells: 10}},
		{"2027-05-15 12:00", book.CellGiven{Nuc: booktest.Nuc("A2"), Batch: batch(4)}},
		{"2027-05-15 13:00", book.CellsCulled{Batch: batch(4), Cells: 8}},
	} {
		p.At(step.at).Write(step.fact)
		if got := hardOf(t, p.View(step.at)); !got.Equal(want) {
			t.Errorf("after %T the hard hour is %v, want %v", step.fact, got, want)
		}
	}
}

// TestAPastHardHourStays: once it is past, a count, a reading or a sign does not
// move it, and it is told as past until no cell is together.
func TestAPastHardHourStays(t *testing.T) {
	for name, late := range map[string]book.Fact{
		"counted": book.CappedCounted{Batch: batch(4), Capped: 3},
		"cooled":  book.IncubatorRead{Batch: batch(4), Celsius: 32},
		"bare":    book.ClockSeen{Batch: batch(4), Sign: book.SeenTipBare},
	} {
		p := pen(t)
		p.At("2027-05-05 18:00").Write(graft(4, 24), book.CellsMoved{Batch: batch(4)})
		p.At("2027-05-13 18:00").Write(book.IncubatorRead{Batch: batch(4), Celsius: 34.5})
		hard := hardOf(t, p.View("2027-05-14 09:00"))
		p.At(hard.Add(30 * time.Minute).In(p.Zone).Format("2006-01-02 15:04")).Write(late)
		p.At(hard.Add(40 * time.Minute).In(p.Zone).Format("2006-01-02 15:04")).Write(book.IncubatorRead{Batch: batch(4), Celsius: 32})
		for _, wait := range []time.Duration{time.Hour, 5 * time.Hour, 24 * time.Hour} {
			v := book.NewSeason(booktest.Zones, p.Entries).At(hard.Add(wait))
			if got := hardOf(t, v); !got.Equal(hard) {
				t.Errorf("%s: %v later the hard hour is %v, was %v", name, wait, got, hard)
			}
			past := 0
			for _, f := range rules.Day(v, v.Today()).Hard {
				if f.Of == batch(4).Subject() && f.PastDue(v.On()) {
					past++
				}
			}
			if past == 0 {
				t.Errorf("%s: %v later the cells are not told as past", name, wait)
			}
		}
	}
}

// TestBeforeItIsPastTheHourIsReckonedAnew: what is learned in time counts.
func TestBeforeItIsPastTheHourIsReckonedAnew(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 24))
	before := hardOf(t, p.View("2027-05-10 09:00"))
	p.At("2027-05-10 18:00").Write(book.CappedCounted{Batch: batch(4), Capped: 6})
	if got := hardOf(t, p.View("2027-05-10 19:00")); !got.After(before) {
		t.Errorf("with 6 cells of 24 the hard hour is %v, was %v: want it later", got, before)
	}
}
