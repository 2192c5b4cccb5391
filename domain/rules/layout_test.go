package rules_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// replanned is a yard whose layout is to be changed from Thu 20 May: A carried and
// turned with its box, where a virgin of eight days flies, B turned, where a queen lays,
// the front of B1 marked, and the box on C turned where it stands.
func replanned() *booktest.Pen {
	var (
		hill   = booktest.Yard("Hill")
		a, b   = booktest.Stand("A"), booktest.Stand("B")
		a1, b1 = booktest.Nuc("A1"), booktest.Nuc("B1")
		c, c1  = booktest.Stand("C"), booktest.Nuc("C1")
		turned = booktest.Layout("turned")
	)
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: hill, Name: "Hill", Home: true, Zone: "UTC"},
		book.StandSet{Stand: a, Yard: hill, Letter: "A", Places: 1}, book.StandSet{Stand: b, Yard: hill, Letter: "B", At: book.Point{X: 4}, Places: 1},
		book.NucNamed{Nuc: a1, Name: "A1", Sides: 6, Side: 2}, book.NucPlaced{Nuc: a1, Yard: hill, Stand: a, Place: 1},
		book.NucNamed{Nuc: b1, Name: "B1", Sides: 6, Side: 2}, book.NucPlaced{Nuc: b1, Yard: hill, Stand: b, Place: 1},
		book.StandSet{Stand: c, Yard: hill, Letter: "C", At: book.Point{X: 8}, Turn: 10, Places: 1},
		book.NucNamed{Nuc: c1, Name: "C1", Sides: 6, Side: 2}, book.NucPlaced{Nuc: c1, Yard: hill, Stand: c, Place: 1},
		book.NucMadeUp{Nuc: a1, Cups: 3}, book.NucMadeUp{Nuc: b1, Cups: 3},
		book.QueenPutIn{To: b1.Subject(), Queen: booktest.Queen("old")},
		book.LayoutTried{
			Layout: turned, Yard: hill, Name: "turned",
			Stands: []book.StandSet{{Stand: a, Yard: hill, Letter: "A", At: book.Point{X: -3, Y: 4}, Turn: 45, Places: 1}, {Stand: b, Yard: hill, Letter: "B", At: book.Point{X: 4}, Turn: 350, Places: 1}},
			Fronts: []book.FrontMarked{{Nuc: b1, Shape: "disc", Colour: "blue"}},
			Faces:  []book.NucFaced{{Nuc: a1, Entrance: 90}, {Nuc: c1, Entrance: 260}},
		},
	)
	p.At("2027-05-12 10:00").Write(book.VirginPutIn{Nuc: a1, Queen: booktest.Queen("young"), Emerged: time.Date(2027, 5, 12, 6, 0, 0, 0, time.UTC)})
	return p.At("2027-05-13 20:00").Write(book.LayoutPlanned{Layout: turned, Yard: hill, From: calendar.Date(2027, 5, 20)})
}

func layoutWork(v *book.View) map[string]rules.Finding {
	found := map[string]rules.Finding{}
	for _, f := range rules.Findings(v) {
		if f.Rule == rules.LayoutStep {
			id, _ := f.Of.Nuc()
			found[f.Act.String()+" "+v.Nuc(id).Name] = f
		}
	}
	return found
}

func TestTheLayoutThatIsThePlanIsWork(t *testing.T) {
	p := replanned()
	v := p.View("2027-05-20 08:00")
	work := layoutWork(v)
	for name, want := range map[string]struct{ do, day string }{
		"carry and turn A1": {"After dusk, entrances shut: carry stand A 5.0 m north-west, turn it 45° clockwise; then turn A1 to the south-east", "2027-05-27"},
		"carry and turn B1": {"After dusk, entrances shut: turn stand B 10° anticlockwise", "2027-05-20"},
		"carry and turn C1": {"After dusk, entrances shut: turn C1 to the west", "2027-05-20"},
		"mark the front B1": {"Mark the front blue disc", "2027-05-20"},
	} {
		f, ok := work[name]
		if got := calendar.DayOf(f.From, v.Zone()).String(); !ok || f.Do != want.do || got != want.day || f.Takes <= 0 {
			t.Errorf("%s: %q from %s, takes %v min; want %q from %s", name, f.Do, got, f.Takes, want.do, want.day)
		}
	}
	if why := work["carry and turn A1"].Why; !strings.Contains(why, "the virgin of A1 is") || !strings.Contains(why, "flies") {
		t.Errorf("why she waits is not said: %s", why)
	}
	for name, f := range work {
		facts := rules.LaidOut(v, f)
		if len(facts) == 0 {
			t.Errorf("%s: nothing is written when it is done", name)
		}
		p.At("2027-05-20 21:00").Write(facts...)
	}
	if left := layoutWork(p.View("2027-05-21 08:00")); len(left) != 0 {
		t.Errorf("done, and still to be done: %v", left)
	}
}

func TestALayoutThatIsNoPlanIsNoWork(t *testing.T) {
	p := replanned()
	p.At("2027-05-14 20:00").Write(book.LayoutDropped{Layout: booktest.Layout("turned"), Yard: booktest.Yard("Hill")})
	if left := layoutWork(p.View("2027-05-20 08:00")); len(left) != 0 {
		t.Errorf("thrown away, and still work: %v", left)
	}
}
