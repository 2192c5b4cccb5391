package state

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// NucsOf are the nucs that hold a queen of a batch, in walking order.
func (r *Reading) NucsOf(batch book.BatchID) (all []*Nuc) {
	for _, n := range r.Nucs {
		if n.Holds.Batch == batch {
			all = append(all, n)
		}
	}
	return all
}

func noBatchChosen(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if s.chosenBatch().IsZero() {
		return "select a batch, or a nuc that holds one of its queens"
	}
	if _, planned := s.Present().View.BatchPlan(s.chosenBatch()); planned {
		return "it is planned and not grafted yet: its card says all of it"
	}
	return ""
}

// chosenBatch is the batch selected, or that of the chosen nuc; while nothing is
// chosen, the one whose card shows.
func (s State) chosenBatch() book.BatchID {
	if id, ok := s.Selection.Last().Batch(); ok {
		return id
	}
	if n := s.chosen(); n != nil {
		return n.Holds.Batch
	}
	return s.CardBatch()
}

// CardBatch is the batch whose card shows while nothing is chosen: on Today the one
// whose hard hour comes first; zero for none.
func (s State) CardBatch() book.BatchID {
	if s.Room != Today || s.Selection.Len() > 0 || s.Book == nil {
		return book.BatchID{}
	}
	for _, f := range s.Reading().Plan().Hard {
		if id, ok := f.Of.Batch(); ok {
			return id
		}
	}
	return book.BatchID{}
}

// toBatchRoom is the window with a batch filling Yard.
func (s State) toBatchRoom() State {
	batch := s.chosenBatch().Subject()
	s = s.entered(Yard)
	s.Fill, s.FillOf, s.Selection = BatchFill, batch, Select(batch)
	return s.scrolled(FillPlace, s.clockNow()-s.Scroll[FillPlace])
}

// clockNow is how far the clock of the batch in the room is scrolled so that now stands
// in it below a few steps that are past: not at all where it is in sight anyway.
func (s State) clockNow() float64 {
	const past = 2
	id, _ := s.FillOf.Batch()
	b := s.Reading().View.Batch(id)
	if b.At.IsZero() {
		return 0
	}
	l, steps := s.Layout(), s.Reading().ClockOf(b)
	now := slices.IndexFunc(steps, func(step ClockStep) bool { return step.Now })
	if l.ClockHigh(steps[:now+1]) <= l.clockShown() {
		return 0
	}
	return l.ClockHigh(steps[:max(0, now-past)])
}

// clockShown is how much of the clock of the batch that fills the room is in sight.
func (l Layout) clockShown() float64 { return l.Main.H - BatchHead - l.BatchStream() - ClockHead }

// NucsOffset is how far the nucs beside the clock are scrolled: they follow it from
// where it begins, so that they begin at their head.
func (s State) NucsOffset(l Layout) float64 { return max(0, s.FillOffset(l)-s.clockNow()) }

func noFill(s State) string {
	if s.Fill == NoFill {
		return "nothing fills the room"
	}
	return ""
}

// givenBack is the window with the panes of the room again.
func (s State) givenBack() State {
	s.Fill, s.FillOf, s.Focus = NoFill, book.Subject{}, scene.Ref{}
	return s
}
