package rules_test

import (
	"testing"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// TestFullSizeCombs: a side of the keeper's figure is a full comb, one under it
// is small and fills up; full ones take longer to look over.
func TestFullSizeCombs(t *testing.T) {
	for _, row := range []struct {
		side, figure float64
		full         bool
	}{{0, 6, false}, {2, 6, false}, {5.9, 6, false}, {6, 6, true}, {8, 6, true}, {6, 7, false}, {7, 7, true}} {
		p := pen(t)
		p.Write(book.NumberChanged{Number: practice.FullCombSide.String(), Value: row.figure},
			book.NucNamed{Nuc: a1, Name: "A1", Sides: 6, Side: row.side})
		layingOn1June(p)
		v := p.View("2027-06-13 18:00")
		fills := len(of(v, rules.Full)) == 1
		if small := row.side > 0 && !row.full; fills != small {
			t.Errorf("a side of %g dm², full from %g: fills up %v, want %v", row.side, row.figure, fills, small)
		}
		want := v.Numbers().Get(practice.MinutesLook)
		if row.full {
			want = v.Numbers().Get(practice.MinutesLookFrameNuc)
		}
		got := 0.0
		for _, s := range rules.Day(v, v.Today()).Stops {
			for _, task := range s.Tasks {
				if task.Act == rules.ActLookForBrood {
					got += task.Minutes
				}
			}
		}
		if got != want {
			t.Errorf("a side of %g dm², full from %g: %g min of looking, want %g", row.side, row.figure, got, want)
		}
	}
}

// TestAskedBack: counts and lines written twice are asked for on seven days,
// today among them, and no longer.
func TestAskedBack(t *testing.T) {
	for _, row := range []struct {
		at   string
		days float64
		asks bool
	}{
		{"2027-05-15 20:00", 7, true},
		{"2027-05-21 20:00", 7, true},
		{"2027-05-22 08:00", 7, false},
		{"2027-05-15 20:00", 1, true},
		{"2027-05-16 08:00", 1, false},
	} {
		p := pen(t)
		p.Write(book.NumberChanged{Number: practice.AskedBack.String(), Value: row.days})
		p.At("2027-05-05 18:00").Write(graft(4, 9))
		p.At("2027-05-13 18:00").Write(madeUp("A1")...)
		p.At("2027-05-15 10:00").Write(cells(4, "A1")...)
		p.Write(book.TakenAlong{What: book.Cages, Count: 2})
		p.Writer = "Jon"
		p.At("2027-05-15 10:30").Write(cells(4, "A1")...)
		v := p.View(row.at)
		missing := 0
		for _, f := range of(v, rules.Counts) {
			if f.Of.Kind == book.KindYard {
				missing++
			}
		}
		if twins := len(of(v, rules.Twice)); (twins == 1) != row.asks || (missing == 1) != row.asks {
			t.Errorf("%s, asked back %g days: %d counts, %d twins, want %v", row.at, row.days, missing, twins, row.asks)
		}
	}
}

// TestSixHoursAreEnough: a cell is refused until the very hour, and no longer.
func TestSixHoursAreEnough(t *testing.T) {
	for at, refused := range map[string]bool{"2027-06-20 23:59": true, "2027-06-21 00:00": false} {
		p := pen(t)
		caughtOn20June(p)
		got := rules.Check(p.View(at), rules.GiveCell{Nuc: a1})
		if (len(got.Refused) > 0) != refused {
			t.Errorf("caught at 18:00, a cell at %s: %+v, want refused %v", at, got, refused)
		}
	}
	for at, warned := range map[string]bool{"2027-05-13 23:59": true, "2027-05-14 00:00": false} {
		p := pen(t)
		waiting(p)
		got := rules.Check(p.View(at), rules.GiveCell{Nuc: a1})
		if (len(got.Warned) > 0) != warned {
			t.Errorf("made up at 18:00, a cell at %s: %+v, want warned %v", at, got, warned)
		}
	}
}

// TestLateSoon: the ways out are worth reckoning from two days before the hard
// hour until no cell is left.
func TestLateSoon(t *testing.T) {
	p := lateBatch(t)
	clock := func(v *book.View) bee.Clock { return v.Batch(batch(4)).Bee(24).Clock(v.Numbers()) }
	hard := clock(p.View("2027-05-11 18:00")).Hard()
	for wait, want := range map[time.Duration]bool{
		-49 * time.Hour: false, -48*time.Hour - time.Second: false, -48 * time.Hour: true, -time.Hour: true, time.Hour: true,
	} {
		v := book.NewSeason(booktest.Zones, p.Entries).At(hard.Add(wait))
		if got := rules.LateSoon(v, batch(4), clock(v)); got != want {
			t.Errorf("%v from the hard hour: %v, want %v", wait, got, want)
		}
	}
	p.At("2027-05-14 18:00").Write(book.CellsCulled{Batch: batch(4), Cells: 24})
	if v := p.View("2027-05-15 18:00"); rules.LateSoon(v, batch(4), clock(v)) {
		t.Error("no cell is left and the card is reckoned")
	}
}

// TestHoursOfTheLateDay: the loss is told for now, two later hours of the
// keeper's and the next free one.
func TestHoursOfTheLateDay(t *testing.T) {
	p := lateBatch(t)
	p.Write(book.NumberChanged{Number: practice.LateLossFirst.String(), Value: 3}, book.NumberChanged{Number: practice.LateLossSecond.String(), Value: 13})
	v := p.View("2027-05-15 20:00")
	card, _ := rules.LateDay(v, batch(4), instant(t, "2027-05-17 18:00"))
	want := []string{"2027-05-15 20:00", "2027-05-15 23:00", "2027-05-16 09:00", "2027-05-17 18:00"}
	if len(card.Losses) != len(want) {
		t.Fatalf("%d losses, want %d", len(card.Losses), len(want))
	}
	for i, l := range card.Losses {
		if !l.By.Equal(instant(t, want[i])) {
			t.Errorf("loss %d is told for %v, want %s", i, l.By, want[i])
		}
	}
	card, _ = rules.LateDay(v, batch(4), instant(t, "2027-05-16 09:00").Add(20*time.Second))
	if n := len(card.Losses); n != 3 {
		t.Errorf("%d losses, want 3: two of one minute are told once", n)
	}
}

// TestShortNotice: nobody is free on Friday. A deadline at eight on Saturday falls
// on Friday's hours when twelve hours are short notice, not when one is.
func TestShortNotice(t *testing.T) {
	for hours, want := range map[float64]int{12: 1, 1: 0} {
		p := pen(t)
		p.Write(book.NumberChanged{Number: practice.ShortNotice.String(), Value: hours})
		p.At("2027-05-05 08:00").Write(graft(4, 24))
		p.Write(book.DaysOff{Person: booktest.Person("Ida"), From: calendar.Date(2027, 5, 14), To: calendar.Date(2027, 5, 14)})
		v := p.View("2027-05-13 09:00")
		hard := of(v, rules.CellsOut)[0].By.In(p.Zone)
		if hard.Day() != 15 || hard.Hour() != 8 {
			t.Fatalf("the hard hour is %v, want Saturday 15 May after eight", hard)
		}
		if got := len(of(v, rules.NoHands)); got != want {
			t.Errorf("short notice of %g h: nobody is free %d times, want %d", hours, got, want)
		}
	}
}
