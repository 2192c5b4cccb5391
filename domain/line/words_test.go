package line_test

import (
	"encoding/json"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// Every kind of fact has words of its own, even when nothing but its kind is
// known, and never the kind's name in files or an id.
func TestWordsOfEveryKind(t *testing.T) {
	kinds := book.FactKinds()
	if len(kinds) < 50 {
		t.Fatalf("%d kinds of fact, want them all", len(kinds))
	}
	v := yard(t)
	seen := map[string]string{}
	for _, kind := range kinds {
		f, err := book.DecodeFact(kind, []byte("{}"))
		if err != nil {
			t.Errorf("DecodeFact(%q): %v", kind, err)
			continue
		}
		words := line.Words(f, line.In(v))
		if words == "" || strings.Contains(words, "00000000") || strings.Contains(words, "  ") {
			t.Errorf("Words of an empty %q = %q", kind, words)
		}
		if other, twice := seen[words]; twice {
			t.Errorf("%q and %q are both %q", kind, other, words)
		}
		seen[words] = kind
	}
}

func TestWords(t *testing.T) {
	v := yard(t)
	a3, four := booktest.Nuc("A3"), booktest.Batch("4")
	for _, c := range []struct {
		fact           book.Fact
		words, on, own string // everywhere, on the card of card, and typed
		card           book.Subject
	}{
		{book.CellGiven{Nuc: a3, Batch: four}, "cell from batch 4 into A3", "cell from batch 4 given", "c4", a3.Subject()},
		{book.CellGiven{Nuc: a3, Batch: four}, "cell from batch 4 into A3", "cell into A3", "c4", four.Subject()},
		{book.VirginPutIn{Nuc: a3, Queen: booktest.Queen("v1"), Batch: booktest.Batch("3")}, "virgin 1 from batch 3 into A3", "virgin 1 from batch 3 put in", "i1", a3.Subject()},
		{
			book.Looked{Nuc: a3, Queen: book.VirginSeen, Sides: book.Said(5)},
			"A3: virgin seen, bees on 5 sides", "virgin seen, bees on 5 sides", "v s5", a3.Subject(),
		},
		{book.Looked{Nuc: a3, Brood: book.Said(1), OwnCells: book.Said(0), Note: "x"}, "A3: capped brood 1 palm, no own cells seen, note: x", "capped brood 1 palm, no own cells seen, note: x", `b1 "x"`, a3.Subject()},
		{
			book.NucMadeUp{Nuc: a3, Cups: 3, Shut: true, From: booktest.Colony("S2")},
			"A3 made up with 3 cups of bees from S2, shut in", "made up with 3 cups of bees from S2, shut in", "", a3.Subject(),
		},
		{book.United{Nuc: a3, With: booktest.Nuc("B4").Subject()}, "A3 united with B4", "united with B4", "uB4", a3.Subject()},
		{book.BeesAdded{Nuc: a3, Cups: 1, From: booktest.Colony("S2").Subject()}, "1 cup of bees from S2 into A3", "1 cup of bees from S2 added", "a1", a3.Subject()},
		{
			book.Planned{Nuc: a3, What: book.PlanLookOrGive, Batch: four, Day: calendar.Date(2027, 5, 11), Why: "78 of 100 laying by 8 June"},
			"decided for A3 on Tue 11 May: look first, then a cell of batch 4, 78 of 100 laying by 8 June", "decided on Tue 11 May: look first, then a cell of batch 4, 78 of 100 laying by 8 June", "", a3.Subject(),
		},
		{book.Planned{Nuc: a3}, "decision taken back for A3", "decision taken back", "", a3.Subject()},
		{book.WildCellsSearched{In: booktest.Colony("S2").Subject(), Found: 1}, "searched for wild cells in S2: 1 found, broken down", "searched for wild cells: 1 found, broken down", "", booktest.Colony("S2").Subject()},
		{
			book.WeatherHours{Yard: booktest.Yard("Hill"), Day: calendar.Date(2027, 5, 11), Celsius: []book.Amount{book.Said(9), {}, book.Said(10)}, Rain: []book.Amount{book.Said(0)}, Forecast: true},
			"forecast hourly weather of Tue 11 May: temperature of 2 hours, rain of 1 hour in Home Yard", "forecast hourly weather of Tue 11 May: temperature of 2 hours, rain of 1 hour", "", booktest.Yard("Hill").Subject(),
		},
		{
			book.WeatherNormal{Yard: booktest.Yard("Hill"), Month: 5, Low: book.Said(8), High: book.Said(19), Spread: book.Said(4), Wind: book.Said(3), Rainy: book.Said(0.4), Sky: book.Said(0.5)},
			"usual weather of May: low 8 °C, high 19 °C, give or take 4 °C, wind 3 m/s, rain on 40 % of days, sun 50 % in Home Yard", "usual weather of May: low 8 °C, high 19 °C, give or take 4 °C, wind 3 m/s, rain on 40 % of days, sun 50 %", "", booktest.Yard("Hill").Subject(),
		},
		{book.WeatherSeen{Yard: booktest.Yard("Hill"), Day: calendar.Date(2027, 5, 11), Sign: book.HalfFit, High: book.Said(17)}, "weather of Tue 11 May: ± half a day fit to fly, high 17 °C in Home Yard", "weather of Tue 11 May: ± half a day fit to fly, high 17 °C", "", booktest.Yard("Hill").Subject()},
		{book.PersonDescribed{Name: "Ida", Free: [7]book.FreeHours{0: {From: 480, Until: 1200}, 1: {From: 1110, Until: 1230}, 2: {From: 1110, Until: 1230}, 6: {From: 480, Until: 1200}}}, "Ida works bees, free Mon-Tue 18:30-20:30, Sat-Sun 08:00-20:00", "Ida works bees, free Mon-Tue 18:30-20:30, Sat-Sun 08:00-20:00", "", book.Subject{}},
		{book.Dropped{What: book.Cells, Batch: four, Count: 1}, "1 cell from batch 4 dropped", "1 cell dropped", `"cell dropped"`, four.Subject()},
		{
			book.BatchPlanned{
				Batch: booktest.Batch("planned"), Day: calendar.Date(2027, 4, 19), Minute: 15 * 60, Larvae: 96, Nucs: 64, Line: "Rook 12", Breeder: booktest.Colony("S2"), Yard: booktest.Yard("Hill"),
				Queens: 40, By: calendar.Date(2027, 5, 31), Laying: true, Sure: 0.9, Why: "none earlier",
			},
			"graft planned for Mon 19 Apr 15:00: 96 larvae of Rook 12 from S2, 64 nucs in Home Yard, 40 queens laying by Mon 31 May, wished 90 of 100, none earlier",
			"graft planned for Mon 19 Apr 15:00: 96 larvae of Rook 12 from S2, 64 nucs, 40 queens laying by Mon 31 May, wished 90 of 100, none earlier", "", booktest.Yard("Hill").Subject(),
		},
		{book.WindSaid{Yard: booktest.Yard("Hill"), From: 240}, "wind mostly from 240° in Home Yard", "wind mostly from 240°", "", booktest.Yard("Hill").Subject()},
		{book.GroundPictured{Yard: booktest.Yard("Hill"), JPEG: []byte{0xff, 0xd8}}, "photograph laid under the map of Home Yard", "photograph laid under the map", "", booktest.Yard("Hill").Subject()},
		{
			book.LayoutTried{Layout: booktest.Layout("turned"), Yard: booktest.Yard("Hill"), Name: "turned", Stands: make([]book.StandSet, 2), Fronts: make([]book.FrontMarked, 1)},
			"try-out turned kept for Home Yard, 2 stands moved or turned, 1 front painted", "try-out turned kept, 2 stands moved or turned, 1 front painted", "", booktest.Yard("Hill").Subject(),
		},
		{book.LayoutPlanned{Layout: booktest.Layout("turned"), Yard: booktest.Yard("Hill"), From: calendar.Date(2027, 5, 20)}, "try-out made the plan of Home Yard from Thu 20 May", "try-out made the plan from Thu 20 May", "", booktest.Yard("Hill").Subject()},
		{book.LayoutDropped{Layout: booktest.Layout("turned"), Yard: booktest.Yard("Hill")}, "try-out thrown away in Home Yard", "try-out thrown away", "", booktest.Yard("Hill").Subject()},
		{book.BatchDropped{Batch: booktest.Batch("planned"), Why: "too cold"}, "planned graft dropped: too cold", "planned graft dropped: too cold", "", booktest.Batch("planned").Subject()},
		{book.HoursOn{Day: calendar.Date(2027, 5, 11), FreeHours: book.FreeHours{From: 480, Until: 720}}, "free on Tue 11 May 08:00-12:00", "free on Tue 11 May 08:00-12:00", "", book.Subject{}},
		{book.HoursOn{Day: calendar.Date(2027, 5, 11)}, "not free on Tue 11 May", "not free on Tue 11 May", "", book.Subject{}},
		{
			book.OrderTaken{Number: "12", Queens: 6, Line: "Rook", Customer: "Club", From: calendar.Date(2027, 6, 1), By: calendar.Date(2027, 6, 20), Priority: -1, Disc: true, Clipped: true, Sent: true, Journey: 2},
			"order 12: 6 queens Rook for Club, not before Tue 1 Jun, by Sun 20 Jun, with disc, clipped, sent, 2 days on the way, priority -1", "order 12: 6 queens Rook for Club, not before Tue 1 Jun, by Sun 20 Jun, with disc, clipped, sent, 2 days on the way, priority -1", "",
			book.Subject{},
		},
		{book.Claimed{Queens: 2, How: book.DeadOnArrival, Of: []book.QueenID{booktest.Queen("v1")}, Why: "hot van"}, "2 queens claimed: dead on arrival, queen 1, hot van", "2 queens claimed: dead on arrival, queen 1, hot van", "", book.Subject{}},
		{book.QueenCaught{Nuc: a3, Label: "7"}, "queen caught from A3, cage 7", "queen caught, cage 7", "k7", a3.Subject()},
	} {
		n := line.In(v)
		if got := line.Words(c.fact, n); got != c.words {
			t.Errorf("Words = %q, want %q", got, c.words)
		}
		if got := line.WordsOn(c.fact, n, c.card); got != c.on {
			t.Errorf("WordsOn its card = %q, want %q", got, c.on)
		}
		if got := line.Codes(c.fact, n); got != c.own {
			t.Errorf("Codes = %q, want %q", got, c.own)
		}
	}
}

// A batch has a name while it is planned, and when the plan was dropped.
func TestAPlannedBatchHasAName(t *testing.T) {
	batch := booktest.Batch("next")
	p := (&booktest.Pen{}).At("2027-03-16 20:00").Write(book.BatchPlanned{Batch: batch, Day: calendar.Date(2027, 4, 19), Larvae: 96})
	p.At("2027-03-17 20:00").Write(book.BatchDropped{Batch: batch})
	for _, on := range []string{"2027-03-16 21:00", "2027-03-18 08:00"} {
		v := p.View(on)
		if got, want := line.Words(book.BatchDropped{Batch: batch}, line.In(v)), "planned graft of Mon 19 Apr dropped"; got != want {
			t.Errorf("%s: %q, want %q", on, got, want)
		}
		if got := rules.Name(v, batch.Subject()); got != "batch of Mon 19 Apr" {
			t.Errorf("%s: it is called %q", on, got)
		}
	}
}

// A fact is not changed by being written to a file and read again, so its
// words are not either.
func TestWordsSurviveTheFile(t *testing.T) {
	v := yard(t)
	n := 0
	for e := range v.All() {
		body, err := json.Marshal(e.Fact)
		if err != nil {
			t.Fatal(err)
		}
		again, err := book.DecodeFact(book.KindOfFact(e.Fact), body)
		if err != nil {
			t.Fatal(err)
		}
		if a, b := line.Words(e.Fact, line.In(v)), line.Words(again, line.In(v)); a != b {
			t.Errorf("%q became %q", a, b)
		}
		n++
	}
	if n == 0 {
		t.Error("no entries")
	}
}
