package rules

import (
	"slices"
	"time"

	"lidmark/domain/book"
)

// Settle asks the questions of entries that do not fit the season, and puts what
// the answers add before and behind them, and a second earlier what happened
// before all of that moment. Keep is false when an answer says that the entries
// were a mistake and are not to be written. Where something was added all ids are
// made anew, so that they rise in the order in which things happened; the entries
// themselves are never changed in any other way. An answer may write something in
// the place of its entry.
func Settle(s *book.Season, entries []book.Entry, ids *book.IDs, ask func(Question) Answer) (all []book.Entry, keep bool) {
	var earlier []book.Entry
	changed := false
	for _, e := range entries {
		q, asks := Ask(s.At(e.At.Instant), e.Fact)
		if _, cell := e.Fact.(book.CellGiven); (asks || cell) && len(all) > 0 { // what was written with it may ask or answer
			q, asks = Ask(s.With(slices.Concat(earlier, all)...).At(e.At.Instant), e.Fact)
		}
		if !asks {
			all = append(all, e)
			continue
		}
		answer := ask(q)
		if answer.Leave {
			return nil, false
		}
		before := e.At
		before.Instant = before.Instant.Add(-time.Second)
		earlier = append(earlier, ids.Entries(before, e.Written, e.Writer, answer.Earlier...)...)
		all = append(all, ids.Entries(e.At, e.Written, e.Writer, answer.Before...)...)
		if len(answer.Instead) == 0 {
			all = append(all, e)
		}
		all = append(all, ids.Entries(e.At, e.Written, e.Writer, slices.Concat(answer.Instead, answer.After)...)...)
		changed = changed || len(answer.Instead) > 0
	}
	all = append(earlier, all...)
	if changed || len(all) > len(entries) {
		for i := range all {
			all[i].ID = book.EntryID(ids.Next())
		}
	}
	return all, true
}
