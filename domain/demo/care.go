package demo

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// sources are the colonies that give bees and brood, in turn.
var sources = [...]string{"S7", "S8", "S9", "S10"}

func (v *valley) source(n *nuc) book.ColonyID {
	return v.colonies[sources[int(n.name[0])%len(sources)]]
}

// makeUp makes a nuc up as many days before its cell as its kind asks.
func (v *valley) makeUp(n *nuc, cellDay int) { v.makeUpOn(n, cellDay-n.model.before) }

func (v *valley) makeUpOn(n *nuc, day int) {
	m := n.model
	door, food := m.door, m.food
	if light[n.name] {
		food = littleFood
	}
	switch _, ok := weak[n.name]; {
	case n.yard == moor && day > dearthSince:
		door = narrowDoor
	case n.yard == moor && ok:
		door = wideDoor
	}
	shut, opened := m.open == 0, day
	if shut {
		opened++ // in the evening of the next day
	}
	v.note(n, v.in(day, calendar.Evening), book.NucMadeUp{Nuc: n.id, Cups: m.cups, Capped: m.capped, Open: m.open, Food: food, Shut: shut, From: v.source(n)})
	v.note(n, v.in(opened, calendar.Evening), book.EntranceSet{Nuc: n.id, Area: door})
}

// littleFood lasts a nuc of half combs about ten days, in g.
const littleFood = 300

// wideDoor is an entrance that few bees cannot guard, in cm².
const wideDoor = 5

// addBees gives a nuc bees and a comb of capped brood: nothing from which it
// could raise a queen.
func (v *valley) addBees(n *nuc, day int) {
	at := v.in(day, calendar.Evening)
	from := v.source(n).Subject()
	v.note(n, at,
		book.BeesAdded{Nuc: n.id, Cups: 1, From: from},
		book.BroodGiven{To: n.id.Subject(), Combs: 1, Capped: n.model.side / 2, From: from},
	)
}

// breakDown breaks down the own cells of a nuc whose cell was given before
// they could be seen.
func (v *valley) breakDown(n *nuc, day int) {
	v.note(n, v.in(day, calendar.Evening), book.OwnCellsBroken{Nuc: n.id, Found: book.Said(float64(v.chance.IntN(4)))})
}

// unite puts a nuc to the laying neighbour on its stand.
func (v *valley) unite(n *nuc, day int) {
	for _, with := range v.nucs {
		if with.name[0] == n.name[0] && with.yard == n.yard && with.fate == 'g' {
			v.note(n, v.in(day, calendar.Evening), book.United{Nuc: n.id, With: with.id.Subject()})
			return
		}
	}
	panic("demo: no laying neighbour for " + n.name)
}

func (v *valley) shakeOut(n *nuc, day int) {
	v.note(n, v.in(day, calendar.Evening), book.ShakenOut{Nuc: n.id})
}

func (v *valley) topple(n *nuc, day int) {
	v.note(n, v.in(day, calendar.Morning),
		book.NucLost{Nuc: n.id, How: book.Toppled},
		book.Noted{Of: n.id.Subject(), Text: "blown off the stand in the night, bees cold on the ground; strap the others"},
	)
}

func (v *valley) abscond(n *nuc, day int) {
	v.note(n, v.in(day, calendar.Morning), book.NucLost{Nuc: n.id, How: book.Absconded})
}

// putInVirgin puts in a virgin of batch 3 from the bank.
func (v *valley) putInVirgin(n *nuc, day int) {
	v.note(n, v.at(day, 18, 5), book.VirginPutIn{
		Nuc: n.id, Queen: v.virgins[0], Batch: v.batches[3], Emerged: v.emergence(3), How: book.Sprayed,
	})
}
