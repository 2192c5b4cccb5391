package window

import (
	"context"
	"time"

	"fyne.io/fyne/v2"

	"lidmark/ui/paint"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"
)

// Window is the keeper's window: a [state.State], shown.
type Window struct {
	app     fyne.App
	window  fyne.Window
	stage   *stage
	painter *paint.Painter
	desk    Desk
	state   state.State
	closed  bool // what is told now comes too late
}

// New makes the window of an app, showing s. It fails only if the typeface
// built into the program is damaged.
func New(app fyne.App, s state.State, desk Desk) (*Window, error) {
	p, err := paint.New()
	if err != nil {
		return nil, err
	}
	app.Settings().SetTheme(Theme{Dark: s.Dark})
	w := &Window{app: app, window: app.NewWindow(title(nil)), painter: p, desk: desk, state: s}
	w.stage = newStage(p, w.scene, func() state.State { return w.state }, w.send)
	w.stage.covered = w.covered
	w.window.SetPadded(false)
	w.window.SetContent(w.stage)
	w.window.SetOnDropped(w.dropped)
	w.window.SetOnClosed(func() { w.closed = true })
	w.window.Canvas().Focus(w.stage)
	return w, nil
}

// Run shows the window at a size in dp and returns when it was closed. The
// clock is asked for the time at the turn of every minute.
func (w *Window) Run(width, height float32, clock func() time.Time) {
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	go everyMinute(ctx, clock, func(now time.Time) { fyne.Do(func() { w.tick(now) }) })
	w.window.Resize(fyne.NewSize(width, height))
	w.window.ShowAndRun()
}

// tick moves the clock, by way of the desk: a large book is read at its new
// instant before the window asks for it.
func (w *Window) tick(now time.Time) {
	then := w.state
	then.Now = now
	w.desk.Tick(then, w.tell)
}

// scene is what the window shows and in which theme.
func (w *Window) scene() (scene.Scene, paint.Theme) {
	theme := paint.Light
	if w.state.Dark {
		theme = paint.Dark
	}
	return view.Window(w.state, w.painter), theme
}

// send takes a message in and shows what came of it. It runs on the toolkit's
// own goroutine only.
func (w *Window) send(m state.Msg) {
	before := w.state
	next, effects := state.Update(before, m)
	w.state = next
	if before.Dark != next.Dark {
		w.app.Settings().SetTheme(Theme{Dark: next.Dark})
	}
	if title(before.Book) != title(next.Book) {
		w.window.SetTitle(title(next.Book))
	}
	if shows(m, before, next) {
		w.stage.raster.Refresh()
	}
	for _, e := range effects {
		w.Perform(e)
	}
}

// title is what stands above the window.
func title(b *state.Book) string {
	if b == nil {
		return "Lidmark"
	}
	return "Lidmark: " + b.Name
}

// shows tells whether a message can have changed the picture: a pointer that
// moves within one thing, without dragging, does not.
func shows(m state.Msg, before, after state.State) bool {
	if _, moved := m.(state.Moved); !moved {
		return true
	}
	return before.Hover != after.Hover || after.Drag.Kind != state.NoDrag
}

// everyMinute calls tell at the turn of each minute until ctx is done.
func everyMinute(ctx context.Context, clock func() time.Time, tell func(time.Time)) {
	for {
		now := clock()
		wait := time.NewTimer(now.Truncate(time.Minute).Add(time.Minute).Sub(now))
		select {
		case <-ctx.Done():
			wait.Stop()
			return
		case <-wait.C:
			tell(clock())
		}
	}
}
