package state

import (
	"math"

	"lidmark/ui/scene"
)

// WalkPane says where the walk lies: its head, its rows, and the closing count.
type WalkPane struct {
	Head, Body, Foot scene.Area
	Letters          scene.Area // the list of letters; empty where it has no room
	Stacked          bool       // what is read back stands below what is typed
	Planned          bool       // there is room for what was planned
	Offset           float64    // how far the rows are scrolled
	Rows             int
	Current          int     // the row typed into; none: below 0
	Tall             float64 // its height
}

// Measures of the walk, dp.
const (
	WalkLine     = 33.0 // a row
	walkHead     = 80.0 // down to the rule below the heads of the columns
	walkFoot     = 64.0
	walkTall     = 86.0 // the row that is typed into
	walkStacked  = 46.0 // it is higher by, where what is read back stands below
	walkAsked    = 22.0 // and by, where it asks
	walkNarrow   = 960.0
	walkPlanned  = 620.0
	walkLow      = 280.0  // rows lower than this show fewer about the one typed into
	lettersLeast = 1000.0 // a window narrower has no list of letters
)

// WalkPane is where the walk lies in the layout l.
func (s State) WalkPane(l Layout) WalkPane {
	p := WalkPane{Letters: l.Card, Rows: len(s.Walk.Rows), Current: s.Walk.index(s.Walk.At)}
	p.Stacked, p.Planned = l.Main.W < walkNarrow, l.Main.W >= walkPlanned
	p.Head, p.Body = cutTop(l.Main, walkHead)
	p.Foot = scene.Area{X: l.Main.X, Y: l.Main.Bottom() - walkFoot, W: l.Main.W, H: walkFoot}
	p.Body.H = max(0, p.Foot.Y-p.Body.Y)
	p.Tall = walkTall
	if p.Stacked {
		p.Tall += walkStacked
	}
	if s.Asked != nil {
		p.Tall += walkAsked
	}
	p.Offset = min(s.Scroll[RecordPlace], p.most())
	return p
}

// Y is where a row begins, from the top of the first one.
func (p WalkPane) Y(row int) float64 {
	y := float64(row) * WalkLine
	if p.Current >= 0 && row > p.Current {
		y += p.Tall - WalkLine
	}
	return y
}

// H is how high a row is.
func (p WalkPane) H(row int) float64 {
	if row == p.Current {
		return p.Tall
	}
	return WalkLine
}

// All is the height of all rows.
func (p WalkPane) All() float64 { return p.Y(p.Rows) }

func (p WalkPane) most() float64 { return max(0, p.All()-p.Body.H) }

// Shown are the rows that show, the first and the one behind the last.
func (p WalkPane) Shown() (from, to int) {
	at := func(y float64) int {
		if p.Current >= 0 && y > p.Y(p.Current)+p.Tall {
			y -= p.Tall - WalkLine
		} else if p.Current >= 0 && y > p.Y(p.Current) {
			return p.Current
		}
		return int(math.Floor(y / WalkLine))
	}
	return max(0, at(p.Offset)), min(p.Rows, at(p.Offset+p.Body.H)+1)
}

// rowShown is the walk scrolled so that the row typed into is in sight, and rows
// about it.
func (s State) rowShown() State {
	p := s.WalkPane(s.Layout())
	if p.Current < 0 {
		return s
	}
	before, behind := 0.0, WalkLine
	if p.Body.H > walkLow {
		before = min(2*WalkLine, p.Y(p.Current))
	}
	s = s.within(RecordPlace, p.Offset, p.Y(p.Current)-before, before+p.Tall+behind, p.Body.H)
	off := s.Scroll[RecordPlace]
	whole := min(math.Ceil(off/WalkLine)*WalkLine, p.Y(p.Current)) // a whole row begins at the top
	return s.scrolled(RecordPlace, whole-off)
}
