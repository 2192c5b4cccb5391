// Package spread does like work on all processors.
package spread

import (
	"runtime"
	"sync"
	"sync/atomic"
)

// Light is how many pieces another processor is worth for pieces of about a
// microsecond; Heavy is the same for such as take a millisecond.
const (
	Light = 256
	Heavy = 1
)

// Over calls do for every index from 0 to below n and returns when all is done;
// each processor takes so many pieces at a time. Several run at once, in no
// order: do must write only what belongs to its index, so that what comes of it
// is the same however the work was spread.
func Over(n, pieces int, do func(i int)) {
	var next atomic.Int64
	work := func() {
		for {
			to := int(next.Add(int64(pieces)))
			if to-pieces >= n {
				return
			}
			for i := to - pieces; i < min(to, n); i++ {
				do(i)
			}
		}
	}
	var wait sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), (n+pieces-1)/pieces) - 1 {
		wait.Go(work)
	}
	work()
	wait.Wait()
}
