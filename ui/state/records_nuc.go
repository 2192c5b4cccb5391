package state

import (
	"lidmark/domain/book"
	"lidmark/domain/rules"
)

var ofNuc = []book.Kind{book.KindNuc}

// nucRecords are what is seen and done about the queen of a nuc.
var nucRecords = []Record{
	{Name: "done", Word: "Done as written", Of: ofNuc, Many: true, Main: true, Fits: onSheet, Soon: onSheet, Facts: doneAsWritten},
	{
		Name: "look", Word: "Record a look", Of: ofNuc, Many: true, Main: true, Fits: notEmpty, Soon: notEmpty, Asks: askLook, Facts: looked,
		For: []rules.Act{rules.ActLookForEggs, rules.ActLookForBrood, rules.ActLookInside, rules.ActCheckBees},
		Why: refusedPlan(func(s State, n *Nuc) rules.Intent { return rules.PlanOf(s.Present().View, book.Looked{Nuc: n.Nuc.Nuc}) }),
	},
	{
		Name: "give cell", Word: "Give a cell", Of: ofNuc, Many: true, Soon: queenless, For: []rules.Act{rules.ActGiveCell}, Asks: askCell, Facts: cellGiven,
		Why: refusedPlan(func(s State, n *Nuc) rules.Intent { return rules.GiveCell{Nuc: n.Nuc.Nuc, Batch: s.cellsOf()} }),
	},
	{
		Name: "put in virgin", Word: "Put in a virgin", Of: ofNuc, Many: true, Soon: queenless, Asks: askVirgin, Facts: virginPutIn,
		Why: refusedPlan(func(s State, n *Nuc) rules.Intent { return rules.PutInVirgin{Nuc: n.Nuc.Nuc, Queen: s.oldestVirgin()} }),
	},
	{
		Name: "catch", Word: "Catch the queen", Of: ofNuc, Many: true, Asks: askCatch, Facts: queenCaught,
		For: []rules.Act{rules.ActCatchQueen, rules.ActTakeOutQueen}, Fits: notEmpty, Soon: laysNow,
		Why: refusedPlan(func(s State, n *Nuc) rules.Intent {
			culled := n.Holds.Condition == book.DroneLayer // she is taken out to be rid of her
			return rules.PlanOf(s.Present().View, book.QueenCaught{Nuc: n.Nuc.Nuc, Culled: culled})
		}),
	},
	{
		Name: "put in queen", Word: "Put in a mated queen", Of: ofNuc, Fits: takesMated, Asks: askQueenIn,
		Facts: func(_ State, a *Answers) []book.Fact {
			f := book.QueenPutIn{To: a.Of.Last()}
			f.Queen, _ = a.NeededThing("queen").Queen()
			a.Word("how", &f.How)
			return fact(f)
		},
	},
	{Name: "mark queen", Word: "Mark the queen", Of: ofNuc, Fits: holdsQueen, Asks: askMark, Facts: nucsQueenMarked},
	{
		Name: "own cells", Word: "Own cells broken down", Of: ofNuc, Many: true, Fits: notEmpty, For: []rules.Act{rules.ActBreakDownCells},
		Asks: asks(Ask{Name: "found", Label: "Cells found in each", Kind: Figure, Note: "0 for none; left blank, nobody counted"}),
		Facts: func(_ State, a *Answers) []book.Fact {
			found := a.Amount("found")
			return eachNuc(a, func(id book.NucID) book.Fact { return book.OwnCellsBroken{Nuc: id, Found: found} })
		},
	},
}

// onSheet tells whether the day's sheet asks something of a nuc selected that a
// tick can tell.
func onSheet(s State) bool {
	if l, ok := s.ChosenLine(); ok {
		return len(s.asWritten(l, nil)) > 0
	}
	sheet := s.Reading().Sheet()
	for sub := range s.Selection.All() {
		if id, ok := sub.Nuc(); ok && len(sheet(id)) > 0 {
			return true
		}
	}
	return false
}

func doneAsWritten(s State, a *Answers) (all []book.Fact) {
	if l, ok := s.ChosenLine(); ok {
		return s.asWritten(l, nil)
	}
	for _, id := range a.SelectedNucs() {
		all = append(all, s.Reading().Sheet()(id)...)
	}
	return all
}

// chosenFits is a record that fits when one of the nucs selected is so; of other
// things it always does.
func chosenFits(fits func(*Nuc) bool) func(State) bool {
	return func(s State) bool {
		nucs := false
		for sub := range s.Selection.All() {
			if id, ok := sub.Nuc(); ok {
				n := s.Reading().Nuc(id)
				nucs = true
				if n != nil && fits(n) {
					return true
				}
			}
		}
		return !nucs
	}
}

var (
	notEmpty   = chosenFits(func(n *Nuc) bool { return n.Condition() != book.Empty })
	isEmpty    = chosenFits(func(n *Nuc) bool { return n.Condition() == book.Empty })
	queenless  = chosenFits(func(n *Nuc) bool { return n.Holds.Condition == book.NoQueen })
	laysNow    = chosenFits(func(n *Nuc) bool { return n.Holds.Condition.Queenright() || n.Holds.Condition == book.DroneLayer })
	holdsQueen = chosenFits(func(n *Nuc) bool { return n.Holds.Condition.Queenright() || n.Holds.Condition == book.Virgin })
)

func askLook(State) []Ask {
	return []Ask{
		{Name: "queen", Label: "Queen", Kind: Choice, Options: vocabulary(book.QueenSeen, book.NoneSeen, book.VirginSeen)},
		{Name: "eggs", Label: "Eggs", Kind: Choice, Options: vocabulary(book.SingleEggs, book.NoEggs, book.ManyEggs)},
		{Name: "brood", Label: "Capped worker brood, palms (1 dm²)", Kind: Figure, Note: "0 for none; left blank, nobody looked"},
		{Name: "sides", Label: "Sides of comb with bees", Kind: Figure},
		{Name: "stores", Label: "Stores", Kind: Choice, Options: []Option{{"0", "none"}, {"1", "little"}, {"2", "enough"}, {"3", "full"}}},
		{Name: "own", Label: "Own cells seen", Kind: Figure},
		{Name: "cell", Label: "The cell that was given", Kind: Choice, Options: vocabulary(book.CellShut, book.CellOpenAtTip, book.CellTornAtSide)},
		askSome("also", "Also", "", []Option{
			{"larvae", "larvae"}, {"drones", "drone brood in worker cells"}, {"thorough", "every side looked at"}, {"quick", "only a glance"},
		}),
		{Name: "temper", Label: "Temper", Kind: Choice, Options: []Option{{"1", "calm"}, {"2", "easy"}, {"3", "lively"}, {"4", "fierce"}}},
		askWords("note", "Note", "", ""),
	}
}

func looked(_ State, a *Answers) []book.Fact {
	f := book.Looked{Brood: a.Amount("brood"), Sides: a.Amount("sides"), Stores: a.Amount("stores"), OwnCells: a.Amount("own"), Temper: a.Amount("temper"), Note: a.Text("note")}
	a.Word("queen", &f.Queen)
	a.Word("eggs", &f.Eggs)
	a.Word("cell", &f.Cell)
	for _, also := range a.All("also") {
		f.Larvae = f.Larvae || also == "larvae"
		f.DroneBrood = f.DroneBrood || also == "drones"
		f.Thorough = f.Thorough || also == "thorough"
		f.Quick = f.Quick || also == "quick"
	}
	if f == (book.Looked{}) {
		a.Wrong("queen", "say what was seen, one answer is enough")
	}
	return eachNuc(a, func(id book.NucID) book.Fact { f.Nuc = id; return f })
}

// cellsOf is the batch that a cell is most likely of: the one that the work due
// names, else the oldest with cells to give.
func (s State) cellsOf() book.BatchID {
	if n := s.chosen(); n != nil && n.Due != nil && n.Due.Act == rules.ActGiveCell {
		for _, sub := range n.Due.Also {
			if id, ok := sub.Batch(); ok {
				return id
			}
		}
	}
	for _, b := range s.Present().Batches() {
		if b.Unplaced() > 0 {
			return b.Batch
		}
	}
	return book.BatchID{}
}

func askCell(s State) []Ask {
	return []Ask{
		askOne("batch", "Of batch", s.cellsOf().Subject().String(), s.batches()),
		askYes("protected", "With a cell protector"),
	}
}

func cellGiven(_ State, a *Answers) []book.Fact {
	id, _ := a.NeededThing("batch").Batch()
	if b, given := a.View.Batch(id), len(a.SelectedNucs()); given > b.Unplaced() && !id.IsZero() {
		a.Mind("%s for %s: by the book batch %d has %d left", counted(given, "cell"), counted(given, "nuc"), b.Number, b.Unplaced())
	}
	protected := a.Yes("protected")
	return eachNuc(a, func(n book.NucID) book.Fact { return book.CellGiven{Nuc: n, Batch: id, Protected: protected} })
}

// virgins are the caged virgins as options, the longest caged first.
func (s State) virgins() []Option {
	return s.queens(func(q *book.Queen) bool { return q.Caged() && q.Virgin })
}

// oldestVirgin is the one caged first; zero where there is none.
func (s State) oldestVirgin() (id book.QueenID) {
	var sub book.Subject
	if sub.UnmarshalText([]byte(firstOf(s.virgins()))) == nil {
		id, _ = sub.Queen()
	}
	return id
}

var waysIn = vocabulary(book.RunIn, book.FromCage, book.Sprayed)

func askVirgin(s State) []Ask {
	how := Ask{Name: "how", Label: "How", Kind: Choice, First: lastOf[book.VirginPutIn](s).How.String(), Options: waysIn}
	batches := s.batches()
	if s.Selection.Len() > 1 {
		return []Ask{
			askWords("cages", "Cages, one for each nuc", "", "in walking order, like 1-4; left blank, they have no cages"),
			askOne("batch", "Virgins without a cage are of batch", "", batches), how,
		}
	}
	who := s.virgins()
	for i, o := range batches {
		batches[i].Word = "of batch " + o.Word
	}
	return []Ask{askOne("virgin", "Which virgin", firstOf(who), append(who, batches...)), how}
}

func virginPutIn(s State, a *Answers) []book.Fact {
	var f book.VirginPutIn
	a.Word("how", &f.How)
	if a.Of.Len() == 1 {
		who := a.NeededThing("virgin")
		f.Queen, _ = who.Queen()
		f.Batch, _ = who.Batch()
		return eachNuc(a, func(n book.NucID) book.Fact { f.Nuc = n; f.Batch = a.batchOf(f); return f })
	}
	f.Batch = a.Batch("batch")
	nucs := a.SelectedNucs()
	cages := a.Cages("cages", len(nucs))
	if len(cages) == 0 && f.Batch.IsZero() {
		a.Wrong("cages", "say the cages or the batch of the virgins")
	}
	var all []book.Fact
	for i, n := range nucs {
		one := f
		one.Nuc = n
		if len(cages) > 0 {
			one.Queen = a.caged("cages", labelled(cages, i))
			one.Batch = a.batchOf(one)
		}
		all = append(all, one)
	}
	return all
}

// batchOf is the batch of a virgin that is put in.
func (a *Answers) batchOf(f book.VirginPutIn) book.BatchID {
	if f.Queen.IsZero() {
		return f.Batch
	}
	return a.View.Queen(f.Queen).Batch
}

func askCatch(s State) []Ask {
	n := s.Selection.Len()
	due := s.chosen()
	what := "kept"
	if n == 1 && due != nil && due.Holds.Condition == book.DroneLayer {
		what = "culled"
	}
	return []Ask{
		{Name: "what", Label: "She is", Kind: Choice, First: what, Options: []Option{{"kept", "kept in a cage"}, {"culled", "culled"}}},
		askWords("cages", "Number of her cage", s.nextCages(n), "one for each nuc in walking order; left blank, nobody numbers them"),
		askOne("bank", "Hung into bank", "", s.colonies(book.Bank)),
	}
}

func queenCaught(_ State, a *Answers) (all []book.Fact) {
	nucs, culled, bank := a.SelectedNucs(), a.Text("what") == "culled", a.Colony("bank")
	var cages []string
	if !culled {
		cages = a.Cages("cages", len(nucs))
	}
	for i, id := range nucs {
		f := book.QueenCaught{Nuc: id, Queen: a.View.Nuc(id).Holds.Queen, Label: labelled(cages, i), Culled: culled}
		if f.Queen.IsZero() && !culled {
			f.Queen = book.QueenID(a.Mint())
		}
		all = append(all, f)
		if !bank.IsZero() && !culled {
			all = append(all, book.QueenBanked{Queen: f.Queen, Bank: bank})
		}
	}
	return all
}

func askQueenIn(s State) []Ask {
	mated := s.mated()
	return []Ask{
		askOne("queen", "Which queen", firstOf(mated), mated),
		{Name: "how", Label: "How", Kind: Choice, First: book.FromCage.String(), Options: waysIn},
	}
}

// takesMated tells whether the chosen nuc has no queen and one sits in a cage.
func takesMated(s State) bool { return queenless(s) && matedCaged(s) }

func matedCaged(s State) bool { return len(s.mated()) > 0 }

// mated are the mated queens in cages as options.
func (s State) mated() []Option {
	return s.queens(func(q *book.Queen) bool { return q.Caged() && !q.Virgin })
}

func nucsQueenMarked(_ State, a *Answers) []book.Fact {
	id, _ := a.Of.Last().Nuc()
	f := a.mark()
	f.Nuc, f.Queen = id, a.View.Nuc(id).Holds.Queen
	if f.Queen.IsZero() {
		f.Queen = book.QueenID(a.Mint())
	}
	return fact(f)
}
