package state

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// idle are the facts that tell of no minutes at the bees: descriptions,
// counts, papers, and what somebody else did or nobody.
var idle = strings.Split(`yard described, stand set, feature drawn, wind said, ground pictured, layout tried, layout planned, layout dropped, forage seen, weather seen, weather hours, weather normal, box built,
nuc named, nuc placed, front marked, lid painted, colony described, person described, days off, hours on, batch planned, batch dropped, batch readied,
ripe counted, cells culled, incubator read, clock seen, emerged counted,
taken along, brought back, dropped, queen described, queen marked, queen tested, queen banked,
queen handed over, queen gone, queen ended, robbed, nuc lost, inspected, disease suspected, suspicion ended,
planned, treated, paper held, order taken, order closed, claimed, put off, number changed, noted, struck`, ",")

// A new kind of fact is work or it is idle; somebody has to say which.
func TestEveryFactIsWorkOrIdle(t *testing.T) {
	for i := range idle {
		idle[i] = strings.TrimSpace(idle[i])
	}
	for _, kind := range book.FactKinds() {
		f, err := book.DecodeFact(kind, []byte("{}"))
		if err != nil {
			t.Fatal(err)
		}
		key, _ := minutesOf(f, practice.Numbers{})
		if works := key != 0; works == slices.Contains(idle, kind) {
			t.Errorf("%q: work %v, in the list of the idle %v", kind, works, !works)
		}
	}
	for _, kind := range idle {
		if !slices.Contains(book.FactKinds(), kind) {
			t.Errorf("%q is no fact any more", kind)
		}
	}
}
