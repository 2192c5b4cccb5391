package state

import "lidmark/ui/scene"

// keyLaying gives a key to the try-out, and tells whether that took it: Esc leaves what
// is being typed, looked for, measured or picked before it leaves the room. Enter is done
// with what is drawn.
func (s State) keyLaying(m Keyed) (State, []Effect, bool) {
	switch {
	case m.Key == "Enter" && m.Mods == 0 && s.Drawing.What != 0 && s.Focus == scene.Ref{}:
		next, effects := run(s, "finish drawing")
		return next, effects, true
	case m.Key != "Escape" || m.Mods != 0 || s.Form != nil || s.Drag.Kind != NoDrag || s.Keys || s.Menu != NoMenu || s.Drawing.What != 0:
		return s, nil, false
	case s.Focus != scene.Ref{}:
		if s.InField() != "" {
			s = s.WithField(s.InField(), Field{})
		}
		s.Focus = scene.Ref{}
	case s.Brought != nil:
		s = s.groundLeft()
	case s.laidOut.search.Looking():
		next, effects := layoutStopped(s)
		return next, effects, true
	case s.Measuring():
		next, effects := s.rulered()
		return next, effects, true
	case len(s.Laying.Pick) > 0:
		s = s.picked(false)
	default:
		return s, nil, false
	}
	return s, nil, true
}
