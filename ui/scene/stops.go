package scene

import "slices"

// Stops are what the marks stand for, of some kinds, each once, as they are read:
// in the order in which they were painted, and what stands side by side on one
// line from left to right, since some of that is painted from the right. What is
// cut off by its pane is left out.
func (s Scene) Stops(kinds ...string) []Ref {
	var all []stop
	seen := map[Ref]bool{}
	collect(s.Marks, everywhere, Camera{}, func(r Ref, a Area) {
		if !seen[r] && slices.Contains(kinds, r.Kind) {
			seen[r] = true
			all = append(all, stop{r, a})
		}
	})
	refs := make([]Ref, 0, len(all))
	for len(all) > 0 {
		n := 1
		for n < len(all) && all[n].beside(all[0]) {
			n++
		}
		slices.SortStableFunc(all[:n], func(a, b stop) int { return int(a.X - b.X) })
		for _, s := range all[:n] {
			refs = append(refs, s.ref)
		}
		all = all[n:]
	}
	return refs
}

// stop is a ref and where it lies on the screen.
type stop struct {
	ref Ref
	Area
}

// beside tells whether two stops stand on one line: the middle of each is within
// the height of the other.
func (s stop) beside(t stop) bool {
	within := func(y float64, a Area) bool { return y >= a.Y && y <= a.Bottom() }
	return within(s.Centre().Y, t.Area) && within(t.Centre().Y, s.Area)
}
