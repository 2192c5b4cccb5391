package picture_test

import (
	"fmt"
	"image"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/paint"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// laidOut is a window on so many nucs in one yard, with a try-out of their layout.
func laidOut(tb testing.TB, nucs int) *stage {
	tb.Helper()
	p, err := paint.New()
	if err != nil {
		tb.Fatal(err)
	}
	season := book.NewSeason(time.LoadLocation, booktest.Big(nucs, 4))
	w := &stage{painter: p, pixels: image.NewRGBA(image.Rect(0, 0, 1440, 900)), state: state.State{
		Book: &state.Book{Season: season, Name: "big"}, Now: booktest.BigNow, Width: 1440, Height: 900,
	}}
	w.send(state.Ran{Command: "layout"})
	if !w.state.OnLayout() {
		tb.Fatalf("no layout: %s", w.state.Note.Text)
	}
	return w
}

// BenchmarkDragStand drags a stand of a try-out, its figures following: a frame each, in
// which the state changes, the scene is drawn and what differs is painted. What it could
// not be quicker than is BenchmarkCopy.
func BenchmarkDragStand(b *testing.B) {
	for _, nucs := range []int{64, 1000} {
		b.Run(fmt.Sprintf("nucs=%d", nucs), func(b *testing.B) {
			w := laidOut(b, nucs)
			st := w.state.Laying.Try.Stands[7]
			tag := scene.Tag{Ref: state.TriedStand(st.ID)}
			at := w.state.LayingCamera(w.state.LayingAreas().Try).Screen(state.OnGround(st.At))
			w.send(state.Pressed{At: at, Tag: tag})
			for i := 0; b.Loop(); i++ {
				w.send(state.Moved{At: at.Add(scene.Point{X: float64(20 + i%40), Y: float64(10 + i%25)}), Tag: tag})
			}
		})
	}
}
