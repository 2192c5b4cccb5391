package view_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/state"
)

// TestTheYardsCardTellsOfItsWeather: how the day is to fly, and every way to tell of
// it, each by its button.
func TestTheYardsCardTellsOfItsWeather(t *testing.T) {
	h := &hands{t: t, State: open(t)}
	h.send(state.Opened{Book: h.Book, IDs: book.NewIDs(h.Now, h.Book.Season, [32]byte{4})})
	h.send(state.Resized{Width: 1440, Height: 1600})
	h.press("Alt+Y")
	if !h.says("Weather of ") {
		t.Fatal("the card has no section on weather")
	}
	for _, command := range []string{"weather", "weather days", "usual weather", "forage"} {
		h.tab(state.CommandOf(command)).press("Enter")
		if h.Form == nil || h.Form.Record != command {
			t.Fatalf("%s opens no form", command)
		}
		h.press("Escape")
	}
	h.tab(state.CommandOf("take in weather")).press("Enter")
	if e, ok := h.asked[len(h.asked)-1].(state.ChooseFile); !ok || e.For != "take in weather" {
		t.Error("no file is asked for")
	}
}
