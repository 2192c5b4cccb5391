package state

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/yard"
)

// layoutCommands are what is done with a try-out of a layout.
var layoutCommands = []Command{
	{Name: "layout", Does: "lay the yard out: a try-out beside it", Word: "Lay it out", Keys: "Alt+Z", Why: noLayout, Do: pure(State.toLayout)},
	{Name: "turn left", Does: "turn the picked stands 15° left", Word: "Turn left", Keys: "[", Why: noPick, Do: turning(-15)},
	{Name: "turn right", Does: "turn the picked stands 15° right", Word: "Turn right", Keys: "]", Why: noPick, Do: turning(15)},
	{Name: "swing", Does: "turn the picked stands together by 15°", Word: "Swing", Keys: "W", Why: noPicks, Do: editing("that changes nothing", func(l *Laying) yard.Layout { return l.Try.Swung(l.Pick, 15) })},
	{Name: "line up", Does: "set the picked stands in a line", Word: "Line up", Keys: "L", Why: noPicks, Do: editing("they stand in a line already", func(l *Laying) yard.Layout { return l.Try.Lined(l.Pick) })},
	{Name: "spread", Does: "spread the picked stands evenly", Word: "Spread", Keys: "S", Why: noPicks, Do: editing("they stand evenly already", func(l *Laying) yard.Layout { return l.Try.Spread(l.Pick) })},
	{Name: "bend", Does: "bend the picked stands into an arc", Word: "Arc", Keys: "A", Why: noPicks, Do: editing("they stand in that arc already", bent)},
	{Name: "double", Does: "new stands beside the picked ones", Word: "New beside", Keys: "D", Why: noPick, Do: pure(State.doubled)},
	{Name: "face out", Does: "boxes of picked stands face outwards", Word: "Outwards", Keys: "E", Why: noPick, Do: pure(State.facedOut)},
	{Name: "hold", Does: "hold the picked stands; again: free", Word: "Hold", Keys: "H", Why: noPick, Do: pure(State.heldFast)},
	{Name: "mark fronts", Does: "mark the fronts on picked stands", Word: "Mark fronts", Keys: "M", Why: noPick, Do: editing("they are marked so already", marked)},
	{Name: "grid", Does: "stands snap to half metres, or not", Word: "Snap", Keys: "G", Why: noTryOut, Do: pure(State.gridded)},
	{Name: "measure", Does: "measure: two clicks", Word: "Measure", Keys: "R", Why: noTryOut, Do: State.rulered},
	{Name: "ground tools", Does: "draw the ground, or set stands", Word: "Ground", Keys: "T", Why: noTryOut, Do: State.groundTools},
	{Name: "as it stands", Does: "begin the try-out anew from the yard as it stands", Word: "As it stands", Why: noEdit, Do: pure(State.tryAnew)},
	{Name: "turn layout", Does: "improve: turn and mark only", Word: "Turn and mark", Keys: "I", Why: noSearch, Do: searching(turnMode)},
	{Name: "move layout", Does: "improve: move stands as well", Word: "Move", Keys: "O", Why: noSearch, Do: searching(moveMode)},
	{Name: "more boxes", Does: "find places for more boxes", Word: "More boxes", Keys: "N", Why: noMoreBoxes, Do: searching(moreMode)},
	{Name: "too many", Does: "which nuc is one too many", Word: "One too many", Keys: "K", Why: noEdit, Do: spared},
	{Name: "search further", Does: "look for a better one further", Word: "Search further", Keys: "J", Why: noSearch, Do: State.searchedOn},
	{Name: "stop layout", Does: "stop and keep the best so far, like Esc", Word: "Stop", Why: notLooking, Do: layoutStopped},
	{Name: "new layout", Does: "another try-out, begun as this one is", Word: "Another", Why: noEdit, Do: pure(State.triedAnother)},
	{Name: "keep layout", Does: "keep the try-out", Word: "Keep the try-out", Keys: "Ctrl+S", Why: noKeepLayout, Do: State.layoutKept},
	{Name: "plan layout", Does: "make the try-out the plan of the yard", Word: "Make it the plan", Why: noPlanLayout, Do: State.layoutPlanned},
	{Name: "drop layout", Does: "throw the try-out away", Word: "Throw it away", Why: noDropLayout, Do: State.layoutDropped},
}

func noTryOut(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if !s.OnLayout() {
		return "lay a yard out first with Alt+Z"
	}
	return ""
}

// noEdit says why the try-out cannot be changed.
func noEdit(s State) string {
	if why := noTryOut(s); why != "" {
		return why
	}
	if s.laidOut.search.Looking() {
		return "a better layout is being looked for: stop with Esc"
	}
	return ""
}

func noPick(s State) string {
	if why := noEdit(s); why != "" {
		return why
	}
	if len(s.Laying.Pick) == 0 {
		return "pick a stand of the try-out first"
	}
	return ""
}

func noPicks(s State) string {
	if why := noPick(s); why != "" {
		return why
	}
	if len(s.Laying.Pick) < 2 {
		return "pick two stands or more"
	}
	return ""
}

// noStepBack says why no step of the try-out can be taken back, noStepOn why none
// can be done again.
func noStepBack(s State) string {
	if why := noEdit(s); why != "" {
		return why
	}
	if !s.Laying.canStepBack() {
		return "nothing was changed in the try-out yet"
	}
	return ""
}

func noStepOn(s State) string {
	if why := noEdit(s); why != "" {
		return why
	}
	if len(s.Laying.ahead) == 0 {
		return "no step of the try-out was taken back"
	}
	return ""
}

// noSearch says why no better layout can be looked for.
func noSearch(s State) string {
	if why := noEdit(s); why != "" {
		return why
	}
	if s.Busy != nil {
		return "something is under way: wait for it, or stop it in the bottom line"
	}
	return ""
}

func noMoreBoxes(s State) string {
	if why := noSearch(s); why != "" {
		return why
	}
	if _, ok := s.MoreCount(); !ok {
		return fmt.Sprintf("more boxes: write 1 to %d", moreMost)
	}
	return ""
}

func notLooking(s State) string {
	if why := noTryOut(s); why != "" {
		return why
	}
	if !s.laidOut.search.Looking() {
		return "no layout is being looked for"
	}
	return ""
}

func noKeepLayout(s State) string {
	if why := noEdit(s); why != "" {
		return why
	}
	if why := noPen(s); why != "" {
		return why
	}
	if t := s.LayoutSheet(); t == nil || len(t.Changes) == 0 {
		return "the try-out is the yard as it stands: change something first"
	}
	if s.unchanged() {
		return "it is kept as it stands"
	}
	if slices.ContainsFunc(s.LayoutSheet().Kept, func(k KeptLayout) bool { return strings.EqualFold(k.Name, s.Laying.Name) }) {
		return "another try-out is called “" + s.Laying.Name + "”: choose a name that none has"
	}
	return ""
}

func noPlanLayout(s State) string {
	if why := noKeepLayout(s); why != "" && !s.unchanged() {
		return why
	}
	if t := s.LayoutSheet(); s.unchanged() && t.InBook.Planned() && t.InBook.From >= t.Safe {
		return "it is the plan from " + t.InBook.From.Short() + " already"
	}
	return noPen(s)
}

func noDropLayout(s State) string {
	if why := noEdit(s); why != "" {
		return why
	}
	if why := noPen(s); why != "" {
		return why
	}
	if s.LayoutSheet().InBook == nil {
		return "the try-out was never kept"
	}
	return ""
}

// editing is a command that changes how the picked stands stand; already says that they
// stand so.
func editing(already string, change func(*Laying) yard.Layout) func(State) (State, []Effect) {
	return pure(func(s State) State {
		next := change(s.Laying)
		if s.Laying.Try.Alike(next) {
			s.Note = Note{Text: already}
			return s
		}
		return s.stoodSo(next)
	})
}

func turning(degrees float64) func(State) (State, []Effect) {
	return editing("that changes nothing", func(l *Laying) yard.Layout { return l.Try.Turned(l.Pick, degrees) })
}

// bent is the picked stands in an arc that is a fifth of its chord deep.
func bent(l *Laying) yard.Layout {
	a, b, _ := l.Try.Ends(l.Pick)
	return l.Try.Arced(l.Pick, math.Hypot(a.X-b.X, a.Y-b.Y)/5)
}

// The marks that fronts get by turns: shapes and colours that bees tell apart.
var frontMarks = []yard.Mark{
	{Shape: "disc", Colour: "blue"},
	{Shape: "bar", Colour: "white"},
	{Shape: "cross", Colour: "yellow"},
	{Shape: "disc", Colour: "black"},
	{Shape: "bar", Colour: "blue"},
	{Shape: "cross", Colour: "white"},
	{Shape: "disc", Colour: "yellow"},
	{Shape: "bar", Colour: "black"},
}

// marked is the fronts on the picked stands marked by turns, so that no neighbours
// on a stand are alike.
func marked(l *Laying) yard.Layout {
	next, i := l.Try, 0
	for _, st := range l.Try.Stands {
		if !l.has(st.ID) {
			continue
		}
		for _, n := range st.Nucs {
			next = next.Painted([]book.NucID{n.ID}, frontMarks[i%len(frontMarks)])
			i++
		}
	}
	return next
}

func (l *Laying) all() (ids []book.StandID) {
	for _, st := range l.Try.Stands {
		ids = append(ids, st.ID)
	}
	return ids
}

// heldFast fixes the picked stands, or frees them where all are fixed.
func (s State) heldFast() State {
	l := s.Laying
	free := false
	for _, st := range l.Try.Stands {
		free = free || l.has(st.ID) && !st.Fixed
	}
	return s.stoodSo(l.Try.Held(l.Pick, free))
}

func (s State) gridded() State {
	return s.laid(func(l *Laying) {
		if l.Grid > 0 {
			l.Grid = 0
		} else {
			l.Grid = layoutGrid
		}
	})
}

// doubled sets new stands beside the picked ones, and picks those.
func (s State) doubled() State {
	east, north := s.Laying.roomBeside()
	ids := s.Pen.IDs
	ids.Deed()
	letters := s.Laying.freeLetters()
	name := func() (book.StandID, string) { return book.StandID(ids.Next()), letters() }
	were := len(s.Laying.Try.Stands)
	s = s.stoodSo(s.Laying.Try.Doubled(s.Laying.Pick, east, north, name))
	s.Pen.IDs = ids
	return s.picked(false, s.Laying.all()[were:]...)
}

// roomBeside is how far beside the picked stands, m, as many new ones lie on nothing that
// stands: to the south, where that is free.
func (l *Laying) roomBeside() (east, north float64) {
	const (
		beside = 2   // so that one walks between
		clear  = 1.4 // from middle to middle
		most   = 10  // of such steps
	)
	free := func(east, north float64) bool {
		for _, a := range l.Try.Stands {
			for _, b := range l.Try.Stands {
				if l.has(a.ID) && math.Hypot(a.At.X+east-b.At.X, a.At.Y+north-b.At.Y) < clear {
					return false
				}
			}
		}
		return true
	}
	for step := 1.0; step <= most; step++ {
		for _, way := range [][2]float64{{0, -1}, {0, 1}, {1, 0}, {-1, 0}} {
			if east, north = beside*step*way[0], beside*step*way[1]; free(east, north) {
				return east, north
			}
		}
	}
	return 0, -beside
}

// freeLetters gives names for new stands in turn, none of which a stand has.
func (l *Laying) freeLetters() func() string {
	number := 0
	return func() string {
		for {
			number++
			if letter := "S" + strconv.Itoa(number); !l.named(letter) {
				return letter
			}
		}
	}
}

func (l *Laying) named(letter string) bool {
	for _, st := range l.Try.Stands {
		if strings.EqualFold(st.Letter, letter) {
			return true
		}
	}
	return false
}

func (s State) tryAnew() State { return s.stoodSo(yard.Of(s.Present().View, s.Laying.Yard)) }

// triedAnother is the window with another try-out, which begins as this one is.
func (s State) triedAnother() State {
	name := freeName(append(s.Present().View.Layouts(s.Laying.Yard), book.Layout{LayoutTried: book.LayoutTried{Name: s.Laying.Name}}))
	return s.laid(func(l *Laying) { l.ID, l.Name = book.LayoutID{}, name })
}

// nudged moves the picked stands with the arrows: a step of the grid, or a
// centimetre where there is none.
func (s State) nudged(key string) State {
	step := max(s.Laying.Grid, 0.1)
	by, ok := map[string][2]float64{"Left": {-step, 0}, "Right": {step, 0}, "Up": {0, step}, "Down": {0, -step}}[key]
	if !ok || len(s.Laying.Pick) == 0 {
		return s
	}
	return s.stoodSo(s.Laying.Try.Moved(s.Laying.Pick, by[0], by[1]))
}

// layoutKept writes the try-out down; under another name than it was kept beside the one
// that has that name.
func (s State) layoutKept() (State, []Effect) {
	words := "kept try-out “" + s.Laying.Name + "”"
	if old := s.renamed(); old != "" {
		words += " beside “" + old + "”"
	}
	s, fact := s.keptLayout()
	return s.layoutWritten(words, fact)
}

// renamed is the name under which the book has the try-out, where that is another one.
func (s State) renamed() string {
	if t := s.LayoutSheet(); t != nil && t.InBook != nil && t.InBook.Name != s.Laying.Name {
		return t.InBook.Name
	}
	return ""
}

// keptLayout is the try-out as a fact, with an id if under this name it has none yet.
func (s State) keptLayout() (State, book.LayoutTried) {
	if s.Laying.ID.IsZero() || s.renamed() != "" {
		s.Pen.IDs.Deed()
		id := book.LayoutID(s.Pen.IDs.Next())
		s = s.laid(func(l *Laying) { l.ID = id })
	}
	l := s.Laying
	return s, l.Try.TriedAs(l.ID, l.Name, yard.Of(s.Present().View, l.Yard))
}

// layoutPlanned writes it down as the plan of the yard, from the day on which no
// virgin of it flies.
func (s State) layoutPlanned() (State, []Effect) {
	from := s.LayoutSheet().Safe
	s, fact := s.keptLayout()
	return s.layoutWritten(
		"made “"+s.Laying.Name+"” the plan from "+from.Short(),
		fact, book.LayoutPlanned{Layout: fact.Layout, Yard: fact.Yard, From: from},
	)
}

func (s State) layoutDropped() (State, []Effect) {
	l, name := s.Laying, s.LayoutSheet().InBook.Name
	s = s.tryAnew().laid(func(l *Laying) { l.ID = book.LayoutID{} })
	return s.layoutWritten("threw away try-out “"+name+"”", book.LayoutDropped{Layout: l.ID, Yard: l.Yard})
}
