package state

import (
	"lidmark/ui/scene"
)

// Measures of the sheet of keys, dp.
const (
	KeyRow    = 22.0
	KeyHead   = 62.0  // from the sheet's top to its first row
	KeyLine   = 18.0  // a line of what the mouse does
	KeyEdge   = 20.0  // from the sheet's side to its text
	keyColumn = 380.0 // the least that cuts no row
	keyWide   = 408.0
	keyAir    = 8.0  // from the sheet to the window's edge, at least
	keyFoot   = 20.0 // above and below what the mouse does
)

// MouseSays is what the mouse does, the end of the sheet of keys.
const MouseSays = "Wheel: zoom the map, move the days, scroll. Drag: a rubber band; with the right or middle button, or Shift, it moves the map. Ctrl-click adds, Shift-click takes all between. Double click: the head of a pane fills the room, a batch opens. Click the head of a column to sort, with Shift to sort within."

// KeySheet is where the sheet of keys lies.
type KeySheet struct {
	scene.Area
	Rows    []Command
	Columns int
	All     float64 // height of all that stands on it
	Offset  float64 // how far it is scrolled
}

// KeySheet is the sheet of keys in the window: in as many columns as it takes
// to show all, as far as there is room for them.
func (s State) KeySheet() KeySheet {
	w := s.Size()
	k := KeySheet{Rows: keyRows()}
	most := max(1, int((w.W-2*keyAir-2*KeyEdge)/keyColumn))
	for k.Columns = min(2, most); ; k.Columns++ {
		k.W = min(w.W-2*keyAir, float64(k.Columns)*keyWide+2*KeyEdge)
		mouse := float64(linesOf(MouseSays, 13, k.W-2*KeyEdge))
		k.All = KeyHead + float64(k.PerColumn())*KeyRow + mouse*KeyLine + keyFoot
		if k.All <= w.H-2*keyAir || k.Columns >= most {
			break
		}
	}
	k.H = min(k.All, w.H-2*keyAir)
	k.X, k.Y = (w.W-k.W)/2, (w.H-k.H)/2
	k.Offset = min(s.Scroll[KeysPlace], k.All-k.H)
	return k
}

// PerColumn is how many rows a column has.
func (k KeySheet) PerColumn() int {
	n := (len(k.Rows) + k.Columns - 1) / k.Columns
	for n < len(k.Rows) && k.endsInHead(n) {
		n++
	}
	return n
}

// endsInHead tells whether a column of n rows ends in a head, parted from its keys.
func (k KeySheet) endsInHead(n int) bool {
	for i := n - 1; i < len(k.Rows); i += n {
		if k.Rows[i].Keys == "" {
			return true
		}
	}
	return false
}

// scrolledKeys is the window with the sheet of keys scrolled by d.
func (s State) scrolledKeys(d float64) State {
	k := s.KeySheet()
	return s.scrolled(KeysPlace, min(max(0, k.Offset+d), k.All-k.H)-s.Scroll[KeysPlace])
}

// keysShown is the window with the sheet of keys open at its top, or closed.
func (s State) keysShown() State {
	s.Keys = !s.Keys
	return s.scrolled(KeysPlace, -s.Scroll[KeysPlace])
}
