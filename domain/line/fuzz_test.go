package line_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

// typedAgain writes a line that was read in codes: nuc by nuc, each with its
// facts and its part of the day.
func typedAgain(l line.Line, v *book.View) string {
	parts := map[string]string{"morning": "am", "midday": "noon", "afternoon": "pm", "evening": "eve", "night": "night", "day": "day"}
	var sections []string
	add := func(name string, s line.Section, facts []book.Fact) {
		words := []string{name}
		for _, f := range facts {
			words = append(words, line.Codes(f, line.In(v)))
		}
		if part := s.At.Part.String(); part != "" {
			words = append(words, "@"+parts[part])
		} else {
			words = append(words, "@"+s.At.Instant.Format("15:04"))
		}
		sections = append(sections, strings.Join(words, " "))
	}
	for _, s := range l.Sections {
		if len(s.Nucs) == 0 {
			row := "yard"
			if f := s.Facts[0].(book.RowLooked); !f.Stand.IsZero() {
				row = v.Stand(f.Stand).Letter
			}
			add(row, s, s.Facts)
		}
		for _, id := range s.Nucs {
			add(v.Nuc(id).Name, s, factsOf(s, id))
		}
	}
	return strings.Join(sections, "; ")
}

func factsOf(s line.Section, id book.NucID) (all []book.Fact) {
	for _, f := range s.Facts {
		subjects := book.Subjects(f)
		if _, drop := f.(book.Dropped); drop || len(subjects) > 0 && subjects[0] == id.Subject() {
			all = append(all, f)
		}
	}
	return all
}

// checkRoundTrip reads a line; what is accepted must, typed again in codes,
// say the same.
func checkRoundTrip(t interface {
	Errorf(string, ...any)
	Fatalf(string, ...any)
}, text string, v *book.View, ctx func() line.Context,
) (accepted bool) {
	l, err := line.Parse(text, ctx())
	if err != nil {
		for _, m := range err.(line.Mistakes) {
			if m.Column < 1 || m.Column > len([]rune(text))+1 || m.What == "" || m.Do == "" {
				t.Errorf("Parse(%q): mistake %+v has no place, reason or way out", text, m)
			}
		}
		return false
	}
	drops := 0
	for _, s := range l.Sections {
		for _, f := range s.Facts {
			if _, ok := f.(book.Dropped); ok {
				drops++
			}
		}
		if len(s.Nucs) > 1 && drops > 0 {
			return true // which nuc's cell was dropped is not part of the fact
		}
		if len(s.Facts) == 0 {
			t.Errorf("Parse(%q): %s has no facts", text, s.Subject)
		}
	}
	again := typedAgain(l, v)
	m, err := line.Parse(again, ctx())
	if err != nil {
		t.Fatalf("Parse(%q), written again as %q: %v", text, again, err)
	}
	if diff := cmp.Diff(l.Facts(), m.Facts(), cmp.AllowUnexported(book.Amount{})); diff != "" {
		t.Errorf("%q written again as %q says something else (-first +again)\n%s", text, again, diff)
	}
	return true
}

func FuzzParse(f *testing.F) {
	v := yard(f)
	for _, s := range []string{
		"A3 n o0 c4 s4 h2", `B4 c4 s5 h2 "old one, not marked" @pm`, "A1-A12 done as written, except A3 A9", "A 50 looked 41 laying",
		"A3 ve f0,3l a1.5 t4 // k7", "A1, B2 uS2; B3 i2 x", "A3 robbed “cell torn” @14:30", "yard 3 looked\x00", "A3 f999ml k0 e0 o12 -",
		"oak-3 q", "A1–3 w", "A3 \xff\"\xff\"",
	} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		checkRoundTrip(t, text, v, func() line.Context { return context(t, v) })
	})
}

func TestAnyOrderSaysTheSame(t *testing.T) {
	v := yard(t)
	accepted := 0
	rapid.Check(t, func(r *rapid.T) {
		codes := rapid.Permutation([]string{"q", "e", "l", "b4", "d", "o3", "o0", "c4", "s5", "h2", "f0.3", "a2", "k7", "t2", "//", `"a note"`}).Draw(r, "codes")
		codes = codes[:rapid.IntRange(1, len(codes)).Draw(r, "how many")]
		gap := rapid.SampledFrom([]string{"", " ", ", "}).Draw(r, "gap")
		if gap == "" && strings.Contains(strings.Join(codes, ""), "f0.3l") {
			return // a unit that touches its figure is a unit
		}
		shuffled := rapid.Permutation(codes).Draw(r, "shuffled")
		if checkRoundTrip(r, "A3 "+strings.Join(codes, gap), v, func() line.Context { return context(t, v) }) {
			accepted++
		}
		one, err1 := line.Parse("A3 "+strings.Join(codes, " "), context(t, v))
		two, err2 := line.Parse("A3 "+strings.Join(shuffled, " "), context(t, v))
		if err1 != nil || err2 != nil {
			r.Fatalf("%q: %v, %v", codes, err1, err2)
		}
		if diff := cmp.Diff(one.Facts(), two.Facts(), cmp.AllowUnexported(book.Amount{})); diff != "" {
			r.Errorf("%q and %q differ\n%s", codes, shuffled, diff)
		}
	})
	if accepted == 0 {
		t.Error("no line was accepted")
	}
}
