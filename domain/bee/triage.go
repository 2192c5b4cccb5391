package bee

// TriageStep is one thing to do, in order, after a virgin has walked among
// loose cells: what is seen, what it means, what to do.
type TriageStep struct{ Seen, Means, Do string }

// Triage gives the steps after a virgin has walked: first the walker, then
// each cell by what it shows. The signs are the trade's; no source.
func Triage() [6]TriageStep {
	return [6]TriageStep{
		{"a virgin loose", "she opens the other cells", "find her and cage her before anything else"},
		{"hole in the side", "dead, destroyed by the walker", "throw the cell out"},
		{"tip open, lid hanging", "out", "find her too, cage her"},
		{"tip bare, dark and thin", "about to walk within hours", "cage the cell alone, or place it at once"},
		{"tip waxed, whole", "alive, still some time", "place it today, or cage it alone"},
		{"light or cold in the hand", "dead before she was ripe", "throw the cell out"},
	}
}
