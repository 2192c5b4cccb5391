package line

import (
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/unit"
)

// code is one row of the alphabet: how it is typed, what may follow it, how
// it is read back, and what it says.
type code struct {
	sign   string
	slot   string // of two codes with one slot only one can stand for a nuc
	figure figure
	least  float64
	most   float64 // 0: as much as one can type
	whole  bool
	words  func(value) string
	say    func(*deed, value)
}

// figure tells what follows a code.
type figure uint8

const (
	alone figure = iota // nothing
	may                 // a figure or nothing
	must                // a figure
	named               // a name or number, of a nuc, colony or cage
)

// value is what followed a code, resolved in the book.
type value struct {
	n      float64
	has    bool
	unit   string      // of n, metric; "" where a figure has none
	said   unit.System // in which it is read back
	name   string
	batch  book.BatchID
	queen  *book.Queen
	united book.Subject
}

func (v value) String() string { return strconv.FormatFloat(v.n, 'f', -1, 64) }

func says(words string) func(value) string { return func(value) string { return words } }

func sight(sign string, s book.Sight) code {
	return code{sign: sign, slot: "queen", words: says(s.String()), say: func(d *deed, _ value) { d.saw().Queen = s }}
}

func eggs(sign string, s book.EggSight) code {
	return code{sign: sign, slot: "eggs", words: says(s.String()), say: func(d *deed, _ value) { d.saw().Eggs = s }}
}

func stroke(sign string, s book.Stroke, words string) code {
	return code{sign: sign, slot: "stroke", words: says(words), say: func(d *deed, _ value) { d.paint, d.stroke = true, s }}
}

// codes is the alphabet. It is the one on the lid, the sheet and the screen.
var codes = []code{
	sight("q", book.QueenSeen), sight("n", book.NoneSeen), sight("v", book.VirginSeen),
	sight("-", book.NoneSeen), sight("–", book.NoneSeen),
	eggs("e", book.SingleEggs), eggs("e0", book.NoEggs), eggs("w", book.ManyEggs),
	{sign: "l", slot: "larvae", words: says("larvae"), say: func(d *deed, _ value) { d.saw().Larvae = true }},
	{sign: "b", slot: "brood", figure: must, words: broodWords, say: func(d *deed, v value) { d.saw().Brood = book.Said(v.n) }},
	{sign: "d", slot: "drone brood", words: says("drone brood in worker cells"), say: func(d *deed, _ value) { d.saw().DroneBrood = true }},
	{sign: "o", slot: "own cells", figure: may, least: 1, whole: true, words: ownWords, say: sayOwn},
	{sign: "o0", slot: "own cells down", words: says("own cells broken down"), say: func(d *deed, _ value) { d.broken = true }},
	{sign: "c", slot: "given", figure: must, least: 1, whole: true, words: cellWords, say: func(d *deed, v value) { d.cell = v.batch }},
	{sign: "i", slot: "given", figure: named, words: virginWords, say: func(d *deed, v value) { d.virgin = v.queen }},
	{sign: "s", slot: "sides", figure: must, whole: true, words: sideWords, say: func(d *deed, v value) { d.saw().Sides = book.Said(v.n) }},
	{sign: "h", slot: "stores", figure: must, most: book.MostStores, whole: true, words: storeWords, say: func(d *deed, v value) { d.saw().Stores = book.Said(v.n) }},
	{sign: "f", slot: "feed", figure: must, least: 0.001, words: feedWords, say: sayFed},
	{sign: "a", slot: "bees", figure: must, least: 0.25, words: cupWords, say: func(d *deed, v value) { d.cups = v.n }},
	{sign: "k", slot: "catch", figure: may, least: 1, whole: true, words: catchWords, say: sayCaught},
	{sign: "k0", slot: "catch", words: says("queen caught and culled"), say: func(d *deed, _ value) { d.caught, d.culled = true, true }},
	{sign: "u", slot: "end", figure: named, words: func(v value) string { return "united with " + v.name }, say: func(d *deed, v value) { d.united = v.united }},
	{sign: "t", slot: "temper", figure: must, least: 1, most: book.MostTemper, whole: true, words: temperWords, say: func(d *deed, v value) { d.saw().Temper = book.Said(v.n) }},
	{sign: "r", slot: "robbed", words: says("robbed"), say: func(d *deed, _ value) { d.robbed = true }},
	{sign: "p", slot: "end", words: says(book.DiedOut.String()), say: func(d *deed, _ value) { d.lost = book.DiedOut }},
	stroke("/", book.Settled, "one stroke: settled"), stroke("//", book.Watch, "two strokes: watch"), stroke("x", book.Act, "cross: act"),
}

func sayOwn(d *deed, v value) {
	n := 1.0
	if v.has {
		n = v.n
	}
	d.saw().OwnCells = book.Said(n)
}

func sayFed(d *deed, v value) {
	if v.unit == "g" {
		d.grams = v.n
		return
	}
	d.litres = v.n
}

func sayCaught(d *deed, v value) {
	d.caught = true
	if v.has {
		d.cage = v.String()
	}
}

// words of whole-word codes, which may also stand in quotes.
func phrase(sign, slot string, say func(*deed)) code {
	return code{sign: sign, slot: slot, words: says(sign), say: func(d *deed, _ value) { say(d) }}
}

func cell(sign string, s book.CellSight) code {
	c := phrase(sign, "cell seen", func(d *deed) { d.saw().Cell = s })
	c.words = says(s.String())
	return c
}

func lost(how book.Mishap) code {
	return phrase(how.String(), "end", func(d *deed) { d.lost = how })
}

// DoneWords are the words of a [Token] that stands for all that was planned.
const DoneWords = "done"

// phrases are said in whole words, for what has no letter.
var phrases = []code{
	phrase("done as written", DoneWords, func(d *deed) { d.done = true }),
	phrase("done", DoneWords, func(d *deed) { d.done = true }),
	cell("cell open at the tip", book.CellOpenAtTip), cell("cell open", book.CellOpenAtTip),
	cell("cell torn at the side", book.CellTornAtSide), cell("cell torn", book.CellTornAtSide),
	cell("cell shut", book.CellShut),
	phrase("cell dropped", "dropped", func(d *deed) { d.drop = book.Cells }),
	phrase("virgin dropped", "dropped", func(d *deed) { d.drop = book.Virgins }),
	phrase("every comb seen", "care", func(d *deed) { d.saw().Thorough = true }),
	phrase("a glance", "care", func(d *deed) { d.saw().Quick = true }),
	phrase("queen gone", "gone", func(d *deed) { d.gone = true }),
	phrase("robbed", "robbed", func(d *deed) { d.robbed = true }),
	phrase("shaken out", "end", func(d *deed) { d.shaken = true }),
	phrase("lid wiped", "stroke", func(d *deed) { d.paint, d.stroke = true, book.NoStroke }),
	lost(book.Toppled), lost(book.Stolen), lost(book.Flooded), lost(book.Ants), lost(book.Absconded), lost(book.DiedOut),
}
