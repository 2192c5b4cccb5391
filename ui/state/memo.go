package state

import "sync"

// memo is f, asked once for each key. It may be used by several goroutines;
// f runs without the lock and may ask for other keys.
func memo[K comparable, V any](f func(K) V) func(K) V {
	var mu sync.Mutex
	known := map[K]V{}
	return func(k K) V {
		mu.Lock()
		v, ok := known[k]
		mu.Unlock()
		if ok {
			return v
		}
		v = f(k)
		mu.Lock()
		defer mu.Unlock()
		known[k] = v
		return v
	}
}
