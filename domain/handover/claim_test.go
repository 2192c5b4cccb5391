package handover_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/handover"
)

// Claims of an order are never of more queens than went with it, and no queen is
// claimed twice; what is refused says how many went, and when.
func TestClaimsAreHeldAgainstWhoWent(t *testing.T) {
	p := sold() // three went on 19 June, two are claimed on the 21st, one of them by name
	claim := func(queens int, of ...string) book.Claimed {
		c := book.Claimed{Order: booktest.Order("31"), Queens: queens, How: book.DeadOnArrival}
		for _, name := range of {
			c.Of = append(c.Of, booktest.Queen(name))
		}
		return c
	}
	for _, c := range []struct {
		on    string
		claim book.Claimed
		says  string // "": it is right
	}{
		{"2025-06-18 18:00", claim(1), "none of its queens was handed over yet"},
		{"2025-06-20 08:00", claim(3), ""},
		{"2025-06-20 08:00", claim(4), "claim of 4 queens: of order 31, 3 went out on Thu 19 Jun; claim 3 at most"},
		{"2025-06-22 08:00", claim(1), ""},
		{"2025-06-22 08:00", claim(2), "2 claimed before; claim 1 at most"},
		{"2025-06-22 08:00", claim(1, "13"), ""},
		{"2025-06-22 08:00", claim(1, "12"), "claimed already"},
		{"2025-06-22 08:00", claim(1, "77"), "did not go with order 31"},
	} {
		err := handover.CheckClaim(p.View(c.on), c.claim)
		if c.says == "" && err != nil || c.says != "" && (err == nil || !strings.Contains(err.Error(), c.says)) {
			t.Errorf("%s, %+v: %v, want %q", c.on, c.claim, err, c.says)
		}
	}
	p.At("2025-06-23 12:00").Write(claim(1, "13"))
	if err := handover.CheckClaim(p.View("2025-06-24 08:00"), claim(1)); err == nil || !strings.Contains(err.Error(), "no more can be claimed") {
		t.Errorf("all three are claimed, one more is %v", err)
	}
	// Those who replace them can be claimed in their turn.
	p.At("2025-06-25 12:00").Write(book.QueenHandedOver{Queen: booktest.Queen("20"), Order: booktest.Order("31")})
	if err := handover.CheckClaim(p.View("2025-06-26 08:00"), claim(1)); err != nil {
		t.Error(err)
	}
	if got := handover.WentOf(p.View("2025-06-26 08:00"), p.View("2025-06-26 08:00").Order(booktest.Order("31"))); len(got) != 2 || got[0].Queens != 3 || got[1].Queens != 1 {
		t.Errorf("hand-overs %+v", got)
	}
}
