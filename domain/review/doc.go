// Package review tells which nucs need a decision, what can be done with each,
// what each way is worth by a day, and the best use of what is in hand over all
// nucs at once.
//
// Every way is the same course started anew from its entry, on top of what may
// already be there: a cell given to a nuc that holds a virgin is torn down and
// worth nothing there. Worth is told in queens: a mated queen is one.
package review
