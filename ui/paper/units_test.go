package paper_test

import (
	"strings"
	"testing"

	"lidmark/ui/paper"
)

// TestPapersSayTheKeepersUnits: what is written goes through the keeper's units,
// on every paper.
func TestPapersSayTheKeepersUnits(t *testing.T) {
	r := demoDay(t)
	say := func(text string) string { return strings.ReplaceAll(text, "batch", "lot") }
	for _, p := range papers() {
		if p.name == "labels" {
			continue // they hold names alone
		}
		metric, said := all(p.pages(t, r, paper.Options{})), all(p.pages(t, r, paper.Options{Say: say}))
		if strings.Contains(said, "batch") || strings.Contains(metric, "batch") != strings.Contains(said, "lot") {
			t.Errorf("%s: not all of it is said in the keeper's words", p.name)
		}
	}
}
