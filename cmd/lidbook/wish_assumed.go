package main

// printAssumed says what the certainty counts on that is not there.
func (a *app) printAssumed(s wishShape) {
	if len(s.Assumes) > 0 {
		a.line("  reckoned as if nothing were short: there are too few %s", list(s.Assumes))
	}
}
