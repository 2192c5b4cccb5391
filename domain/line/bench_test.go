package line_test

import (
	"testing"

	"lidmark/domain/line"
)

const evening = `A3 n o0 c4 s4 h2 f0.3 / "old one, not marked" @pm`

// BenchmarkParse reads a long line; its floor walks over the same characters.
func BenchmarkParse(b *testing.B) {
	c := context(b, yard(b))
	for b.Loop() {
		if _, err := line.Parse(evening, c); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkBareScan is the floor of BenchmarkParse.
func BenchmarkBareScan(b *testing.B) {
	n := 0
	for b.Loop() {
		for _, r := range evening {
			n += int(r)
		}
	}
	if n == 0 {
		b.Fatal("nothing was read")
	}
}
