package main

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
)

// queenSign is one way in which queens are told apart.
type queenSign struct {
	what string // as a list of those there is headed
	of   func(*book.View, *book.Queen) string
	last bool // of several it is the one who came last
	nuc  bool // it is a nuc's name
}

// queenSigns are the ways in the order in which they are asked: what the
// keeper can still hold in the hand comes before what was sold or is dead.
var queenSigns = []queenSign{
	{what: "named", of: func(_ *book.View, q *book.Queen) string { return q.Name }},
	{what: "in cage", of: inHand(cageNumber)},
	{what: "with disc", of: inHand(disc)},
	{what: "caged from", of: inHand(caughtFrom), last: true, nuc: true},
	{what: "once in cage", of: cageNumber, last: true},
	{what: "once with disc", of: disc, last: true},
	{what: "once caught from", of: caughtFrom, last: true, nuc: true},
}

// ownSigns are the ways but those by a nuc's name.
func ownSigns() []queenSign {
	return slices.DeleteFunc(slices.Clone(queenSigns), func(s queenSign) bool { return s.nuc })
}

// handSigns is how many of the signs are of queens in the hand.
const handSigns = 4

func cageNumber(_ *book.View, q *book.Queen) string { return q.Label }

func disc(_ *book.View, q *book.Queen) string { return q.Mark.Disc }

// caughtFrom is the nuc from which a queen was caught who has no other sign, and is in
// none again.
func caughtFrom(v *book.View, q *book.Queen) string {
	if q.Label != "" || q.InHand() && !q.Caged() {
		return ""
	}
	return v.Nuc(q.From).Name
}

func inHand(sign func(*book.View, *book.Queen) string) func(*book.View, *book.Queen) string {
	return func(v *book.View, q *book.Queen) string {
		if !q.InHand() {
			return ""
		}
		return sign(v, q)
	}
}

// queen finds a queen by her name, the number of her cage, her disc, or the nuc she was
// caught from; but those are passed over. A number that several had who are gone, and a
// nuc from which several were caught, are the last one's.
func (f finder) queen(name string, but ...book.QueenID) (*book.Queen, error) {
	return f.queenBy(queenSigns, name, but...)
}

func (f finder) queenBy(signs []queenSign, name string, but ...book.QueenID) (*book.Queen, error) {
	typed := plainQueen(name)
	for _, sign := range signs {
		var last *book.Queen
		n := 0
		for q := range f.Queens() {
			if !strings.EqualFold(sign.of(f.View, q), typed) || slices.Contains(but, q.Queen) {
				continue
			}
			n++
			if last == nil || last.Since.Before(q.Since) {
				last = q
			}
		}
		switch {
		case n == 1, n > 1 && sign.last:
			return last, nil
		case n > 1:
			return nil, fmt.Errorf("%d queens are %s %s: name her otherwise", n, sign.what, typed)
		}
	}
	return nil, f.noQueen(name)
}

// plainQueen is a typed name without the words that cards put before it.
func plainQueen(name string) string {
	name = strings.TrimSpace(name)
	for _, word := range []string{"the queen in cage ", "the queen caught from ", "queen ", "cage ", "disc ", "from "} {
		if len(name) > len(word) && strings.EqualFold(name[:len(word)], word) {
			name, _, _ = strings.Cut(name[len(word):], " on ")
			return name
		}
	}
	return name
}

// noQueen tells which queens there are, those in hand apart by how they are
// told.
func (f finder) noQueen(name string) error {
	var there []string
	for _, sign := range queenSigns[:handSigns] {
		var names []string
		for q := range f.Queens() {
			if s := sign.of(f.View, q); s != "" && q.InHand() {
				names = append(names, s)
			}
		}
		if len(names) > 0 {
			there = append(there, sign.what+" "+shortList(names))
		}
	}
	if len(there) == 0 {
		return fmt.Errorf("no queen %q: there is none with a name, cage or disc in the book on that day", name)
	}
	return fmt.Errorf("no queen %q: there are %s", name, strings.Join(there, "; "))
}
