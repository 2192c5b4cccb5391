package course

import "sync"

// recent remembers what was asked for lately. Of two generations the older is
// forgotten when the younger is full: what is in use stays, and never is more
// kept than twice the most.
type recent[K comparable, V any] struct {
	most       int
	mu         sync.Mutex
	young, old map[K]V
}

// at is what is remembered under a key, or nothing.
func (r *recent[K, V]) at(key K) V {
	r.mu.Lock()
	defer r.mu.Unlock()
	v, known := r.young[key]
	if !known {
		if v, known = r.old[key]; known {
			r.put(key, v)
		}
	}
	return v
}

// keep remembers, and gives what it was given.
func (r *recent[K, V]) keep(key K, v V) V {
	r.mu.Lock()
	defer r.mu.Unlock()
	r.put(key, v)
	return v
}

func (r *recent[K, V]) put(key K, v V) {
	if r.young == nil || len(r.young) >= r.most {
		r.old, r.young = r.young, map[K]V{}
	}
	r.young[key] = v
}
