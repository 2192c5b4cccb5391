package state_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// TestADayAsItWasKnownThen: a look of the 13th that was typed on the 15th counts on
// the 13th as known now, and not as known then.
func TestADayAsItWasKnownThen(t *testing.T) {
	pen := yardOfTheEvening()
	pen.In("2027-05-13", calendar.Morning)
	pen.Write(book.Looked{Nuc: booktest.Nuc("F4"), Eggs: book.SingleEggs})
	late := &pen.Entries[len(pen.Entries)-1]
	w := inTheEvening(t, pen)
	late.Written = w.Now
	w = inTheEvening(t, pen).run("yard")
	if w.press("J", state.Alt); w.Then || w.Note.Text == "" {
		t.Error("today can be shown as known then")
	}
	for w.Looked() > calendar.Date(2027, 5, 13) {
		w.press(",")
	}
	now := w.nuc("F4").Condition()
	if w.press("J", state.Alt); !w.AsThen() || w.nuc("F4").Condition() == now {
		t.Errorf("as known then F4 is %v, as now", w.nuc("F4").Condition())
	}
	for _, room := range []string{"today", "yard", "table"} {
		if w.run(room); !w.Reading().Then || w.Present().Then {
			t.Errorf("%s is not as known then", room)
		}
	}
	if rec, _ := state.CommandNamed("look"); rec.Reason(w.State) == "" {
		t.Error("it can be written to as it was known then")
	}
	if w.press("J", state.Alt); w.AsThen() || w.nuc("F4").Condition() != now {
		t.Error("the key does not lead back to what is known now")
	}
	if w.press("J", state.Alt).press("Home"); w.Then {
		t.Error("Home keeps what was known then")
	}
}
