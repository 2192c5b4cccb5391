package rules

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Closing is the count of one kind of goods on one day: what went out against
// what became of it.
type Closing struct {
	Day                                  calendar.Day
	What                                 book.Goods
	Batch                                book.BatchID // none where goods are not of a batch
	Out                                  int
	Placed, Caged, Culled, Dropped, Back int
	Likely                               []book.NucID // nucs that were to get one and have no entry for it
}

// Missing is how many are not accounted for; negative when more was placed
// than went out.
func (c Closing) Missing() int { return c.Out - c.Placed - c.Caged - c.Culled - c.Dropped - c.Back }

// Closes tells whether all goods are accounted for.
func (c Closing) Closes() bool { return c.Missing() == 0 }

// Twin is two like entries about one nuc on one day by two writers: offered
// as one strike.
type Twin struct {
	Nuc          book.NucID
	First, Again book.Entry // Again, the one written later, is the one to strike
}
