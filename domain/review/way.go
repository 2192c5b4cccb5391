package review

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// Kind is a kind of way.
type Kind uint8

// The kinds. Those that give may have a ware of the hand, or none: then what is
// given comes later.
const (
	Leave       Kind = iota // until the day of the way
	LookFirst               // with eggs or a queen of its own leave it, else give
	GiveCell                // give a cell
	PutInVirgin             // put in a virgin
	BreakDown               // break down own cells, then give
	TakeOut                 // take out the queen who reigns, then give the day after
	ShakeOut                // shake it out, and make it up anew if something is given
	MakeUp                  // make up an empty nuc, then give
	GiveBrood               // give open brood to raise a queen on
	AddBees                 // add a cup of bees
	Feed                    // feed it
	Narrow                  // narrow the entrance
	Unite                   // put its bees to a neighbour
	Catch                   // catch the queen
)

// Way is one thing that can be done with a nuc now, and what comes of it.
type Way struct {
	Kind   Kind
	Ware   int          // what it gives, the place in [Hand.Wares] counted from 1; 0: nothing
	With   book.NucID   // the neighbour of a union
	On     calendar.Day // the day it is done; of leaving the day of the next look, 0 when none is worth while
	Own    bool         // a look for opened own cells rather than for eggs
	Unsure bool         // who reigns is looked for first, and left if she lays as she should
	Care   Care         // what is done besides

	OwnFirst bool      // a look for a virgin of the nuc's own, since the last cell was torn
	Do       string    // what is done, in the words of the rules; "": as the kind says
	Dusk     time.Time // its box is not opened before, since robbers are about; zero: at any hour

	Given   float64 // chance that what it gives is given
	Lays    float64 // chance of a laying queen in the nuc by the day asked for
	Ready   float64 // chance of one who has laid long enough to be caught
	Caught  float64 // chance of a queen in a cage by it, besides who lays in the nuc
	Minutes float64
	Worth   float64 // in queens, costs taken off

	Doubtful float64 // chance of a laying queen by the day whom the nuc raised itself
	Meets    float64 // chance, when it gives, that somebody is there who tears down what it gives
	Barred   bool    // never the best, nor part of a use: what it gives would most probably be lost, or the rules have something else come first

	Warned []rules.Reason
	parts  parts
}

// Care is what keeps a nuc alive beside what is done for its queen.
type Care uint8

// What can be done besides.
const (
	WithFeed   Care = 1 << iota // it is fed
	WithNarrow                  // its entrance is narrowed
	WithBees                    // it gets a cup of bees
)

// Gives tells whether a way takes something of the hand.
func (w Way) Gives() bool { return w.Ware > 0 }
