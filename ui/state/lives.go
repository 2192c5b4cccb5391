package state

import (
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// Life is one queen of a batch in a nuc: until when she was there, zero while
// she is, and where she was caught laying, which is no loss; when her first eggs
// were seen, zero while they were not; and whether she herself or her eggs were
// seen, so that the nuc is known to have accepted her.
type Life struct {
	Until, Eggs time.Time
	Seen        bool
}

// Lives are the queens of a batch that were given to nucs.
type Lives []Life

// Lives are those of a batch.
func (r *Reading) Lives(batch book.BatchID) Lives { return r.lives(batch) }

func (r *Reading) readLives(batch book.BatchID) Lives {
	var all Lives
	for _, g := range r.View.Batch(batch).Given {
		n := r.View.Nuc(g.Nuc)
		l := Life{Until: n.Queenless.Instant}
		if n.Holds.Batch == batch {
			p := r.Nuc(g.Nuc).Presumed
			l = Life{Eggs: n.Holds.FirstEggs.Instant, Seen: p.Seen && p.Condition != book.Cell}
		}
		for _, c := range n.Caught {
			if c.Was.Batch == batch {
				l = Life{Eggs: c.Was.FirstEggs.Instant, Seen: true}
				if l.Eggs.IsZero() {
					l.Until = c.At.Instant
				}
			}
		}
		all = append(all, l)
	}
	return all
}

// WithoutNuc is how many cells of a batch no nuc is ready for, once nucs are made up for them.
func (r *Reading) WithoutNuc(batch book.BatchID) int {
	for _, f := range r.Findings {
		if f.Rule == rules.NobodyReady && f.Of == batch.Subject() && f.Severity != rules.Ahead {
			return int(f.Amount)
		}
	}
	return 0
}

// Alive is how many had not been lost by t.
func (all Lives) Alive(t time.Time) (n int) {
	for _, l := range all {
		if l.Until.IsZero() || l.Until.After(t) {
			n++
		}
	}
	return n
}

// Unseen is how many were not lost by t and not seen in their nucs.
func (all Lives) Unseen(t time.Time) (n int) {
	for _, l := range all {
		n += boolInt(!l.Seen && (l.Until.IsZero() || l.Until.After(t)))
	}
	return n
}

// Laid is how many had been seen laying by t.
func (all Lives) Laid(t time.Time) (n int) {
	for _, l := range all {
		if !l.Eggs.IsZero() && !l.Eggs.After(t) {
			n++
		}
	}
	return n
}

// Eggs are the instants up to t at which each was first seen laying, in order.
func (all Lives) Eggs(t time.Time) (seen []time.Time) {
	for _, l := range all {
		if !l.Eggs.IsZero() && !l.Eggs.After(t) {
			seen = append(seen, l.Eggs)
		}
	}
	slices.SortFunc(seen, time.Time.Compare)
	return seen
}

// FirstEggs is when the first eggs were seen, or the zero instant.
func (all Lives) FirstEggs() (first time.Time) {
	for _, l := range all {
		if !l.Eggs.IsZero() && (first.IsZero() || l.Eggs.Before(first)) {
			first = l.Eggs
		}
	}
	return first
}
