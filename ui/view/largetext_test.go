package view_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/series"
	"lidmark/ui/state"
)

// shown are the texts of a window that can be read whole, and those that an edge cuts.
func shown(t testing.TB, s state.State) (whole, cut []string) {
	for _, w := range texts(t, window(s), s.Size()) {
		top, bottom := w.box.Y, w.box.Bottom()
		switch {
		case w.Text.Text == "" || bottom <= w.clip.Y || top >= w.clip.Bottom():
		case top < w.clip.Y-1 || bottom > w.clip.Bottom()+1 || bottom > s.Layout().Foot.Bottom():
			cut = append(cut, w.Text.Text)
		default:
			whole = append(whole, w.Text.Text)
		}
	}
	return whole, cut
}

// larger150 is a small window with large text.
func larger150(s state.State) state.State {
	s.Width, s.Height, s.Text = 1280, 800, 1.5
	return s
}

// TestAListIsReadInWholeRows: however far it is scrolled no row of a list and of a
// series of weather is cut, the last one is reached, and with large text what a row
// becomes and what can be kept are said whole.
func TestAListIsReadInWholeRows(t *testing.T) {
	lines := []string{"Nuc,Holds,Remarks"}
	series150 := []string{"Time,Temp,Wind"}
	for i := range 24 {
		name := string(rune('A'+i/9)) + string(rune('1'+i%9))
		holds := "virgin"
		if i == 3 || i == 22 {
			holds = "purple with a long word, and what was seen beside it on that day"
		}
		lines = append(lines, name+","+holds+",front board loose")
		series150 = append(series150, (today-1).String()+" "+string(rune('0'+i/10))+string(rune('0'+i%10))+":00,20,3")
	}
	brought := func() *hands {
		h := &hands{t: t, State: larger150(open(t))}
		h.send(state.ListRead{Path: "/lists/a.csv", List: aList(lines...)})
		return h
	}
	weather := func() *hands {
		h := &hands{t: t, State: larger150(open(t))}
		f := weatherFile(series150...)
		h.send(state.WeatherRead{Path: "/lists/mast.csv", File: f, Choice: series.Guess(f.Headings)})
		return h
	}
	for name, h := range map[string]*hands{"list": brought(), "weather": weather()} {
		last := ""
		for range 40 {
			whole, cut := shown(t, h.State)
			if len(cut) > 0 {
				t.Fatalf("%s: scrolled by %v it cuts %q", name, h.Scroll[state.FillPlace], cut)
			}
			for _, text := range whole {
				if strings.HasSuffix(text, "…") && (strings.Contains(text, "seen, ") || strings.Contains(text, "°C, wind") || strings.Contains(text, "Fit to fly")) {
					t.Fatalf("%s: %q is cut", name, text)
				}
			}
			last = strings.Join(whole, "\n")
			h.send(state.Wheeled{At: h.ListLayout().Table.Centre(), DY: 37})
		}
		if !strings.Contains(last, "25") {
			t.Errorf("%s: its end is never in sight: %q", name, last)
		}
		h.send(state.Keyed{Key: "PageUp"})
		if _, cut := shown(t, h.State); len(cut) > 0 {
			t.Errorf("%s: a page up it cuts %q", name, cut)
		}
	}
	h := weather()
	if whole, _ := shown(t, h.State); !h.says("below: what each row becomes") || !strings.Contains(strings.Join(whole, " "), "Fit to fly: ") {
		t.Errorf("of the weather is said %q", whole)
	}
}

// TestAPageOfAListPassesNoRow: a page down goes on with the row behind the last in sight.
func TestAPageOfAListPassesNoRow(t *testing.T) {
	lines := []string{"Nuc,Holds"}
	for i := range 24 {
		lines = append(lines, string(rune('A'+i/9))+string(rune('1'+i%9))+",virgin")
	}
	h := &hands{t: t, State: larger150(open(t))}
	h.send(state.ListRead{Path: "/lists/a.csv", List: aList(lines...)})
	for range 4 {
		behind := h.ListLayout().Behind()
		h.send(state.Keyed{Key: "PageDown"})
		if l := h.ListLayout(); l.FirstRow != behind && l.Behind() < 24 {
			t.Fatalf("behind row %d comes row %d", behind-1, l.FirstRow)
		}
	}
}

// TestTheStepsOfABookLoseNothing: with large text each of them says what it is for, and
// all that it asks and all that follows comes into sight by scrolling, whole.
func TestTheStepsOfABookLoseNothing(t *testing.T) {
	want := [state.StepCount][]string{
		{"computer.", "What the yard is called", "South is negative", "The file in which the book is kept"},
		{"A letter for each stand", "6 sides of 2 dm²", "Where the entrances face", "Other boxes as well"},
		{"Whoever stands first", "or like Ida Mon-Fri 18:30-20:30", "Your name", "A week"},
		{"deadline", "12 to 24 h is usual", "Line of the mother", "take", "emerge", "too late if no eggs yet"},
	}
	for step := range state.StepCount {
		h := nothingOpen(t)
		h.State = larger150(h.State)
		h.press("2")
		h.Start.Step = step
		seen := map[string]bool{}
		for i := range 24 {
			whole, cut := shown(t, h.State)
			if len(cut) > 0 {
				t.Errorf("step %d, scrolled %d times: it cuts %q", step+1, i, cut)
			}
			for _, text := range whole {
				seen[text] = true
			}
			left, right := h.Size(), h.Size()
			left.W, right.X = 300, 400
			h.send(state.Wheeled{At: left.Centre(), DY: 30})
			h.send(state.Wheeled{At: right.Centre(), DY: 30})
		}
		for _, said := range want[step] {
			if !slices.ContainsFunc(keysOf(seen), func(text string) bool { return strings.Contains(text, said) }) {
				t.Errorf("step %d: %q is never in sight", step+1, said)
			}
		}
	}
}

func keysOf(seen map[string]bool) (all []string) {
	for text := range seen {
		all = append(all, text)
	}
	return all
}
