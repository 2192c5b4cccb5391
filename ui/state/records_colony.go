package state

import (
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

var (
	ofColony = []book.Kind{book.KindColony}
	fromYard = []book.Kind{book.NoKind, book.KindYard}
	ofHealth = []book.Kind{book.KindNuc, book.KindColony, book.KindYard}
)

// colonyRecords are what can be written down of a full-size colony, and of the
// health of what can be ill.
var colonyRecords = []Record{
	{
		Name: "search", Word: "Searched for wild cells", Of: ofNucOrColony, Main: true, For: []rules.Act{rules.ActSearchBrood}, Fits: broodToSearch,
		Asks: asks(Ask{Name: "found", Label: "Wild cells found and broken down", Kind: Figure, First: "0"}),
		Facts: func(_ State, a *Answers) []book.Fact {
			found := a.Count("found")
			return eachThing(a, func(in book.Subject) book.Fact { return book.WildCellsSearched{In: in, Found: found} })
		},
	},
	{Name: "change colony", Word: "Describe it", Of: ofColony, Asks: askColony, Facts: colonyDescribed(true)},
	{
		Name: "queen of colony", Word: "Put in a queen", Of: ofColony, Fits: matedCaged, Asks: askQueenIn,
		Facts: func(_ State, a *Answers) []book.Fact {
			f := book.QueenPutIn{To: a.Of.Last()}
			f.Queen, _ = a.NeededThing("queen").Queen()
			a.Word("how", &f.How)
			return fact(f)
		},
	},
	{
		Name: "treat", Word: "Treated", Of: ofHealth, Many: true,
		Asks: func(s State) []Ask {
			last := lastOf[book.Treated](s)
			wait := askFigure("wait", "Days to wait, as the label asks", "", float64(last.Wait))
			wait.Note = "catches and hand-overs are warned of until then"
			return []Ask{askWords("with", "With what", last.With, ""), wait}
		},
		Facts: func(_ State, a *Answers) []book.Fact {
			with, wait := a.Needed("with"), a.Count("wait")
			return eachThing(a, func(of book.Subject) book.Fact { return book.Treated{Of: of, With: with, Wait: wait} })
		},
	},
	{
		Name: "suspect", Word: "Disease suspected", Of: ofHealth, Many: true,
		Asks: asks(askWords("what", "Which disease", "", "the yard stands still until the suspicion has ended; what must be reported, the authority says")),
		Facts: func(_ State, a *Answers) []book.Fact {
			what := a.Needed("what")
			return eachThing(a, func(of book.Subject) book.Fact { return book.DiseaseSuspected{Of: of, What: what} })
		},
	},
	{
		Name: "clear", Word: "Suspicion ended", Of: ofHealth, Fits: suspected, Asks: asks(askWords("why", "Why", "", "sample clean …")),
		Facts: func(s State, a *Answers) []book.Fact {
			of := a.Of.Last()
			if still := s.standstill(); still != nil {
				of = still.Of
			}
			return fact(book.SuspicionEnded{Of: of, Why: a.Text("why")})
		},
	},
	{Name: "new colony", Word: "New colony", Of: fromYard, Asks: askColony, Facts: colonyDescribed(false)},
}

// broodToSearch tells whether open brood was put in and not searched since.
func broodToSearch(s State) bool {
	if id, ok := s.Selection.Last().Colony(); ok {
		brood := s.Present().View.Colony(id).OpenBrood
		return len(brood) > 0 && brood[len(brood)-1].Searched.IsZero()
	}
	n := s.chosen()
	return n != nil && !n.Brood.Open.IsZero()
}

// standstill is that of the yard of what is selected, if there is one.
func (s State) standstill() *book.Standstill {
	v := s.Present().View
	yard := s.yardMeant(s.Selection)
	if id, ok := s.Selection.Last().Colony(); ok {
		yard = v.Colony(id).Yard
	}
	if n := s.chosen(); n != nil {
		yard = n.Yard
	}
	if yard.IsZero() {
		return nil
	}
	return v.Yard(yard).Standstill
}

// suspected tells whether what is selected is suspected itself, or a yard stands
// still.
func suspected(s State) bool {
	still := s.standstill()
	return still != nil && (still.Of == s.Selection.Last() || s.Selection.Last().Kind == book.KindYard)
}

var roles = vocabulary(book.Breeder, book.Starter, book.Finisher, book.CellBuilder, book.BroodSource, book.DroneSource, book.Bank)

func askColony(s State) []Ask {
	var c book.ColonyDescribed
	if id, ok := s.Selection.Last().Colony(); ok {
		c = s.Present().View.Colony(id).ColonyDescribed
	} else {
		c.Yard = s.yardMeant(s.Selection)
	}
	var were []string
	for _, r := range c.Roles {
		were = append(were, r.String())
	}
	return []Ask{
		askWords("name", "Name", c.Name, ""), askOne("yard", "In yard", c.Yard.Subject().String(), s.yards()),
		askSome("roles", "Kept as", strings.Join(were, ","), roles),
		askWords("line", "Line", c.Line, ""), askFigure("bees", "Bees, thousands", "", c.Thousands),
		askOne("queen", "Its queen", c.Queen.Subject().String(), s.queens(func(q *book.Queen) bool { return q.Name != "" && q.InHand() })),
		askFigure("east", "Where it stands, east", "m", c.At.X), askFigure("north", "and north", "m", c.At.Y),
	}
}

// colonyDescribed is a new colony, or with anew the one selected.
func colonyDescribed(anew bool) func(State, *Answers) []book.Fact {
	return func(_ State, a *Answers) []book.Fact {
		f := book.ColonyDescribed{Name: a.Needed("name"), Line: a.Text("line"), Thousands: a.Figure("bees"), At: book.Point{X: a.Figure("east"), Y: a.Figure("north")}}
		if anew {
			f.Colony, _ = a.Of.Last().Colony()
		} else {
			f.Colony = book.ColonyID(a.Mint())
		}
		f.Yard, _ = a.NeededThing("yard").Yard()
		f.Queen, _ = a.Thing("queen").Queen()
		said := a.All("roles")
		for _, o := range roles {
			if slices.Contains(said, o.Value) {
				var r book.Role
				if r.UnmarshalText([]byte(o.Value)) == nil {
					f.Roles = append(f.Roles, r)
				}
			}
		}
		for c := range a.View.Colonies() {
			if c.Name == f.Name && c.Colony != f.Colony {
				a.Wrong("name", "colony %s is there already: write another name", f.Name)
			}
		}
		return fact(f)
	}
}
