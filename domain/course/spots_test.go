package course_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// spotted is a yard with two look-alikes half a metre apart and one box alone, each
// given a ripe cell of one batch.
func spotted(t *testing.T, drawn bool) *booktest.Pen {
	p := &booktest.Pen{Zone: berlin(t)}
	p.At("2027-04-01 08:00").Write(book.YardDescribed{Yard: yard, Name: "Quillbank", Home: true, Zone: "Europe/Berlin"})
	if drawn {
		p.Write(book.FeatureDrawn{Feature: booktest.Feature("thorn"), Yard: yard, What: book.Tree, Points: []book.Point{{X: 30}}, Height: 5})
	}
	for name, x := range map[string]float64{"A1": 0, "A2": 0.5, "B1": 20} {
		s, n := booktest.Stand(name), booktest.Nuc(name)
		p.At("2027-04-01 08:00").Write(
			book.StandSet{Stand: s, Yard: yard, Letter: name, At: book.Point{X: x}, Places: 1},
			book.NucNamed{Nuc: n, Name: name, Sides: 6, Side: 2}, book.NucPlaced{Nuc: n, Yard: yard, Stand: s, Place: 1},
		)
	}
	p.At("2027-05-01 09:00").Write(book.Grafted{Batch: booktest.Batch("9"), Number: 9, Larvae: 20, LarvaAge: 18})
	for _, name := range []string{"A1", "A2", "B1"} {
		p.At("2027-05-10 08:00").Write(book.NucMadeUp{Nuc: booktest.Nuc(name), Cups: 3})
		p.At("2027-05-11 10:00").Write(book.CellGiven{Nuc: booktest.Nuc(name), Batch: booktest.Batch("9")})
	}
	signs(p, calendar.Date(2027, 5, 1), repeat("+", 60))
	return p
}

// A virgin among look-alikes is lost more often than one alone; where nobody drew
// the ground, stands are only drawn where there was room, and none of it counts.
func TestABadSpotCosts(t *testing.T) {
	lays := func(v *book.View, c *course.Course, name string) float64 {
		return c.Held(v.Nuc(booktest.Nuc(name))).Chances().Lays()
	}
	v := spotted(t, true).View("2027-06-08 12:00")
	c := course.New(v)
	among, twin, alone := lays(v, c, "A1"), lays(v, c, "A2"), lays(v, c, "B1")
	if among != twin || among >= alone-0.02 {
		t.Errorf("among look-alikes %.3f and %.3f lay, alone %.3f", among, twin, alone)
	}
	if bad, good, mean := c.SpotOf(v.Nuc(booktest.Nuc("A1"))).Loss, c.SpotOf(v.Nuc(booktest.Nuc("B1"))).Loss, c.SpotIn(yard).Loss; bad != 1.2 || good != 0.6 || mean != 1 {
		t.Errorf("losses: among look-alikes %v, alone %v, in the middle %v", bad, good, mean)
	}
	v = spotted(t, false).View("2027-06-08 12:00")
	c = course.New(v)
	if among, alone := lays(v, c, "A1"), lays(v, c, "B1"); among != alone {
		t.Errorf("nobody drew the ground: among look-alikes %.3f lay, alone %.3f", among, alone)
	}
}

// What is usual in a yard is the mean over its doors: of two look-alikes at 1.2 and two
// alone at 0.6 it is 0.9, of the look-alikes alone 1.2; a colony's door is none of them.
func TestTheMiddlingSpot(t *testing.T) {
	mean := func(write func(*booktest.Pen)) float64 {
		p := spotted(t, true)
		p.At("2027-06-08 09:00")
		write(p)
		return course.New(p.View("2027-06-08 12:00")).SpotIn(yard).Loss
	}
	if got := mean(func(p *booktest.Pen) {
		s, n := booktest.Stand("C1"), booktest.Nuc("C1")
		p.Write(book.StandSet{Stand: s, Yard: yard, Letter: "C1", At: book.Point{X: 60}, Places: 1},
			book.NucNamed{Nuc: n, Name: "C1", Sides: 6, Side: 2}, book.NucPlaced{Nuc: n, Yard: yard, Stand: s, Place: 1},
			book.ColonyDescribed{Colony: booktest.Colony("far"), Name: "far", Yard: yard, At: book.Point{X: 90}})
	}); got != 0.9 {
		t.Errorf("two among look-alikes and two alone: %v, by hand (1.2 + 1.2 + 0.6 + 0.6) / 4 = 0.9", got)
	}
	if got := mean(func(p *booktest.Pen) {
		p.Write(book.NucPlaced{Nuc: booktest.Nuc("B1"), Yard: booktest.Yard("elsewhere")})
	}); got != 1.2 {
		t.Errorf("two look-alikes and nobody else: %v, want 1.2", got)
	}
}

// Whoever told from where the wind blows, drew a tree or laid a photograph under the
// map has drawn the ground: each alone makes its layout count.
func TestWhatMakesALayoutCount(t *testing.T) {
	for name, fact := range map[string]book.Fact{
		"nothing":      nil,
		"the wind":     book.WindSaid{Yard: yard, From: 270},
		"a tree":       book.FeatureDrawn{Feature: booktest.Feature("thorn"), Yard: yard, What: book.Tree, Points: []book.Point{{X: 30}}, Height: 5},
		"a photograph": book.GroundPictured{Yard: yard, JPEG: []byte{1}, Scale: 20},
	} {
		p := spotted(t, false)
		want := 1.0
		if fact != nil {
			p.At("2027-06-08 09:00").Write(fact)
			want = 1.2
		}
		v := p.View("2027-06-08 12:00")
		if got := course.New(v).SpotOf(v.Nuc(booktest.Nuc("A1"))).Loss; got != want {
			t.Errorf("with %s drawn: loss %v, want %v", name, got, want)
		}
	}
}

// A course that goes on from another's takes over its yards, and sees a box that was
// moved meanwhile.
func TestSpotsGoOn(t *testing.T) {
	p := spotted(t, true)
	was := course.New(p.View("2027-06-08 12:00"))
	was.Held(was.View().Nuc(booktest.Nuc("A1")))
	p.At("2027-06-08 21:00").Write(book.StandSet{Stand: booktest.Stand("A2"), Yard: yard, Letter: "A2", At: book.Point{X: 50}, Places: 1})
	v := p.View("2027-06-09 12:00")
	again := course.Again(v, was)
	if got := again.SpotOf(v.Nuc(booktest.Nuc("A1"))).Loss; got != 0.6 {
		t.Errorf("its look-alike was carried away: loss %v, want 0.6", got)
	}
	if got := course.New(v).Held(v.Nuc(booktest.Nuc("A1"))).Chances(); got != again.Held(v.Nuc(booktest.Nuc("A1"))).Chances() {
		t.Error("what is held differs from that of a new course")
	}
}
