package line_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

// TestAWholeYardAndAcrossLetters: the name of a yard stands for all its nucs, and a
// row may go on from one letter to the next.
func TestAWholeYardAndAcrossLetters(t *testing.T) {
	v := yard(t)
	for text, nucs := range map[string]int{
		"Home Yard e": 18, "Home Yard: e, except A3 A9": 16, "Far Hill e s4": 3, "A10-B2 e": 5, "A10-B2, B4 e": 6, "A1 q; Far Hill e": 4,
	} {
		l, err := line.Parse(text, context(t, v))
		if err != nil {
			t.Errorf("%s: %v", text, err)
			continue
		}
		if got := len(l.Facts()); got != nucs {
			t.Errorf("%s tells of %d nucs, want %d", text, got, nucs)
		}
	}
	for _, text := range []string{"B2-A10 e", "A1-Z4 e"} {
		if _, err := line.Parse(text, context(t, v)); err == nil {
			t.Errorf("%s makes sense", text)
		}
	}
}

// TestRobbersAndTheDeadHaveLetters that are written and printed alike.
func TestRobbersAndTheDeadHaveLetters(t *testing.T) {
	v := yard(t)
	l, err := line.Parse("A3 r p", context(t, v))
	if err != nil || l.Sections[0].Back != "robbed, died out" {
		t.Fatalf("%q, %v", l, err)
	}
	facts := l.Facts()
	if _, ok := facts[0].(book.Robbed); !ok {
		t.Errorf("r is %T", facts[0])
	}
	if f, ok := facts[1].(book.NucLost); !ok || f.How != book.DiedOut {
		t.Errorf("p is %#v", facts[1])
	}
	if got := line.Codes(facts[0], line.In(v)) + line.Codes(facts[1], line.In(v)); got != "rp" {
		t.Errorf("they are printed %q", got)
	}
	if _, err := line.Parse("A3 puS2", context(t, v)); err == nil {
		t.Error("a nuc is united and died out at once")
	}
}

// TestWhatIsRightIsReadBack beside a mistake, which is said in the trade's words.
func TestWhatIsRightIsReadBack(t *testing.T) {
	l, err := line.Parse("A3 e c3 s6 zz", context(t, yard(t)))
	if err == nil || !strings.Contains(err.Error(), "zz is no letter of the line") {
		t.Fatalf("the mistake is %v", err)
	}
	if back := l.Sections[0].Back; back != "eggs, cell from batch 3 given, bees on 6 sides" {
		t.Errorf("read back is %q", back)
	}
}
