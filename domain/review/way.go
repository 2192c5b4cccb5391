package review

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// Kind is a kind of way.
type Kind uint8

// The kinds. Those that give may have a ware of the hand, or none: then what is
// given comes later.
const (
	Leave       Kind = iota // until the day of the way
	LookFirst               // with eggs or a queen of its own leave it, without give
	GiveCell                // give a cell
	PutInVirgin             // put in a virgin
	BreakDown               // break down own cells, then give
	TakeOut                 // take out the queen who reigns, then give
	ShakeOut                // shake it out, and make it up anew if something is given
	GiveBrood               // give open brood to raise a queen on
	AddBees                 // add a cup of bees
	Feed                    // feed it
	Narrow                  // narrow the entrance
	Unite                   // put its bees to a neighbour
	Catch                   // catch the queen
)

// Way is one thing that can be done with a nuc now, and what comes of it.
type Way struct {
	Kind Kind
	Ware int          // what it gives, the place in [Hand.Wares] counted from 1; 0: nothing
	With book.NucID   // the neighbour of a union
	On   calendar.Day // the day it is done; of leaving the day of the next look, 0 when none is worth while

	Title string  // in words: "Break down own cells, then cell of batch 3"
	If    string  // when what it gives is given: "if no eggs"; "" always
	Given float64 // chance that what it gives is given

	Lays    float64 // chance of a laying queen in the nuc by the day asked for
	Ready   float64 // chance of one who has laid long enough to be caught
	Minutes float64
	Worth   float64 // in queens, costs taken off

	Sums   []Sum // what the worth is made of, in order
	Warned []rules.Reason
}

// Sum is one part of what a way is worth: in words with its figures, in queens,
// and the numbers it was reckoned with.
type Sum struct {
	Words  string
	Queens float64
	Used   []practice.Key
}

// Gives tells whether a way takes something of the hand.
func (w Way) Gives() bool { return w.Ware > 0 }
