package view_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// The painter has conditions of its own, so that it needs no domain; both must
// say the same.
func TestALidSaysWhatTheBookSays(t *testing.T) {
	all := book.Conditions()
	if len(all) != len(scene.Conditions()) {
		t.Fatalf("%d conditions in the book, %d on lids", len(all), len(scene.Conditions()))
	}
	for _, c := range all {
		lid := scene.Condition(c)
		if lid.Sign() != c.Letter() || lid.String() != c.String() || lid.Trouble() != c.Trouble() {
			t.Errorf("%v is drawn as %v %q", c, lid, lid.Sign())
		}
	}
}
