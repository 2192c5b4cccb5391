package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/rules"
)

// TestALineCostsTheNucsItReaches: judging a thousand nucs again after a line at
// one of them allocates for that one and for lists.
func TestALineCostsTheNucsItReaches(t *testing.T) {
	const nucs = 1000
	season := book.NewSeason(nil, booktest.Big(nucs, 60))
	before := season.At(booktest.BigNow)
	j := rules.Judge(before)
	var nuc book.NucID
	for n := range before.Nucs() {
		nuc = n.Nuc
	}
	pen := &booktest.Pen{Writer: "Ida M."}
	pen.At("2027-07-12 06:30").Write(book.Looked{Nuc: nuc, Queen: book.NoneSeen, Eggs: book.NoEggs})
	after := season.With(pen.Entries...)
	all := testing.AllocsPerRun(3, func() { rules.Judge(after.At(booktest.BigNow)) })
	again := testing.AllocsPerRun(3, func() { j.Again(after.At(booktest.BigNow)) })
	if again > nucs || again > all/10 {
		t.Errorf("%.0f allocations to judge %d nucs again after a line, %.0f to judge them all", again, nucs, all)
	}
}
