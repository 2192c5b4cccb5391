package review

import (
	"time"

	"lidmark/domain/book"
)

// Ware is like things in hand: cells of one batch, or virgins of one batch and age.
type Ware struct {
	Virgin  bool // else a cell
	Batch   book.BatchID
	Queens  []book.QueenID // the virgins in cages, as far as they have a record
	Name    string         // "cell of batch 3", "virgin of batch 2, 4 days old"
	Many    int
	Emerges time.Time // the middle hour of a cell; zero: not known
	Age     int       // of a virgin, in days
}

// Hand is what can be spent today.
type Hand struct {
	Wares   []Ware
	Cups    int     // cups of bees
	Minutes float64 // 0: no limit
}
