package plan

import "math"

// Assumed are the goods of which less is there than is needed, in the order of the needs: how sure a
// plan is counts on all of them. The needs of several grafts go through [Together] first.
func Assumed(needs []Need) (all []string) {
	const told = 10 // amounts are told in tenths at most; common practice, no source
	for _, n := range needs {
		if math.Round(told*n.Short()) > 0 {
			all = append(all, n.String())
		}
	}
	return all
}
