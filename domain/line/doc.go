// Package line reads the line that a keeper types of a nuc, says it back in
// plain words, and says every fact of a book in words.
//
// A line names a nuc and then says in single letters what was seen and done:
//
//	L7 q e b4 s6 /
//	A3 n o0 c4 s4 h2
//	B4 c4 s5 h2 "old one, not marked" @pm
//	A1-A12 done as written, except A3 A9
//	A 50 looked 41 laying
//
// The letters stand in any order, with or without spaces between them, and
// capital and small letters differ. A name is one or two capitals and a
// number, without I and O; it begins what is said of the next nuc, and so
// does a semicolon. Names separated by commas, and rows such as A1-A12, say the
// same of several nucs; except leaves some of them out.
//
// The longest sign wins: // is one stroke and not two, o0 is "own cells broken
// down", and a unit that touches its figure is a unit, so f0.3l feeds 0.3 l,
// while f0.3 l also saw larvae; without one it is litres, or quarts where the
// [Context] says US units. Letters that make no longer sign stand each
// for itself: ve is a virgin and eggs. Whole words (done, robbed, toppled) go
// before letters. A note in quotes that says exactly such a word is taken as
// the word.
//
// What makes no sense is sent back with its column and a way out. What only
// contradicts the book is no mistake: records are never refused.
package line
