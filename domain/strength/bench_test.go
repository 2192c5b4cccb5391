package strength_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/strength"
)

// BenchmarkNucs is all nucs of a big book with their dates ahead, and how exposed
// each is to robbers; the floor is a bare walk over the entries they are reckoned
// from.
func BenchmarkNucs(b *testing.B) {
	v := book.NewSeason(nil, booktest.Big(10000, 50)).At(booktest.BigNow)
	for n := range v.Nucs() {
		_ = n // folded once
	}
	yard := booktest.Yard("big")
	b.Run("strength ahead", func(b *testing.B) {
		for b.Loop() {
			y := strength.NewYard(v, yard, v.Zone())
			for n := range v.Nucs() {
				y.Of(n)
			}
		}
	})
	b.Run("exposure", func(b *testing.B) {
		y := strength.NewYard(v, yard, v.Zone())
		var states []strength.State
		for n := range v.Nucs() {
			states = append(states, y.Of(n))
		}
		for b.Loop() {
			y, i := strength.NewYard(v, yard, v.Zone()), 0
			for n := range v.Nucs() {
				y.Exposure(n, states[i])
				i++
			}
		}
	})
	b.Run("floor", func(b *testing.B) {
		for b.Loop() {
			lines := 0
			for n := range v.Nucs() {
				for _, e := range v.LinesSince(n.Nuc.Subject(), n.MadeUp.Instant) {
					lines += e.At.Instant.Nanosecond() + 1
				}
			}
		}
	})
}
