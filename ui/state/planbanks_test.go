package state_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/ui/state"
)

// Banks have lanes on the page of the season, below the orders, and nowhere else; what is
// there too long is said.
func TestBanksHaveLanes(t *testing.T) {
	w := planner(t)
	if len(w.Banks()) != 0 || !w.Layout().Banks.Empty() {
		t.Fatal("banks beside the wish")
	}
	w.run("season").settled()
	all, l := w.Banks(), w.Layout()
	if len(all) != 2 || !all[0].Virgins || all[1].Virgins || l.Banks.Y != l.Strip.Bottom() || l.Banks.H != 2*state.BankHeight || l.Main.Y < l.Banks.Bottom() {
		t.Fatalf("%d banks in %+v, orders in %+v", len(all), l.Banks, l.Strip)
	}
	for i, want := range []string{"6 virgins, the first out by ", "6 mated queens, the first out by "} {
		if says, late := w.BankSays(all[i]); !strings.HasPrefix(says, want) || late {
			t.Errorf("%q, late %v", says, late)
		}
	}
	if says := w.BankName(all[0]) + ": " + w.BankWhy(all[0]); !strings.HasPrefix(says, "S11: since ") || !strings.Contains(says, "7 at most") || !strings.Contains(says, "days of age") {
		t.Errorf("why: %q", says)
	}
	loose := all[1]
	loose.Of = book.Subject{}
	if says := w.BankName(loose) + ": " + w.BankWhy(loose); !strings.HasPrefix(says, "cages: since ") || !strings.Contains(says, "in no bank mated queens keep for 3 days at most") {
		t.Errorf("why: %q", says)
	}
	b := all[0]
	b.Kept = slices.Clone(b.Kept)
	for i := range b.Kept {
		b.Kept[i].By = w.Today() - 1
		says, late := w.BankSays(b)
		if want := fmt.Sprintf("%d of them too long; the next out by ", i+1); i+1 < len(b.Kept) && !strings.Contains(says, want) || !late {
			t.Errorf("%d past their day: %q, late %v", i+1, says, late)
		}
	}
	if says, _ := w.BankSays(b); says != "6 virgins, too long since "+b.Last().Short() {
		t.Errorf("all past their day: %q", says)
	}
}

// Where more queens hang in a bank than it takes, both its lanes say how many more.
func TestABankThatIsFull(t *testing.T) {
	w := planner(t)
	few := w.Pen.IDs.Entries(calendar.Instantly(now), now, "Ida", book.NumberChanged{Number: practice.BankPlaces.String(), Value: 10})
	w.send(state.Opened{Book: w.Book.With(few...)}).settled()
	w.press("P", state.Alt).settled().run("season").settled()
	if len(w.Banks()) != 2 {
		t.Fatalf("%d banks", len(w.Banks()))
	}
	for _, b := range w.Banks() {
		if says, late := w.BankSays(b); !strings.HasSuffix(says, "; 2 more than it takes") || !late {
			t.Errorf("%q, late %v", says, late)
		}
	}
}
