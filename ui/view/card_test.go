package view_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"
)

// batchNumbered is the batch of a number.
func batchNumbered(t testing.TB, s state.State, number int) book.Subject {
	t.Helper()
	for _, b := range s.Reading().Batches() {
		if b.Number == number {
			return b.Batch.Subject()
		}
	}
	t.Fatalf("no batch has the number %d", number)
	return book.Subject{}
}

// nucNamed is the nuc of a name.
func nucNamed(t testing.TB, s state.State, name string) *state.Nuc {
	t.Helper()
	for _, n := range s.Reading().Nucs {
		if n.Name == name {
			return n
		}
	}
	t.Fatalf("no nuc is called %s", name)
	return nil
}

// cardTexts are the texts on the card that can be seen whole.
func cardTexts(t testing.TB, s state.State) (all []string) {
	t.Helper()
	card := s.Layout().Card
	for _, w := range texts(t, window(s), s.Size()) {
		if card.Contains(w.At) && w.clip.Y <= w.box.Y && w.box.Bottom() <= w.clip.Bottom() {
			all = append(all, w.Text.Text)
		}
	}
	return all
}

func TestACardIsReadToItsEndByScrolling(t *testing.T) {
	s := open(t)
	s.Room, s.Width, s.Height, s.Text = state.Yard, 1280, 800, 1.5
	s.Selection = state.Select(batchNumbered(t, s, 5))
	first := cardTexts(t, s)
	for _, way := range []string{"Ways out, the best first", "Cage them all"} {
		if !slices.Contains(first, way) {
			t.Errorf("%q is not to be seen at once", way)
		}
	}
	const last = "grafted: 36 larvae" // the first entry is the last on the card
	says := func(all []string) bool {
		return slices.ContainsFunc(all, func(text string) bool { return strings.HasPrefix(text, last) })
	}
	most := view.CardMost(s, typewriter{})
	if most <= 0 || says(first) {
		t.Fatalf("the card needs no scrolling: most %.0f", most)
	}
	for range 200 {
		s, _ = state.Update(s, state.Wheeled{At: s.Layout().Card.Centre(), DY: 20, CardMost: most})
	}
	if got := s.Scroll[state.CardPlace]; got != most {
		t.Errorf("the card is scrolled to %.0f, its end is at %.0f", got, most)
	}
	if !says(cardTexts(t, s)) {
		t.Errorf("at the end of the card %q… is not to be seen: %q", last, cardTexts(t, s))
	}
	s, _ = state.Update(s, state.Pressed{At: s.Layout().Main.Centre(), Tag: scene.Tag{Ref: state.RefOf(nucNamed(t, s, "F3").Nuc.Nuc.Subject())}})
	s, _ = state.Update(s, state.Released{At: s.Layout().Main.Centre(), Tag: s.Drag.Tag})
	if s.Scroll[state.CardPlace] != 0 {
		t.Error("the card of something else does not begin at its top")
	}
}

func TestTheButtonsOfACardStandBelowAllElse(t *testing.T) {
	s := open(t)
	s.Room, s.Width, s.Height = state.Yard, 800, 560
	s.Selection = state.Select(nucNamed(t, s, "K1").Nuc.Nuc.Subject())
	button := scene.Area{}
	for _, p := range walk(t, window(s), s.Size()) {
		if r, ok := p.mark.(scene.Rect); ok && r.Ref == state.CommandOf("show due") {
			button = r.Area
		}
	}
	if button.Empty() || button.Bottom() > s.Layout().Card.Bottom() {
		t.Fatalf("the button lies at %v", button)
	}
	for _, w := range texts(t, window(s), s.Size()) {
		in := button.Contains(w.box.Centre())
		if s.Layout().Card.Contains(w.At) && !in && w.box.Intersect(w.clip).Bottom() > button.Y-8 && w.box.Y < w.clip.Bottom() && w.box.Overlaps(button) {
			t.Errorf("%q lies on the button", w.Text.Text)
		}
	}
}

func TestACardTellsOnlyOfThePresentQueen(t *testing.T) {
	s := open(t)
	s.Room = state.Yard
	for name, want := range map[string]struct{ says, not string }{
		"E1": {"E1  cell, given", "Last seen"},        // looked at last before the cell came
		"K1": {"cell open 6 May", "virgin, seen"},     // only her cell was seen
		"A1": {"10 days past due", "By the calendar"}, // larvae seen 17 Apr: combs full two weeks after 14 Apr, of age to be caught 1 May
	} {
		s.Selection = state.Select(nucNamed(t, s, name).Nuc.Nuc.Subject())
		all := strings.Join(cardTexts(t, s), "\n")
		if !strings.Contains(all, want.says) || strings.Contains(all, want.not) {
			t.Errorf("the card of %s says %q, want %q and not %q", name, all, want.says, want.not)
		}
	}
}

func TestTheCalendarOfACardRunsForward(t *testing.T) {
	s := open(t)
	s.Room, s.Height = state.Yard, 2600
	for _, n := range s.Reading().Nucs {
		p := n.Presumed
		if p.OwnFrom.IsZero() || p.LookFrom.IsZero() {
			continue
		}
		s.Selection = state.Select(n.Nuc.Nuc.Subject())
		all := cardTexts(t, s)
		own, look := slices.Index(all, "own virgin possible"), slices.IndexFunc(all, func(text string) bool { return strings.HasPrefix(text, "worth a look") })
		if own < 0 || look < 0 || (own < look) != p.OwnFrom.Before(p.LookFrom) {
			t.Errorf("%s: own virgin %v in line %d, look %v in line %d", n.Name, p.OwnFrom, own, p.LookFrom, look)
		}
		return
	}
	t.Fatal("no nuc of the demo season can raise a virgin of its own")
}

func TestTheCardSaysWhenItNeedsOrNeededYou(t *testing.T) {
	s := open(t)
	s.Room = state.Yard
	for day, want := range map[int]string{0: "need you", -6: "needed you", 9: "will need you"} {
		s.Day = today + calendar.Day(day)
		found := false
		for _, w := range texts(t, window(s), s.Size()) {
			if s.Layout().Card.Contains(w.At) && w.Size == 17 {
				found = found || strings.HasSuffix(w.Text.Text, " nucs "+want)
			}
			if s.Away() && s.Layout().Card.Contains(w.At) && w.Role == scene.Act {
				t.Errorf("%d days away %q is written in the colour of now", day, w.Text.Text)
			}
		}
		if !found {
			t.Errorf("%d days away the card does not say %q", day, want)
		}
	}
}

func TestACardOfNothing(t *testing.T) {
	s := state.State{Book: &state.Book{Season: book.NewSeason(nil, nil)}, Now: today.At(9, 0, zone), Width: 1440, Height: 900, Room: state.Yard}
	all := cardTexts(t, s)
	if !slices.Contains(all, "No nuc yet") || slices.Contains(all, "Show them") {
		t.Errorf("the card of an empty book says %q", all)
	}
}

// How far a card can be scrolled is asked of every kind of card, also of those
// that draw lids.
func TestEveryCardTellsHowFarItScrolls(t *testing.T) {
	s := open(t)
	s.Height = 600
	r := s.Reading()
	for _, sub := range []book.Subject{r.Nucs[0].Nuc.Nuc.Subject(), r.Batches()[3].Batch.Subject(), r.Nucs[0].Yard.Subject()} {
		s.Selection = state.Select(sub)
		if most := view.CardMost(s, typewriter{}); most < 0 || view.CardAt(s, typewriter{}) > most {
			t.Errorf("%s: scrolls by %.0f", sub.Kind, most)
		}
	}
}
