package plan

import "lidmark/domain/calendar"

// GraftBy is the day of the latest graft that is in time for a wish, the one of which
// [Planner.Possible] has the first of the wish; 0: none is.
func (p *Planner) GraftBy(w Wish) calendar.Day {
	w = p.filled(w)
	for range possibleRounds + 1 {
		a := Answer{Wish: w}
		p.last(&a)
		if !a.InTime {
			return 0
		}
		late := missed(p.Ladder(p.graftOf(a.Wish, a.Graft), cellsGuess(w), w.Yard), p.view.Today())
		if late == 0 {
			return a.Graft
		}
		w.Graft = a.Graft + late
	}
	return w.Graft
}
