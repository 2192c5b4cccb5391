package demo

import (
	"math"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// model is a kind of box and how its nucs are made up.
type model struct {
	name  string
	nucs  int     // in a box
	sides int     // of comb in a nuc
	side  float64 // dm² of a side
	thin  bool

	before       int     // days from making up to the cell
	cups         float64 // of bees
	capped, open float64 // palms of brood
	food         float64 // g
	door         float64 // cm²
}

// The two kinds of box: small ones, filled with bees alone and kept shut in
// the cool for three days; and three half combs with brood, singly or two
// nucs a box, whose own cells are broken down before the cell is given.
var (
	mini   = &model{"mini, 3 small combs", 1, 6, 2, false, 3, 3, 0, 0, 450, 2}
	single = &model{"three half combs", 1, 6, 4, false, 6, 4, 3, 1.5, 900, 3}
	twin   = &model{"two nucs of three half combs", 2, 6, 4, false, 6, 4, 3, 1.5, 900, 3}
)

// firstNumber is painted on the first box.
const firstNumber = 101

func (v *valley) settleNucs() {
	begun := v.in(bookBegun, calendar.Midday)
	number := firstNumber
	for _, s := range allStands() {
		stand := book.StandID(v.name())
		hand := v.hand(s.yard, begun)
		v.write(hand, begun, book.StandSet{
			Stand: stand, Yard: v.yards[s.yard], Letter: s.letter,
			At: s.at(), Turn: s.turn, Places: s.places(), Round: s.round,
		})
		var box book.BoxID
		for i, fate := range s.fates {
			if i%s.model.nucs == 0 {
				box = v.build(hand, number, s.model, begun)
				number++
			}
			v.place(s, stand, box, i+1, fate, begun)
		}
	}
}

func (v *valley) build(hand string, number int, m *model, at calendar.Moment) book.BoxID {
	box := book.BoxID(v.name())
	v.write(hand, at, book.BoxBuilt{Box: box, Number: strconv.Itoa(number), Model: m.name, Nucs: m.nucs, Thin: m.thin})
	return box
}

// place names the nuc of a place and sets it there.
func (v *valley) place(s standRow, stand book.StandID, box book.BoxID, place int, fate rune, at calendar.Moment) {
	n := &nuc{id: book.NucID(v.name()), name: s.nucName(place), yard: s.yard, model: s.model, batch: s.batch, fate: fate}
	v.nucs = append(v.nucs, n)
	v.note(n, at,
		book.NucNamed{Nuc: n.id, Name: n.name, Box: box, Entrance: doorways[place-1], Sides: s.model.sides, Side: s.model.side},
		book.NucPlaced{Nuc: n.id, Yard: v.yards[s.yard], Stand: stand, Place: place},
	)
	if s.places() == 1 {
		v.markFront(n, at)
	}
}

// The marks on the fronts of single boxes: shapes and colours that bees tell
// apart, so that no two neighbours are alike.
var (
	shapes  = [...]string{"disc", "bar", "cross"}
	colours = [...]string{"blue", "white", "yellow", "black"}
)

func (v *valley) markFront(n *nuc, at calendar.Moment) {
	i := len(v.nucs)
	v.note(n, at, book.FrontMarked{Nuc: n.id, Shape: shapes[i%len(shapes)], Colour: colours[i%len(colours)]})
}

// box is the stand of the i-th box of a row.
func (r rowOfBoxes) box(i int) standRow {
	s := r.standRow
	last := float64(len(r.fates) - 1)
	along := float64(i)
	bow := r.bend * math.Sin(math.Pi*along/last)
	length := math.Hypot(r.dx, r.dy)
	s.letter += strconv.Itoa(i + 1)
	s.x = centimetres(r.x + along*r.dx - bow*r.dy/length)
	s.y = centimetres(r.y + along*r.dy + bow*r.dx/length)
	s.turn = r.turns[i%len(r.turns)]
	s.fates = r.fates[i : i+1]
	return s
}

func centimetres(x float64) float64 { return math.Round(x*100) / 100 }
