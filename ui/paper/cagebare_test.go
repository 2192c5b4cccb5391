package paper_test

import (
	"bytes"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/paper"
)

// TestALabelOfACageWithoutANumber: it says from which nuc she came, by which she is told
// when she is handed over.
func TestALabelOfACageWithoutANumber(t *testing.T) {
	p := kitchen()
	p.At("2027-05-18 09:00").Write(book.QueenCaught{Nuc: booktest.Nuc("A3"), Queen: booktest.Queen("bare")})
	var out bytes.Buffer
	if _, err := paper.Cages(t.Context(), &out, reading(p, "2027-05-18 10:00"), book.OrderID{}, 0, paper.Options{}); err != nil {
		t.Fatal(err)
	}
	if text := all(read(t, out.Bytes())); !strings.Contains(text, "caught 18 May, from A3") {
		t.Errorf("her nuc is missing in\n%s", text)
	}
}
