package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/rules"
)

// Banks tell of each place and kind who is in it and until when, as the finding does.
func TestBanks(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 2))
	for label, day := range map[string]string{"1": "2027-05-18", "2": "2027-05-20"} {
		p.At(day + " 09:00").Write(book.VirginCaged{Queen: booktest.Queen("v" + label), Batch: batch(4), Label: label, Bank: booktest.Colony("K1")})
	}
	p.At("2027-05-21 09:00").Write(book.VirginCaged{Queen: booktest.Queen("v3"), Batch: batch(4), Label: "3"})
	v := p.View("2027-05-21 10:00")
	all := rules.Banks(v, course.New(v))
	if len(all) != 2 || !all[0].Virgins || all[0].Of != booktest.Colony("K1").Subject() || len(all[0].Kept) != 2 || len(all[1].Kept) != 1 || !all[1].Of.IsZero() {
		t.Fatalf("%+v", all)
	}
	day := func(text string) calendar.Day {
		d, err := calendar.ParseDay(text)
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	if b := all[0]; b.Since() != day("2027-05-18") || b.First() != day("2027-05-25") || b.Last() != day("2027-05-27") || b.Kept[0].From != day("2027-05-21") {
		t.Errorf("since %s, out from %s to %s", b.Since(), b.First(), b.Last())
	}
	found := of(v, rules.BankVirgins)
	if len(found) != 2 {
		t.Fatalf("%d findings", len(found))
	}
	for _, f := range found {
		for _, b := range all {
			if f.Of == b.Of && calendar.DayOf(f.By, p.Zone) != b.First() {
				t.Errorf("the finding has %s, the bank %s", calendar.DayOf(f.By, p.Zone), b.First())
			}
		}
	}
	if none := rules.Banks(p.View("2027-05-05 10:00"), course.New(p.View("2027-05-05 10:00"))); len(none) != 0 {
		t.Errorf("banks before anybody was caged: %+v", none)
	}
}
