package paper_test

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/paper"
	"lidmark/ui/state"
)

// called is a small book in which yard, nucs, batch and people have names.
func called(name string) *state.Reading {
	p := kitchen()
	p.At("2027-05-09 10:00").Write(
		book.YardDescribed{Yard: booktest.Yard("Hill"), Name: name + " yard", Home: true, Zone: "Europe/Berlin"},
		book.PersonDescribed{Person: booktest.Person("Ida"), Name: name, Phone: "555 0101"},
	)
	p.Write(book.PaperHeld{Yard: booktest.Yard("Hill"), Name: "permit", Expires: today + 5})
	for i, n := range []string{"A1", "A2", "A3", "N1", "N2", "Loose"} {
		p.Write(book.NucNamed{Nuc: booktest.Nuc(n), Name: fmt.Sprintf("%s%d", name, i), Sides: 6})
	}
	return reading(p, "2027-05-11 06:40")
}

// TestScripts: names in the scripts of Europe stand on the papers as they are;
// of others it is said that the typeface lacks them.
func TestScripts(t *testing.T) {
	for _, c := range []struct {
		name  string
		shown string // as it stands on the paper
		lacks bool
	}{
		{"Žluťásek", "Žluťásek", false},
		{"Ørn", "Ørn", false},
		{"Őrség", "Őrség", false},
		{"Ωμέγα", "Ωμέγα", false},
		{"Пасека", "Пасека", false},
		{"Z\u030cib", "\u017dib", false}, // the caron comes by itself
		{"蜂", "\uFFFD", true},
		{"𝕏y", "\uFFFDy", true}, // beyond what such a document can hold
		{"🐝", "\uFFFD", true},
		{"a\tb", "a b", false},
	} {
		text := all(routeOf(t, called(c.name), paper.Options{}))
		if !strings.Contains(text, c.shown+" yard: ") { // where a line begins with it
			t.Errorf("no line of %q in\n%s", c.shown, text)
		}
		if !strings.Contains(text, c.shown+" yard") {
			t.Errorf("%q is not written as %q:\n%s", c.name, c.shown, text)
		}
		if got := strings.Contains(text, "character that the typeface lacks"); got != c.lacks {
			t.Errorf("%q: the foot says that the typeface lacks it: %v", c.name, got)
		}
	}
}

// TestAnyName: whatever things are called, every paper is printed, and nothing
// stands outside its page.
func TestAnyName(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		name := rapid.OneOf(
			rapid.StringN(0, 120, -1),
			rapid.StringOfN(rapid.RuneFrom([]rune("WŁЖΩ ")), 0, 200, -1),
		).Draw(t, "name")
		o := paper.Options{Large: rapid.Bool().Draw(t, "large"), Page: rapid.SampledFrom([]paper.Page{paper.A4, paper.Letter}).Draw(t, "page"), Book: name}
		r := called(name)
		p := rapid.SampledFrom(papers()).Draw(t, "paper")
		var out strings.Builder
		if _, err := p.print(t.Context(), &out, r, o); err != nil {
			t.Fatalf("%s: %v", p.name, err)
		}
		for _, page := range read(t, []byte(out.String())) {
			for _, w := range page.texts {
				if w.x < 2 || w.y < 2 || w.x > page.w-2 || w.y > page.h-2 {
					t.Errorf("%s: %q stands at %.0f, %.0f of %.0f by %.0f mm", p.name, w.text, w.x, w.y, page.w, page.h)
				}
			}
		}
	})
}
