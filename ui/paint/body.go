package paint

import "lidmark/ui/scene"

// Body returns the outline of a lid's body with the notch of its entrance, about
// the lid's centre, in dp: the same on paper as on the screen.
func Body(l *scene.Lid) []scene.Point {
	b := newBody(l)
	return b.notched
}
