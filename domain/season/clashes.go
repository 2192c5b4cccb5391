package season

import "lidmark/domain/plan"

// Clashes are all that the batches of the book, planned and grafted, want and cannot
// all have from the view's day on, by the day, each with its cheapest ways out.
func Clashes(p *plan.Planner) []Clash {
	all := standings(p)
	t := trial{account: newAccount(p, all), odds: map[string]float64{}, rates: plan.RatesOf(p.View())}
	for _, s := range all {
		t.loads = append(t.loads, t.load(s))
	}
	t.found = t.clashes(t.loads)
	found := make([]Clash, len(t.found))
	for i, c := range t.found {
		c.Why, c.Ways = t.why(c, t.loads), t.ways(c)
		found[i] = c
	}
	return found
}
