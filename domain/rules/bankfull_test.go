package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// A queen who is to be caught into a bank for her order finds no place where another one hangs
// in the only cage that it takes: it is told for the day of the catch. Where the bank takes two,
// or the other one is gone by then, nothing is.
func TestNoPlaceInTheBank(t *testing.T) {
	told := func(places float64, gone bool) []rules.Finding {
		p := pen(t)
		layingOn1June(p)
		p.At("2027-06-11 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
		p.At("2027-06-12 18:00").Write(
			book.NumberChanged{Number: practice.BankPlaces.String(), Value: places},
			book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 1, Line: "Rook", By: calendar.Date(2027, 7, 25)},
			book.VirginCaged{Queen: booktest.Queen("v"), Batch: batch(4), Label: "1", Bank: booktest.Colony("K1")})
		if gone {
			p.Write(book.QueenEnded{Queen: booktest.Queen("v"), How: book.QueenCulled})
		}
		return of(p.View("2027-06-20 09:00"), rules.BankFull)
	}
	if all := told(2, false); len(all) != 0 {
		t.Errorf("two places: %s", all[0].What)
	}
	if all := told(1, true); len(all) != 0 {
		t.Errorf("she is gone: %s", all[0].What)
	}
	all := told(1, false)
	if len(all) != 1 || all[0].What != "no place in a bank for 1 queen on "+calendar.DayOf(all[0].Best, nil).Short() || all[0].Severity == rules.Pressing {
		t.Fatalf("%+v", all)
	}
	t.Log(all[0].What, "|", all[0].Why, "|", all[0].Do)
}

// Each bank that is over-full is told, and beside it that there is no place for a queen who is to
// come; a cage in a colony that is no bank takes no place of one.
func TestEachFullBankIsTold(t *testing.T) {
	told := func(second bool, banks ...string) (all []string) {
		p := pen(t)
		layingOn1June(p)
		p.At("2027-06-11 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
		p.At("2027-06-12 18:00").Write(
			book.NumberChanged{Number: practice.BankPlaces.String(), Value: 1},
			book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 1, Line: "Rook", By: calendar.Date(2027, 7, 25)})
		role := map[bool]book.Role{false: book.Finisher, true: book.Bank}[second]
		p.Write(book.ColonyDescribed{Colony: booktest.Colony("K2"), Name: "K2", Yard: booktest.Yard("home"), Roles: []book.Role{role}})
		for i, in := range banks {
			p.Write(book.VirginCaged{Queen: booktest.Queen(string(rune('a' + i))), Batch: batch(4), Label: string(rune('1' + i)), Bank: booktest.Colony(in)})
		}
		for _, f := range of(p.View("2027-06-20 09:00"), rules.BankFull) {
			all = append(all, f.What)
		}
		return all
	}
	if all := told(true, "K1", "K1", "K2", "K2"); len(all) != 3 {
		t.Errorf("two full banks and one who is to come: %q", all)
	}
	if all := told(true, "K1"); len(all) != 0 {
		t.Errorf("one of two banks is free: %q", all)
	}
	if all := told(false, "K2"); len(all) != 0 {
		t.Errorf("the cage hangs in no bank: %q", all)
	}
}
