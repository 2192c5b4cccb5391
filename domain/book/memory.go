package book

import (
	"slices"
	"sync"

	"lidmark/domain/practice"
)

// memory is what the views of a season, and of the seasons made from it, have
// folded last, by subject. Nothing in it is ever stale: a fold follows from its
// lines and the keeper's numbers alone and is used again only for those.
type memory struct {
	numbers kept[Subject, numbers, *numbers]
	stands  kept[StandID, Stand, *Stand]
	boxes   kept[BoxID, BoxBuilt, *BoxBuilt]
	nucs    kept[NucID, nucFold, *nucFold]
	cols    kept[ColonyID, Colony, *Colony]
	people  kept[PersonID, Person, *Person]
	batches kept[BatchID, Batch, *Batch]
	orders  kept[OrderID, Order, *Order]
}

// taker is a subject while its lines are taken in, one after the other.
type taker[T any] interface {
	*T
	take(e *Entry)
	// again is a copy. Taking lines in leaves alone what it shares with the first,
	// for that is in use; lists are clipped, since several may go on from it at once.
	again() T
}

// kept remembers the last fold of each subject. The zero value is ready to use.
type kept[K comparable, T any, P taker[T]] struct {
	mu   sync.Mutex
	last map[K]folded[T]
}

// folded is the last fold of a subject, and, once somebody went back, one of the
// first of its lines from which days before the last are reached sooner.
type folded[T any] struct{ last, early lineFold[T] }

// lineFold is what lines were folded to, by the numbers of their view.
type lineFold[T any] struct {
	lines   []*Entry
	numbers practice.Numbers
	is      *T
}

// get folds lines from a beginning. It takes what was folded of the same lines,
// and goes on from what was folded of the first of them.
func (k *kept[K, T, P]) get(id K, lines []*Entry, by practice.Numbers, begin T) *T {
	old := k.recall(id)
	if old.last.leadsTo(lines, by) && len(old.last.lines) == len(lines) {
		return old.last.is
	}
	is, taken := new(T), 0
	switch {
	case old.last.leadsTo(lines, by):
		*is, taken = P(old.last.is).again(), len(old.last.lines)
	case old.early.leadsTo(lines, by):
		*is, taken = P(old.early.is).again(), len(old.early.lines)
	default:
		*is = begin
		if len(lines) < len(old.last.lines) {
			taken = len(lines) * 3 / 4
			early := new(T)
			*early = *is
			takeAll[T, P](early, lines[:taken])
			*is, old.early = P(early).again(), lineFold[T]{lines[:taken], by, early}
		}
	}
	takeAll[T, P](is, lines[taken:])
	old.last = lineFold[T]{lines, by, is}
	k.keep(id, old)
	return is
}

func takeAll[T any, P taker[T]](is P, lines []*Entry) {
	for _, e := range lines {
		is.take(e)
	}
}

// leadsTo tells whether a fold was made of the first of these lines, by these
// numbers.
func (f lineFold[T]) leadsTo(lines []*Entry, by practice.Numbers) bool {
	return f.is != nil && f.numbers == by && begins(lines, f.lines)
}

func (k *kept[K, T, P]) recall(id K) folded[T] {
	k.mu.Lock()
	defer k.mu.Unlock()
	return k.last[id]
}

func (k *kept[K, T, P]) keep(id K, f folded[T]) {
	k.mu.Lock()
	defer k.mu.Unlock()
	if k.last == nil {
		k.last = map[K]folded[T]{}
	}
	k.last[id] = f
}

// begins tells whether lines begin with first. Lists of lines are not changed
// once they are made, so two that share their memory are alike.
func begins(lines, first []*Entry) bool {
	n := len(first)
	return n <= len(lines) && (n == 0 || &first[0] == &lines[0] || slices.Equal(first, lines[:n]))
}
