package book

import "fmt"

// Apart is what tells a planned batch from others of its day and line, behind its name: nothing where
// there is none, else its larvae, ", 24 larvae", and among as many its place, ", 24 larvae, 1 of 2".
func (v *View) Apart(b BatchPlan) string {
	others, alike, place := 0, 0, 0
	for o := range v.Plans() {
		if o.Batch == b.Batch {
			o = b // as it is tried
		}
		if o.Day != b.Day || o.Line != b.Line {
			continue
		}
		others++
		if o.Larvae == b.Larvae {
			alike++
		}
		if o.Batch == b.Batch {
			place = alike
		}
	}
	switch {
	case others < 2 || place == 0:
		return ""
	case alike < 2:
		return ", " + LarvaeSaid(b.Larvae)
	default:
		return fmt.Sprintf(", %s, %d of %d", LarvaeSaid(b.Larvae), place, alike)
	}
}

// LarvaeSaid is so many larvae in words: "1 larva", "24 larvae".
func LarvaeSaid(n int) string {
	if n == 1 {
		return "1 larva"
	}
	return fmt.Sprintf("%d larvae", n)
}
