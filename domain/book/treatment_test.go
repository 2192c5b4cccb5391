package book_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
)

// TestTheLongestWaitCounts: a second treatment does not shorten the first one's
// wait, and every kind of subject keeps its own.
func TestTheLongestWaitCounts(t *testing.T) {
	s1, low := booktest.Colony("S1"), booktest.Yard("low")
	for _, of := range []book.Subject{l7.Subject(), s1.Subject(), low.Subject()} {
		pen := &booktest.Pen{}
		pen.At("2027-05-01 10:00").Write(book.Treated{Of: of, With: "formic acid", Wait: 14})
		pen.At("2027-05-03 10:00").Write(book.Treated{Of: of, With: "oxalic acid", Wait: 2})
		pen.Write(book.Treated{Of: booktest.Nuc("other").Subject(), With: "thymol", Wait: 90})
		treated := func(at string) book.Treatment {
			v := pen.View(at)
			return map[book.Subject]book.Treatment{
				l7.Subject(): v.Nuc(l7).Treated, s1.Subject(): v.Colony(s1).Treated, low.Subject(): v.Yard(low).Treated,
			}[of]
		}
		if early := treated("2027-04-30 00:00"); early.Waits(day("2027-04-30"), time.UTC) {
			t.Errorf("%s waits before it was treated: %+v", of, early)
		}
		got := treated("2027-05-10 00:00")
		if got.With != "formic acid" || got.Until(time.UTC) != day("2027-05-15") {
			t.Errorf("%s: %+v until %s, want formic acid until 15 May", of, got, got.Until(time.UTC))
		}
		for on, want := range map[string]bool{"2027-04-30": false, "2027-05-01": true, "2027-05-14": true, "2027-05-15": false} {
			if got.Waits(day(on), time.UTC) != want {
				t.Errorf("%s waits on %s: %v, want %v", of, on, !want, want)
			}
		}
	}
	pen := (&booktest.Pen{}).At("2027-05-01 10:00").Write(book.Treated{Of: l7.Subject(), With: "formic acid", Wait: 14})
	pen.At("2027-05-05 10:00").Write(book.Treated{Of: l7.Subject(), With: "thymol", Wait: 10})
	if got := pen.View("2027-05-10 00:00").Nuc(l7).Treated; got.With != "thymol" {
		t.Errorf("of two that end together %s counts, want the last", got.With)
	}
	if (book.Treatment{}).Waits(calendar.Date(2027, 5, 1), time.UTC) {
		t.Error("what was not treated waits")
	}
}

// TestANewLifeWasNotTreated: bees put into an empty box are others.
func TestANewLifeWasNotTreated(t *testing.T) {
	n := lived(step{1, book.NucMadeUp{Nuc: l7}}, step{2, book.Treated{Of: l7.Subject(), With: "oxalic acid", Wait: 90}},
		step{8, book.ShakenOut{Nuc: l7}}, step{9, book.NucMadeUp{Nuc: l7}})
	if n.Treated != (book.Treatment{}) {
		t.Errorf("treated %+v, want not", n.Treated)
	}
}
