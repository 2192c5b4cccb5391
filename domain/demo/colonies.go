package demo

import (
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// The three mother lines.
const (
	siskin = "Siskin"
	plover = "Plover"
	yarrow = "Yarrow"
)

var colonies = []struct {
	name      string
	yard      string
	at        book.Point
	line      string
	thousands float64
	roles     []book.Role
}{
	{"S1", home, book.Point{X: 10, Y: 16}, siskin, 28, []book.Role{book.Breeder}},
	{"S2", home, book.Point{X: 14, Y: 16}, plover, 26, []book.Role{book.Breeder}},
	{"S3", home, book.Point{X: 18, Y: 16}, yarrow, 24, []book.Role{book.Breeder}},
	{"S4", home, book.Point{X: 26, Y: 13}, "", 22, []book.Role{book.Starter}},
	{"S5", home, book.Point{X: 30, Y: 13}, "", 42, []book.Role{book.Finisher}},
	{"S6", home, book.Point{X: 34, Y: 13}, "", 40, []book.Role{book.Finisher}},
	{"S7", home, book.Point{X: 10, Y: 9}, "", 38, []book.Role{book.BroodSource}},
	{"S8", home, book.Point{X: 14, Y: 9}, "", 36, []book.Role{book.BroodSource}},
	{"S9", home, book.Point{X: 18, Y: 9}, "", 34, []book.Role{book.BroodSource}},
	{"S10", home, book.Point{X: 22, Y: 9}, "", 35, []book.Role{book.BroodSource}},
	{"S11", home, book.Point{X: 38, Y: 13}, "", 30, []book.Role{book.Bank}},
	{"S12", ledge, book.Point{X: 3, Y: 7.5}, plover, 34, []book.Role{book.DroneSource}},
	{"S13", ledge, book.Point{X: 6.5, Y: 7.5}, plover, 32, []book.Role{book.DroneSource}},
	{"S14", ledge, book.Point{X: 3, Y: 4}, plover, 33, []book.Role{book.DroneSource}},
	{"S15", moor, book.Point{X: 50, Y: 20}, yarrow, 33, []book.Role{book.DroneSource}},
	{"S16", moor, book.Point{X: 50, Y: 23.5}, yarrow, 31, []book.Role{book.DroneSource}},
	{"S17", home, book.Point{X: 38, Y: 18}, plover, 36, []book.Role{book.DroneSource}},
	{"S18", home, book.Point{X: 41, Y: 18}, plover, 33, []book.Role{book.DroneSource}},
}

// breeders are the queens grafted from: their age in years and their tests,
// 1 to 4.
var breeders = map[string]struct {
	name, disc     string
	born           int // years before this one
	gentle, steady float64
}{
	"S1": {"Siskin 14", "14", 2, 3.7, 3.4},
	"S2": {"Plover 6", "6", 1, 3.3, 3.8},
	"S3": {"Yarrow 21", "21", 2, 3.9, 3.1},
}

func (v *valley) settleColonies() {
	begun := v.in(bookBegun, calendar.Morning)
	for _, c := range colonies {
		v.colonies[c.name] = book.ColonyID(v.name())
		d := book.ColonyDescribed{
			Colony: v.colonies[c.name], Name: c.name, Yard: v.yards[c.yard], At: c.at,
			Roles: c.roles, Line: c.line, Thousands: c.thousands,
		}
		if _, ok := breeders[c.name]; ok {
			d.Queen = v.describeBreeder(c.name, c.line, begun)
		}
		v.write(v.hand(c.yard, begun), begun, d)
	}
}

// describeBreeder gives a breeder a life line: born, marked and tested.
func (v *valley) describeBreeder(colony, line string, at calendar.Moment) book.QueenID {
	b := breeders[colony]
	year, _, _ := v.on(bookBegun).Date()
	year -= b.born
	q := book.QueenID(v.name())
	v.breeders[line] = q
	v.write(keeper, at,
		book.QueenDescribed{
			Queen: q, Name: b.name, Line: line, Descent: book.DescentSure,
			Born:    calendar.Date(year, time.June, 12).At(12, 0, v.zone).UTC(),
			MatedAt: v.yards[ledge], MatedYear: year,
		},
		book.QueenMarked{Queen: q, Colour: bee.MarkColour(year).String(), Disc: b.disc},
		book.QueenTested{Queen: q, What: "gentleness", Score: b.gentle},
		book.QueenTested{Queen: q, What: "steadiness on the comb", Score: b.steady},
	)
	return q
}
