package state

import "lidmark/domain/book"

// rulered is the window with measuring begun, or left.
func (s State) rulered() (State, []Effect) {
	s, effects := s.drawingLeft()
	return s.laid(func(l *Laying) {
		if l.Ruler != nil {
			l.Ruler = nil
		} else {
			l.Ruler = []book.Point{}
		}
	}), effects
}

// Measuring tells whether clicks on the try-out measure.
func (s State) Measuring() bool { return s.OnLayout() && s.Laying.Ruler != nil }

// measuredTo is the window with the next end of what is measured: the third begins
// anew.
func (s State) measuredTo(p book.Point) State {
	return s.laid(func(l *Laying) {
		if len(l.Ruler) > 1 {
			l.Ruler = nil
		}
		l.Ruler = append(l.Ruler[:len(l.Ruler):len(l.Ruler)], p)
	})
}

// Measured is what is measured in the try-out: from one point to another or, before
// that is set, to the pointer; ok is false where nothing is.
func (s State) Measured() (from, to book.Point, ok bool) {
	if !s.Measuring() || len(s.Laying.Ruler) == 0 {
		return from, to, false
	}
	from = s.Laying.Ruler[0]
	if len(s.Laying.Ruler) > 1 {
		return from, s.Laying.Ruler[1], true
	}
	try := s.LayingAreas().Try
	return from, s.onTry(s.Pointer), try.Contains(s.Pointer)
}
