// Package spread does like work on all processors.
package spread

import (
	"runtime"
	"sync"
)

// worthwhile is the least number of pieces for which another processor is
// asked: handing over costs about as much as a few hundred small folds.
const worthwhile = 256

// Over calls do for every index from 0 to below n and returns when all is done.
// Several run at once, in no order: do must write only what belongs to its
// index, so that what comes of it is the same however the work was spread.
func Over(n int, do func(i int)) {
	parts := max(1, min(runtime.GOMAXPROCS(0), n/worthwhile))
	var wait sync.WaitGroup
	for p := range parts {
		from, to := p*n/parts, (p+1)*n/parts
		wait.Go(func() {
			for i := from; i < to; i++ {
				do(i)
			}
		})
	}
	wait.Wait()
}
