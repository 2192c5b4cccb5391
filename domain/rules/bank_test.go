package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// TestHowLongVirginsAreKept: well for three days and seven at most (Bigio, Grueter &
// Ratnieks 2012, PLoS ONE), and no older than three weeks (Büchler et al. 2013): she who
// is caged in her last days has only those, and is due when they begin to be the last.
func TestHowLongVirginsAreKept(t *testing.T) {
	for _, c := range []struct {
		caged    string
		from, by int // days after it
	}{
		{"2027-05-18", 3, 7},
		{"2027-06-02", 3, 6}, // three weeks old on 8 June
		{"2027-06-05", 3, 3},
		{"2027-06-07", 1, 1},
	} {
		p := pen(t)
		p.At("2027-05-05 18:00").Write(graft(4, 2))
		p.At(c.caged + " 09:00").Write(book.VirginCaged{Queen: booktest.Queen("v1"), Batch: batch(4), Label: "1", Bank: booktest.Colony("K1")})
		found := of(p.View(c.caged+" 10:00"), rules.BankVirgins)
		if len(found) != 1 {
			t.Fatalf("caged on %s: %d findings", c.caged, len(found))
		}
		caged, err := calendar.ParseDay(c.caged)
		if err != nil {
			t.Fatal(err)
		}
		from, by := calendar.DayOf(found[0].From, p.Zone).Sub(caged), calendar.DayOf(found[0].By, p.Zone).Sub(caged)
		if from != c.from || by != c.by {
			t.Errorf("caged on %s: from %d to %d days after, want %d to %d", c.caged, from, by, c.from, c.by)
		}
	}
}
