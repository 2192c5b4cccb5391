package demo

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// dearthSince is the day on which the moor's heather was over.
const dearthSince = -8

// happen writes what else befell the valley.
func (v *valley) happen() {
	v.seeForage()
	v.feedInCold()
	v.guardMoor()
	v.giveFinishersBrood()
	v.paintLids()
	v.keepPapers()
	v.tell()
	v.mistake()
}

func (v *valley) seeForage() {
	for _, y := range yards {
		at := v.in(-60, calendar.Evening)
		v.write(v.hand(y.name, at), at, book.ForageSeen{Yard: v.yards[y.name], Forage: book.InFlow})
	}
	v.write(partner, v.in(dearthSince, calendar.Evening), book.ForageSeen{Yard: v.yards[moor], Forage: book.InDearth})
}

// coldFeed is the day of the cold week on which every nuc got fondant.
const coldFeed = -21

func (v *valley) feedInCold() {
	for _, n := range v.nucs {
		if n.batch <= 2 && n.alive() {
			v.note(n, v.in(coldFeed, calendar.Midday), book.Fed{To: n.id.Subject(), Fondant: 250})
		}
	}
}

// guardMoor narrows the entrances on the moor but for those of the weak nucs,
// which were overlooked; then light ones are given syrup, and robbers come.
func (v *valley) guardMoor() {
	for _, n := range v.nucs {
		w, isWeak := weak[n.name]
		if n.yard != moor {
			continue
		}
		if !isWeak && n.batch <= 3 && n.alive() {
			v.note(n, v.in(dearthSince+1, calendar.Evening), book.EntranceSet{Nuc: n.id, Area: narrowDoor})
		}
		if isWeak && w.stores <= 1 {
			v.note(n, v.in(moorFeed, calendar.Evening), book.Fed{To: n.id.Subject(), Litres: .3})
		}
	}
	t2 := v.nuc("T2")
	v.note(t2, v.at(-1, 18, 20),
		book.Robbed{Nuc: t2.id},
		book.Noted{Of: t2.id.Subject(), Text: "fighting at the door, wax crumbs below it; closed to one bee with grass"},
	)
}

// moorFeed is the day on which light nucs on the moor got syrup.
const moorFeed = -4

// narrowDoor is an entrance one bee wide, in cm².
const narrowDoor = 1

// giveFinishersBrood strengthens the finishers with open brood, in which wild
// cells can be: one was found in S6, and S5 has not been searched.
func (v *valley) giveFinishersBrood() {
	s5, s6 := v.colonies["S5"].Subject(), v.colonies["S6"].Subject()
	v.write(keeper, v.in(-12, calendar.Evening), book.BroodGiven{To: s6, Combs: 2, Capped: 6, Open: 8, From: v.colonies["S9"].Subject()})
	v.write(keeper, v.at(-7, 18, 40),
		book.WildCellsSearched{In: s6, Found: 1},
		book.Noted{Of: s6, Text: "one wild cell low on the second comb, behind the bar; broken down"},
	)
	v.write(keeper, v.in(-5, calendar.Morning), book.BroodGiven{To: s5, Combs: 2, Capped: 5, Open: 9, From: v.colonies["S10"].Subject()})
}

// strokes are the paint on the lids, by fate of batch 1.
var strokes = map[rune]book.Stroke{
	'g': book.Settled, 'l': book.Watch, 'v': book.Watch, 'd': book.Act, 'w': book.Act, 'o': book.Act,
}

func (v *valley) paintLids() {
	for _, n := range v.nucs {
		if s, ok := strokes[n.fate]; ok && n.batch == 1 {
			v.note(n, v.in(-3, calendar.Evening), book.LidPainted{Nuc: n.id, Stroke: s})
		}
	}
}

func (v *valley) keepPapers() {
	v.write(keeper, v.in(-64, calendar.Evening),
		book.PaperHeld{Yard: v.yards[home], Name: "health certificate", Expires: v.on(118)},
		book.PaperHeld{Yard: v.yards[ledge], Name: "health certificate", Expires: v.on(118)},
		book.PaperHeld{Yard: v.yards[moor], Name: "permit of the landowner", Expires: v.on(9)},
		book.NumberChanged{Number: "minutes_look", Value: 1.5},
	)
	v.write(keeper, v.at(-34, 11, 0), book.Inspected{Yard: v.yards[ledge], Result: "no signs of disease in 12 boxes"})
}

// mistake: a feed written for the wrong box and struck; and one that both of
// them wrote.
func (v *valley) mistake() {
	wrong, right := v.nuc("B2"), v.nuc("D2")
	number := v.write(keeper, v.in(-13, calendar.Evening), book.Fed{To: wrong.id.Subject(), Litres: .3})
	v.strike(number, 1, "it was D2, not B2")
	v.writeLater(1, keeper, v.in(-13, calendar.Evening), book.Fed{To: right.id.Subject(), Litres: .3})
	v.write(keeper, v.in(moorFeed, calendar.Evening), book.Fed{To: v.nuc("Q1").id.Subject(), Litres: .3})
}

// tell writes notes, a look put off, and a queen who died in the bank.
func (v *valley) tell() {
	waits := batches[5-1]
	v.write(keeper, v.at(-1, 20, 20), book.Noted{
		Of: v.batches[5].Subject(), Text: fmt.Sprintf("%d cells still together in the incubator; nobody free until tomorrow", waits.capped-waits.culled),
	})
	v.write(keeper, v.in(-16, calendar.Evening), book.Noted{
		Of: v.yards[ledge].Subject(), Text: "first warm day after the cold week, drones out at two",
	})
	v.write(partner, v.in(-5, calendar.Evening), book.Noted{
		Of: v.yards[moor].Subject(), Text: "heather over, robbers trying the doors in the evening",
	})
	t4 := v.nuc("T4")
	v.note(t4, v.in(-3, calendar.Evening), book.PutOff{
		Rule: string(rules.LookEggs), Of: t4.id.Subject(), Until: v.on(1), Why: "robbers about, leave it shut",
	})
	first := v.catches[-6][0]
	v.write(keeper, v.in(-3, calendar.Morning), book.QueenEnded{Queen: first.queen, How: book.QueenDied})
}
