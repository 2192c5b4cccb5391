// Package spread does like work on all processors.
package spread

import (
	"runtime"
	"sync"
	"sync/atomic"
)

// Pieces is how many pieces of work a processor takes at a time: enough that
// taking them costs little beside pieces of a microsecond.
const Pieces = 256

// Over calls do for every index from 0 to below n and returns when all is done.
// Several run at once, in no order: do must write only what belongs to its
// index, so that what comes of it is the same however the work was spread.
func Over(n int, do func(i int)) { over(n, Pieces, do) }

// Singly is Over for pieces of work that are large: each is taken on its own.
func Singly(n int, do func(i int)) { over(n, 1, do) }

func over(n, pieces int, do func(i int)) {
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
