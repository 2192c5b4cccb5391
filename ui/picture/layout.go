package picture

import (
	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// layout is a try-out beside the yard: every other stand of several nucs is turned, and
// the single boxes are set in a zigzag with marks by turns.
func layout(s *state.State) {
	send(s, state.Ran{Command: "layout"})
	if !s.OnLayout() {
		return
	}
	var turned, zig []book.StandID
	for i, st := range s.Laying.Try.Stands {
		switch {
		case st.Places > 1 && i%2 == 1:
			turned = append(turned, st.ID)
		case st.Places == 1 && i%2 == 1:
			zig = append(zig, st.ID)
		}
	}
	for range 3 {
		done(s, turned, "turn right")
	}
	done(s, zig, "turn right", "turn right", "mark fronts")
	for range 3 {
		send(s, state.Keyed{Key: "Left"})
		send(s, state.Keyed{Key: "Up"})
	}
	*s = typed(*s, state.LayoutName, "turned and spread")
	send(s, state.Keyed{Key: "Return"})
	s.Focus = scene.Ref{}
}

// done picks stands of the try-out and runs commands on them.
func done(s *state.State, stands []book.StandID, commands ...string) {
	for i, id := range stands {
		tag := scene.Tag{Ref: state.TriedStand(id)}
		mods := state.Mods(0)
		if i > 0 {
			mods = state.Ctrl
		}
		send(s, state.Pressed{Tag: tag, Mods: mods})
		send(s, state.Released{Tag: tag, Mods: mods})
	}
	for _, c := range commands {
		send(s, state.Ran{Command: c})
	}
}
