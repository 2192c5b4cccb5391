package window

import (
	"fyne.io/fyne/v2/driver/desktop"

	"lidmark/ui/state"
)

// Cursor is how the pointer looks: over what divides panes it moves it sideways.
func (s *stage) Cursor() desktop.Cursor {
	if s.over.Ref.Kind == state.SplitRef || s.now().Drag.Kind == state.SplitDrag {
		return desktop.HResizeCursor
	}
	return desktop.DefaultCursor
}
