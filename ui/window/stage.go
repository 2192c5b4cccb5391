package window

import (
	"image"
	"math"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"lidmark/ui/paint"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"
)

// stage is the one widget of the window: it paints the scene and tells what is
// done to it.
type stage struct {
	widget.BaseWidget
	raster  *canvas.Raster
	painter *paint.Painter
	shown   func() (scene.Scene, paint.Theme)
	now     func() state.State
	send    func(state.Msg)

	pixels *image.RGBA
	scene  scene.Scene // the one painted last; the pointer asks it
	mods   state.Mods  // held now

	covered func() bool // a dialog lies over it: then it takes no keys

	over     scene.Tag // what the pointer is over
	rested   bool      // it is there long enough for the reason to be told
	unrest   func()    // takes back what rest was asked for
	rest     func(time.Duration, func()) (stop func())
	clicks   int // presses one upon the other
	pressed  time.Time
	pressing scene.Point
	clock    func() time.Time
}

// How long the pointer rests on something before the window says more of it,
// and within what time and distance a press is one more of the same.
const (
	restTime  = 150 * time.Millisecond
	clickTime = 400 * time.Millisecond
	clickNear = 4.0
)

func newStage(p *paint.Painter, shown func() (scene.Scene, paint.Theme), now func() state.State, send func(state.Msg)) *stage {
	s := &stage{painter: p, shown: shown, now: now, send: send, rest: resting, unrest: func() {}, clock: time.Now}
	s.raster = canvas.NewRaster(s.paint)
	s.raster.ScaleMode = canvas.ImageScalePixels
	s.ExtendBaseWidget(s)
	return s
}

// CreateRenderer shows the raster and nothing else.
func (s *stage) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(s.raster) }

// MinSize is the smallest window that shows all that must not give way.
func (s *stage) MinSize() fyne.Size { return fyne.NewSize(state.LeastWidth, state.LeastHeight) }

// Resize tells the state before the raster is painted anew.
func (s *stage) Resize(size fyne.Size) {
	s.BaseWidget.Resize(size)
	s.send(state.Resized{Width: float64(size.Width), Height: float64(size.Height)})
}

// paint is the raster's generator: w and h are device pixels. The image is
// used again; its stride must be four bytes a pixel, or the window is skewed.
func (s *stage) paint(w, h int) image.Image {
	if s.pixels == nil || s.pixels.Rect.Dx() != w || s.pixels.Rect.Dy() != h {
		s.pixels = image.NewRGBA(image.Rect(0, 0, w, h))
	}
	var theme paint.Theme
	s.scene, theme = s.shown()
	scale := 1.0
	if width := float64(s.Size().Width); width > 0 {
		scale = float64(w) / width
	}
	s.painter.Repaint(s.pixels, s.scene, theme, scale*s.now().TextSize())
	return s.pixels
}

// at is a position of the widget in lengths of the scene.
func (s *stage) at(p fyne.Position) scene.Point {
	t := s.now().TextSize()
	return scene.Point{X: float64(p.X) / t, Y: float64(p.Y) / t}
}

func (s *stage) tag(p scene.Point) scene.Tag {
	tag, _ := s.scene.At(p)
	return tag
}

// MouseIn tells where the pointer came in.
func (s *stage) MouseIn(e *desktop.MouseEvent) { s.MouseMoved(e) }

// MouseMoved tells where the pointer is.
func (s *stage) MouseMoved(e *desktop.MouseEvent) { s.pointed(s.at(e.Position)) }

// MouseOut tells that the pointer is over nothing.
func (s *stage) MouseOut() { s.pointed(scene.Point{X: -1, Y: -1}) }

// pointed tells where the pointer is: what it is over at once, the reason when
// it has rested there, so that none flickers by.
func (s *stage) pointed(p scene.Point) {
	tag := s.tag(p)
	if tag.Ref != s.over.Ref {
		s.unrest()
		s.rested, s.unrest = false, s.rest(restTime, func() {
			s.rested = true
			s.send(state.Moved{At: s.now().Pointer, Tag: s.over})
		})
	}
	s.over = tag
	if !s.rested {
		tag.Reason = ""
	}
	s.send(state.Moved{At: p, Tag: tag})
}

// hush takes back the reason that is told, or about to be, until the pointer
// moves: it covers what was pressed.
func (s *stage) hush() {
	s.unrest()
	s.rested, s.over = false, scene.Tag{}
}

// resting does something on the toolkit's goroutine after a while, unless it is
// stopped.
func resting(d time.Duration, do func()) (stop func()) {
	stopped := false
	t := time.AfterFunc(d, func() {
		fyne.Do(func() {
			if !stopped {
				do()
			}
		})
	})
	return func() { stopped = true; t.Stop() }
}

// MouseDown tells of a button, and takes the keys.
func (s *stage) MouseDown(e *desktop.MouseEvent) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(s); c != nil {
		c.Focus(s)
	}
	button := state.Primary
	if e.Button != desktop.MouseButtonPrimary {
		button = state.Secondary
	}
	s.hush()
	p := s.at(e.Position)
	s.send(state.Pressed{At: p, Tag: s.tag(p), Button: button, Mods: modsOf(e.Modifier), Clicks: s.clicked(p)})
}

// clicked counts a press: how many there are with it, one upon the other.
func (s *stage) clicked(p scene.Point) int {
	now, d := s.clock(), p.Sub(s.pressing)
	if now.Sub(s.pressed) > clickTime || math.Hypot(d.X, d.Y) > clickNear {
		s.clicks = 0
	}
	s.clicks, s.pressed, s.pressing = s.clicks+1, now, p
	return s.clicks
}

// MouseUp tells of the button let go, and of what lies in the rubber band.
func (s *stage) MouseUp(e *desktop.MouseEvent) {
	p := s.at(e.Position)
	m := state.Released{At: p, Tag: s.tag(p), Mods: modsOf(e.Modifier), Clicks: s.clicks}
	if band := s.now().Band(); !band.Empty() {
		m.Within = s.scene.In(band)
	}
	s.send(m)
}

// Scrolled tells of the wheel; with the toolkit, up is positive.
func (s *stage) Scrolled(e *fyne.ScrollEvent) {
	now := s.now()
	t := now.TextSize()
	s.send(state.Wheeled{
		At: s.at(e.Position), DX: -float64(e.Scrolled.DX) / t, DY: -float64(e.Scrolled.DY) / t, Mods: s.mods,
		CardMost: view.CardMost(now, s.painter), CardAt: view.CardAt(now, s.painter),
	})
}
