package state

import (
	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

var ofYard = []book.Kind{book.KindYard}

// yardRecords are what can be written down of a yard.
var yardRecords = []Record{
	{
		Name: "weather", Word: "Weather", Of: fromYard, Asks: askSigns,
		Facts: func(s State, a *Answers) []book.Fact {
			signs, day := a.Needed("signs"), a.NeededDay("first")
			if len(a.Mistakes) > 0 {
				return nil
			}
			facts, err := line.Weather(signs, day, s.Today(), a.Yard())
			if err != nil {
				a.Wrong("signs", "%v", err)
			}
			return facts
		},
	},
	{
		Name: "forage", Word: "Flow", Of: fromYard,
		Asks: asks(Ask{Name: "forage", Label: "From now on", Kind: Choice, Options: vocabulary(book.InFlow, book.InDearth)}, Ask{Name: "wasps", Label: "Wasps about", Kind: Choice, Options: []Option{{"no", "no"}, {"yes", "yes"}}}),
		Facts: func(_ State, a *Answers) []book.Fact {
			f := book.ForageSeen{Yard: a.Yard(), Wasps: a.Text("wasps") == "yes"}
			a.NeededWord("forage", &f.Forage)
			return fact(f)
		},
	},
	{Name: "row looked", Word: "A row looked at, in counts", Of: fromYard, Asks: askRow, Facts: rowLooked},
	{Name: "add boxes", Word: "Add boxes", Of: fromYard, Asks: askBoxes, Facts: boxesAdded},
	{Name: "change yard", Word: "Describe it", Of: ofYard, Asks: askYard, Facts: yardDescribed(true)},
	{
		Name: "inspected", Word: "Inspected", Of: ofYard, Asks: asks(askWords("result", "Result", "nothing found", "")),
		Facts: func(_ State, a *Answers) []book.Fact {
			return fact(book.Inspected{Yard: a.Yard(), Result: a.Needed("result")})
		},
	},
	{
		Name: "paper", Word: "Certificate or permit", Of: ofYard, For: []rules.Act{rules.ActSeeToPapers},
		Asks: asks(askWords("name", "Which", "health certificate", ""), askWords("until", "Good until", "", "2027-07-31, +60")),
		Facts: func(_ State, a *Answers) []book.Fact {
			return fact(book.PaperHeld{Yard: a.Yard(), Name: a.Needed("name"), Expires: a.NeededDay("until")})
		},
	},
	{Name: "new yard", Word: "New yard", Of: fromYard, Asks: func(s State) []Ask { s.Selection = Selection{}; return askYard(s) }, Facts: yardDescribed(false)},
}

func askRow(s State) []Ask {
	stands := things(s.Present().View.Stands(s.yardMeant(s.Selection)), func(st *book.Stand) (book.Subject, string) { return st.Stand.Subject(), st.Letter })
	stand := askOne("stand", "Stand", "", stands)
	stand.Note = "left blank: the whole yard"
	all := things(s.Present().View.Batches(), func(b *book.Batch) (book.Subject, string) { return b.Batch.Subject(), batchWord(b) })
	return []Ask{
		stand, askOne("batch", "Of batch", "", all),
		askFigure("looked", "Looked at", "", 0), askFigure("laying", "Laying", "", 0), askFigure("virgins", "With a virgin", "", 0), askFigure("none", "Without a queen", "", 0),
	}
}

func rowLooked(_ State, a *Answers) []book.Fact {
	f := book.RowLooked{Yard: a.Yard(), Stand: book.StandID(a.Thing("stand").UUID), Batch: a.Batch("batch"), Looked: a.NeededCount("looked")}
	f.Laying, f.Virgins, f.None = a.Count("laying"), a.Count("virgins"), a.Count("none")
	if sum := f.Laying + f.Virgins + f.None; sum > f.Looked {
		a.Wrong("looked", "%d were told of and %d looked at: mend one of them", sum, f.Looked)
	}
	return fact(f)
}
