package line

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// Sheet is what stands on a day's sheet for each nuc and can be ticked off as
// "done as written": cells to give, own cells to break down, feed, bees. What
// has to be looked at is not among it, for a tick does not say what was seen.
// What was taken along that day is still to be given.
func Sheet(v *book.View, d calendar.Day) func(book.NucID) []book.Fact {
	written := map[book.NucID][]book.Fact{}
	for _, stop := range rules.Day(unpacked(v, d), d).Stops {
		for _, task := range stop.Tasks {
			for _, f := range task.Findings {
				if id, ok := f.Of.Nuc(); ok {
					written[id] = append(written[id], ticked(f, id)...)
				}
			}
		}
	}
	return func(id book.NucID) []book.Fact { return written[id] }
}

// ticked is what a task becomes when it is done as written.
func ticked(f rules.Finding, id book.NucID) []book.Fact {
	switch f.Act {
	case rules.ActGiveCell:
		for _, s := range f.Also {
			if b, ok := s.Batch(); ok {
				return []book.Fact{book.CellGiven{Nuc: id, Batch: b}}
			}
		}
	case rules.ActBreakDownCells:
		return []book.Fact{book.OwnCellsBroken{Nuc: id}}
	case rules.ActFeed:
		return []book.Fact{book.Fed{To: id.Subject(), Litres: f.Amount}}
	case rules.ActAddBees:
		return []book.Fact{book.BeesAdded{Nuc: id, Cups: f.Amount}}
	}
	return nil
}

// unpacked is the view as if nothing had been taken along on a day: cells on
// their way are in no nuc and no longer at home, so the rules ask nothing of
// them.
func unpacked(v *book.View, d calendar.Day) *book.View {
	var struck []book.Entry
	for e := range v.OfDay(d) {
		if _, ok := e.Fact.(book.TakenAlong); ok {
			strike := e
			strike.ID[len(strike.ID)-1] ^= 1 // an id that nobody has
			strike.Fact = book.Struck{Entry: e.ID}
			struck = append(struck, strike)
		}
	}
	return v.Season().With(struck...).AsKnown(v.On(), v.Known())
}
