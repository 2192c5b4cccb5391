package main

import (
	"fmt"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

// setUp names nucs, their boxes and stands.
type setUp struct {
	ids   *book.IDs
	yard  book.YardID
	per   int
	combs combs
	view  *book.View  // stands and names that are there already; nil in a new book
	at    *book.Point // the middle of the first new stand; nil: a row on from the others
	last  *book.Point // where the stand before it was set up
}

// rowsApart is how far new rows of nucs stand apart, m, so that one walks
// between them; the keeper moves them as they really stand.
const rowsApart = 3

// row sets up a row of nucs, A1-A12: its stand, the boxes, the nucs.
func (s *setUp) row(text string) ([]book.Fact, error) {
	names, err := line.Row(text)
	switch {
	case err != nil:
		return nil, err
	case len(names) == 0:
		return nil, fmt.Errorf("no name of a nuc, write a row like A1-A12")
	case s.per < 1:
		return nil, fmt.Errorf("%d nucs in a box: at least 1", s.per)
	}
	var facts []book.Fact
	stands := map[string]book.StandID{}
	var box book.BoxID
	for i, name := range names {
		if s.taken(name) {
			return nil, fmt.Errorf("%s is there already", name)
		}
		letter, place := split(name)
		if stands[letter].IsZero() {
			stand := s.stand(letter, s.places(names, letter))
			stands[letter] = stand.Stand
			facts = append(facts, stand)
		}
		if i%s.per == 0 {
			box = book.BoxID(s.ids.Next())
			facts = append(facts, book.BoxBuilt{Box: box, Number: name, Model: s.combs.kind, Nucs: s.per})
		}
		facts = append(facts, s.nuc(name, box, stands[letter], place)...)
	}
	return facts, nil
}

func (s *setUp) taken(name string) bool {
	if s.view == nil {
		return false
	}
	for _, n := range s.view.NucNamed(name) {
		if n.Yard == s.yard {
			return true
		}
	}
	return false
}

func (s *setUp) nuc(name string, box book.BoxID, stand book.StandID, place int) []book.Fact {
	id := book.NucID(s.ids.Next())
	return []book.Fact{
		book.NucNamed{Nuc: id, Name: name, Box: box, Sides: s.combs.sides, Side: s.combs.area},
		book.NucPlaced{Nuc: id, Yard: s.yard, Stand: stand, Place: place},
	}
}

// stand is the stand of a letter, set anew with room for the row.
func (s *setUp) stand(letter string, places int) book.StandSet {
	if s.view != nil {
		for there := range s.view.Stands(s.yard) {
			if there.Letter == letter {
				f := there.StandSet
				f.Places = max(f.Places, places)
				return f
			}
		}
	}
	at := s.free()
	s.last = &at
	return book.StandSet{Stand: book.StandID(s.ids.Next()), Yard: s.yard, Letter: letter, At: at, Places: places}
}

// free is where the next stand goes: where it was said, else south of all that
// are there.
func (s *setUp) free() book.Point {
	if at := s.at; at != nil {
		s.at = nil
		return *at
	}
	south := s.last
	if s.view != nil {
		for there := range s.view.Stands(s.yard) {
			if at := there.At; south == nil || at.Y < south.Y {
				south = &at
			}
		}
	}
	if south == nil {
		return book.Point{}
	}
	return book.Point{X: south.X, Y: south.Y - rowsApart}
}

func (s *setUp) places(names []string, letter string) (most int) {
	for _, name := range names {
		if l, n := split(name); l == letter {
			most = max(most, n)
		}
	}
	return most
}

func split(name string) (letter string, number int) {
	letter = strings.TrimRight(name, "0123456789")
	number, _ = strconv.Atoi(name[len(letter):]) // a name has a number
	return letter, number
}
