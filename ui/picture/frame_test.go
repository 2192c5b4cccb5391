package picture_test

import (
	"image"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/paint"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"
)

// stage is a window on 10,000 nucs that answers messages by painting itself
// anew, as the real one does.
type stage struct {
	state   state.State
	painter *paint.Painter
	pixels  *image.RGBA
	scene   scene.Scene
}

func open(tb testing.TB, pane state.Pane) *stage {
	tb.Helper()
	p, err := paint.New()
	if err != nil {
		tb.Fatal(err)
	}
	season := book.NewSeason(time.LoadLocation, booktest.Big(10_000, 4))
	w := &stage{painter: p, pixels: image.NewRGBA(image.Rect(0, 0, 1440, 900)), state: state.State{
		Book: &state.Book{Season: season, Name: "big"}, Now: booktest.BigNow, Width: 1440, Height: 900, Room: state.Yard, Pane: pane,
	}}
	w.show()
	return w
}

func (w *stage) show() {
	w.scene = view.Window(w.state, w.painter)
	w.painter.Repaint(w.pixels, w.scene, paint.Light, 1)
}

// send changes the state and shows it.
func (w *stage) send(m state.Msg) {
	w.state, _ = state.Update(w.state, m)
	w.show()
}

var panes = map[string]state.Pane{"map": state.Map, "wall": state.Wall, "split": state.Split, "table": state.Table}

// BenchmarkHover moves the pointer from one thing to the next; BenchmarkCopy is
// its floor.
func BenchmarkHover(b *testing.B) {
	for name, pane := range panes {
		b.Run(name, func(b *testing.B) {
			w := open(b, pane)
			for i := 0; b.Loop(); i++ {
				at := scene.Point{X: 200 + float64(i*37%800), Y: 300 + float64(i*23%400)}
				tag, _ := w.scene.At(at)
				w.send(state.Moved{At: at, Tag: tag})
			}
		})
	}
}

// BenchmarkPan drags the map, so that all of it is painted again.
func BenchmarkPan(b *testing.B) {
	w := open(b, state.Map)
	at := scene.Point{X: 500, Y: 500}
	w.send(state.Pressed{At: at, Mods: state.Shift})
	for b.Loop() {
		at.X, at.Y = 500+float64(int(at.X-500+7)%200), 500+float64(int(at.Y-500+3)%100)
		w.send(state.Moved{At: at})
	}
}

// toAndFro turns the wheel ten times each way.
func toAndFro(i int) float64 {
	if i/10%2 == 1 {
		return -20
	}
	return 20
}

func BenchmarkScroll(b *testing.B) {
	for _, name := range []string{"wall", "table", "split"} {
		b.Run(name, func(b *testing.B) {
			w := open(b, panes[name])
			for i := 0; b.Loop(); i++ {
				w.send(state.Wheeled{At: scene.Point{X: 900, Y: 500}, DY: toAndFro(i)})
			}
		})
	}
}

func BenchmarkZoom(b *testing.B) {
	w := open(b, state.Map)
	for i := 0; b.Loop(); i++ {
		w.send(state.Wheeled{At: scene.Point{X: 500, Y: 500}, DY: toAndFro(i)})
	}
}

// BenchmarkCopy copies the window's pixels: nothing shows it faster.
func BenchmarkCopy(b *testing.B) {
	dst, src := image.NewRGBA(image.Rect(0, 0, 1440, 900)), image.NewRGBA(image.Rect(0, 0, 1440, 900))
	for b.Loop() {
		copy(dst.Pix, src.Pix)
	}
}
