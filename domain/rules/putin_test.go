package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/practice"
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

// TestOldVirginsAreCulled: virgins few of whom mate any more are not sent into the nuc that
// is free, by the keeper's own bound and from the hour at which putting one in is minded.
func TestOldVirginsAreCulled(t *testing.T) {
	// Of batch 4 half are out on Mon 17 May at 06:00, of batch 5 five days later.
	const younger = "Put in the oldest virgins, the first into B1"
	const cull = "Cull them: few virgins of 21 days and more mate"
	for _, c := range []struct {
		at    string
		both  bool
		bound float64
		want  string
	}{
		{at: "2027-06-06 18:00", want: younger},
		{at: "2027-06-08 18:00", want: cull},
		{at: "2027-06-08 18:00", both: true, want: "Cull 1 of them: few virgins of 21 days and more mate. Put in the oldest of the others, the first into B1"},
		{at: "2027-06-15 18:00", both: true, want: cull},
		{at: "2027-06-08 18:00", bound: 24, want: younger},
		{at: "2027-06-06 18:00", bound: 18, want: "Cull them: few virgins of 18 days and more mate"},
	} {
		p := pen(t)
		p.At("2027-05-05 18:00").Write(graft(4, 2))
		p.At("2027-05-10 18:00").Write(graft(5, 2))
		p.At("2027-05-17 18:00").Write(book.VirginCaged{Queen: booktest.Queen("v"), Batch: batch(4), Label: "3"})
		if c.both {
			p.At("2027-05-22 18:00").Write(book.VirginCaged{Queen: booktest.Queen("w"), Batch: batch(5), Label: "4"})
		}
		if c.bound > 0 {
			p.Write(book.NumberChanged{Number: practice.VirginLate.String(), Value: c.bound})
		}
		p.At("2027-06-05 18:00").Write(madeUp("B1")...)
		v := p.View(c.at)
		found := of(v, rules.BankVirgins)
		if len(found) != 1 || found[0].Do != c.want {
			t.Errorf("%s: %+v, want %q", c.at, found, c.want)
		}
	}
}
