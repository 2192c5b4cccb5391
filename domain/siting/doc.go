// Package siting looks for a better way for the boxes of a mating yard to stand: it
// turns and carries stands and paints fronts, within rules, and weighs what that
// gains in queens against the work. What a layout costs is reckoned by the package
// yard.
//
// A [Task] says what may change, by which rules and at what price. A [Search] is
// gone on with step by step for as long as somebody wants to wait, and has the best
// so far at any time: simulated annealing (Kirkpatrick, Gelatt & Vecchi 1983,
// Science 220:671) in several chains, each with its own source of chance, so that a
// seed gives the same layout on any machine. [Spare] tells which box is one too many.
package siting
