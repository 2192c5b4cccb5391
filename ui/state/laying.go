package state

import (
	"cmp"
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/yard"
	"lidmark/ui/scene"
)

// Laying is a try-out of how the boxes of a yard might stand, while it is worked at
// in [LayoutFill]. It is never changed in place: each step is a new one.
type Laying struct {
	Yard   book.YardID
	ID     book.LayoutID // under which it is kept; none: it never was
	Name   string
	Try    yard.Layout // without what the nucs hold
	Pick   yard.Pick   // the stands that are worked at
	Nuc    book.NucID  // the one nuc of the picked stand that is; zero: all of its
	Grid   float64     // m to which a dragged stand snaps; 0: none
	Camera scene.Camera
	Still  bool         // the camera is kept while the ground is drawn, though nobody moved it
	Ground bool         // the tools are those of the ground, not of the stands
	Ruler  []book.Point // what is measured: none, from, from and to

	past, ahead []yard.Layout // to step back and forth
	left        *Laying       // the try-out that was not kept as another was taken up; nil: none
}

// Kinds of a [scene.Ref] in the try-out.
const (
	TriedRef = "tried" // a stand of the try-out; ID is that of the stand
	TriesRef = "tries" // a try-out that was kept; ID is that of the layout
)

// layoutGrid is how far apart the crossings are to which stands snap at first, m.
const layoutGrid = 0.5

// noLayout says why no layout can be worked at.
func noLayout(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if s.MapYard().IsZero() {
		return "describe a yard first"
	}
	return ""
}

// toLayout is the window with the layout of the map's yard filling the room: the
// plan of that yard or the try-out kept last, else a new one.
func (s State) toLayout() State {
	y := s.MapYard()
	s = s.entered(Yard)
	if s.Laying == nil || s.Laying.Yard != y || s.Laying.empty() {
		s = s.laidAside()
		if s.Laying = s.Laid[y]; s.Laying.empty() {
			s.Laying = s.tryOf(y)
		}
	}
	s.Fill, s.FillOf, s.Selection = LayoutFill, y.Subject(), Selection{}
	return s
}

func (s State) tryOf(y book.YardID) *Laying {
	v := s.Present().View
	now := yard.Of(v, y)
	kept := v.Layouts(y)
	if len(kept) == 0 {
		return &Laying{Yard: y, Name: freeName(kept), Try: now, Grid: layoutGrid}
	}
	l := slices.MaxFunc(kept, func(a, b book.Layout) int {
		return cmp.Or(-book.TrueFirst(a.Planned(), b.Planned()), a.At.Instant.Compare(b.At.Instant))
	})
	return &Laying{Yard: y, ID: l.Layout, Name: l.Name, Try: now.Try(l.LayoutTried), Grid: layoutGrid}
}

// freeName is a name that no try-out of the yard has.
func freeName(kept []book.Layout) string {
	for i := 1; ; i++ {
		name := fmt.Sprintf("try-out %d", i)
		if !slices.ContainsFunc(kept, func(l book.Layout) bool { return l.Name == name }) {
			return name
		}
	}
}

// OnLayout tells whether a try-out is worked at.
func (s State) OnLayout() bool { return s.Book != nil && s.Fill == LayoutFill && s.Laying != nil }

// stoodSo is the window with a changed try-out, which can be stepped back from.
func (s State) stoodSo(next yard.Layout) State {
	s.Note = Note{} // what was refused before is past
	l := *s.Laying
	l.past, l.ahead = append(l.past[:len(l.past):len(l.past)], l.Try), nil
	l.Try = next
	s.Laying = &l
	return s
}

// steppedBack takes back the last change of the try-out, before all of them that it was
// taken up; steppedOn does it again.
func (s State) steppedBack() State {
	l := *s.Laying
	last := len(l.past) - 1
	if last < 0 && l.left != nil {
		s.Laying = l.left
		return s
	}
	l.ahead = append(l.ahead[:len(l.ahead):len(l.ahead)], l.Try)
	l.Try, l.past = l.past[last], l.past[:last]
	s.Laying = &l
	return s
}

func (s State) steppedOn() State {
	l := *s.Laying
	last := len(l.ahead) - 1
	l.past = append(l.past[:len(l.past):len(l.past)], l.Try)
	l.Try, l.ahead = l.ahead[last], l.ahead[:last]
	s.Laying = &l
	return s
}

// laid is the window with the try-out changed otherwise than in how it stands.
func (s State) laid(change func(*Laying)) State {
	l := *s.Laying
	change(&l)
	s.Laying = &l
	return s
}

// picked is the window with other stands picked in the try-out; add keeps those
// that were, and lets go of one picked before.
func (s State) picked(add bool, ids ...book.StandID) State {
	return s.laid(func(l *Laying) {
		pick := yard.Pick{}
		if add {
			pick = append(pick, l.Pick...)
		}
		for _, id := range ids {
			if i := slices.Index(pick, id); i >= 0 && len(ids) == 1 {
				pick = slices.Delete(pick, i, i+1)
			} else if i < 0 {
				pick = append(pick, id)
			}
		}
		l.Pick, l.Nuc = pick, book.NucID{}
	})
}

// triedClicked picks a stand of the try-out, and clicked again the nuc that lies there.
func (s State) triedClicked(r scene.Ref, mods Mods) State {
	if !s.OnLayout() {
		return s
	}
	if s.Measuring() {
		return s.measuredTo(s.onTry(s.Pointer))
	}
	id, ok := standOf(r)
	if !ok {
		return s.picked(false)
	}
	was := s.Laying
	s = s.picked(mods.Has(Ctrl) || mods.Has(Shift), id)
	if again := slices.Equal(was.Pick, s.Laying.Pick); again && was.Nuc.IsZero() {
		return s.laid(func(l *Laying) { l.Nuc = nucOf(r) })
	}
	return s
}

// nucOf is the nuc that a ref of the try-out names; zero for none.
func nucOf(r scene.Ref) (id book.NucID) {
	if id.UnmarshalText([]byte(r.Part)) != nil {
		return book.NucID{}
	}
	return id
}

// standOf is the stand that a ref of the try-out names.
func standOf(r scene.Ref) (id book.StandID, ok bool) {
	err := id.UnmarshalText([]byte(r.ID))
	return id, r.Kind == TriedRef && err == nil && !id.IsZero()
}

// TriedStand names a stand of the try-out in a scene.
func TriedStand(id book.StandID) scene.Ref { return scene.Ref{Kind: TriedRef, ID: id.String()} }

// TriedNuc names a nuc on a stand of the try-out in a scene.
func TriedNuc(on book.StandID, id book.NucID) scene.Ref {
	return scene.Ref{Kind: TriedRef, ID: on.String(), Part: id.String()}
}

// triesClicked takes up a try-out that was kept.
func (s State) triesClicked(r scene.Ref) State {
	var id book.LayoutID
	if err := id.UnmarshalText([]byte(r.ID)); err != nil || !s.OnLayout() || noEdit(s) != "" {
		return s
	}
	v := s.Present().View
	for _, kept := range v.Layouts(s.Laying.Yard) {
		if kept.Layout == id {
			next := &Laying{Yard: kept.Yard, ID: id, Name: kept.Name, Try: yard.Of(v, kept.Yard).Try(kept.LayoutTried), Grid: s.Laying.Grid, Camera: s.Laying.Camera, left: s.Laying.left}
			if _, unkept := s.Laying.unkept(v); unkept {
				next.left = s.Laying
				s.Note = Note{Text: fmt.Sprintf("%s is not kept: undo takes it up again", quoted(s.Laying.Name))}
			}
			s.Laying = next
			break
		}
	}
	return s
}

// onStands tells whether the stands of a try-out are worked at, not the ground, which is
// written into the book as it is drawn.
func (s State) onStands() bool { return s.OnLayout() && !s.Laying.Ground }

// onTryDo is a command that does one thing in a try-out and another elsewhere.
func onTryDo(in func(State) State, elsewhere func(State) (State, []Effect)) func(State) (State, []Effect) {
	return func(s State) (State, []Effect) {
		if s.onStands() {
			return in(s), nil
		}
		return elsewhere(s)
	}
}

// allPicked is the window with all stands of the try-out picked.
func (s State) allPicked() State { return s.picked(false, s.Laying.all()...) }
