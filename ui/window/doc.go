// Package window hosts the scenes of the window in Fyne. It turns what hand and
// keyboard do into messages, and performs the effects that come back; what is
// shown and what follows from a click is decided in packages state and view.
package window
