package assets_test

import (
	"testing"

	"lidmark/assets"
)

func TestLicencesAreAtHand(t *testing.T) {
	all := assets.Licences()
	if len(all) < 20 || all[0].Of != "Lidmark" || all[0].Terms != "MIT" {
		t.Fatalf("%d licences, the first %q %q", len(all), all[0].Of, all[0].Terms)
	}
	for _, l := range all {
		if l.Of == "" || l.Terms == "" || len(l.Text) < 200 {
			t.Errorf("%q %q: %d bytes of text", l.Of, l.Terms, len(l.Text))
		}
	}
}
