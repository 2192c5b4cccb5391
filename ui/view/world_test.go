package view_test

import (
	"sync"
	"testing"
	"time"
	"unicode/utf8"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"
)

var (
	zone  = mustZone("Europe/Berlin")
	today = calendar.Date(2027, time.May, 11)
)

func mustZone(name string) *time.Location {
	z, err := time.LoadLocation(name)
	if err != nil {
		panic(err)
	}
	return z
}

// typewriter measures text as if every character were equally wide.
type typewriter struct{}

func (typewriter) Width(text string, size float64, _ scene.Weight) float64 {
	return 0.56 * size * float64(utf8.RuneCountInString(text))
}

// demoBook is the demo season, read once for all windows on it: a book is never changed.
var demoBook = sync.OnceValue(func() *state.Book {
	return &state.Book{Season: book.NewSeason(time.LoadLocation, demo.Season(today, zone)), Name: "Demo season"}
})

// open is a window on the demo season.
func open(t testing.TB) state.State {
	t.Helper()
	s := state.State{Book: demoBook(), Now: today.At(7, 10, zone), Width: 1440, Height: 900}
	if len(s.Reading().Nucs) == 0 {
		t.Fatal("the demo season has no nucs")
	}
	return s
}

func window(s state.State) scene.Scene { return view.Window(s, typewriter{}) }

// placed is a mark and the part of the window in which it can be seen.
type placed struct {
	mark scene.Mark
	clip scene.Area
}

// walk gives every mark of a scene, those of panes included; the views place
// everything on the screen, so cameras are not needed.
func walk(t testing.TB, s scene.Scene, size scene.Area) (all []placed) {
	var into func(marks []scene.Mark, clip scene.Area)
	into = func(marks []scene.Mark, clip scene.Area) {
		for _, m := range marks {
			if p, ok := m.(scene.Pane); ok {
				if p.Camera != (scene.Camera{}) {
					t.Fatal("a pane with a camera: this walk does not know it")
				}
				into(p.Marks, clip.Intersect(p.Clip))
				continue
			}
			all = append(all, placed{m, clip})
		}
	}
	into(s.Marks, size)
	return all
}

// texts are the texts of a scene with the boxes they fill.
func texts(t testing.TB, s scene.Scene, size scene.Area) (all []written) {
	for _, p := range walk(t, s, size) {
		if m, ok := p.mark.(scene.Text); ok {
			all = append(all, written{m, box(m), p.clip})
		}
	}
	return all
}

type written struct {
	scene.Text
	box  scene.Area
	clip scene.Area
}

func box(m scene.Text) scene.Area {
	w := typewriter{}.Width(m.Text, m.Size, m.Weight)
	x := m.At.X
	switch m.Anchor {
	case scene.Centre:
		x -= w / 2
	case scene.Right:
		x -= w
	}
	return scene.Area{X: x, Y: m.At.Y - m.Size*0.75, W: w, H: m.Size}
}

// lids are the lids of a scene that can be seen, by the name of their nuc.
func lids(t testing.TB, s state.State, a scene.Area) map[string][]scene.Lid {
	found := map[string][]scene.Lid{}
	for _, p := range walk(t, window(s), s.Size()) {
		l, ok := p.mark.(scene.Lid)
		if !ok || !a.Contains(l.At) || !p.clip.Contains(l.At) {
			continue
		}
		if id, isNuc := state.SubjectOf(l.Tag.Ref).Nuc(); isNuc {
			name := s.Reading().Nuc(id).Name
			found[name] = append(found[name], l)
		}
	}
	return found
}

// ledge is the yard of nuc A1.
func ledge(s state.State) book.YardID {
	for _, n := range s.Reading().Nucs {
		if n.Name == "A1" {
			return n.Yard
		}
	}
	return book.YardID{}
}
