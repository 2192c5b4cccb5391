package rules

import (
	"cmp"
	"fmt"
	"slices"

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
	Likely                               []book.NucID // nucs that may have got one and have no entry for it
}

// Missing is how many are not accounted for; negative when more was placed
// than went out.
func (c Closing) Missing() int { return c.Out - c.Placed - c.Caged - c.Culled - c.Dropped - c.Back }

// Closes tells whether all goods are accounted for.
func (c Closing) Closes() bool { return c.Missing() == 0 }

// String is the count in words: "48 = 45 placed + 2 dropped + 1 not accounted
// for".
func (c Closing) String() string {
	s := fmt.Sprintf("%d =", c.Out)
	plus := ""
	part := func(n int, word string) {
		if n != 0 {
			s += fmt.Sprintf("%s %d %s", plus, n, word)
			plus = " +"
		}
	}
	part(c.Placed, "placed")
	part(c.Caged, "caged")
	part(c.Culled, "culled")
	part(c.Dropped, "dropped")
	part(c.Back, "back")
	switch m := c.Missing(); {
	case m < 0:
		return fmt.Sprintf("%s, %d more than went out", s, -m)
	case m > 0:
		part(m, "not accounted for")
	}
	if plus == "" {
		s += " 0"
	}
	return s
}

// Close counts a day's goods back, each kind and batch that went out, the
// cells first and the batches by number. A nuc that two writers wrote down
// counts once.
func Close(v *book.View, day calendar.Day) []Closing {
	c := closer{day: day, at: map[goodsKey]*Closing{}, placed: map[placedKey]bool{}}
	for e := range v.OfDay(day) {
		c.take(e.Fact)
	}
	var all []Closing
	for _, k := range c.out {
		one := *c.at[k]
		if one.What == book.Cells && one.Missing() > 0 {
			one.Likely = likely(v, c.placed, one)
		}
		all = append(all, one)
	}
	slices.SortStableFunc(all, func(a, b Closing) int {
		return cmp.Or(cmp.Compare(a.What, b.What), cmp.Compare(v.Batch(a.Batch).Number, v.Batch(b.Batch).Number))
	})
	return all
}

type goodsKey struct {
	what  book.Goods
	batch book.BatchID
}

type placedKey struct {
	goodsKey
	nuc book.NucID
}

type closer struct {
	day    calendar.Day
	at     map[goodsKey]*Closing
	out    []goodsKey // what went out, in the order of the book
	placed map[placedKey]bool
}

func (c *closer) count(what book.Goods, batch book.BatchID) *Closing {
	k := goodsKey{what, batch}
	if c.at[k] == nil {
		c.at[k] = &Closing{Day: c.day, What: what, Batch: batch}
	}
	return c.at[k]
}

func (c *closer) take(f book.Fact) {
	switch f := f.(type) {
	case book.TakenAlong:
		k := goodsKey{f.What, f.Batch}
		if !slices.Contains(c.out, k) {
			c.out = append(c.out, k)
		}
		c.count(f.What, f.Batch).Out += f.Count
	case book.BroughtBack:
		c.count(f.What, f.Batch).Back += f.Count
	case book.Dropped:
		c.count(f.What, f.Batch).Dropped += f.Count
	case book.CellsCulled:
		c.count(book.Cells, f.Batch).Culled += f.Cells
	default:
		c.takePlaced(f)
	}
}

func (c *closer) takePlaced(f book.Fact) {
	switch f := f.(type) {
	case book.CellGiven:
		c.place(book.Cells, f.Batch, f.Nuc)
	case book.VirginPutIn:
		c.place(book.Virgins, f.Batch, f.Nuc)
	case book.QueenPutIn:
		c.count(book.Queens, book.BatchID{}).Placed++
	case book.VirginCaged:
		if f.Cell {
			c.count(book.Cells, f.Batch).Caged++
		}
		c.count(book.Cages, book.BatchID{}).Placed++
	case book.QueenCaught:
		if !f.Culled {
			c.count(book.Cages, book.BatchID{}).Placed++
		}
	}
}

// place counts a nuc once: what two writers wrote down happened once.
func (c *closer) place(what book.Goods, batch book.BatchID, nuc book.NucID) {
	k := placedKey{goodsKey{what, batch}, nuc}
	if !c.placed[k] {
		c.placed[k] = true
		c.count(what, batch).Placed++
	}
}

// likely are nucs without a queen that stand where that day's cells went and
// have no entry for a cell or virgin of that day.
func likely(v *book.View, placed map[placedKey]bool, c Closing) []book.NucID {
	stands, got := map[book.StandID]bool{}, map[book.NucID]bool{}
	for k := range placed {
		got[k.nuc] = true
		if k.what == c.What && k.batch == c.Batch {
			stands[v.Nuc(k.nuc).Stand] = true
		}
	}
	var all []book.NucID
	for n := range v.Nucs() {
		if stands[n.Stand] && !got[n.Nuc] && n.Holds.Condition == book.NoQueen {
			all = append(all, n.Nuc)
		}
	}
	return all
}
