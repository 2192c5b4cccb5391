package state

import (
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// laneRows is how many lanes there is room for.
func (l Layout) laneRows() int { return int(l.Lanes.H / LaneHeight) }

// Lanes are the batches whose lanes are in sight. Unless they were scrolled
// they begin with the first one whose queens are not all expected to lay; a
// selected batch is always among them.
func (s State) Lanes(l Layout) []*book.Batch {
	all := s.Present().Batches()
	rows := l.laneRows()
	most := max(0, len(all)-rows)
	first := min(s.firstLane(), most)
	if scroll, ok := s.Scroll[LanePlace]; ok {
		first = min(int(math.Round(scroll/LaneHeight)), most)
	}
	chosen := slices.IndexFunc(all, func(b *book.Batch) bool { return s.Selection.Has(b.Batch.Subject()) })
	if chosen >= 0 {
		first = min(max(first, chosen-rows+1), chosen)
	}
	return all[max(0, first):min(len(all), max(0, first)+rows)]
}

// firstLane is the first batch that is still under way.
func (s State) firstLane() int {
	r := s.Present()
	lays := r.Numbers().Duration(practice.VirginTooLate)
	return max(0, slices.IndexFunc(r.Batches(), func(b *book.Batch) bool {
		return r.Course.Emerges(b.Batch).Add(lays).After(r.View.On())
	}))
}
