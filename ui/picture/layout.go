package picture

import "lidmark/ui/state"

// layoutTries is how many times a search tells of itself before the picture takes what
// is found.
const layoutTries = 12

// layout is a try-out beside the yard, found by moving, turning and marking.
func layout(s *state.State) {
	send(s, state.Ran{Command: "layout"})
	next, effects := state.Update(*s, state.Ran{Command: "move layout"})
	*s = next
	for _, e := range effects {
		if e, ok := e.(state.SearchLayout); ok {
			told := 0
			send(s, e.Search(func(state.LayoutFound) bool { told++; return told < layoutTries }))
		}
	}
	if !s.OnLayout() {
		return
	}
	*s = typed(*s, state.LayoutName, "turned and spread")
	send(s, state.Keyed{Key: "Return"})
	send(s, state.Keyed{Key: "Escape"})
	send(s, state.Ticked{Now: s.Now})
}
