package view_test

import (
	"fmt"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/state"
)

// big is a window on a book of n nucs in yards of 400, a batch of virgins in
// each.
func big(tb testing.TB, n int) state.State {
	tb.Helper()
	pen := &booktest.Pen{Zone: zone, Writer: "big"}
	pen.At("2027-04-20 10:00")
	var all book.BatchID
	for i := range n {
		yard := fmt.Sprintf("yard %02d", i/400)
		stand := fmt.Sprintf("%s stand %d", yard, i/4)
		if i%400 == 0 {
			all = booktest.Batch(yard)
			pen.Write(book.YardDescribed{Yard: booktest.Yard(yard), Name: yard, Zone: "Europe/Berlin"},
				book.Grafted{Batch: all, Number: i/400 + 1, Larvae: 500, Line: "Plover"})
		}
		if i%4 == 0 {
			pen.Write(book.StandSet{
				Stand: booktest.Stand(stand), Yard: booktest.Yard(yard), Letter: fmt.Sprint("S", i/4),
				At: book.Point{X: float64(i % 40), Y: float64(i / 40 % 10)}, Places: 4,
			})
		}
		nuc := booktest.Nuc(fmt.Sprint(i))
		pen.Write(book.NucNamed{Nuc: nuc, Name: fmt.Sprint("S", i), Sides: 6},
			book.NucPlaced{Nuc: nuc, Yard: booktest.Yard(yard), Stand: booktest.Stand(stand), Place: i%4 + 1},
			book.NucMadeUp{Nuc: nuc, Cups: 3}, book.CellGiven{Nuc: nuc, Batch: all},
			book.Looked{Nuc: nuc, Queen: book.VirginSeen, Sides: book.Said(5)})
	}
	b := &state.Book{Season: book.NewSeason(time.LoadLocation, pen.Entries), Name: "big"}
	return state.State{Book: b, Now: today.At(7, 10, zone), Width: 1440, Height: 900}
}

// yardstick is a window on 10,000 nucs and half a million entries.
func yardstick(b *testing.B) state.State {
	b.Helper()
	season := book.NewSeason(time.LoadLocation, booktest.Big(10_000, 60))
	return state.State{
		Book: &state.Book{Season: season, Name: "big"}, Now: booktest.BigNow, Width: 1440, Height: 900, Room: state.Yard,
	}
}

// BenchmarkDayChange draws the window on another day every time. All but a few
// milliseconds is BenchmarkReadDay, which folds every nuc of that day and runs
// the rules, beside its floor in state.
func BenchmarkDayChange(b *testing.B) {
	for _, pane := range []state.Pane{state.Split, state.Wall, state.Table} {
		b.Run(fmt.Sprint("pane", pane), func(b *testing.B) {
			s := yardstick(b)
			s.Pane = pane
			window(s)
			d := s.Today()
			for b.Loop() {
				d++
				s.Day = d
				window(s)
			}
		})
	}
}

// BenchmarkDayBeside draws the window on a day that was read meanwhile, as when the
// keeper looked at the one before for a moment; its floor is BenchmarkSameDay.
func BenchmarkDayBeside(b *testing.B) {
	s := yardstick(b)
	s, _ = state.Update(s, state.Opened{Book: s.Book})
	window(s)
	for b.Loop() {
		b.StopTimer()
		var effects []state.Effect
		s, effects = state.Update(s, state.Ran{Command: "day on"})
		window(s)
		for _, e := range effects {
			if e, ok := e.(state.ReadBeside); ok {
				e.Read()
			}
		}
		b.StartTimer()
		s, _ = state.Update(s, state.Ran{Command: "day on"})
		window(s)
	}
}

// BenchmarkSameDay draws the window again, as when the pointer moves.
func BenchmarkSameDay(b *testing.B) {
	for _, pane := range []state.Pane{state.Split, state.Wall, state.Table} {
		b.Run(fmt.Sprint("pane", pane), func(b *testing.B) {
			s := yardstick(b)
			s.Pane = pane
			window(s)
			for b.Loop() {
				window(s)
			}
		})
	}
}
