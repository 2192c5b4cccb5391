package state

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/founding"
	"lidmark/domain/yard"
)

// Where a nuc stands and what it is.

func askPlace(s State) []Ask {
	v := s.Present().View
	var yard, stand, place string
	if n := s.chosen(); n != nil {
		yard, stand, place = n.Yard.Subject().String(), n.Stand.Subject().String(), typedFigure(float64(n.Place))
	}
	var stands []Option
	several := len(s.yards()) > 1
	for y := range v.Yards() {
		for st := range v.Stands(y.Yard) {
			o := Option{st.Stand.Subject().String(), st.Letter}
			if several {
				o.Word += ", " + y.Name
			}
			stands = append(stands, o)
		}
	}
	on := askOne("stand", "On stand", stand, stands)
	on.Note = "left blank, it stands on none"
	return []Ask{askOne("yard", "Into yard", yard, s.yards()), on, {Name: "place", Label: "Place on the stand", Kind: Figure, First: place}}
}

func placed(_ State, a *Answers) []book.Fact {
	f := book.NucPlaced{}
	f.Nuc, _ = a.Of.Last().Nuc()
	f.Yard, _ = a.NeededThing("yard").Yard()
	if stand := a.Thing("stand"); !stand.IsZero() {
		st := a.View.Stand(book.StandID(stand.UUID))
		f.Stand, f.Yard, f.Place = st.Stand, st.Yard, a.Count("place")
		if f.Place < 1 || f.Place > st.Places {
			a.Wrong("place", "stand %s has places 1 to %d: write one of them", st.Letter, st.Places)
		}
	}
	return fact(f)
}

func askNuc(s State) []Ask {
	var n book.NucNamed
	if of := s.chosen(); of != nil {
		n = of.NucNamed
	}
	return []Ask{
		askWords("name", "Name", n.Name, ""),
		askFigure("sides", "Sides of comb", "", float64(n.Sides)),
		askFigure("area", "Area of a side", "dm²", n.Side),
		askWords("facing", "Its entrance faces", strconv.FormatFloat(n.Entrance, 'f', -1, 64), "S, SE, or degrees clockwise from north, as the box stands unturned"),
	}
}

func nucNamed(_ State, a *Answers) []book.Fact {
	id, _ := a.Of.Last().Nuc()
	f := a.View.Nuc(id).NucNamed
	f.Name, f.Sides, f.Side = a.Needed("name"), a.Count("sides"), a.Figure("area")
	for _, n := range a.View.NucNamed(f.Name) {
		if n.Nuc != id && n.Yard == a.View.Nuc(id).Yard {
			a.Wrong("name", "%s is there already: write another name", f.Name)
		}
	}
	facing, err := founding.ParseFacing(a.Text("facing"))
	switch {
	case err != nil:
		a.Wrong("facing", "%v", err)
	case len(facing) > 1:
		a.Wrong("facing", "it has one entrance: write one bearing")
	case len(facing) == 1:
		f.Entrance = facing[0]
	}
	return fact(f)
}

func combsNote() string { return founding.KindWords() + "; or sides and dm², like 6 2" }

func combsSaid(_ State, a *Answers) []book.Fact {
	a.Needed("combs")
	combs, err := founding.ParseCombs(a.Text("combs"))
	if err != nil {
		a.Wrong("combs", "%v", err)
	}
	return eachNuc(a, func(id book.NucID) book.Fact {
		n := a.View.Nuc(id).NucNamed
		n.Sides, n.Side = cmp.Or(combs.Sides, n.Sides), cmp.Or(combs.Area, n.Side)
		return n
	})
}

func askBoxes(s State) []Ask {
	return []Ask{
		askWords("names", "Names of the nucs", "", "A1-A12, B1-B6: each letter is a stand"),
		askFigure("per", "Nucs that share a box", "", 1),
		askWords("combs", "Combs", "", combsNote()),
		askWords("facing", "Entrances face", "", "in turn from the first of a stand: S, or N S"),
		askFigure("east", "Middle of the first new stand, east", "m", 0),
		askFigure("north", "and north", "m", 0),
	}
}

func boxesAdded(_ State, a *Answers) []book.Fact {
	row := founding.Row{Names: a.Needed("names"), PerBox: a.NeededCount("per")}
	var err error
	if a.Said("combs") {
		if row.Combs, err = founding.ParseCombs(a.Text("combs")); err != nil {
			a.Wrong("combs", "%v", err)
		}
	}
	if row.Facing, err = founding.ParseFacing(a.Text("facing")); err != nil {
		a.Wrong("facing", "%v", err)
	}
	if a.Said("east") || a.Said("north") {
		row.At = &book.Point{X: a.Figure("east"), Y: a.Figure("north")}
	}
	if len(a.Mistakes) > 0 {
		return nil
	}
	facts, err := row.Facts(&a.ids, a.Yard(), a.View)
	if err != nil {
		a.Wrong("names", "%v", err)
		return nil
	}
	a.back = boxesBack(facts)
	for _, words := range yard.Misplaced(yard.OfFacts(facts), yard.GroundOf(a.View.Yard(a.Yard())), a.View.Numbers()) {
		a.Mind("%s", words)
	}
	return facts
}

// boxesBack reads boxes that are added back: how many nucs on which stands.
func boxesBack(facts []book.Fact) []string {
	nucs, built, letters := 0, 0, []string{}
	for _, f := range facts {
		switch f := f.(type) {
		case book.BoxBuilt:
			built++
		case book.NucNamed:
			nucs++
			if letter := strings.TrimRight(f.Name, "0123456789"); !slices.Contains(letters, letter) {
				letters = append(letters, letter)
			}
		}
	}
	words := counted(nucs, "nuc")
	if built < nucs {
		words += " in " + boxes(built)
	}
	return []string{fmt.Sprintf("%s on %s: %s", words, counted(len(letters), "stand"), inRuns(letters))}
}

func askYard(s State) []Ask {
	var y book.YardDescribed
	if id, ok := s.Selection.Last().Yard(); ok {
		y = s.Present().View.Yard(id).YardDescribed
	}
	zone := cmp.Or(y.Zone, s.Present().View.Zone().String())
	lat, lon := askFigure("lat", "Latitude, degrees", "", y.Lat), askFigure("lon", "Longitude, degrees", "", y.Lon)
	lat.Note, lon.Note = "north is positive", "east is positive"
	return []Ask{
		askWords("name", "Name", y.Name, ""), askFigure("drive", "From home", "min", y.Drive),
		askWords("zone", "Time zone", zone, "as in Europe/Berlin"), lat, lon,
	}
}

// yardDescribed is a new yard, or with anew the one selected.
func yardDescribed(anew bool) func(State, *Answers) []book.Fact {
	return func(s State, a *Answers) []book.Fact {
		var f book.YardDescribed
		if anew {
			f = a.View.Yard(a.Yard()).YardDescribed
		} else {
			f = book.YardDescribed{Yard: book.YardID(a.Mint()), Home: a.View.HomeYard() == nil}
		}
		f.Name, f.Drive, f.Zone, f.Lat, f.Lon = a.Needed("name"), a.Figure("drive"), a.Needed("zone"), a.Figure("lat"), a.Figure("lon")
		for y := range a.View.Yards() {
			if y.Name == f.Name && y.Yard != f.Yard {
				a.Wrong("name", "yard %s is there already: write another name", f.Name)
			}
		}
		if !s.zoneKnown(f) {
			a.Wrong("zone", "no time zone is called so: write it like Europe/Berlin")
		}
		return fact(f)
	}
}

// zoneKnown tells whether the book can read the time zone of a yard.
func (s State) zoneKnown(f book.YardDescribed) bool {
	ids := s.Pen.IDs
	ids.Deed()
	entries := ids.Entries(calendar.Instantly(s.Now), s.Now, "", f)
	return s.Book.Season.With(entries...).At(s.Now).Yard(f.Yard).Zone.String() == f.Zone
}
