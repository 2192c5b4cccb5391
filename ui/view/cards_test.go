package view_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// cards are windows on a card of every kind of thing, plain, with the list of all
// that can be written, and with the forms of a kind.
func cards(t testing.TB) map[string]state.State {
	s := open(t)
	s.Room = state.Yard
	v := s.Reading().View
	of := map[string]state.Selection{"nothing": {}}
	there := map[book.Condition]bool{}
	for _, n := range s.Reading().Nucs {
		if k := n.Condition(); !there[k] {
			there[k] = true
			of["nuc "+n.Name] = state.Select(n.Nuc.Nuc.Subject())
		}
	}
	for b := range v.Batches() {
		of[fmt.Sprint("batch ", b.Number)] = state.Select(b.Batch.Subject())
	}
	for q := range v.Queens() {
		of["queen, virgin "+fmt.Sprint(q.Virgin, q.InHand(), q.Name != "")] = state.Select(q.Queen.Subject())
	}
	for c := range v.Colonies() {
		of["colony "+c.Name] = state.Select(c.Colony.Subject())
	}
	for o := range v.Orders() {
		of["order "+o.Number] = state.Select(o.Order.Subject())
	}
	for p := range v.People() {
		of["person "+p.Name] = state.Select(p.Person.Subject())
	}
	for y := range v.Yards() {
		of["yard "+y.Name] = state.Select(y.Yard.Subject())
	}
	of["several"] = state.Select(slices.Collect(of["nuc A1"].All())[0], nucNamed(t, s, "C3").Nuc.Nuc.Subject(), nucNamed(t, s, "F3").Nuc.Nuc.Subject())
	all := map[string]state.State{}
	for name, sel := range of {
		one := s
		one.Selection = sel
		all[name] = one
		all[name+", more"], _ = state.Update(one, state.Ran{Command: "more"})
		for _, rec := range one.Offered() {
			if form, _ := state.Update(one, state.Ran{Command: rec.Name}); form.Form != nil {
				all["form "+rec.Name] = form
			}
		}
	}
	return all
}

// cardSizes are windows in which cards must be readable.
var cardSizes = []struct{ w, h, text float64 }{{1440, 900, 1}, {1280, 800, 1}, {1280, 800, 1.5}, {800, 560, 1}}

func TestNoTextOfACardLiesOnAnother(t *testing.T) {
	for name, s := range cards(t) {
		for _, size := range cardSizes {
			s.Width, s.Height, s.Text = size.w, size.h, size.text
			s.Sheet = s.Layout().Over
			card := s.Layout().Card
			var all []written
			for _, w := range texts(t, window(s), s.Size()) {
				if card.Contains(w.At) && w.clip.X >= card.X && w.Text.Text != "" {
					w.box = w.box.Inset(1).Intersect(w.clip)
					if w.box.W > 0 && w.box.H > 2 {
						all = append(all, w)
					}
				}
			}
			for i, a := range all {
				if over := a.box.Right() - card.Right(); over > 0 {
					t.Errorf("%s at %v: %q reaches %.0f over the card", name, size, a.Text.Text, over)
				}
				for _, b := range all[i+1:] {
					if a.box.Overlaps(b.box) {
						t.Errorf("%s at %v: %q at %.0f,%.0f lies on %q at %.0f,%.0f", name, size, a.Text.Text, a.At.X, a.At.Y, b.Text.Text, b.At.X, b.At.Y)
					}
				}
			}
		}
	}
}

func TestTheFocusOfACardIsBroughtIntoSight(t *testing.T) {
	all := cards(t)
	for _, name := range []string{"nuc A1", "nuc A1, more", "colony S7", "order 31", "nothing", "form look", "form change order", "form add boxes", "form row looked"} {
		s, ok := all[name]
		if !ok {
			t.Fatalf("no card of %s", name)
		}
		s.Width, s.Height = 800, 560
		card := s.Layout().Card
		seen := 0
		for range 90 {
			s, _ = state.Update(s, state.Keyed{Key: "Tab", Stops: state.Stops(window(s))})
			a, ok := window(s).Where(s.Focus)
			switch inside := ok && card.Contains(a.Centre()); {
			case inside && a.H >= 4 && a.W >= 4:
				seen++
			case inside, s.Form != nil:
				t.Errorf("%s: %v has the keys and is not to be seen", name, s.Focus)
			}
		}
		if seen < 20 {
			t.Errorf("%s: only %d stops of 90 on the card", name, seen)
		}
	}
}

func TestAFigureNamesItsSource(t *testing.T) {
	s := open(t)
	s.Room, s.Height = state.Yard, 2000
	s.Selection = state.Select(nucNamed(t, s, "D4").Nuc.Nuc.Subject())
	found := 0
	for _, p := range walk(t, window(s), s.Size()) {
		if r, ok := p.mark.(scene.Rect); ok && r.Ref.Kind == state.NumberRef && s.Layout().Card.Contains(r.Centre()) {
			k, ok := practice.ByName(r.Ref.ID)
			if !ok || !strings.Contains(r.Reason, practice.Of(k).Source) {
				t.Errorf("%s says %q", r.Ref.ID, r.Reason)
			}
			found++
		}
	}
	if found == 0 {
		t.Error("no figure on the card of D4")
	}
}

func TestEverythingIsReachedFromTheYard(t *testing.T) {
	s := open(t)
	s.Room, s.Height = state.Yard, 4000
	links := map[string]bool{}
	for _, r := range window(s).Refs() {
		if r.Kind == state.LinkRef {
			links[r.ID] = true
		}
	}
	v := s.Reading().View
	var all []book.Subject
	for o := range v.Orders() {
		all = append(all, o.Order.Subject())
	}
	for p := range v.People() {
		all = append(all, p.Person.Subject())
	}
	for c := range v.Colonies() {
		all = append(all, c.Colony.Subject())
	}
	for y := range v.Yards() {
		all = append(all, y.Yard.Subject())
	}
	for _, sub := range all {
		if !links[sub.String()] {
			t.Errorf("no link leads to the %v %v", sub.Kind, sub)
		}
	}
}

func TestARefusedActionStaysWithItsReason(t *testing.T) {
	s := open(t)
	s.Room, s.Height = state.Yard, 1600
	s.Selection = state.Select(nucNamed(t, s, "A1").Nuc.Nuc.Subject())
	s, _ = state.Update(s, state.Ran{Command: "more"})
	all := strings.Join(cardTexts(t, s), "\n")
	if !strings.Contains(all, "Give a cell") || !strings.Contains(all, "A1 has a laying queen") {
		t.Errorf("what can be written of A1 is %q", all)
	}
}
