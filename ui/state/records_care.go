package state

import (
	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

var ofNucOrColony = []book.Kind{book.KindNuc, book.KindColony}

// careRecords are the work at a nuc, some of it at a colony as well.
var careRecords = []Record{
	{Name: "make up", Word: "Make it up", Of: ofNuc, Many: true, Main: true, Fits: isEmpty, Soon: isEmpty, Asks: askMakeUp, Facts: madeUp},
	{
		Name: "add bees", Word: "Add bees", Of: ofNuc, Many: true, Fits: notEmpty, For: []rules.Act{rules.ActAddBees},
		Asks: func(s State) []Ask {
			return []Ask{askFigure("cups", "Cups of bees for each", "", s.dueAmount(rules.ActAddBees, lastOf[book.BeesAdded](s).Cups)), askOne("from", "From", lastOf[book.BeesAdded](s).From.String(), s.units())}
		},
		Facts: func(_ State, a *Answers) []book.Fact {
			f := book.BeesAdded{Cups: a.neededFigure("cups"), From: a.Thing("from")}
			return eachNuc(a, func(id book.NucID) book.Fact { f.Nuc = id; return f })
		},
	},
	{
		Name: "feed", Word: "Feed", Of: ofNucOrColony, Many: true, Fits: notEmpty, For: []rules.Act{rules.ActFeed}, Asks: askFeed,
		Facts: func(_ State, a *Answers) []book.Fact {
			litres, fondant := a.Figure("litres"), a.Figure("fondant")
			if litres+fondant == 0 {
				a.Wrong("litres", "say how much: syrup or fondant")
			}
			return eachThing(a, func(to book.Subject) book.Fact { return book.Fed{To: to, Litres: litres, Fondant: fondant} })
		},
	},
	{Name: "give brood", Word: "Give brood", Of: ofNucOrColony, Many: true, Fits: notEmpty, Asks: askBrood, Facts: broodGiven},
	{
		Name: "entrance", Word: "Set the entrance", Of: ofNuc, Many: true, For: []rules.Act{rules.ActNarrowEntrance, rules.ActOpenEntrance},
		Asks: func(s State) []Ask {
			a := askFigure("area", "Open area", "cm²", s.dueAmount(rules.ActOpenEntrance, lastOf[book.EntranceSet](s).Area))
			a.Note = "0 is shut"
			return []Ask{a}
		},
		Facts: func(_ State, a *Answers) []book.Fact {
			a.Needed("area")
			area := a.Figure("area")
			return eachNuc(a, func(id book.NucID) book.Fact { return book.EntranceSet{Nuc: id, Area: area} })
		},
	},
	{
		Name: "unite", Word: "Unite it", Of: ofNuc, Many: true, Fits: notEmpty, For: []rules.Act{rules.ActUnite},
		Asks: func(s State) []Ask { return []Ask{askOne("with", "With", "", s.units())} },
		Facts: func(_ State, a *Answers) []book.Fact {
			with := a.NeededThing("with")
			return eachNuc(a, func(id book.NucID) book.Fact { return book.United{Nuc: id, With: with} })
		},
	},
	{
		Name: "shake out", Word: "Shake it out", Of: ofNuc, Many: true, Fits: notEmpty, For: []rules.Act{rules.ActShakeOut}, Asks: onlyWhen,
		Facts: func(_ State, a *Answers) []book.Fact {
			return eachNuc(a, func(id book.NucID) book.Fact { return book.ShakenOut{Nuc: id} })
		},
	},
	{
		Name: "robbed", Word: "Robbers at it", Of: ofNuc, Many: true, Fits: notEmpty, Asks: onlyWhen,
		Facts: func(_ State, a *Answers) []book.Fact {
			return eachNuc(a, func(id book.NucID) book.Fact { return book.Robbed{Nuc: id} })
		},
	},
	{
		Name: "lost", Word: "It is lost", Of: ofNuc, Many: true, Fits: notEmpty,
		Asks: asks(Ask{Name: "how", Label: "How", Kind: Choice, Options: vocabulary(book.Toppled, book.Stolen, book.Flooded, book.Ants, book.Absconded, book.DiedOut)}),
		Facts: func(_ State, a *Answers) []book.Fact {
			var how book.Mishap
			a.NeededWord("how", &how)
			return eachNuc(a, func(id book.NucID) book.Fact { return book.NucLost{Nuc: id, How: how} })
		},
	},
	{
		Name: "paint", Word: "Paint its lid", Of: ofNuc, Many: true,
		Asks: asks(Ask{Name: "stroke", Label: "Stroke", Kind: Choice, First: book.Settled.String(), Options: []Option{
			{book.Settled.String(), "/ settled"}, {book.Watch.String(), "// watch"}, {book.Act.String(), "x act"}, {book.NoStroke.String(), "none, wiped"},
		}}),
		Facts: func(_ State, a *Answers) []book.Fact {
			var stroke book.Stroke
			a.NeededWord("stroke", &stroke)
			return eachNuc(a, func(id book.NucID) book.Fact { return book.LidPainted{Nuc: id, Stroke: stroke} })
		},
	},
	{
		Name: "front", Word: "Mark its front", Of: ofNuc, Many: true,
		Asks: asks(
			Ask{Name: "shape", Label: "Shape", Kind: Choice, Options: labels("disc", "square", "triangle", "bar", "cross", "post", "ring")},
			Ask{Name: "colour", Label: "Colour", Kind: Choice, Options: labels("white", "yellow", "red", "green", "blue", "sky", "black", "orange")},
		),
		Facts: func(_ State, a *Answers) []book.Fact {
			shape, colour := a.Needed("shape"), a.Needed("colour")
			return eachNuc(a, func(id book.NucID) book.Fact { return book.FrontMarked{Nuc: id, Shape: shape, Colour: colour} })
		},
	},
	{Name: "move", Word: "Carry it elsewhere", Of: ofNuc, Asks: askPlace, Facts: placed},
	{
		Name: "combs", Word: "Describe its combs", Of: ofNuc, Many: true,
		Asks:  func(State) []Ask { return []Ask{askWords("combs", "Combs of each", "", combsNote())} },
		Facts: combsSaid,
	},
	{Name: "describe nuc", Word: "Describe it", Of: ofNuc, Asks: askNuc, Facts: nucNamed},
}

// dueAmount is how much of something the work due at the chosen nuc asks for,
// where it is of that kind, else the amount that was used last.
func (s State) dueAmount(act rules.Act, last float64) float64 {
	if n := s.chosen(); n != nil && n.Due != nil && n.Due.Act == act && n.Due.Amount > 0 {
		return n.Due.Amount
	}
	return last
}

// neededFigure is a number above none.
func (a *Answers) neededFigure(name string) float64 {
	v := a.Figure(name)
	if v <= 0 {
		a.Wrong(name, "say how much, more than none")
	}
	return v
}

func askMakeUp(s State) []Ask {
	last := lastOf[book.NucMadeUp](s)
	from := askOne("from", "Bees from", last.From.Subject().String(), s.colonies(book.BroodSource))
	return []Ask{
		askFigure("cups", "Cups of bees for each", "", last.Cups),
		askFigure("food", "Food for each", "g", last.Food),
		askYes("shut", "Shut in at first"), from,
		askFigure("capped", "Capped brood for each, palms (1 dm²)", "", 0),
		askFigure("open", "Eggs and larvae for each, palms (1 dm²)", "", 0),
	}
}

func madeUp(_ State, a *Answers) []book.Fact {
	f := book.NucMadeUp{Cups: a.neededFigure("cups"), Capped: a.Figure("capped"), Open: a.Figure("open"), Food: a.Figure("food"), Shut: a.Yes("shut"), From: a.Colony("from")}
	return eachNuc(a, func(id book.NucID) book.Fact { f.Nuc = id; return f })
}

func askFeed(s State) []Ask {
	last := lastOf[book.Fed](s)
	if last.Litres == 0 && last.Fondant == 0 {
		last.Litres = s.Present().Numbers().Get(practice.SyrupPerFeed)
	}
	litres := s.dueAmount(rules.ActFeed, last.Litres)
	return []Ask{askFigure("litres", "Syrup for each", "l", litres), askFigure("fondant", "Fondant for each", "g", 0)}
}

func askBrood(s State) []Ask {
	return []Ask{
		askFigure("combs", "Combs for each", "", 1),
		askFigure("capped", "Capped brood, palms (1 dm²)", "", 0),
		askFigure("open", "Eggs and larvae, palms (1 dm²)", "", 0),
		askOne("from", "From", "", s.units()),
	}
}

func broodGiven(_ State, a *Answers) []book.Fact {
	f := book.BroodGiven{Combs: a.Figure("combs"), Capped: a.Figure("capped"), Open: a.Figure("open"), From: a.Thing("from")}
	if f.Combs+f.Capped+f.Open == 0 {
		a.Wrong("combs", "say how much: combs, capped brood or open brood")
	}
	return eachThing(a, func(to book.Subject) book.Fact { f.To = to; return f })
}
