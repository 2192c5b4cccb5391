package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/rules"
)

// TestVirginsHaveANuc: virgins in cages are told the nuc that is free for the first,
// or that none is.
func TestVirginsHaveANuc(t *testing.T) {
	for _, c := range []struct {
		made []book.Fact
		want string
	}{
		{nil, "No nuc is free for the oldest virgins: make up a nuc, or cull them"},
		{madeUp("B1"), "Put in the oldest virgins, the first into B1"},
	} {
		p := pen(t)
		p.At("2027-05-13 18:00").Write(append(c.made, book.VirginCaged{Queen: booktest.Queen("v"), Batch: batch(4), Label: "3"})...)
		found := of(p.View("2027-05-16 10:00"), rules.BankVirgins)
		if len(found) != 1 || found[0].Do != c.want {
			t.Errorf("%+v, want %q", found, c.want)
		}
	}
}
