package state

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// seasonMoved is the season with a batch or an order on the day to which it is being dragged.
type seasonMoved struct {
	what    book.Subject
	day     calendar.Day
	clashes []season.Clash
	fresh   int          // how many of the clashes, the first ones, are there only then
	sheet   *SeasonSheet // what is owed, waits and is planned then, without ways out
}

// ifWritten is today as it would be with facts that nobody has written.
func (s State) ifWritten(facts ...book.Fact) *Reading {
	ids := s.Pen.IDs
	return s.Book.With(ids.Entries(calendar.Instantly(s.Now), s.Now, s.Pen.Writer, facts...)...).On(s.Now, s.Today())
}

// owedOf is what is owed, waits for batches and is planned in a reading.
func owedOf(of *Reading) *SeasonSheet {
	p := of.planner()
	dealt := handover.New(p)
	return &SeasonSheet{Promises: season.Promises(p, dealt, 0), Waits: season.EntrustedTo(p, dealt), Unordered: p.Unordered(), of: of, dealt: dealt}
}

// seasonDragged is the window while a batch is dragged on the page of the season: clashes
// and orders follow.
func (s State) seasonDragged(b book.BatchPlan) State {
	day, sheet := s.plannedDay(b), s.SeasonSheet()
	if m := s.seasoned.moved; sheet == nil || m.what == b.Batch.Subject() && m.day == day {
		return s
	}
	f := s.Present().moved(b, day)
	clashes, fresh := freshFirst(sheet.board.If(f), sheet.Clashes)
	s.seasoned.moved = seasonMoved{b.Batch.Subject(), day, clashes, fresh, owedOf(s.ifWritten(f))}
	return s
}

// orderDragged is the window while an order is dragged: what it gets follows.
func (s State) orderDragged() State {
	o, ok := s.flagOf(s.Drag.Tag.Ref)
	sheet := s.SeasonSheet()
	if !ok || sheet == nil || !s.Drag.far() {
		return s
	}
	day := s.orderDay(o)
	if m := s.seasoned.moved; m.what == o.Order.Subject() && m.day == day {
		return s
	}
	s.seasoned.moved = seasonMoved{o.Order.Subject(), day, sheet.Clashes, 0, owedOf(s.ifWritten(s.orderFacts(o, day)...))}
	return s
}

// freshFirst are clashes with those first that are not among others, and how many those are.
func freshFirst(all, before []season.Clash) (sorted []season.Clash, fresh int) {
	was := func(c season.Clash) bool {
		return slices.ContainsFunc(before, func(b season.Clash) bool {
			return b.Kind == c.Kind && b.Yard == c.Yard && slices.Equal(b.Batches, c.Batches)
		})
	}
	var old []season.Clash
	for _, c := range all {
		if was(c) {
			old = append(old, c)
		} else {
			sorted = append(sorted, c)
		}
	}
	return append(sorted, old...), len(sorted)
}

// seasonTrial is the season with what is being dragged where it is; ok is false while nothing
// is.
func (s State) seasonTrial() (m seasonMoved, ok bool) {
	if !s.OnSeason() || s.SeasonSheet() == nil || !s.Drag.far() {
		return m, false
	}
	m = s.seasoned.moved
	switch s.Drag.Kind {
	case PlannedDrag:
		b, is := s.plannedOf(s.Drag.Tag.Ref)
		return m, is && m.what == b.Batch.Subject() && m.day == s.plannedDay(b)
	case OrderDrag:
		o, is := s.flagOf(s.Drag.Tag.Ref)
		return m, is && m.what == o.Order.Subject() && m.day == s.orderDay(o)
	}
	return m, false
}

// SeasonClashes are what batches want at once; while a batch is dragged, with it on
// the day where it is, those first that are there only then.
func (s State) SeasonClashes() []season.Clash {
	sheet := s.SeasonSheet()
	if sheet == nil {
		return nil
	}
	if m, ok := s.seasonTrial(); ok {
		return m.clashes
	}
	return sheet.Clashes
}

// seasonOwed is what is owed, waits and is planned; while something is dragged, with it on
// the day where it is.
func (s State) seasonOwed() *SeasonSheet {
	if m, ok := s.seasonTrial(); ok {
		return m.sheet
	}
	return s.SeasonSheet()
}

// Unsure tells whether a planned batch that is shown on another day is less sure there than
// on its own, and than it is wished.
func (p PlannedLane) Unsure() bool {
	return p.Moved() && p.Queens > 0 && p.By != 0 && plan.Unsure(p.Chance, p.Before) && p.Wished.Unsure()
}
