package line

import (
	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// Sheet is what stands on the sheet of a day's plan for each nuc and can be ticked off as
// "done as written": cells to give, own cells to break down, feed, bees,
// entrances. What has to be looked at is not among it, for a tick does not say what was seen.
// What was taken along that day and is not placed yet is still to be given.
func Sheet(p rules.DayPlan) func(book.NucID) []book.Fact {
	written := map[book.NucID][]book.Fact{}
	for _, stop := range p.Stops {
		for _, task := range stop.Tasks {
			for _, f := range task.Findings {
				for _, of := range f.Subjects() {
					if id, ok := of.Nuc(); ok {
						written[id] = append(written[id], ticked(f, id)...)
					}
				}
			}
		}
	}
	return func(id book.NucID) []book.Fact { return written[id] }
}

// Ticked is what is written of each nuc of a line of the route when it is done
// as written; none where a tick cannot tell what was done or seen.
func Ticked(t rules.Task) map[book.NucID][]book.Fact {
	all := map[book.NucID][]book.Fact{}
	for _, f := range t.Findings {
		for _, of := range f.Subjects() {
			id, ok := of.Nuc()
			facts := ticked(f, id)
			if !ok || len(facts) == 0 {
				return nil
			}
			all[id] = append(all[id], facts...)
		}
	}
	return all
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
	case rules.ActNarrowEntrance, rules.ActOpenEntrance:
		return []book.Fact{book.EntranceSet{Nuc: id, Area: f.AmountOf(id)}}
	}
	return nil
}
