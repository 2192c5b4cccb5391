package founding

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// Row is a row of boxes to set up: the names of their nucs as they stand, "A1-A12,
// B1-B6", each letter a stand.
type Row struct {
	Names  string
	PerBox int // nucs that share a box, at least 1
	Combs  Combs
	Facing []float64   // where the entrances face, degrees clockwise from north, in turn from the first nuc of a stand; none: north
	At     *book.Point // the middle of the first new stand; nil: a row on from the others
}

// Facts set the row up in a yard: the stands, the boxes, the nucs. there is the
// book as it stands; nil is a new one. A row that cannot be read, a name that is
// there already and amounts that cannot be meant are errors, and then there are
// no facts.
func (r Row) Facts(ids *book.IDs, yard book.YardID, there *book.View) ([]book.Fact, error) {
	return newGround(ids, yard, there).setUp(r)
}

// setUp sets a row up beside all that stands there.
func (g *ground) setUp(r Row) (facts []book.Fact, err error) {
	names, err := r.names()
	if err != nil {
		return nil, err
	}
	if r.Combs, err = r.Combs.Filled(); err != nil {
		return nil, err
	}
	g.next = r.At
	for _, s := range onStands(names) {
		more, err := g.fill(s, r)
		if err != nil {
			return nil, err
		}
		facts = append(facts, more...)
	}
	for _, f := range facts {
		if err := rules.Plausible(f); err != nil {
			return nil, err
		}
	}
	return facts, nil
}

// fill sets up the boxes of a row that stand on one stand.
func (g *ground) fill(s onStand, r Row) (facts []book.Fact, err error) {
	stand, changed := g.stand(s.letter, slices.Max(s.places))
	if changed {
		facts = append(facts, stand)
	}
	var box book.BoxID
	for i, place := range s.places {
		name := s.letter + strconv.Itoa(place)
		if !g.take(name) {
			return nil, fmt.Errorf("%s is there already: write another name, or leave it out", name)
		}
		if i%r.PerBox == 0 {
			box = book.BoxID(g.ids.Next())
			facts = append(facts, book.BoxBuilt{Box: box, Number: name, Model: r.Combs.Kind, Nucs: r.PerBox})
		}
		nuc := book.NucNamed{Nuc: book.NucID(g.ids.Next()), Name: name, Box: box, Sides: r.Combs.Sides, Side: r.Combs.Area}
		if len(r.Facing) > 0 {
			nuc.Entrance = r.Facing[i%len(r.Facing)]
		}
		facts = append(facts, nuc, book.NucPlaced{Nuc: nuc.Nuc, Yard: g.yard, Stand: stand.Stand, Place: place})
	}
	return facts, nil
}

// names are the names of the row's nucs.
func (r Row) names() ([]string, error) {
	names, err := line.Row(r.Names)
	switch {
	case err != nil:
		return nil, err
	case len(names) == 0:
		return nil, fmt.Errorf("no name of a nuc, write a row like A1-A12")
	case r.PerBox < 1:
		return nil, fmt.Errorf("%d nucs in a box: at least 1", r.PerBox)
	}
	return names, nil
}

// onStand are the nucs of a row on one stand, by the number of their place.
type onStand struct {
	letter string
	places []int
}

// onStands parts names by their stands.
func onStands(names []string) (all []onStand) {
	for _, name := range names {
		letter := strings.TrimRight(name, "0123456789")
		place, _ := strconv.Atoi(name[len(letter):]) // a name has a number
		i := slices.IndexFunc(all, func(s onStand) bool { return s.letter == letter })
		if i < 0 {
			i = len(all)
			all = append(all, onStand{letter: letter})
		}
		all[i].places = append(all[i].places, place)
	}
	return all
}
