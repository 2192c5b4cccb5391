package window

import (
	"context"
	"time"

	"fyne.io/fyne/v2"

	"lidmark/domain/calendar"
	"lidmark/ui/paint"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"
)

// Books opens books for the window. Its methods run on a worker and may take
// as long as a disk does.
type Books interface {
	// Demo is the demo season.
	Demo() (*state.Book, error)
	// Open opens the book in a file.
	Open(path string) (*state.Book, error)
	// Stamp is a mark of a book's file that changes when somebody writes in it.
	Stamp(path string) string
}

// Window is the keeper's window: a [state.State], shown.
type Window struct {
	app     fyne.App
	window  fyne.Window
	stage   *stage
	painter *paint.Painter
	books   Books
	state   state.State
	asked   int          // how many books were asked for; the last one asked for is shown
	stamp   string       // of the file of the book that is shown
	work    func(func()) // runs what may take long
}

// New makes the window of an app, showing s. It fails only if the typeface
// built into the program is damaged.
func New(app fyne.App, s state.State, books Books) (*Window, error) {
	p, err := paint.New()
	if err != nil {
		return nil, err
	}
	app.Settings().SetTheme(Theme{Dark: s.Dark})
	w := &Window{app: app, window: app.NewWindow("Lidmark"), painter: p, books: books, state: s, work: func(f func()) { go f() }}
	w.stage = newStage(p, w.scene, func() state.State { return w.state }, w.send)
	w.window.SetPadded(false)
	w.window.SetContent(w.stage)
	w.window.SetOnDropped(w.dropped)
	w.window.Canvas().Focus(w.stage)
	return w, nil
}

// Run shows the window at a size in dp and returns when it was closed. The
// clock is asked for the time at the turn of every minute.
func (w *Window) Run(width, height float32, clock func() time.Time) {
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	go everyMinute(ctx, clock, w.tick)
	w.window.Resize(fyne.NewSize(width, height))
	w.window.ShowAndRun()
}

// tick moves the clock. It runs on a worker, so that a large book is read at
// its new instant before the window asks for it; and it opens the book anew
// when somebody wrote in it.
func (w *Window) tick(now time.Time) {
	var b *state.Book
	var stamp string
	fyne.DoAndWait(func() { b, stamp = w.state.Book, w.stamp })
	if b != nil && b.Path != "" && w.books.Stamp(b.Path) != stamp {
		fyne.Do(func() { w.OpenFile(b.Path) })
	}
	if b != nil {
		b.On(now, calendar.DayOf(now, b.Zone(now)))
	}
	fyne.Do(func() { w.send(state.Ticked{Now: now}) })
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
	if shows(m, before, next) {
		w.stage.raster.Refresh()
	}
	for _, e := range effects {
		w.perform(e)
	}
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
