package state_test

import (
	"runtime"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// TestDaysBeside: of a large book the days beside the one shown are read before they
// are asked for, that to which the keeper is under way first; of a small one nobody asks.
func TestDaysBeside(t *testing.T) {
	for _, row := range []struct {
		nucs int
		asks bool
	}{{4, false}, {600, true}} {
		season := book.NewSeason(booktest.Zones, booktest.Big(row.nucs, 60))
		s, effects := state.Update(state.State{Now: booktest.BigNow, Width: 1440, Height: 900}, state.Opened{Book: &state.Book{Season: season}})
		if _, ok := besideOf(effects); ok != row.asks {
			t.Fatalf("%d nucs, opened: days beside are asked for: %v", row.nucs, ok)
		}
		s, effects = state.Update(s, state.Ran{Command: "day on"})
		ask, ok := besideOf(effects)
		if ok != row.asks {
			t.Fatalf("%d nucs, a day on: days beside are asked for: %v", row.nucs, ok)
		}
		if !ok {
			continue
		}
		if day := s.Looked(); ask.Days != [2]calendar.Day{day + 1, day - 1} {
			t.Errorf("on %v the days %v are asked for", day, ask.Days)
		}
		s.Reading() // as the window does
		ask.Read()
		back, effects := state.Update(s, state.Ran{Command: "day back"})
		if ask, _ := besideOf(effects); ask.Days != [2]calendar.Day{back.Looked() - 1, back.Looked() + 1} {
			t.Errorf("going back to %v the days %v are asked for", back.Looked(), ask.Days)
		}
		for _, by := range []string{"day on", "day back", "day back"} {
			s, _ = state.Update(s, state.Ran{Command: by})
			if cost := mallocs(func() { s.Reading() }); cost > 100 {
				t.Errorf("%s: %d pieces of memory, so the day was read again", by, cost)
			}
		}
		if _, effects = state.Update(s, state.Ran{Command: "yard"}); len(effects) > 0 {
			if _, ok := besideOf(effects); ok {
				t.Error("another room asks for days")
			}
		}
	}
}

func besideOf(effects []state.Effect) (state.ReadBeside, bool) {
	for _, e := range effects {
		if e, ok := e.(state.ReadBeside); ok {
			return e, true
		}
	}
	return state.ReadBeside{}, false
}

// mallocs are the pieces of memory that something asks for.
func mallocs(do func()) uint64 {
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	do()
	runtime.ReadMemStats(&after)
	return after.Mallocs - before.Mallocs
}
