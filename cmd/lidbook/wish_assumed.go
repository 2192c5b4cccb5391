package main

// assumed are the goods of which too little is there: how sure a wish is counts on all of them.
func assumed(s wishShape) []string {
	all := []string{}
	needs := s.Together
	if len(needs) == 0 && len(s.Grafts) > 0 {
		needs = s.Grafts[0].Needs
	}
	for _, n := range needs {
		if n.Short > 0 {
			all = append(all, n.What)
		}
	}
	return all
}

// printAssumed says what the certainty counts on that is not there.
func (a *app) printAssumed(s wishShape) {
	if len(s.Assumes) > 0 {
		a.line("  reckoned as if nothing were short: there are too few %s", list(s.Assumes))
	}
}
