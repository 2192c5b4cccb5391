package yard_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

func TestHowAStandIsCarried(t *testing.T) {
	from := yard.Stand{Letter: "L", At: at(1, 1), Turn: 350}
	for _, tt := range []struct {
		to   yard.Stand
		want string
	}{
		{yard.Stand{Letter: "L", At: at(4, 5), Turn: 350}, "carry stand L 5.0 m north-east"},
		{yard.Stand{Letter: "L", At: at(1, 1), Turn: 35}, "turn stand L 45° clockwise"},
		{yard.Stand{Letter: "L", At: at(1, -2), Turn: 340}, "carry stand L 3.0 m south, turn it 10° anticlockwise"},
		{yard.Stand{Letter: "L", At: at(1.01, 1), Turn: 350.4}, "set stand L as it is planned"},
	} {
		if got := from.To(tt.to); got != tt.want {
			t.Errorf("%q, want %q", got, tt.want)
		}
	}
}

// The minutes are those of carrying and of turning; a stand that is new takes none.
func TestMinutesOfAChange(t *testing.T) {
	n := practice.Numbers{}
	carry, turn := n.Get(practice.MinutesCarryStand), n.Get(practice.MinutesTurnNuc)
	now, _ := some(at(0, 0), at(0.7, 0), at(9, 0))
	one := yard.Pick{now.Stands[0].ID}
	for _, tt := range []struct {
		try  yard.Layout
		want float64
	}{
		{now.Facing(one, 90), turn},
		{now.Moved(one, 3, 0), carry},
		{now.Facing(one, 90).Moved(one, 3, 0), carry + turn},
		{now.Turned(one, 90), carry},
		{now.Doubled(one, 5, 5, func() (book.StandID, string) { return booktest.Stand("new"), "D" }), 0},
	} {
		all := yard.ChangesOf(now, tt.try, nil, nil)
		if len(all) != 1 || all[0].Minutes(n) != tt.want {
			t.Errorf("%+v, want %v min", all, tt.want)
		}
	}
}

// Which way boxes face is said by the letters of the compass, once where all face alike.
func TestFacesWords(t *testing.T) {
	s := yard.Stand{Turn: 45, Places: 4, Nucs: []yard.Nuc{{Name: "A1"}, {Name: "A2", Bearing: 100}, {Name: "A3", Bearing: 315}}}
	if got := s.FacesWords(s.Nucs); got != "A1 faces NE, A2 faces 145°, A3 faces N" {
		t.Error(got)
	}
	for i := range s.Nucs {
		s.Nucs[i].Bearing = 90
	}
	if got := s.FacesWords(s.Nucs); got != "all face SE" {
		t.Error(got)
	}
	if got := s.FacesWords(s.Nucs[:1]); got != "A1 faces SE" {
		t.Error(got)
	}
}

func TestChanges(t *testing.T) {
	now, _ := some(at(0, 0), at(0.7, 0), at(9, 0))
	now.Stands[0].Letter, now.Stands[1].Letter, now.Stands[2].Letter = "A", "B", "C"
	try := now.Moved(yard.Pick{booktest.Stand("1")}, 3, 0).Painted([]book.NucID{booktest.Nuc("2")}, yard.Mark{Shape: "disc", Colour: "blue"})
	drift := func(l yard.Layout) map[book.NucID]float64 {
		return yard.HomingOf(l.Doors(yard.Spacing{Block: 0.3, Row: 1}), yard.WorkerKernel(practice.Numbers{})).Drift(l)
	}
	all := yard.ChangesOf(now, try, drift(now), drift(try))
	if len(all) != 2 || all[0].Words() != "carry stand B 3.0 m east" || all[1].Words() != "mark a front on stand C" {
		t.Fatalf("changes %+v", all)
	}
	if c := all[0]; !(c.After < c.Before) || !c.Carried() || all[1].Carried() {
		t.Errorf("drift %v, then %v", c.Before, c.After)
	}
	if same := yard.ChangesOf(now, now.Clone(), nil, nil); len(same) != 0 {
		t.Errorf("nothing changed: %+v", same)
	}
}

// A stand whose nucs were never made up is set up, not carried: nobody took it anywhere
// yet. Once one of them was made up it is carried.
func TestWhatWasNeverSetUpIsNotCarried(t *testing.T) {
	now := yard.Layout{Stands: []yard.Stand{single("A", 0, 0, 90, yard.Mark{}), single("B", 2, 0, 90, yard.Mark{})}}
	now.Stands[0].Nucs[0].Idle = true
	try := now.Moved(yard.Pick{booktest.Stand("A"), booktest.Stand("B")}, 5, 0)
	all := yard.ChangesOf(now, try, nil, nil)
	if len(all) != 2 || all[0].Was != nil || len(all[0].Moved()) != 0 || all[0].Words() != "set up stand A" || all[1].Was == nil || len(all[1].Moved()) != 1 {
		t.Errorf("changes: %+v", all)
	}
	if all := yard.ChangesOf(now, now, nil, nil); len(all) != 0 {
		t.Errorf("nothing changed: %+v", all)
	}
	if now.Idle() {
		t.Error("a yard with a nuc that was made up is not set up yet")
	}
}

// Of a yard in which nothing is set up all stands are to be set up once anything is
// changed, also those that stay where they were drawn; a step of the try-out is told as it
// is.
func TestAllOfANewYardIsToSetUp(t *testing.T) {
	now := yard.Layout{Stands: []yard.Stand{single("A", 0, 0, 90, yard.Mark{}), single("B", 2, 0, 90, yard.Mark{}), single("C", 4, 0, 90, yard.Mark{})}}
	for i := range now.Stands {
		now.Stands[i].Nucs[0].Idle = true
	}
	try := now.Facing(yard.Pick{booktest.Stand("A")}, 180).Moved(yard.Pick{booktest.Stand("B")}, 0, 3)
	all := yard.ChangesOf(now, try, nil, nil)
	if len(all) != 3 {
		t.Fatalf("changes: %+v", all)
	}
	for _, c := range all {
		if c.Was != nil || len(c.Moved()) != 0 || c.Words() != "set up stand "+c.Is.Letter {
			t.Errorf("%s: %+v", c.Words(), c)
		}
	}
	if all := yard.ChangesOf(now, now.Clone(), nil, nil); len(all) != 0 {
		t.Errorf("nothing changed: %+v", all)
	}
	if steps := yard.StepsOf(now, try); len(steps) != 2 || steps[0].Words() != "turn a box on stand A" || steps[1].Words() != "carry stand B 3.0 m north" {
		t.Errorf("steps: %+v", steps)
	}
}
