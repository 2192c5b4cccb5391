package roll

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
)

// teller makes facts of one row.
type teller struct {
	*ground
	*item
	nuc   book.NucID
	queen book.QueenID
	note  string // with what an empty nuc has left
	looks []look
	facts []Dated
}

// look is an opening that a row tells of, on its day.
type look struct {
	at when
	book.Looked
}

// tell tells a row as facts, in the order in which they happened.
func (g *ground) tell(it *item) []Dated {
	t := &teller{ground: g, item: it, note: it.note}
	if it.there != nil {
		t.nuc = it.there.NucNamed.Nuc
	} else {
		t.place()
	}
	t.queen = t.queenThere()
	t.comes()
	t.looked()
	t.marked()
	t.rest()
	slices.SortStableFunc(t.facts, byTime)
	return t.facts
}

func (t *teller) say(at when, facts ...book.Fact) {
	for _, f := range facts {
		if !t.known(at, f) {
			t.facts = append(t.facts, Dated{At: at.at, Fact: f})
		}
	}
}

// place sets up a new nuc.
func (t *teller) place() {
	t.nuc = book.NucID(t.Mint())
	yard, letter := t.yardOf(t.item), t.item.stand
	box := boxKey(t.item)
	if t.item.box == "" {
		box += "\x00" + t.Nuc
	}
	from := when{at: t.ground.at}
	t.say(from,
		book.NucNamed{Nuc: t.nuc, Name: t.Nuc, Box: t.boxes[box].Box, Sides: t.Sides, Side: t.Side},
		book.NucPlaced{Nuc: t.nuc, Yard: yard, Stand: t.stands[yard.String()+letter].Stand, Place: t.item.place})
}

// stateDay is the day of all that has no day of its own.
func (t *teller) stateDay() when {
	if on := t.on[LastLookOn]; on.said() {
		return on
	}
	return t.listDay
}

// comes tells the cell or the virgin that the nuc got.
func (t *teller) comes() {
	var batch book.BatchID
	if b := t.batches[t.item.batch]; b != nil {
		batch = b.Batch
	}
	if on := t.on[CellGivenOn]; on.said() {
		t.say(on, book.CellGiven{Nuc: t.nuc, Batch: batch})
	}
	if on := t.on[VirginPutInOn]; on.said() {
		put := book.VirginPutIn{Nuc: t.nuc, Queen: t.hers(), Batch: batch}
		if out := t.on[EmergedOn]; out.said() {
			put.Emerged = out.at.Instant
		}
		t.say(on, put)
	}
}

// hers is the id of the row's queen, made when she is first spoken of.
func (t *teller) hers() book.QueenID {
	if t.queen.IsZero() {
		t.queen = book.QueenID(t.Mint())
	}
	return t.queen
}

// marked tells the queen's mark, where she was found with it, and her line
// where no batch tells that.
func (t *teller) marked() {
	if t.colour == "" && t.disc == "" {
		return
	}
	at := t.stateDay()
	if eggs := t.on[EggsSeenOn]; eggs.said() && !t.on[LastLookOn].said() {
		at = eggs
	}
	t.say(at, book.QueenMarked{Queen: t.hers(), Nuc: t.nuc, Colour: t.colour, Disc: t.disc})
}

// rest tells what no other fact holds: it describes a queen who has an id, and
// notes what cannot be said of one who has none.
func (t *teller) rest() {
	out, loose := t.on[EmergedOn], t.line != "" && t.item.batch == 0
	walked := out.said() && !t.on[CellGivenOn].said() && !t.on[VirginPutInOn].said()
	if !t.queen.IsZero() && (loose || walked) {
		q := book.QueenDescribed{Queen: t.queen}
		if loose {
			q.Line = t.line
		}
		if walked {
			q.Born = out.at.Instant
		}
		t.say(cmp.Or(out, t.stateDay()), q)
		return
	}
	of := t.nuc.Subject()
	if loose {
		t.say(t.stateDay(), book.Noted{Of: of, Text: "line " + t.line})
	}
	if walked {
		t.say(out, book.Noted{Of: of, Text: "the queen emerged " + out.day.String()})
	}
}

// queenThere is the queen of a nuc of the book, if the book tells of her what
// the row does.
func (t *teller) queenThere() book.QueenID {
	if t.item.there == nil {
		return book.QueenID{}
	}
	for e := range t.view.Lines(t.nuc.Subject()) {
		switch f := e.Fact.(type) {
		case book.VirginPutIn:
			if on := t.on[VirginPutInOn]; on.said() && sameDay(e.At, on.at, t.Zone) {
				return f.Queen
			}
		case book.QueenMarked:
			if f.Colour == t.colour && f.Disc == t.disc {
				return f.Queen
			}
		}
	}
	return book.QueenID{}
}

// known tells whether the book has a fact already, on the same day: a list that
// is read twice changes nothing.
func (t *teller) known(at when, f book.Fact) bool {
	if t.item.there == nil {
		return false
	}
	of := t.nuc.Subject()
	if q, is := f.(book.QueenDescribed); is {
		of = q.Queen.Subject()
	}
	for e := range t.view.Lines(of) {
		if sameDay(e.At, at.at, t.Zone) && e.Fact == f {
			return true
		}
	}
	return false
}
