package view_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/ui/state"
)

// TestAWarningOfAFormIsAlwaysInSight: what a form would write, for which day, and
// what is lost by it stands at the foot of the card in every window, however far
// its questions are scrolled.
func TestAWarningOfAFormIsAlwaysInSight(t *testing.T) {
	for _, size := range [][3]float64{{1440, 900, 1}, {1280, 800, 1.5}, {1200, 620, 1}} {
		s := open(t)
		s.Width, s.Height, s.Text, s.Room = size[0], size[1], size[2], state.Yard
		s, _ = state.Update(s, state.Resized{Width: s.Width, Height: s.Height})
		s.Selection = state.Select(nucNamed(t, s, "C3").Nuc.Nuc.Subject())
		s, _ = state.Update(s, state.Ran{Command: "put off"})
		if s.Form == nil {
			t.Fatal("no form is open")
		}
		s = s.WithField("form.rule", state.FieldOf("no queen")).WithField("form.until", state.FieldOf("+20")).WithField("form.when", state.FieldOf("yesterday"))
		says := s.FormSays()
		if !says.Loses || len(says.Back) == 0 {
			t.Fatalf("the form says %+v", says)
		}
		for _, scroll := range []float64{0, 1000} {
			s.Scroll, s.Follow = map[state.Place]float64{state.CardPlace: scroll}, false
			all := strings.Join(cardTexts(t, s), " ")
			for _, want := range []string{says.Minds[0][:10], "Reads back, for " + (today - 1).Short(), "put off until"} {
				if !strings.Contains(all, want) {
					t.Errorf("%v, scrolled %v: %q is not in sight", size, scroll, want)
				}
			}
		}
	}
}

// TestAFormSaysWhatItIsAbout while something else is selected, and a question with
// yes or no shows both.
func TestAFormSaysWhatItIsAbout(t *testing.T) {
	s := open(t)
	s.Room = state.Yard
	a1, c3 := nucNamed(t, s, "A1").Nuc.Nuc.Subject(), nucNamed(t, s, "C3").Nuc.Nuc.Subject()
	s.Selection = state.Select(c3)
	s, _ = state.Update(s, state.Ran{Command: "put off"})
	const about = "The form is about C3; Esc leaves it"
	if slices.Contains(cardTexts(t, s), about) {
		t.Error("it is said though nothing else is selected")
	}
	s.Selection = state.Select(a1)
	if all := cardTexts(t, s); !slices.Contains(all, about) {
		t.Errorf("another nuc is selected and nothing says what the form is about: %q", all)
	}
}

// TestTheNextHardLineIsSaid with its hour while none presses.
func TestTheNextHardLineIsSaid(t *testing.T) {
	s := open(t)
	said := 0
	s.Room = state.Today
	for d := today - 10; d < today; d++ {
		s.Day = d
		for _, w := range texts(t, window(s), s.Size()) {
			if strings.HasPrefix(w.Text.Text, "Next, hard by ") {
				said++
			}
		}
	}
	if said == 0 {
		t.Error("on no day a hard line ahead is said")
	}
}
