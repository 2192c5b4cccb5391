package main

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
)

// queenSign is one way in which queens are told apart.
type queenSign struct {
	what string // as a list of those there is headed
	of   func(*book.Queen) string
}

// queenSigns are the ways in the order in which they are asked: what the
// keeper can still hold in the hand comes before what was sold or is dead.
var queenSigns = []queenSign{
	{"named", func(q *book.Queen) string { return q.Name }},
	{"in cage", inHand(func(q *book.Queen) string { return q.Label })},
	{"with disc", inHand(func(q *book.Queen) string { return q.Mark.Disc })},
	{"once in cage", func(q *book.Queen) string { return q.Label }},
	{"once with disc", func(q *book.Queen) string { return q.Mark.Disc }},
}

func inHand(sign func(*book.Queen) string) func(*book.Queen) string {
	return func(q *book.Queen) string {
		if !q.InHand() {
			return ""
		}
		return sign(q)
	}
}

// queen finds a queen by her name, the number of her cage, or her disc. A
// number that several had who are gone is the last one's.
func (f finder) queen(name string) (*book.Queen, error) {
	typed := plainQueen(name)
	for i, sign := range queenSigns {
		var last *book.Queen
		n := 0
		for q := range f.Queens() {
			if !strings.EqualFold(sign.of(q), typed) {
				continue
			}
			n++
			if last == nil || last.Since.Before(q.Since) {
				last = q
			}
		}
		switch gone := i >= 3; {
		case n == 1, n > 1 && gone:
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
	for _, word := range []string{"the queen in cage ", "queen ", "cage ", "disc "} {
		if len(name) > len(word) && strings.EqualFold(name[:len(word)], word) {
			return name[len(word):]
		}
	}
	return name
}

// noQueen tells which queens there are, those in hand apart by how they are
// told.
func (f finder) noQueen(name string) error {
	var there []string
	for _, sign := range queenSigns[:3] {
		var names []string
		for q := range f.Queens() {
			if s := sign.of(q); s != "" && q.InHand() {
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
