package state

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
)

// DoneWords say what "done as written" would write of several nucs: "7 cells
// given, 3 fed"; "" where it cannot.
func (s State) DoneWords() string {
	rec, _ := RecordNamed("done")
	if s.Selection.Len() < 2 || !rec.fits(s) {
		return ""
	}
	var kinds []string
	count := map[string]int{}
	for _, f := range doneAsWritten(s, &Answers{Of: s.Selection, s: s}) {
		kind := book.KindOfFact(f)
		if count[kind] == 0 {
			kinds = append(kinds, kind)
		}
		count[kind]++
	}
	for i, kind := range kinds {
		kinds[i] = doneWord(count[kind], kind)
	}
	return strings.Join(kinds, ", ")
}

// doneWord says how many facts of a kind there are: "7 cells given", "3 fed".
func doneWord(n int, kind string) string {
	things, did, two := strings.Cut(kind, " ")
	if two && n > 1 && !strings.HasSuffix(things, "s") {
		things += "s"
	}
	return strings.TrimSpace(fmt.Sprintf("%d %s %s", n, things, did))
}
