// Package yard says what it costs how the boxes of a mating yard stand. A
// [Layout] is a yard's stands with their nucs, as they are ([Of] reads them from
// the book) or as they are tried. [HomingOf] reckons at which doors its bees end
// by distance, bearing and marks; a [Ground] is what stands around them.
//
// The kernel of homing is a proposal held against the few published figures, see
// [Kernel]; what it says of a small difference is not known, see [Compare].
package yard
