package picture

import (
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// steps are how far every second box of a row is set aside, in steps of the map.
const steps = 5

// layout is a try-out beside the yard: fronts are marked as a search found it, and the
// single boxes of each row are set in a zigzag.
func layout(s *state.State) {
	send(s, state.Ran{Command: "layout"})
	next, effects := state.Update(*s, state.Ran{Command: "turn layout"})
	*s = next
	for _, e := range effects {
		if e, ok := e.(state.SearchLayout); ok {
			send(s, e.Search(func(state.LayoutFound) bool { return true }))
		}
	}
	if !s.OnLayout() || len(s.Laying.Try.Stands) == 0 {
		s.Note = state.Note{}
		return
	}
	var left, up, turned []book.StandID
	for i, st := range s.Laying.Try.Stands {
		switch {
		case st.Places == 1 && i%2 == 1 && strings.HasPrefix(st.Letter, "N"):
			left = append(left, st.ID)
		case st.Places == 1 && i%2 == 1:
			up = append(up, st.ID)
		case st.Places > 1 && i%2 == 1:
			turned = append(turned, st.ID)
		}
	}
	done(s, turned, state.Ran{Command: "turn right"}, state.Ran{Command: "turn right"}, state.Ran{Command: "turn right"})
	done(s, left, slices.Repeat([]state.Msg{state.Keyed{Key: "Left"}}, steps)...)
	done(s, up, slices.Repeat([]state.Msg{state.Keyed{Key: "Up"}}, steps)...)
	*s = typed(*s, state.LayoutName, "turned and spread")
	send(s, state.Keyed{Key: "Return"})
	for s.Focus != (scene.Ref{}) || len(s.Laying.Pick) > 0 {
		send(s, state.Keyed{Key: "Escape"})
	}
}

// done picks stands of the try-out and does something with them.
func done(s *state.State, stands []book.StandID, does ...state.Msg) {
	if len(stands) == 0 {
		return
	}
	mods := state.Mods(0)
	for _, id := range stands {
		tag := scene.Tag{Ref: state.TriedStand(id)}
		send(s, state.Pressed{Tag: tag, Mods: mods})
		send(s, state.Released{Tag: tag, Mods: mods})
		mods = state.Ctrl
	}
	for _, m := range does {
		send(s, m)
	}
}
