package state

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/domain/season"
)

// SeasonSheet is what the batches of the season want at once, and which orders still
// need a graft.
type SeasonSheet struct {
	Clashes  []season.Clash
	Promises []season.Promise
	Waits    []season.Entrusted // the orders that wait for planned batches

	Unordered []plan.Wished // the planned batches for which no order waits

	Turn NucTurn // of a nuc

	of    *Reading
	dealt *handover.Sheet
	yard  book.YardID   // of which the turn is; none: that of most nucs
	board *season.Board // for drags; the window's alone
}

// seasoned is what is known of the season.
type seasoned struct {
	sheet *SeasonSheet // the last one
	asked seasonKey    // of the one on its way, or there
	dates *SeasonDates // found, or being found; nil: not asked for
	moved seasonMoved

	searches int // how many there were
}

// seasonKey names what is known of a season: what was read, and the yard that is planned in.
type seasonKey struct {
	of   *Reading
	yard book.YardID
}

// ReckonSeason asks what batches want at once. It takes a moment; what
// [ReckonSeason.Reckon] gives comes back.
type ReckonSeason struct{ key seasonKey }

func (ReckonSeason) effect() {}

// SeasonReckoned brings what batches want at once.
type SeasonReckoned struct{ sheet *SeasonSheet }

func (SeasonReckoned) msg() {}

// Reckon finds the clashes and their ways out. It may run beside the window.
func (e ReckonSeason) Reckon() SeasonReckoned {
	of := e.key.of
	planner := of.planner()
	dealt := handover.New(planner)
	board := season.NewBoard(planner)
	return SeasonReckoned{&SeasonSheet{
		Clashes: board.Clashes(), Promises: season.Promises(planner, dealt, 0), Waits: season.EntrustedTo(planner, dealt),
		Unordered: planner.Unordered(), Turn: nucTurnOf(of, planner, e.key.yard), of: of, dealt: dealt, yard: e.key.yard, board: board,
	}}
}

// OnSeason tells whether the page of the season is shown.
func (s State) OnSeason() bool {
	return s.Book != nil && s.Room == Plan && s.Planning.Page == SeasonPage && s.Fill == NoFill
}

// seasonCard tells whether a card stands beside the page of the season: that of a
// batch or an order.
func (s State) seasonCard() bool {
	kind := s.Selection.Last().Kind
	return s.OnSeason() && (kind == book.KindBatch || kind == book.KindOrder)
}

// onWish tells whether the page of the wish is shown.
func (s State) onWish() bool { return s.Room == Plan && s.Planning.Page == WishPage }

// seasoning is the window with the clashes asked for that the page of the season
// needs. Dates that are looked for in a book that changed are looked for no more.
func (s State) seasoning() (State, []Effect) {
	if s.Book == nil {
		return s, nil
	}
	var effects []Effect
	of := s.Present()
	if d := s.seasoned.dates; d != nil && !d.Done && !d.Stopped && !d.fits(of) {
		next := *d
		next.Stopped, s.seasoned.dates = true, &next
		effects = append(effects, StopWork{})
	}
	key := seasonKey{of, s.Yards[Plan]}
	if !s.OnSeason() || s.seasoned.asked == key {
		return s, effects
	}
	s.seasoned.asked = key
	return s, append(effects, ReckonSeason{key})
}

func (s State) seasonTaken(m SeasonReckoned) State {
	if m.sheet != nil && (seasonKey{m.sheet.of, m.sheet.yard}) == s.seasoned.asked {
		s.seasoned.sheet, s.seasoned.moved = m.sheet, seasonMoved{}
	}
	return s
}

// SeasonSheet is what batches want at once now; nil while that is not known.
func (s State) SeasonSheet() *SeasonSheet {
	sheet := s.seasoned.sheet
	if s.Book == nil || sheet == nil || !alike(sheet.of, s.Present()) {
		return nil
	}
	return sheet
}

// alike tells whether two readings are of the same book and day.
func alike(a, b *Reading) bool { return a.Day == b.Day && a.View.Season() == b.View.Season() }

// moved is a planned batch with its graft on another day, at the first free hour.
func (r *Reading) moved(b book.BatchPlan, day calendar.Day) book.BatchPlanned {
	f := b.BatchPlanned
	if day == b.Day {
		return f
	}
	at := r.lane(plannedKey{b.Batch, day}).Ladder.Graft.In(r.View.Zone())
	f.Day, f.Minute = day, at.Hour()*60+at.Minute()
	return f
}

// seasonBatches are the grafted batches that have lanes on the page of the season:
// those whose queens are still to be expected.
func (s State) seasonBatches() []*book.Batch {
	r := s.Present()
	lays := r.Numbers().Duration(practice.VirginTooLate)
	return slices.DeleteFunc(slices.Clone(r.Batches()), func(b *book.Batch) bool {
		return !r.Course.Emerges(b.Batch).Add(lays).After(r.View.On())
	})
}

// OpenOrders are the orders of which queens are owed, by their day.
func (s State) OpenOrders() (all []*book.Order) {
	for o := range s.Present().View.Orders() {
		if o.Open() > 0 {
			all = append(all, o)
		}
	}
	slices.SortStableFunc(all, func(a, b *book.Order) int { return cmp.Compare(a.By, b.By) })
	return all
}

// seasonSpan is the days that the ribbon shows on the page of the season: up to the
// last queens that are planned, owed or found.
func (s State) seasonSpan() (first, last calendar.Day) {
	const after = 3
	last = s.Today() + wishAhead
	r := s.Present()
	for _, b := range s.PlannedBatches() {
		last = max(last, r.lane(plannedKey{b.Batch, b.Day}).Ladder.Rung(plan.Ready).By+after)
	}
	for _, o := range s.OpenOrders() {
		last = max(last, o.By+after)
	}
	return s.Today() - s.daysBefore(last), last
}
