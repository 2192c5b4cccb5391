package state

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

var ofQueen = []book.Kind{book.KindQueen}

// queenRecords are what can be written down of a queen.
var queenRecords = []Record{
	{
		Name: "queen in", Word: "Put her in", Of: ofQueen, Main: true, Fits: inHand, Asks: func(s State) []Ask {
			return []Ask{
				askOne("to", "Into nuc or colony", "", s.homes()),
				{Name: "how", Label: "How", Kind: Choice, First: book.FromCage.String(), Options: waysIn},
			}
		}, Facts: queenIn,
	},
	{Name: "hand over", Word: "Hand her over", Of: ofQueen, Many: true, Main: true, Fits: inHand, Soon: matedQueen, Asks: askHandOver, Facts: handedOver},
	{
		Name: "bank", Word: "Hang her into a bank", Of: ofQueen, Many: true, Fits: cagedQueen, Asks: func(s State) []Ask {
			banks := s.colonies(book.Bank)
			return []Ask{askOne("bank", "Bank", firstOf(banks), banks)}
		}, Facts: func(_ State, a *Answers) []book.Fact {
			bank, _ := a.NeededThing("bank").Colony()
			return eachQueen(a, func(q book.QueenID) book.Fact { return book.QueenBanked{Queen: q, Bank: bank} })
		},
	},
	{
		Name: "mark", Word: "Mark her", Of: ofQueen, Fits: inHand, Asks: askMark,
		Facts: func(_ State, a *Answers) []book.Fact {
			f := a.mark()
			f.Queen, _ = a.Of.Last().Queen()
			f.Nuc, _ = a.View.Queen(f.Queen).Where.Nuc()
			return fact(f)
		},
	},
	{
		Name: "test", Word: "Write down a test", Of: ofQueen, Asks: func(s State) []Ask {
			return []Ask{askWords("what", "What was tested", lastOf[book.QueenTested](s).What, "gentleness, honey, hygiene …"), askFigure("score", "Score", "", 0)}
		}, Facts: func(_ State, a *Answers) []book.Fact {
			f := book.QueenTested{What: a.Needed("what"), Score: a.Figure("score")}
			a.Needed("score")
			f.Queen, _ = a.Of.Last().Queen()
			return fact(f)
		},
	},
	{Name: "describe queen", Word: "Say who she is", Of: ofQueen, Asks: askQueen, Facts: queenDescribed},
	{Name: "new queen", Word: "New queen", Of: fromYard, Asks: askQueen, Facts: queenDescribed},
	{
		Name: "queen ended", Word: "She ended", Of: ofQueen, Many: true, Fits: inHand,
		Asks: asks(Ask{Name: "how", Label: "How", Kind: Choice, Options: vocabulary(book.QueenDied, book.QueenLost, book.QueenCulled, book.QueenSuperseded)}),
		Facts: func(_ State, a *Answers) []book.Fact {
			var how book.QueenEnd
			a.NeededWord("how", &how)
			return eachQueen(a, func(q book.QueenID) book.Fact { return book.QueenEnded{Queen: q, How: how} })
		},
	},
}

// ofQueens tells whether all queens selected are so.
func ofQueens(is func(*book.Queen) bool) func(State) bool {
	return func(s State) bool {
		for sub := range s.Selection.All() {
			if id, ok := sub.Queen(); ok && !is(s.Present().View.Queen(id)) {
				return false
			}
		}
		return true
	}
}

var (
	inHand     = ofQueens((*book.Queen).InHand)
	cagedQueen = ofQueens((*book.Queen).Caged)
	matedQueen = ofQueens(func(q *book.Queen) bool { return !q.Virgin })
)

func eachQueen(a *Answers, fact func(book.QueenID) book.Fact) (all []book.Fact) {
	for _, sub := range a.Subjects() {
		if id, ok := sub.Queen(); ok {
			all = append(all, fact(id))
		}
	}
	return all
}

// queens are the queens that are so, as options, the longest where they are first.
func (s State) queens(are func(*book.Queen) bool) []Option {
	var all []*book.Queen
	v := s.Present().View
	for q := range v.Queens() {
		if are(q) {
			all = append(all, q)
		}
	}
	slices.SortStableFunc(all, func(a, b *book.Queen) int { return a.Since.Instant.Compare(b.Since.Instant) })
	return things(slices.Values(all), func(q *book.Queen) (book.Subject, string) {
		word := strings.TrimPrefix(strings.TrimPrefix(rules.Name(v, q.Queen.Subject()), "the queen in "), "the queen ")
		if q.Line != "" {
			word += ", " + q.Line
		}
		return q.Queen.Subject(), word
	})
}

// caged is the queen in the hand whose cage has a number, or, without one, came out of a
// nuc; but those are passed over.
func (a *Answers) caged(name, cage string, but ...book.QueenID) book.QueenID {
	q := a.View.CagedAs(cage, but...)
	if all := line.QueensCalled(a.View, cage, true, func(o *book.Queen) bool { return o.Caged() && !slices.Contains(but, o.Queen) }); q == nil && len(all) == 1 {
		q = all[0]
	}
	if q == nil {
		a.Wrong(name, "no queen is in cage %s: write down first where she was caught", cage)
		return book.QueenID{}
	}
	return q.Queen
}

// nextCages are the numbers of cages for so many more queens: on from the
// highest in use.
func (s State) nextCages(n int) string {
	most := 0
	for q := range s.Present().View.Queens() {
		if k, err := strconv.Atoi(q.Label); err == nil && q.Caged() {
			most = max(most, k)
		}
	}
	if n <= 1 {
		return strconv.Itoa(most + 1)
	}
	return strconv.Itoa(most+1) + "-" + strconv.Itoa(most+n)
}

// openOrders are the orders that still want queens, as options.
func (s State) openOrders() []Option {
	return things(s.Present().View.Orders(), func(o *book.Order) (book.Subject, string) {
		if o.Open() == 0 {
			return book.Subject{}, ""
		}
		return o.Order.Subject(), o.Number + ", " + o.Customer
	})
}

// dealtTo is the order to which the queen selected is dealt; "" for none.
func (s State) dealtTo() string {
	for _, served := range s.Present().Judged().Dealt().Orders {
		for _, q := range served.Queens {
			if id, ok := s.Selection.Last().Queen(); ok && q.ID == id {
				return served.Order.Order.Subject().String()
			}
		}
	}
	return ""
}

func askHandOver(s State) []Ask {
	return []Ask{
		askOne("order", "For order", cmp.Or(s.dealtTo(), firstOf(s.openOrders())), s.openOrders()),
		askWords("to", "To whom, without an order", "", ""),
		askYes("with", "With attendants"),
	}
}

func handedOver(_ State, a *Answers) []book.Fact {
	f := book.QueenHandedOver{Order: book.OrderID(a.Thing("order").UUID), To: a.Text("to"), With: a.Yes("with")}
	if f.To != "" {
		f.Order = book.OrderID{}
	}
	if f.To == "" && f.Order.IsZero() {
		a.Wrong("to", "choose an order, or say to whom she goes")
	}
	return eachQueen(a, func(q book.QueenID) book.Fact { f.Queen = q; return f })
}

// homes are the nucs and colonies that a queen can go into, those without one
// first.
func (s State) homes() []Option {
	var without, with []Option
	for _, n := range s.Present().Nucs {
		o := Option{n.Nuc.Nuc.Subject().String(), n.Name}
		if n.Holds.Condition == book.NoQueen {
			o.Word += ", no queen"
			without = append(without, o)
			continue
		}
		with = append(with, o)
	}
	return slices.Concat(without, s.colonies(0), with)
}

func queenIn(_ State, a *Answers) []book.Fact {
	id, _ := a.Of.Last().Queen()
	to := a.NeededThing("to")
	q := a.View.Queen(id)
	if nuc, ok := to.Nuc(); ok && q.Virgin {
		f := book.VirginPutIn{Nuc: nuc, Queen: id, Batch: q.Batch}
		a.Word("how", &f.How)
		return fact(f)
	}
	f := book.QueenPutIn{Queen: id, To: to}
	a.Word("how", &f.How)
	return fact(f)
}

// marks are the colours of the international convention, that of the year in
// which a queen was born first.
var marks = labels("white", "yellow", "red", "green", "blue")

func askMark(s State) []Ask {
	year := s.Now.Year()
	if id, ok := s.Selection.Last().Queen(); ok {
		if q := s.Present().View.Queen(id); !q.Born.IsZero() {
			year = q.Born.Year()
		} else if !q.Emerged.IsZero() {
			year = q.Emerged.Year()
		}
	}
	colour := bee.MarkColour(year).String()
	a := askOne("colour", "Colour", colour, marks)
	a.Note = "of a queen born in " + strconv.Itoa(year) + ": " + colour
	return []Ask{a, askWords("disc", "Number on her disc", "", ""), askYes("clipped", "A wing is clipped")}
}

func (a *Answers) mark() book.QueenMarked {
	f := book.QueenMarked{Colour: a.chosen("colour"), Disc: a.Text("disc"), Clipped: a.Yes("clipped")}
	if f == (book.QueenMarked{}) {
		a.Wrong("colour", "choose a colour, or say what else marks her")
	}
	return f
}

func askQueen(s State) []Ask {
	var q book.Queen
	if id, ok := s.Selection.Last().Queen(); ok {
		q = *s.Present().View.Queen(id)
	}
	born := ""
	if !q.Born.IsZero() {
		born = calendar.DayOf(q.Born, s.Present().View.Zone()).String()
	}
	mothers := s.queens(func(m *book.Queen) bool { return m.Name != "" && m.Queen != q.Queen })
	batches := things(s.Present().View.Batches(), func(b *book.Batch) (book.Subject, string) { return b.Batch.Subject(), batchWord(b) })
	return []Ask{
		askWords("name", "Name", q.Name, ""), askWords("line", "Line", q.Line, ""),
		askOne("mother", "Mother", q.Mother.Subject().String(), mothers),
		askOne("batch", "Batch", q.Batch.Subject().String(), batches),
		askWords("born", "Born on", born, "2027-05-03, or left blank"),
		askWords("drones", "Line of the drones", q.DroneLine, ""),
		askOne("mated", "Mated at", q.MatedAt.Subject().String(), s.yards()),
		{Name: "descent", Label: "Her descent is", Kind: Choice, First: q.Descent.String(), Options: vocabulary(book.DescentSure, book.DescentDoubtful)},
	}
}

func queenDescribed(s State, a *Answers) []book.Fact {
	f := book.QueenDescribed{Name: a.Text("name"), Line: a.Text("line"), DroneLine: a.Text("drones"), Batch: a.Batch("batch")}
	f.Queen, _ = a.Of.Last().Queen()
	if f.Queen.IsZero() {
		f.Queen = book.QueenID(a.Mint())
		a.Needed("name")
	}
	f.Mother, _ = a.Thing("mother").Queen()
	f.MatedAt, _ = a.Thing("mated").Yard()
	if was := a.View.Queen(f.Queen); !f.MatedAt.IsZero() {
		f.MatedYear = was.MatedYear
	}
	if a.Said("born") {
		if w, err := line.ParseDay(a.Text("born"), s.Today()); err != nil {
			a.Wrong("born", "%v", err)
		} else {
			f.Born = w.At(12, 0, a.View.Zone()).UTC() // noon is that day in every zone near
		}
	}
	a.Word("descent", &f.Descent)
	return fact(f)
}
