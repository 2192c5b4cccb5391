package state

import (
	"time"

	"lidmark/ui/scene"
)

// Msg is something that happened to the window: a closed set.
type Msg interface{ msg() }

// The messages. Points are in lengths of the scene; a Tag is what the scene
// shows at the point.
type (
	// Opened puts a book into the window, or takes it out with nil. The same
	// book with more entries keeps what is looked at.
	Opened struct{ Book *Book }
	// Ticked moves the clock.
	Ticked struct{ Now time.Time }
	// Resized tells the window's size, dp.
	Resized struct{ Width, Height float64 }
	// Moved moves the pointer.
	Moved struct {
		At  scene.Point
		Tag scene.Tag
	}
	// Pressed puts a button down.
	Pressed struct {
		At     scene.Point
		Tag    scene.Tag
		Button Button
		Mods   Mods
	}
	// Released lets the button go. Within is what lies in the rubber band, see
	// [State.Band].
	Released struct {
		At     scene.Point
		Tag    scene.Tag
		Within []scene.Ref
		Mods   Mods
	}
	// Wheeled turns the wheel by DX and DY, dp; down and right are positive.
	Wheeled struct {
		At       scene.Point
		DX, DY   float64
		Mods     Mods
		CardMost float64 // how far the card can be scrolled, as its text is wide
	}
	// Keyed presses a key by its name, as in a [Command]: ",", "Home", "F".
	Keyed struct {
		Key  string
		Mods Mods
	}
	// Wrote types a character into the filter.
	Wrote struct{ Rune rune }
	// Ran runs a command by its name.
	Ran struct{ Command string }
)

func (Opened) msg()   {}
func (Ticked) msg()   {}
func (Resized) msg()  {}
func (Moved) msg()    {}
func (Pressed) msg()  {}
func (Released) msg() {}
func (Wheeled) msg()  {}
func (Keyed) msg()    {}
func (Wrote) msg()    {}
func (Ran) msg()      {}

// Mods are the keys held down beside another.
type Mods uint8

// The keys that are held. Ctrl is also the command key of other keyboards.
const (
	Shift Mods = 1 << iota
	Ctrl
	Alt
)

// Has tells whether all of the given keys are held.
func (m Mods) Has(keys Mods) bool { return m&keys == keys }

// Button is a button of the pointer.
type Button uint8

// The buttons. The zero Button is the primary one.
const (
	Primary Button = iota
	Secondary
)

// Effect is something to be done outside the window's values: a closed set.
type Effect interface{ effect() }

// The effects.
type (
	// CopyText puts text on the clipboard.
	CopyText struct{ Text string }
	// OpenDemo opens the demo season.
	OpenDemo struct{}
	// ChooseBook lets the keeper choose the file of a book.
	ChooseBook struct{}
)

func (CopyText) effect()   {}
func (OpenDemo) effect()   {}
func (ChooseBook) effect() {}
