package rules_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/rules"
)

// joined are A1 and B1 made up on 1 May, with what else was written since.
func joined(t *testing.T, more func(p *booktest.Pen)) *booktest.Pen {
	t.Helper()
	p := pen(t)
	p.At("2027-05-01 18:00").Write(madeUp("A1", "B1")...)
	p.At("2027-05-05 18:00").Write(graft(4, 4))
	more(p)
	return p
}

// TestUnite: of two queens one stays, laying workers suffer none, and no bees are put
// together on a standstill, among robbers, or where they stay too few. Common practice,
// no source; the words are the rule's own.
func TestUnite(t *testing.T) {
	b1 := booktest.Nuc("B1")
	eggs := func(name string) book.Fact {
		return look(name, book.Looked{Eggs: book.SingleEggs, Sides: book.Said(6)})
	}
	bees := func(name string, sides int) book.Fact {
		return look(name, book.Looked{Eggs: book.NoEggs, Sides: book.Said(float64(sides))})
	}
	for _, row := range []struct {
		name            string
		write           func(p *booktest.Pen)
		at              string
		with            book.Subject
		refused, warned string // the beginning of one of them; "": there is none
	}{
		{"nobody with nobody", func(p *booktest.Pen) {
			p.At("2027-05-09 10:00").Write(bees("A1", 6), bees("B1", 6))
		}, "2027-05-09 19:00", b1.Subject(), "", ""},
		{"nobody with a laying queen", func(p *booktest.Pen) {
			p.At("2027-05-09 10:00").Write(bees("A1", 6), eggs("B1"))
		}, "2027-05-09 19:00", b1.Subject(), "", ""},
		{"two laying queens", func(p *booktest.Pen) {
			p.At("2027-05-09 10:00").Write(eggs("A1"), eggs("B1"))
		}, "2027-05-09 19:00", b1.Subject(), "A1 and B1 both have a laying queen (eggs seen Sun 9 May; eggs seen Sun 9 May)", ""},
		{"a laying queen to a colony", func(p *booktest.Pen) {
			p.At("2027-05-09 10:00").Write(eggs("A1"))
		}, "2027-05-09 19:00", booktest.Colony("S2").Subject(), "A1 and", ""},
		{"a cell with a laying queen", func(p *booktest.Pen) {
			p.At("2027-05-09 10:00").Write(eggs("B1"))
			p.At("2027-05-15 10:00").Write(cells(4, "A1")...)
		}, "2027-05-15 19:00", b1.Subject(), "", "A1 holds a cell"},
		{"a virgin with a laying queen", func(p *booktest.Pen) {
			p.At("2027-05-09 10:00").Write(eggs("B1"))
			p.At("2027-05-15 10:00").Write(cells(4, "A1")...)
		}, "2027-05-20 19:00", b1.Subject(), "A1 waits for a queen", ""},
		{"two virgins", func(p *booktest.Pen) {
			p.At("2027-05-15 10:00").Write(cells(4, "A1", "B1")...)
		}, "2027-05-20 19:00", b1.Subject(), "", "A1 and B1 both wait for a queen"},
		{"while she flies", func(p *booktest.Pen) {
			p.At("2027-05-15 10:00").Write(cells(4, "B1")...)
		}, "2027-05-25 13:00", b1.Subject(), "", "a virgin of"},
		{"laying workers", func(p *booktest.Pen) {
			p.At("2027-05-09 10:00").Write(eggs("B1"), look("A1", book.Looked{Eggs: book.ManyEggs}))
		}, "2027-05-09 19:00", b1.Subject(), "A1: laying workers", ""},
		{"with laying workers", func(p *booktest.Pen) {
			p.At("2027-05-09 10:00").Write(look("B1", book.Looked{Eggs: book.ManyEggs}))
		}, "2027-05-09 19:00", b1.Subject(), "", "B1: laying workers"},
		{"a drone layer", func(p *booktest.Pen) {
			p.At("2027-05-09 10:00").Write(eggs("B1"), look("A1", book.Looked{DroneBrood: true}))
		}, "2027-05-09 19:00", b1.Subject(), "A1 has a drone layer", ""},
		{"a torn cell", func(p *booktest.Pen) {
			p.At("2027-05-09 10:00").Write(eggs("B1"))
			p.At("2027-05-15 10:00").Write(cells(4, "A1")...)
			p.At("2027-05-17 10:00").Write(look("A1", book.Looked{Cell: book.CellTornAtSide}))
		}, "2027-05-17 19:00", b1.Subject(), "", "a virgin of its own may walk in A1"},
		{"weak with weak", func(p *booktest.Pen) {
			p.At("2027-05-09 10:00").Write(bees("A1", 1), bees("B1", 1))
		}, "2027-05-09 19:00", b1.Subject(), "", "together they have about"},
		{"own cells", func(p *booktest.Pen) {
			p.At("2027-05-09 10:00").Write(eggs("B1"), look("A1", book.Looked{OwnCells: book.Said(2)}))
		}, "2027-05-09 19:00", b1.Subject(), "", "A1: own cells seen Sun 9 May"},
		{"robbers", func(p *booktest.Pen) {
			p.At("2027-05-09 10:00").Write(book.Robbed{Nuc: a1})
		}, "2027-05-09 12:00", b1.Subject(), "robbers in the yard", "robbers were seen at A1"},
		{"a standstill", func(p *booktest.Pen) {
			p.At("2027-05-09 10:00").Write(book.DiseaseSuspected{Of: a1.Subject(), What: "foulbrood"})
		}, "2027-05-09 19:00", b1.Subject(), "Quillbank is on standstill", ""},
		{"an empty one", func(p *booktest.Pen) {}, "2027-05-09 19:00", booktest.Nuc("A2").Subject(), "A2 is empty", ""},
		{"itself", func(p *booktest.Pen) {}, "2027-05-09 19:00", a1.Subject(), "A1 cannot be united with itself", ""},
	} {
		v := joined(t, row.write).View(row.at)
		verdict := rules.Judge(v).May(rules.PlanOf(v, book.United{Nuc: a1, With: row.with}))
		if !begins(verdict.Refused, row.refused) || !begins(verdict.Warned, row.warned) {
			t.Errorf("%s: refused %+v, warned %+v; want %q and %q", row.name, verdict.Refused, verdict.Warned, row.refused, row.warned)
		}
		for _, r := range append(verdict.Refused, verdict.Warned...) {
			if r.Do == "" || len(r.Used) == 0 && len(verdict.Refused) == 0 {
				t.Errorf("%s: %q offers no way out, or no number of the rules", row.name, r.Why)
			}
		}
	}
}

// begins tells whether a reason begins so; with "", whether there is none.
func begins(all []rules.Reason, want string) bool {
	for _, r := range all {
		if want != "" && strings.HasPrefix(r.Why, want) {
			return true
		}
	}
	return want == "" && len(all) == 0
}

// TestMayWithOwnCells: what the work of the day has broken down before a cell is given,
// or a virgin, is minded with the words of its finding, and only once it is open.
func TestMayWithOwnCells(t *testing.T) {
	p := pen(t)
	p.At("2027-05-01 18:00").Write(madeUp("A1")...)
	p.At("2027-05-05 18:00").Write(graft(4, 4))
	p.At("2027-05-08 10:00").Write(look("A1", book.Looked{Eggs: book.SingleEggs, Larvae: true, Sides: book.Said(6)}))
	p.At("2027-05-09 10:00").Write(book.QueenCaught{Nuc: a1})
	for at, want := range map[string]string{"2027-05-10 18:00": "", "2027-05-15 10:00": "Break down own cells first"} {
		judged := rules.Judge(p.View(at))
		for _, plan := range []rules.Intent{rules.GiveCell{Nuc: a1}, rules.PutInVirgin{Nuc: a1}} {
			got := ""
			for _, r := range judged.May(plan).Warned {
				if strings.HasPrefix(r.Why, "A1: it can raise a queen of its own, caught Sun 9 May") {
					got = r.Do
				}
			}
			if got != want {
				t.Errorf("%s, %T: %q, want %q", at, plan, got, want)
			}
		}
	}
}
