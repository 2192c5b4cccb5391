package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"sync"
	"time"

	"lidmark/ui/state"
)

// desk does what the window asks for and no toolkit is needed for. Deeds are
// written one after the other in the order in which they were sent; what takes
// long is done beside that, one thing after the other, and can be stopped.
type desk struct {
	clock  func() time.Time
	folder string // of what the keeper chose, and of drafts

	writes, works, ticks worker
	reviews              worker // the last review asked for is the one that matters
	orders               worker // so is the last sheet of the orders
	seasons              worker // and the last of the season
	layouts              worker // and the last comparison of layouts
	beside               worker // and the last days beside the one shown
	keeps                keeper
	openings             int // of books so far; counted by long work alone

	mu   sync.Mutex
	open *opened            // the book that is open, or nil
	next *time.Timer        // reads the days beside the one shown, or nil
	stop context.CancelFunc // stops the long work under way, or nil
	tell func(state.Msg)    // whom to tell that something cannot be kept
	told map[string]bool    // of which file it was told

	demoSheets string // the folder of the demo's papers; "": none yet

	trouble state.Note // with what the keeper chose, to be told with the first book
}

// pause is how long typing is gathered before its draft is written: what the
// death of the program can cost.
const pause = 250 * time.Millisecond

func newDesk(folder string, clock func() time.Time) *desk {
	d := &desk{clock: clock, folder: folder, tell: func(state.Msg) {}, told: map[string]bool{}}
	d.keeps = keeper{pause: pause, wrote: d.wasKept}
	return d
}

// Do takes on an effect.
func (d *desk) Do(s state.State, e state.Effect, tell func(state.Msg)) {
	d.tells(tell)
	if d.doBook(e, tell) || d.doReckon(e, tell) {
		return
	}
	switch e := e.(type) {
	case state.Write:
		d.writes.give(func() { d.write(s, e.Deed, tell) })
	case state.KeepPrefs:
		d.keeps.keep(d.prefsFile(), e.Prefs)
	case state.KeepDraft:
		d.keepDraft(e.Draft)
	case state.StopWork:
		d.stopWork()
	case state.OpenDemo:
		d.work(tell, d.openDemo)
	case state.OpenBook:
		d.work(tell, func(ctx context.Context, tell func(state.Msg)) { d.openBook(ctx, e.Path, tell) })
	case state.ReadList:
		d.work(tell, func(_ context.Context, tell func(state.Msg)) { tell(readList(e)) })
	case state.ReadGround:
		d.work(tell, func(_ context.Context, tell func(state.Msg)) { tell(d.readGround(e)) })
	case state.ReadPhoto:
		d.work(tell, func(_ context.Context, tell func(state.Msg)) { tell(readPhoto(e)) })
	case state.ReadWeather:
		d.work(tell, func(_ context.Context, tell func(state.Msg)) { tell(d.readWeather(e)) })
	case state.KeepColumns:
		d.work(tell, func(_ context.Context, tell func(state.Msg)) { d.keepColumns(e, tell) })
	case state.Print:
		d.work(tell, func(ctx context.Context, tell func(state.Msg)) { d.print(ctx, e, tell) })
	case state.Found:
		d.work(tell, func(_ context.Context, tell func(state.Msg)) { d.found(e, tell) })
	}
}

// work has long work done after that which is under way.
func (d *desk) work(tell func(state.Msg), do func(context.Context, func(state.Msg))) {
	d.works.give(func() {
		ctx, stop := context.WithCancel(context.Background())
		defer stop()
		d.stops(stop)
		do(ctx, tell)
		d.stops(nil)
	})
}

// stops notes what stops the long work under way.
func (d *desk) stops(stop context.CancelFunc) {
	d.mu.Lock()
	defer d.mu.Unlock()
	d.stop = stop
}

func (d *desk) stopWork() {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.stop != nil {
		d.stop()
	}
}

// opened is the book that is open now, or nil.
func (d *desk) opened() *opened {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.open
}

// Close ends what is under way, in a moment: deeds that were sent are written,
// then the draft of what was not, and the book is closed with its copy made.
// What long work was only queued is dropped. What fails then is told to w, for
// the window is gone.
func (d *desk) Close(w io.Writer) {
	d.works.drop()
	d.stopWork()
	d.works.wait(func() {})
	d.writes.wait(func() {})
	d.tells(func(m state.Msg) { complain(w, m) })
	d.keeps.flush()
	d.shut(d.swap(nil), func(m state.Msg) { complain(w, m) })
	if d.demoSheets != "" {
		_ = os.RemoveAll(d.demoSheets) // the system clears it up else
	}
}

// complain writes what went wrong in a line of its own.
func complain(w io.Writer, m state.Msg) {
	if worked, ok := m.(state.Worked); ok && worked.Note.Bad {
		_, _ = fmt.Fprintln(w, "lidmark:", worked.Note.Text) // nothing is left to tell it to
	}
}

// bad is a message that something went wrong.
func bad(text string) state.Msg { return state.Worked{Note: state.Note{Text: text, Bad: true}} }

// good is a message of something done.
func good(text string) state.Msg { return state.Worked{Note: state.Note{Text: text}} }
