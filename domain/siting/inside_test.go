package siting

// Kept is what the best layout of a search costs as it was kept along.
func (s *Search) Kept() float64 { return s.best().best }

// FullOfKept is the same reckoned anew.
func (s *Search) FullOfKept() float64 { return s.Bill(s.best().bestSoFar()).Queens }
