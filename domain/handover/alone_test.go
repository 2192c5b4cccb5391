package handover_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

// Queens caged in no bank for longer than a cage keeps them are said with the order that misses them, once;
// those who hang in a bank go.
func TestCagedTooLongInNoBankIsSaid(t *testing.T) {
	for on, said := range map[string]bool{"2027-05-21 08:00": false, "2027-05-22 08:00": true} {
		p := awaited(0)
		for _, name := range []string{"a", "b"} {
			p.At("2027-05-18 12:00").Write(book.QueenDescribed{Queen: booktest.Queen(name), Line: "Rook"},
				book.QueenCaught{Nuc: booktest.Nuc("Rook" + name), Queen: booktest.Queen(name)})
		}
		p.Write(first(12, day(t, "2027-05-28")), second(8, day(t, "2027-05-29")))
		s := sheetOf(p.View(on))
		const want = "2 who would do are in cages since Tue 18 May, in no bank: look how they are before they go"
		if o := s.Orders[0]; strings.Contains(o.Warning, want) != said {
			t.Errorf("%s: order 1 misses %d, and says %q", on, o.Short, o.Warning)
		}
		if o := s.Orders[1]; strings.Contains(o.Warning, "in no bank") {
			t.Errorf("%s: order 2 says %q", on, o.Warning)
		}
	}
}
