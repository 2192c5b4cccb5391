package state

import (
	"time"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// Msg is something that happened to the window: a closed set.
type Msg interface{ msg() }

// The messages. Points are in lengths of the scene; a Tag is what the scene
// shows at the point.
type (
	// Opened puts a book into the window, or takes it out with nil. The window
	// begins anew with it, but for the same book read Again: then what is looked at
	// and typed stays.
	Opened struct {
		Book  *Book
		Again bool
		IDs   book.IDs // makes ids that the book does not have
		Draft Draft    // what was typed in it and not written, when the program ended
	}
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
		Clicks int // 2 is a double click
	}
	// Released lets the button go. Within is what lies in the rubber band, see
	// [State.Band].
	Released struct {
		At     scene.Point
		Tag    scene.Tag
		Within []scene.Ref
		Mods   Mods
		Clicks int // as with [Pressed]
	}
	// Wheeled turns the wheel by DX and DY, dp; down and right are positive.
	Wheeled struct {
		At       scene.Point
		DX, DY   float64
		Mods     Mods
		CardMost float64 // how far the card can be scrolled, as its text is wide
		CardAt   float64 // how far it is, as it was drawn
	}
	// Keyed presses a key by its name, as in a [Command]: ",", "Home", "F".
	// Stops are what the scene shows that can take the keys, in reading order;
	// Tab and the arrows need them; and CardMost as in [Wheeled] for a page down.
	Keyed struct {
		Key      string
		Mods     Mods
		Stops    []scene.Ref
		CardMost float64
	}
	// Wrote types a character: into the field that takes the keys, or the filter.
	Wrote struct{ Rune rune }
	// Ran runs a command by its name.
	Ran struct{ Command string }
	// Pasted puts text from the clipboard into the field that takes the keys.
	Pasted struct{ Text string }
	// Chose tells which file the keeper chose, for what [ChooseFile] asked it.
	Chose struct{ For, Path string }
	// Working tells how far long work has come; Share is from 0 to 1, or below
	// 0 where nobody knows.
	Working struct {
		Words string
		Share float64
	}
	// Worked ends long work, or anything else that was to be done outside, with
	// what there is to say: what was done, or what went wrong and what to do. A
	// file to Show is opened in the system's viewer.
	Worked struct {
		Note Note
		Show string
	}
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
func (Pasted) msg()   {}
func (Chose) msg()    {}
func (Working) msg()  {}
func (Worked) msg()   {}

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
