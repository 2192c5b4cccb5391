package line_test

import (
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/line"
	"lidmark/domain/unit"
)

// inUnits is the context of tests in a system.
func inUnits(t testing.TB, v *book.View, s unit.System) line.Context {
	t.Helper()
	c := context(t, v)
	c.Units = s
	return c
}

func TestFeedInBothSystems(t *testing.T) {
	v := yard(t)
	a3 := booktest.Nuc("A3")
	syrup := func(litres float64) []book.Fact { return []book.Fact{book.Fed{To: a3.Subject(), Litres: litres}} }
	fondant := func(grams float64) []book.Fact { return []book.Fact{book.Fed{To: a3.Subject(), Fondant: grams}} }
	for _, c := range []struct {
		in    unit.System
		text  string
		back  string
		facts []book.Fact
	}{
		{unit.Metric, "f0.3", "fed 0.3 l", syrup(0.3)},
		{unit.Metric, "f250ml", "fed 0.25 l", syrup(0.25)},
		{unit.Metric, "f1qt", "fed 0.9464 l", syrup(0.9464)},
		{unit.Metric, "f10oz", "fed 283.495 g fondant", fondant(283.495)},
		{unit.US, "f0.3", "fed 0.3 qt", syrup(0.2839)},
		{unit.US, "f1", "fed 1 qt", syrup(0.9464)},
		{unit.US, "f1qt", "fed 1 qt", syrup(0.9464)},
		{unit.US, "f0.3l", "fed 0.32 qt", syrup(0.3)},
		{unit.US, "f250g", "fed 8.82 oz fondant", fondant(250)},
		{unit.US, "f10oz", "fed 10 oz fondant", fondant(283.495)},
		{unit.US, "f1.5lb", "fed 24 oz fondant", fondant(680.389)},
		{unit.US, `f1 "gave 2 l"`, "fed 1 qt, note: gave 2 l", append(syrup(0.9464), book.Noted{Of: a3.Subject(), Text: "gave 2 l"})},
		{unit.Metric, "f1qt3", "fed 1 l, queen seen, temper: nervous", append([]book.Fact{book.Looked{Nuc: a3, Queen: book.QueenSeen, Temper: book.Said(3)}}, syrup(1)...)},
		{unit.US, "f1qt3", "fed 1 qt, queen seen, temper: nervous", append([]book.Fact{book.Looked{Nuc: a3, Queen: book.QueenSeen, Temper: book.Said(3)}}, syrup(0.9464)...)},
		{unit.US, "f1lb4", "fed 1.1 qt, capped brood 4 palms", append([]book.Fact{book.Looked{Nuc: a3, Brood: book.Said(4)}}, syrup(1)...)},
	} {
		l, err := line.Parse("A3 "+c.text, inUnits(t, v, c.in))
		if err != nil {
			t.Errorf("%s in %v: %v", c.text, c.in, err)
			continue
		}
		if got := l.Sections[0].Back; got != c.back {
			t.Errorf("%s in %v reads back %q, want %q", c.text, c.in, got, c.back)
		}
		if diff := cmp.Diff(c.facts, l.Facts(), cmp.AllowUnexported(book.Amount{})); diff != "" {
			t.Errorf("%s in %v: %s", c.text, c.in, diff)
		}
	}
}

func TestSheetIsReadBackInUnits(t *testing.T) {
	c := inUnits(t, yard(t), unit.US)
	c.Planned = func(n book.NucID) []book.Fact { return []book.Fact{book.Fed{To: n.Subject(), Litres: 0.3}} }
	l, err := line.Parse("A3 done", c)
	if err != nil || l.String() != "A3: fed 0.32 qt" {
		t.Errorf("A3 done = %q, %v", l, err)
	}
}

// Quarts and ounces are said as they were typed, when they are read back and
// later, out of the book.
func TestQuartersComeBack(t *testing.T) {
	v := yard(t)
	c := inUnits(t, v, unit.US)
	for quarters := 1; quarters <= 100; quarters++ {
		figure := strconv.FormatFloat(float64(quarters)/4, 'f', -1, 64)
		for of, words := range map[string]string{"": " qt", "oz": " oz fondant"} {
			l, err := line.Parse("A3 f"+figure+of, c)
			if want := "A3: fed " + figure + words; err != nil || l.String() != want {
				t.Fatalf("%q (%v), want %q", l, err, want)
			}
			if got, want := unit.US.Say(line.Words(l.Facts()[0], line.In(v))), "fed "+figure+words+" to A3"; got != want {
				t.Fatalf("%q, want %q", got, want)
			}
		}
	}
}

// What was typed in one system can be typed again in the other as the same.
func TestTypedFiguresComeBack(t *testing.T) {
	v := yard(t)
	rapid.Check(t, func(rt *rapid.T) {
		figure := strconv.FormatFloat(float64(rapid.IntRange(1, 9999).Draw(rt, "hundredths"))/100, 'f', -1, 64)
		of := rapid.SampledFrom([]string{"", "qt", "oz", "l", "g"}).Draw(rt, "unit")
		written := rapid.SampledFrom([]unit.System{unit.Metric, unit.US}).Draw(rt, "written in")
		read := rapid.SampledFrom([]unit.System{unit.Metric, unit.US}).Draw(rt, "read in")
		l, err := line.Parse("A3 f"+figure+of, inUnits(t, v, written))
		if err != nil {
			rt.Fatal(err)
		}
		codes := line.CodesIn(l.Facts()[0], line.In(v), read)
		again, err := line.Parse("A3 "+codes, inUnits(t, v, read))
		if err != nil {
			rt.Fatal(err)
		}
		if diff := cmp.Diff(l.Facts(), again.Facts()); diff != "" {
			rt.Fatalf("%s: %s", codes, diff)
		}
	})
}

func TestLettersSayTheirUnits(t *testing.T) {
	c := inUnits(t, yard(t), unit.US)
	metric, us := line.Letters(), line.LettersIn(unit.US)
	changed := 0
	for i, l := range us {
		if l == metric[i] {
			continue
		}
		changed++
		for sign := range strings.FieldsSeq(l.Sign) {
			got, err := line.Parse("A3 "+sign, c)
			if back, _ := strings.CutPrefix(got.String(), "A3: fed "); err != nil || !strings.Contains(l.Words, strings.TrimSuffix(back, " fondant")) {
				t.Errorf("%s reads back %q (%v), and the list says %q", sign, got, err, l.Words)
			}
		}
	}
	if changed != 1 || len(metric) != len(us) {
		t.Errorf("%d letters differ in the US, want that of feeding", changed)
	}
}
