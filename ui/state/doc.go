// Package state is the window as values: what is looked at, how, and what the
// keeper's hand does to it. A [State] changes only in [Update], which knows no
// toolkit, no clock and no disk; what has to be done outside is an [Effect].
//
//	s, effects := state.Update(s, state.Ran{Command: "today"})
//
// Lengths are those of package scene: device-independent pixels at text size
// 1.0. A window of 1280 × 800 at text size 1.5 is laid out like one of 853 ×
// 533 at 1.0, and painted half as large again.
package state
