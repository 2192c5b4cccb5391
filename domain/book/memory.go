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
	last map[K]lineFold[T]
}

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
	goOn := old.is != nil && old.numbers == by && begins(lines, old.lines)
	if goOn && len(old.lines) == len(lines) {
		return old.is
	}
	is, taken := new(T), 0
	*is = begin
	if goOn {
		*is, taken = P(old.is).again(), len(old.lines)
	}
	for _, e := range lines[taken:] {
		P(is).take(e)
	}
	k.keep(id, lineFold[T]{lines, by, is})
	return is
}

func (k *kept[K, T, P]) recall(id K) lineFold[T] {
	k.mu.Lock()
	defer k.mu.Unlock()
	return k.last[id]
}

func (k *kept[K, T, P]) keep(id K, f lineFold[T]) {
	k.mu.Lock()
	defer k.mu.Unlock()
	if k.last == nil {
		k.last = map[K]lineFold[T]{}
	}
	k.last[id] = f
}

// begins tells whether lines begin with first. Lists of lines are not changed
// once they are made, so two that share their memory are alike.
func begins(lines, first []*Entry) bool {
	n := len(first)
	return n <= len(lines) && (n == 0 || &first[0] == &lines[0] || slices.Equal(first, lines[:n]))
}
