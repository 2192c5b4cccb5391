package paper_test

import (
	"bytes"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/paper"
)

// TestTheCardKnowsTheHardHour: on the sheet and the card of each batch stands
// the hard hour that the batch's clock tells, and on the card who can be rung.
func TestTheCardKnowsTheHardHour(t *testing.T) {
	r := demoDay(t)
	for _, b := range r.Batches() {
		hard := r.Course.Clock(b.Batch).Hard().In(zone).Format("Mon 2 Jan 15:04")
		var sheet, card bytes.Buffer
		if _, err := paper.Batch(t.Context(), &sheet, r, b.Batch, paper.Options{}); err != nil {
			t.Fatal(err)
		}
		if _, err := paper.Wallet(t.Context(), &card, r, paper.Options{}, b.Batch); err != nil {
			t.Fatal(err)
		}
		for what, text := range map[string]string{"sheet": all(read(t, sheet.Bytes())), "card": all(read(t, card.Bytes()))} {
			if !strings.Contains(text, hard) {
				t.Errorf("the %s of batch %d lacks %s:\n%s", what, b.Number, hard, text)
			}
			if strings.Contains(text, "…") {
				t.Errorf("the %s of batch %d cuts something:\n%s", what, b.Number, text)
			}
			if what == "sheet" {
				continue
			}
			for p := range r.View.People() {
				if !strings.Contains(text, p.Phone) {
					t.Errorf("the card of batch %d lacks the telephone of %s", b.Number, p.Name)
				}
			}
		}
	}
}

// TestEveryGiftStandsOnTheSheet: each nuc that got a cell of the batch.
func TestEveryGiftStandsOnTheSheet(t *testing.T) {
	r := demoDay(t)
	for _, b := range r.Batches() {
		var out bytes.Buffer
		if _, err := paper.Batch(t.Context(), &out, r, b.Batch, paper.Options{Large: true}); err != nil {
			t.Fatal(err)
		}
		pages := read(t, out.Bytes())
		for _, g := range b.Given {
			if name := r.View.Nuc(g.Nuc).Name; count(pages, name) == 0 {
				t.Errorf("the sheet of batch %d lacks %s", b.Number, name)
			}
		}
	}
}

// TestCardsOfWhatIsTogether: without a batch named, those with cells together.
func TestCardsOfWhatIsTogether(t *testing.T) {
	r := demoDay(t)
	want := 0
	for _, b := range r.Batches() {
		if b.Left() > 0 {
			want++
		}
	}
	var out bytes.Buffer
	if _, err := paper.Wallet(t.Context(), &out, r, paper.Options{}); err != nil {
		t.Fatal(err)
	}
	if got := strings.Count(all(read(t, out.Bytes())), "Cells out by"); got != want || want == 0 {
		t.Errorf("%d cards, want %d", got, want)
	}
}

func TestNoSuchBatch(t *testing.T) {
	r := reading(hill(), "2027-04-21 06:40") // before the graft
	none := booktest.Batch("none")
	var out bytes.Buffer
	for what, err := range map[string]error{
		"sheet":            second(paper.Batch(t.Context(), &out, r, none, paper.Options{})),
		"card":             second(paper.Wallet(t.Context(), &out, r, paper.Options{}, none)),
		"sheet too early":  second(paper.Batch(t.Context(), &out, r, booktest.Batch("1"), paper.Options{})),
		"cards, no batch":  second(paper.Wallet(t.Context(), &out, r, paper.Options{})),
		"sheet of no name": second(paper.Batch(t.Context(), &out, r, book.BatchID{}, paper.Options{})),
	} {
		if err == nil || !strings.Contains(err.Error(), "name ") {
			t.Errorf("%s: %v", what, err)
		}
	}
	if out.Len() > 0 {
		t.Errorf("%d bytes were written", out.Len())
	}
}

func second(_ int, err error) error { return err }
