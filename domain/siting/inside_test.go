package siting

// Kept is what the best layout of a search costs as it was kept along.
func (s *Search) Kept() float64 { return s.best().best }

// FullOfKept is the same reckoned anew.
func (s *Search) FullOfKept() float64 {
	c := s.best()
	return s.plot.bill(c.bestSoFar(), c.order, s.plot.numbers).Queens
}
