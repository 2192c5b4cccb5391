package state_test

import (
	"sync"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// The world of these tests: the demo season on a Tuesday morning.
var (
	zone  = mustZone("Europe/Berlin")
	today = calendar.Date(2027, time.May, 11)
	now   = today.At(7, 10, zone)
)

func mustZone(name string) *time.Location {
	z, err := time.LoadLocation(name)
	if err != nil {
		panic(err)
	}
	return z
}

// demoBook is the demo season, read once for all windows on it: a book is never changed.
var demoBook = sync.OnceValue(func() *state.Book {
	return &state.Book{Season: book.NewSeason(time.LoadLocation, demo.Season(today, zone)), Name: "Demo season"}
})

// open is a window on the demo season.
func open(t testing.TB) state.State {
	t.Helper()
	s := state.State{Now: now, Width: 1440, Height: 900}
	s, _ = state.Update(s, state.Opened{Book: demoBook()})
	if len(s.Reading().Nucs) == 0 {
		t.Fatal("the demo season has no nucs")
	}
	return s
}

// window speaks to a State in verbs.
type window struct {
	t testing.TB
	state.State
	effects []state.Effect
}

func start(t testing.TB) *window { return &window{t: t, State: open(t)} }

func (w *window) send(messages ...state.Msg) *window {
	for _, m := range messages {
		var more []state.Effect
		w.State, more = state.Update(w.State, m)
		w.effects = append(w.effects, more...)
	}
	return w
}

func (w *window) run(command string) *window { return w.send(state.Ran{Command: command}) }

func (w *window) press(key string, mods ...state.Mods) *window {
	k := state.Keyed{Key: key}
	for _, m := range mods {
		k.Mods |= m
	}
	return w.send(k)
}

func (w *window) write(words string) *window {
	for _, r := range words {
		w.send(state.Wrote{Rune: r})
	}
	return w
}

// tap clicks on a thing.
func (w *window) tap(ref scene.Ref, mods state.Mods) *window {
	tag := scene.Tag{Ref: ref}
	p := w.Layout().Main.Centre()
	return w.send(state.Pressed{At: p, Tag: tag, Mods: mods}, state.Released{At: p, Tag: tag, Mods: mods})
}

// nuc is the nuc of a name; the test fails without one.
func (w *window) nuc(name string) *state.Nuc {
	w.t.Helper()
	for _, n := range w.Reading().Nucs {
		if n.Name == name {
			return n
		}
	}
	w.t.Fatalf("no nuc is called %s", name)
	return nil
}

func (w *window) ref(name string) scene.Ref { return state.RefOf(w.nuc(name).Nuc.Nuc.Subject()) }

// chosen is the name of the nuc taken last.
func (w *window) chosen() string {
	id, ok := w.Selection.Last().Nuc()
	if !ok {
		return ""
	}
	return w.Reading().Nuc(id).Name
}
