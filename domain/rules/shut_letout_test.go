package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// TestBeesMadeUpShutInAreLetOut: at dusk a day later; not once the entrance was set or
// somebody looked on a later day, nor where they were never shut in.
func TestBeesMadeUpShutInAreLetOut(t *testing.T) {
	for name, c := range map[string]struct {
		open  bool
		later book.Fact
		want  bool
	}{
		"shut in":            {want: true},
		"open":               {open: true},
		"let out":            {later: book.EntranceSet{Nuc: a1, Area: 2}},
		"looked into":        {later: book.Looked{Nuc: a1, Eggs: book.NoEggs}},
		"shaken out":         {later: book.ShakenOut{Nuc: a1}},
		"fed and still shut": {later: book.Fed{To: a1.Subject(), Litres: 0.2}, want: true},
	} {
		p := pen(t)
		p.At("2027-05-20 19:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Food: 900, Shut: !c.open})
		if c.later != nil {
			p.At("2027-05-21 18:00").Write(c.later)
		}
		found := false
		for _, f := range rules.Judge(p.View("2027-05-21 20:30")).Findings() {
			if f.Rule == rules.ShutIn && f.Of == a1.Subject() {
				found = true
				if !f.Hard || f.Act != rules.ActOpenEntrance || f.From.After(f.By) {
					t.Errorf("%s: %+v", name, f)
				}
			}
		}
		if found != c.want {
			t.Errorf("%s: asked for %v, want %v", name, found, c.want)
		}
	}
}
