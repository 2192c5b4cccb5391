package unit_test

import (
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"lidmark/domain/unit"
)

type fataler interface{ Fatalf(string, ...any) }

func plain(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

func number(t fataler, text string) float64 {
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatalf("%q is no number", text)
	}
	return v
}

func FuzzSay(f *testing.F) {
	for text := range told {
		f.Add(text)
	}
	for _, text := range untold {
		f.Add(text)
	}
	f.Add("0." + strings.Repeat("0", 320) + "1 l")
	f.Add(strings.Repeat("9", 320) + " l")
	f.Fuzz(func(t *testing.T, text string) {
		if got := unit.Metric.Say(text); got != text {
			t.Fatalf("metric %q is said %q", text, got)
		}
		got := unit.US.Say(text)
		if utf8.ValidString(text) && !utf8.ValidString(got) {
			t.Fatalf("%q is said %q, which is no text", text, got)
		}
		if strings.Contains(got, "NaN") != strings.Contains(text, "NaN") {
			t.Fatalf("%q is said %q", text, got)
		}
		if twice := unit.US.Say(got); twice != got {
			t.Fatalf("%q is said %q, and that %q", text, got, twice)
		}
	})
}

const sentence = "weak: about 750 bees, a night of 8 °C forecast; feed 0.3 l syrup, narrow the entrance to 2.5 cm²"

func BenchmarkSay(b *testing.B) {
	for b.Loop() {
		if unit.US.Say(sentence) == sentence {
			b.Fatal("nothing was said in US units")
		}
	}
}

// BenchmarkBareScan is the floor of BenchmarkSay.
func BenchmarkBareScan(b *testing.B) {
	n := 0
	for b.Loop() {
		for _, r := range sentence {
			if '0' <= r && r <= '9' {
				n++
			}
		}
	}
	if n == 0 {
		b.Fatal("no digit was seen")
	}
}
