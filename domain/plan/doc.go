// Package plan turns a promise into dates and amounts, and a graft into what will
// come of it: how many queens are to be expected and how sure that is, the ladder
// of days from the first drone comb to the hand-over, and what a batch eats.
//
// Two uncertainties are kept apart: what the keeper's rate is, of which the book
// tells more with every batch, and the luck of a batch, which all its cells share.
package plan
