package state

import (
	"math"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// laneRows is how many lanes there is room for.
func (l Layout) laneRows() int { return int(l.Lanes.H / l.Lane) }

// Lanes are the batches whose lanes are in sight. Unless they were scrolled
// they begin with the first one whose queens are not all expected to lay, but
// so that the one with the next hard deadline is among them, and a selected
// batch.
func (s State) Lanes(l Layout) []*book.Batch {
	all := s.laneBatches()
	first := min(s.LaneOffset(l), len(all))
	return all[first:min(len(all), first+l.laneRows())]
}

// LaneOffset is how many batches lie above the lanes in sight.
func (s State) LaneOffset(l Layout) int {
	all, planned := s.laneBatches(), s.PlannedBatches()
	rows := l.laneRows()
	first := s.firstLane(rows)
	if scroll, ok := s.Scroll[LanePlace]; ok {
		first = int(math.Round(scroll / LaneHeight))
	} else if chosen := slices.IndexFunc(all, func(b *book.Batch) bool { return s.Selection.Has(b.Batch.Subject()) }); chosen >= 0 {
		first = together(first, chosen, rows)
	} else if chosen := slices.IndexFunc(planned, func(b book.BatchPlan) bool { return s.Selection.Has(b.Batch.Subject()) }); chosen >= 0 {
		first = together(first, len(all)+chosen, rows)
	}
	return max(0, min(first, len(all)+len(planned)-rows))
}

// LanesHidden are how many batches lie above and below the lanes in sight.
func (s State) LanesHidden(l Layout) (above, below int) {
	above = s.LaneOffset(l)
	return above, max(0, s.laneCountAll()-above-l.laneRows())
}

// lanesMoved scrolls the lanes by some batches.
func lanesMoved(by float64) func(State) (State, []Effect) {
	return pure(func(s State) State { return s.wheeledPlace(LanePlace, by*LaneHeight, s.Layout()) })
}

// noLanesThere tells why the lanes cannot be scrolled up, or down.
func noLanesThere(up bool) func(State) string {
	return func(s State) string {
		if s.Book == nil || s.Layout().Lanes.Empty() {
			return "no batches are shown"
		}
		switch above, below := s.LanesHidden(s.Layout()); {
		case up && above == 0:
			return "this is the first batch"
		case !up && below == 0:
			return "this is the last batch"
		}
		return ""
	}
}

// together is the first lane moved so that another is among the rows.
func together(first, lane, rows int) int {
	if lane < 0 {
		return first
	}
	return min(max(first, lane-rows+1), lane)
}

// firstLane is the first batch that is still under way, or a later one from
// which the rows reach the batch with the next hard deadline.
func (s State) firstLane(rows int) int {
	switch {
	case s.OnSeason():
		return 0 // the ripest
	case s.Room == Plan:
		return len(s.laneBatches()) // all that is planned
	}
	r := s.Present()
	lays := r.Numbers().Duration(practice.VirginTooLate)
	underWay := slices.IndexFunc(r.Batches(), func(b *book.Batch) bool {
		return r.Course.Emerges(b.Batch).Add(lays).After(r.View.On())
	})
	return together(max(0, underWay), s.hardLane(), rows)
}

// hardLane is the batch with the next hard deadline, or one that is past; -1
// without any.
func (s State) hardLane() int {
	r := s.Present()
	lane, by := -1, time.Time{}
	for i, b := range r.Batches() {
		for _, f := range r.About(b.Batch.Subject()) {
			if f.Hard && (lane < 0 || f.By.Before(by)) {
				lane, by = i, f.By
			}
		}
	}
	return lane
}
