package course

import (
	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// bees is what an event tells of how many bees a nuc has.
type bees uint8

const (
	beesUnsaid bees = iota
	fewBees         // too few to keep a queen for long
	manyBees
)

// weak tells whether a nuc has too few bees after an event, as it had before.
func (b bees) weak(was bool) bool {
	if b == beesUnsaid {
		return was
	}
	return b == fewBees
}

// beesOf is what the sides held of bees tell.
func (r *reading) beesOf(sides book.Amount) bees {
	switch held, said := sides.Get(); {
	case !said:
		return beesUnsaid
	case held <= r.numbers.Get(practice.FewBees):
		return fewBees
	default:
		return manyBees
	}
}

// tell takes in what is told of bees, and says whether that is news.
func (r *reading) tell(b bees) bool {
	was := r.weak
	r.weak = b.weak(was)
	return r.weak != was
}
