package siting_test

import (
	"fmt"
	"testing"

	"lidmark/domain/siting"
	"lidmark/domain/yard"
)

// field is a yard of rows of single boxes 3 m apart.
func field(boxes int) yard.Layout {
	l := singles("N", inRow(boxes, 3)...)
	for i := range l.Stands {
		l.Stands[i].At = at(float64(i%20)*3, float64(i/20)*3)
	}
	return l
}

// A try costs about the same however many boxes there are; the floor is the layout
// reckoned anew for each.
func BenchmarkTry(b *testing.B) {
	for _, n := range []int{64, 640, 6400} {
		task := siting.Moving(field(n), nil, marks, yard.Ground{}, usual)
		task.Tries = 1 << 40
		s, err := siting.New(task, usual)
		if err != nil {
			b.Fatal(err)
		}
		b.Run(fmt.Sprintf("nucs=%d", n), func(b *testing.B) {
			s.Step(b.N + 1)
		})
		b.Run(fmt.Sprintf("floor=%d", n), func(b *testing.B) {
			for range b.N {
				s.Bill(task.Layout)
			}
		})
	}
}
