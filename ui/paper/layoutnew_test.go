package paper_test

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/unit"
	"lidmark/domain/yard"
	"lidmark/ui/paper"
	"lidmark/ui/state"
)

// fresh is a yard of 16 stands of four that is set up for the first time, 40 m wide and
// 26 m high.
func fresh() (*state.Reading, state.Laid) {
	home := booktest.Yard("Hill")
	p := (&booktest.Pen{Zone: zone, Writer: "Ida"}).At("2027-03-01 10:00")
	p.Write(book.YardDescribed{Yard: home, Name: "Hill", Home: true, Zone: "Europe/Berlin"},
		book.FeatureDrawn{Feature: booktest.Feature("edge"), Yard: home, What: book.Boundary, Points: []book.Point{{}, {X: 40}, {X: 40, Y: 26}, {Y: 26}}})
	for i := range 16 {
		letter := string("ABCDEFGHJKLMNPQR"[i])
		p.Write(book.StandSet{Stand: booktest.Stand(letter), Yard: home, Letter: letter, Places: 4, At: book.Point{X: 8 + 7*float64(i%4), Y: 21 - 5*float64(i/4)}})
		for k := range 4 {
			name := letter + strconv.Itoa(k+1)
			nuc(p, name, letter, k+1)
		}
	}
	r := reading(p, "2027-03-02 06:40")
	try := yard.Of(r.View, home)
	all := yard.Pick{}
	for _, s := range try.Stands {
		all = append(all, s.ID)
	}
	try = try.Moved(all, 0, -0.5)
	for i, s := range try.Stands {
		for k, n := range s.Nucs {
			try = try.FacingOne(n.ID, float64(90*k)).Painted([]book.NucID{n.ID}, yard.Mark{Shape: "disc", Colour: []string{"blue", "yellow"}[i%2]})
		}
	}
	return r, state.Laid{Yard: home, Name: "first", Try: try}
}

// TestANewYardIsTwoPages: what is set up for the first time is a plan, which lies along
// where it is larger so, and a line for each stand with its tapes and its metres east and
// north, and one with its boxes. Nothing is said of bees or marks that were there before.
func TestANewYardIsTwoPages(t *testing.T) {
	r, laid := fresh()
	pages := layoutPages(t, r, laid, paper.Options{})
	if len(pages) != 2 || pages[0].w <= pages[0].h || pages[1].w >= pages[1].h {
		t.Fatalf("%d pages, the first %v by %v", len(pages), pages[0].w, pages[0].h)
	}
	if !slices.ContainsFunc(pages[0].texts, func(w word) bool { return w.text == "1:200" }) {
		t.Errorf("the plan is not drawn 1:200: %v", pages[0].lines())
	}
	text := all(pages)
	for _, never := range []string{"old mark", "mark today", "none", "5 km", "after dusk"} {
		if strings.Contains(text, never) {
			t.Errorf("%q in\n%s", never, text)
		}
	}
	for _, want := range []string{"all to set up; 64 fronts to mark", "left  0°  R1 N, R2 E, R3 S, R4 W  29.00  5.50", "R  0°  R1 N; R2 E; R3 S; R4 W  yellow disc", "East and north are metres from the yard's origin."} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
	if us := all(layoutPages(t, r, laid, paper.Options{Units: unit.US, Say: unit.US.Say})); !strings.Contains(us, "95.14  18.04") || !strings.Contains(us, "feet from the yard's origin") {
		t.Errorf("no feet east and north in\n%s", us) // 29 and 5.5 m
	}
	laid.Scale = 500
	if pages := layoutPages(t, r, laid, paper.Options{}); pages[0].w >= pages[0].h {
		t.Error("1:500 fits upright, and lies along")
	}
}
