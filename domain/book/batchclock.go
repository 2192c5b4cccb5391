package book

import (
	"slices"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/practice"
)

// Clock is the clock of all cells of the batch with the numbers n: cells that
// were placed, caged or culled move none of its hours. Once its hard hour has
// passed, what is counted, read or seen later does not move that hour either.
func (b *Batch) Clock(n practice.Numbers) bee.Clock {
	clock := b.Bee(b.Cells()).Clock(n)
	for _, at := range b.told(b.At.Instant.Add(n.Duration(practice.GraftToCapped))) {
		if hard := b.knownBefore(at).Clock(n).Hard(); !at.Before(hard) {
			return clock.Held(hard)
		}
	}
	return clock
}

// told are the instants after one at which something was told that moves the
// clock. No hard hour lies before the cells are capped.
func (b *Batch) told(after time.Time) (all []time.Time) {
	add := func(at time.Time) {
		if at.After(after) {
			all = append(all, at)
		}
	}
	add(b.Taken.At.Instant)
	add(b.Capped.At.Instant)
	for _, r := range b.Log {
		add(r.At)
	}
	for _, s := range b.Signs {
		add(s.At)
	}
	slices.SortFunc(all, time.Time.Compare)
	return all
}

// knownBefore is the batch as its clock saw it before an instant.
func (b *Batch) knownBefore(at time.Time) bee.Batch {
	was := *b
	if !was.Taken.At.Instant.Before(at) {
		was.Taken = Count{}
	}
	if !was.Capped.At.Instant.Before(at) {
		was.Capped = Count{}
	}
	was.Log = slices.DeleteFunc(slices.Clone(b.Log), func(r bee.Reading) bool { return !r.At.Before(at) })
	was.Signs = slices.DeleteFunc(slices.Clone(b.Signs), func(s bee.Evidence) bool { return !s.At.Before(at) })
	return was.Bee(was.Cells())
}
