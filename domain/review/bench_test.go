package review_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/review"
	"lidmark/domain/rules"
)

// BenchmarkReview is a review of ten thousand nucs with forty cells in hand; its
// floor is asking what each of them holds.
func BenchmarkReview(b *testing.B) {
	for _, nucs := range []int{2_000, 10_000} {
		v := book.NewSeason(booktest.Zones, booktest.Big(nucs, 20)).At(booktest.BigNow)
		j := rules.Judge(v)
		hand := review.Hand{Wares: []review.Ware{{Name: "ripe cell", Many: 40}, {Virgin: true, Name: "young virgin", Many: 12}}}
		name := map[int]string{2_000: "2000", 10_000: "10000"}[nucs]
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				review.Of(j, hand, review.Usual(v))
			}
		})
		b.Run(name+"/floor", func(b *testing.B) {
			for b.Loop() {
				for n := range v.Nucs() {
					j.Course().Held(n)
				}
			}
		})
	}
}
