package state

import (
	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// TwinNucs is of how many nucs something stands twice.
func TwinNucs(twins []rules.Twin) int {
	nucs := map[book.NucID]bool{}
	for _, t := range twins {
		nucs[t.Nuc] = true
	}
	return len(nucs)
}

// TwinWords says of how many nucs lines stand twice and by whom.
func TwinWords(twins []rules.Twin) string {
	first := twins[0]
	said := counted(TwinNucs(twins), "nuc") + " typed twice"
	if a, b := first.First.Writer, first.Again.Writer; a != b && a != "" && b != "" {
		return said + ", by " + a + " and by " + b
	}
	return said
}
