package bee_test

import (
	"strconv"
	"strings"
	"testing"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// window gives the window of a step.
func window(t *testing.T, s bee.Step) bee.Window {
	t.Helper()
	for _, w := range bee.Windows(defaults) {
		if w.Step == s {
			return w
		}
	}
	t.Fatalf("no window for %v", s)
	return bee.Window{}
}

// days reads "12" or "33..41".
func days(t *testing.T, s string) (from, by int) {
	t.Helper()
	a, b, ranged := strings.Cut(s, "..")
	if !ranged {
		b = a
	}
	from, err := strconv.Atoi(a)
	if err != nil {
		t.Fatal(err)
	}
	if by, err = strconv.Atoi(b); err != nil {
		t.Fatal(err)
	}
	return from, by
}

// TestCalendarsRowByRow checks five printed calendars, row by row, against
// the windows (testdata/published/rearing-calendars.csv). Printed calendars
// disagree among themselves: capping on day 3.5 to 6 from the graft, cells
// into nucs on 9 to 11, emergence on 11 to 13, first eggs on 19 to 26. A row
// is kept when its days meet the window.
func TestCalendarsRowByRow(t *testing.T) {
	emerge := window(t, bee.Emergence).Best
	eggs := emerge + defaults.Days(practice.FirstEggsHalfBy)
	steps := map[string]bee.Window{
		"graft":         {From: 0, By: 0},
		"finisher":      window(t, bee.ToFinisher),
		"capped":        window(t, bee.CellsCapped),
		"cells in":      window(t, bee.CellsIn),
		"emergence":     window(t, bee.Emergence),
		"mating flight": {From: emerge + defaults.Days(practice.FirstMatingFlightFrom), By: emerge + defaults.Days(practice.FirstMatingFlightBy)},
		"first eggs":    {From: eggs, By: eggs},
		"ready":         {From: eggs + defaults.Days(practice.ReadyAfterFirstEgg), By: eggs + defaults.Days(practice.ReadyAfterFirstEgg)},
	}
	met := map[string]bool{}
	for _, row := range published(t, "rearing-calendars.csv") {
		name, step := row["calendar"]+", "+row["step"], row["step"]
		w, known := steps[step]
		if !known {
			t.Errorf("%s: no such step", name)
			continue
		}
		met[step] = true
		from, by := days(t, row["day_from_graft"])
		if by < w.From || from > w.By {
			t.Errorf("%s: day %d to %d, ours %d to %d", name, from, by, w.From, w.By)
		}
	}
	for step := range steps {
		if !met[step] {
			t.Errorf("no calendar speaks of %s", step)
		}
	}
}

// TestClockAgreesWithTheWindows ties the hours of the clock to the days that
// breeders count, and to what calendar C prints of the larva's age: hatched
// a day before the graft, and up to a day and a half earlier from larvae of 48 to 60 h than of 18 to 24 h.
func TestClockAgreesWithTheWindows(t *testing.T) {
	young := bee.Batch{Graft: graft, Cells: 1}
	middle := young.Clock(defaults).Middle().Sub(graft).Hours() / 24
	if w := window(t, bee.Emergence); int(middle) != w.Best {
		t.Errorf("half are out on day %.2f, the window says %d", middle, w.Best)
	}
	if hard := (bee.Batch{Graft: graft, Cells: 24}).Clock(defaults).Hard(); hard.Sub(graft) < 10*24*time.Hour {
		t.Errorf("hard line %v is before day 10, when breeders place cells", hard)
	}
	old := bee.Batch{Graft: graft, Cells: 1, LarvaAge: 54 * time.Hour}
	usual := bee.Batch{Graft: graft, Cells: 1, LarvaAge: 21 * time.Hour}
	early := usual.Clock(defaults).Middle().Sub(old.Clock(defaults).Middle()).Hours() / 24
	if early < 1 || early > 1.5 {
		t.Errorf("old larvae emerge %.2f d early, printed up to 1.5", early)
	}
	hatched := defaults.Get(practice.LarvaAgeAtGraft) / 24
	if hatched < 0.5 || hatched > 1.5 {
		t.Errorf("the egg hatches %.2f d before the graft, printed 1", hatched)
	}
}

func TestWindowsFollowTheNumbers(t *testing.T) {
	n := with(t, defaults, practice.CellsIn, 11)
	for _, w := range bee.Windows(n) {
		if w.From > w.Best || w.Best > w.By {
			t.Errorf("%v: from %d, best %d, by %d", w.Step, w.From, w.Best, w.By)
		}
		if w.Step == bee.CellsIn && w.Best != 11 {
			t.Errorf("cells into nucs on day %d, want the keeper's 11", w.Best)
		}
		if w.Step.String() == "" {
			t.Errorf("step %d has no words", w.Step)
		}
	}
}

// TestWindowsOfABatchAgree: whatever the hour of the graft, the larvae and their number,
// no day of one step lies in the days on which cells are left alone, cells are best given
// on a day with a morning before the hard hour, and an hour to be best out by is on it.
func TestWindowsOfABatchAgree(t *testing.T) {
	printed := map[string]bee.Step{"finisher": bee.ToFinisher, "cells in": bee.CellsIn, "emergence": bee.Emergence}
	rows, met := published(t, "rearing-calendars.csv"), 0
	for hour := 6; hour <= 20; hour += 2 {
		for _, cells := range []int{1, 10, 24, 60, 200} {
			for _, age := range []time.Duration{0, 30 * time.Hour, 54 * time.Hour} {
				at := time.Date(2027, time.May, 5, hour, 0, 0, 0, time.UTC)
				c := bee.Batch{Graft: at, Cells: cells, LarvaAge: age}.Clock(defaults)
				all := c.Windows(time.UTC)
				for _, w := range all {
					if w.From > w.Best || w.Best > w.By {
						t.Fatalf("%d cells of %v at %d: %v from %d, best %d, by %d", cells, age, hour, w.Step, w.From, w.Best, w.By)
					}
				}
				off, in := all[bee.HandsOff-1], all[bee.CellsIn-1]
				if all[bee.CellsCapped-1].By >= off.From || off.By >= in.From {
					t.Errorf("%d cells of %v at %d: hands off %d to %d between capped by %d and in from %d", cells, age, hour, off.From, off.By, all[bee.CellsCapped-1].By, in.From)
				}
				day := calendar.DayOf(at, time.UTC) + calendar.Day(in.Best)
				best := c.BestOn(day, time.UTC)
				if morning := day.At(12, 0, time.UTC); c.Hard().Before(morning) || best.After(c.Hard()) || calendar.DayOf(best, time.UTC) != day {
					t.Errorf("%d cells of %v at %d: best on %s by %v, hard by %v", cells, age, hour, day.Short(), best, c.Hard())
				}
				for _, row := range rows {
					step, is := printed[row["step"]]
					if !is || age != 0 || cells != 24 || hour < 14 { // as printed: usual larvae, one frame, in the afternoon
						continue
					}
					met++
					if from, by := days(t, row["day_from_graft"]); by < all[step-1].From || from > all[step-1].By || step == bee.CellsIn && in.Best != from {
						t.Errorf("at %d: %v on %d to %d, best %d; printed %d to %d", hour, step, all[step-1].From, all[step-1].By, all[step-1].Best, from, by)
					}
				}
			}
		}
	}
	if met == 0 {
		t.Error("no printed calendar was met")
	}
}

// TestWildCells is the day of a finisher that was given two combs with eggs
// and larvae on 12 May: searched from 16, at the latest on 21, a queen raised
// there could walk from 22 May. The batch grafted on the 15th is due out on
// the 25th: it would be lost.
func TestWildCells(t *testing.T) {
	in := time.Date(2027, time.May, 12, 0, 0, 0, 0, time.UTC)
	w := bee.WildCells(defaults)
	for _, c := range []struct {
		what string
		day  int
		want int
	}{
		{"search from", w.SearchFrom, 16},
		{"search well by", w.SearchWell, 18},
		{"search by", w.SearchBy, 21},
		{"walk", w.Walk, 22},
	} {
		if got := in.AddDate(0, 0, c.day).Day(); got != c.want {
			t.Errorf("%s %d May, want %d May", c.what, got, c.want)
		}
	}
	out := time.Date(2027, time.May, 15, 0, 0, 0, 0, time.UTC).AddDate(0, 0, window(t, bee.CellsIn).Best)
	if out.Day() != 25 || !in.AddDate(0, 0, w.Walk).Before(out) {
		t.Errorf("the batch is due out on %v, want 25 May, after the wild queen", out)
	}
}

func TestOwnCells(t *testing.T) {
	o := bee.OwnCells(defaults)
	if o != (bee.Own{BreakFrom: 5, BreakBy: 8, Emerge: 12}) {
		t.Errorf("OwnCells = %+v, want from day 5, by day 8, out on day 12", o)
	}
}
