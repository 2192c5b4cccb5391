// Package book has a keeper's records and the season folded from them.
//
// The book is an append-only journal: what happened is an [Entry] with one
// [Fact]. A mistake is struck by a later entry and never edited. Everything
// else is derived: a [Season] is a set of entries, and a [View] is the season
// as it stood at an instant, as it is known now or as it was known then.
//
// Folding never fails. What happened is taken in even where it contradicts
// what was there; the contradiction becomes a [Gap] of its subject. Plans are
// checked elsewhere, in package rules, and records never are.
//
// Nothing here reads a clock, a file or a random number: the instant, the
// entries, the ids and the time zones are arguments.
package book
