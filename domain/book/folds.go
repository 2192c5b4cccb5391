package book

import "sync"

// folds remembers what was folded, by id. The zero value is ready to use.
type folds[K comparable, T any] struct {
	mu   sync.Mutex
	done map[K]*T
}

// get folds id once. fold runs without the lock, because folding one subject
// may ask for another; two goroutines may fold the same subject, and the first
// to finish is kept.
func (f *folds[K, T]) get(id K, fold func(K) *T) *T {
	f.mu.Lock()
	t, ok := f.done[id]
	f.mu.Unlock()
	if ok {
		return t
	}
	t = fold(id)
	f.mu.Lock()
	defer f.mu.Unlock()
	if first, ok := f.done[id]; ok {
		return first
	}
	if f.done == nil {
		f.done = map[K]*T{}
	}
	f.done[id] = t
	return t
}

// room makes room for n subjects, where none is folded yet: a map that grows
// while many fold keeps them all waiting.
func (f *folds[K, T]) room(n int) {
	f.mu.Lock()
	defer f.mu.Unlock()
	if f.done == nil {
		f.done = make(map[K]*T, n)
	}
}
