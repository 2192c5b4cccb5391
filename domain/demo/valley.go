package demo

import (
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// bookBegun is the day on which the book was begun.
const bookBegun = -66

// valley is the whole of the demo: the pen, and the names of what is there.
type valley struct {
	*pen
	yards    map[string]book.YardID
	people   map[string]book.PersonID
	colonies map[string]book.ColonyID
	breeders map[string]book.QueenID // by line
	batches  map[int]book.BatchID
	nucs     []*nuc
	cages    int            // numbers given to cages
	virgins  []book.QueenID // those caged of batch 3
	catches  map[int][]*nuc // nucs whose queen was caught, by day
	given    map[string]int // cells given, by yard and day, to set their minutes
}

// nuc is a nuc with its name, its box and what became of it.
type nuc struct {
	id    book.NucID
	name  string
	yard  string
	model *model
	batch int          // the batch whose cell it was given first
	fate  rune         // see fates.go
	queen book.QueenID // the one marked or caught in it
}

// alive tells whether the nuc came through the cold week.
func (n *nuc) alive() bool { return n.batch != 1 || !strings.ContainsRune("usx", n.fate) }

func newValley(today calendar.Day, zone *time.Location) *valley {
	return &valley{
		pen:      newPen(today, zone),
		yards:    map[string]book.YardID{},
		people:   map[string]book.PersonID{},
		colonies: map[string]book.ColonyID{},
		breeders: map[string]book.QueenID{},
		batches:  map[int]book.BatchID{},
		catches:  map[int][]*nuc{},
		given:    map[string]int{},
	}
}

// found writes what is there from the start.
func (v *valley) found() {
	v.settlePeople()
	v.settleYards()
	v.settleColonies()
	v.settleNucs()
}

// hand is who writes up what happens in a yard: the partner on the moor,
// unless he is away.
func (v *valley) hand(yard string, at calendar.Moment) string {
	if yard == moor && !v.away(partner, at.Day(v.zone)) {
		return partner
	}
	return keeper
}

// note writes about a nuc, in the hand of its yard.
func (v *valley) note(n *nuc, at calendar.Moment, facts ...book.Fact) {
	v.write(v.hand(n.yard, at), at, facts...)
}

// nuc finds a nuc by its name.
func (v *valley) nuc(name string) *nuc {
	for _, n := range v.nucs {
		if n.name == name {
			return n
		}
	}
	panic("demo: no nuc is called " + name)
}
