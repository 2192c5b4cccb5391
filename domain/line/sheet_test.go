package line_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// TestTicked: a tick tells that bees, feed and entrances were seen to, at every
// nuc of the line or at none; it does not tell what was seen in a look.
func TestTicked(t *testing.T) {
	a, b := booktest.Nuc("A1"), booktest.Nuc("B1")
	yard := rules.Finding{
		Rule: rules.BeingRobbed, Act: rules.ActNarrowEntrance, Amount: 1.5,
		Of: booktest.Yard("Quillbank").Subject(), Also: []book.Subject{a.Subject(), b.Subject()},
	}
	all := line.Ticked(rules.Task{Findings: []rules.Finding{yard}})
	if len(all) != 2 || len(all[b]) != 1 || all[b][0] != (book.EntranceSet{Nuc: b, Area: 1.5}) {
		t.Errorf("a yard's line ticks off as %v", all)
	}
	feed := rules.Finding{Act: rules.ActFeed, Amount: 0.3, Of: a.Subject()}
	look := rules.Finding{Act: rules.ActLookForEggs, Of: b.Subject()}
	if got := line.Ticked(rules.Task{Findings: []rules.Finding{feed}}); len(got[a]) != 1 {
		t.Errorf("a feed ticks off as %v", got)
	}
	if got := line.Ticked(rules.Task{Findings: []rules.Finding{feed, look}}); got != nil {
		t.Errorf("a look ticks off as %v", got)
	}
}
