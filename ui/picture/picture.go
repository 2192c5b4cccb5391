// Package picture paints the window without a window: what a room would look
// like on a screen, as an image.
package picture

import (
	"fmt"
	"image"
	"maps"
	"math"
	"slices"
	"strings"

	"lidmark/ui/paint"
	"lidmark/ui/state"
	"lidmark/ui/view"
)

// Of paints the window of a state, scale device pixels for a dp. It fails only
// if the typeface built into the program is damaged.
func Of(s state.State, scale float64) (*image.RGBA, error) {
	p, err := paint.New()
	if err != nil {
		return nil, err
	}
	theme := paint.Light
	if s.Dark {
		theme = paint.Dark
	}
	img := image.NewRGBA(image.Rect(0, 0, pixels(s.Width, scale), pixels(s.Height, scale)))
	p.Paint(img, view.Window(s, p), theme, scale*s.TextSize())
	return img, nil
}

func pixels(dp, scale float64) int { return int(math.Round(dp * scale)) }

var rooms = map[string]func(*state.State){
	"late":    ran("late day"),
	"batch":   func(s *state.State) { selectBatch(s); ran("batch room")(s) },
	"course":  func(s *state.State) { selectLooked(s); ran("course room")(s) },
	"today":   func(s *state.State) { s.Room = state.Today },
	"yard":    func(s *state.State) { s.Room, s.Pane = state.Yard, state.Split },
	"map":     func(s *state.State) { s.Room, s.Pane = state.Yard, state.Map },
	"lids":    func(s *state.State) { s.Room, s.Pane = state.Yard, state.Lids },
	"wall":    func(s *state.State) { s.Room, s.Pane = state.Yard, state.Wall },
	"table":   func(s *state.State) { s.Room, s.Pane = state.Yard, state.Table },
	"layout":  layout,
	"record":  func(s *state.State) { *s, _ = state.Update(*s, state.Ran{Command: "type it in"}) },
	"numbers": ran("numbers"),
	"plan":    ran("plan"),
	"orders":  ran("orders"),
	"season":  ran("season"),
	"review":  ran("review"),
	"book":    func(s *state.State) { s.Room = state.About },

	"start":   bookless,
	"steps-1": begun(state.YardStep),
	"steps-2": begun(state.BoxStep),
	"steps-3": begun(state.PeopleStep),
	"steps-4": begun(state.BatchStep),
	"list":    broughtList,
	"weather": broughtWeather,
}

// ran enters a room by its command, from Today.
func ran(command string) func(*state.State) {
	return func(s *state.State) { send(s, state.Ran{Command: command}) }
}

// send is the state after a message, with the review that it asks for.
func send(s *state.State, m state.Msg) {
	next, effects := state.Update(*s, m)
	*s = next
	for _, e := range effects {
		switch e := e.(type) {
		case state.ReckonReview:
			send(s, e.Reckon())
		case state.ReckonPlan:
			send(s, e.Reckon())
		case state.ReckonOrders:
			send(s, e.Reckon())
		case state.ReckonSeason:
			send(s, e.Reckon())
		case state.CompareLayouts:
			send(s, e.Reckon())
		}
	}
}

// selectBatch selects the last batch that nucs have queens of.
func selectBatch(s *state.State) {
	r := s.Reading()
	for _, b := range slices.Backward(r.Batches()) {
		if len(r.NucsOf(b.Batch)) > 0 {
			s.Selection = state.Select(b.Batch.Subject())
			return
		}
	}
}

// selectLooked selects the nuc at which was looked most often in its present life.
func selectLooked(s *state.State) {
	most, r := -1, s.Reading()
	for _, n := range r.Nucs {
		if c := r.CourseOf(n.Nuc.Nuc); len(c.Days) > 0 && len(c.Looks) > most {
			most, s.Selection = len(c.Looks), state.Select(n.Nuc.Nuc.Subject())
		}
	}
}

// Rooms are the names that [Enter] knows, in the order of the alphabet.
func Rooms() []string { return slices.Sorted(maps.Keys(rooms)) }

// Enter is the state in the room of a name, the ribbon where it shows the day
// looked at.
func Enter(s state.State, room string) (state.State, error) {
	enter, ok := rooms[room]
	if !ok {
		return s, fmt.Errorf("room %q: use one of %s", room, strings.Join(Rooms(), ", "))
	}
	b := s.Book
	s.Book = nil
	send(&s, state.Opened{Book: b})
	enter(&s)
	return s, nil
}
