package state

import (
	"fmt"

	"lidmark/domain/practice"
	"lidmark/domain/siting"
	"lidmark/domain/yard"
)

// LayoutSearch is a better layout that is looked for, or was. It is never changed in
// place.
type LayoutSearch struct {
	siting.Found      // the best so far
	Known        bool // something is found
	Done         bool // it was looked for to the end
	Stopped      bool
	Why          string // why nothing could be looked for

	no    int // of the search: what an earlier one still brings is left
	mode  layoutMode
	seed  uint64
	from  *Laying // what it began from
	fresh bool    // that was the yard as it stands
}

// layoutMode is what a search may change.
type layoutMode struct {
	words string // for the foot, while it runs
	task  func(State, yard.Layout, yard.Ground, practice.Numbers) (State, siting.Task)
}

var (
	turnMode = layoutMode{"turning and marking", func(s State, l yard.Layout, g yard.Ground, n practice.Numbers) (State, siting.Task) {
		return s, siting.TurnAndPaint(l, marksToHand(l), g, n)
	}}
	moveMode = layoutMode{"moving stands", func(s State, l yard.Layout, g yard.Ground, n practice.Numbers) (State, siting.Task) {
		return s, siting.Moving(l, s.Laying.Pick, marksToHand(l), g, n)
	}}
	moreMode = layoutMode{"finding places", func(s State, l yard.Layout, g yard.Ground, n practice.Numbers) (State, siting.Task) {
		s, more := s.moreBoxes()
		return s, siting.Adding(l, more, marksToHand(l), g, n)
	}}
)

// marksToHand are the marks that fronts may get, as many of each as there are nucs.
func marksToHand(l yard.Layout) (stock []siting.Stock) {
	for _, m := range frontMarks {
		stock = append(stock, siting.Stock{Mark: m, Count: l.Nucs()})
	}
	return stock
}

// LayoutSearch is what was looked for last, or is; nil: nothing.
func (s State) LayoutSearch() *LayoutSearch {
	if !s.OnLayout() {
		return nil
	}
	return s.laidOut.search
}

// Looking tells whether it is still being looked for.
func (f *LayoutSearch) Looking() bool { return f != nil && !f.Done && !f.Stopped }

// shown tells whether the try-out is what was found, and nothing was done to it since.
func (f *LayoutSearch) shown(l yard.Layout) bool {
	return f != nil && f.Known && len(l.Stands) > 0 && len(f.Layout.Stands) > 0 && &l.Stands[0] == &f.Layout.Stands[0]
}

// SearchLayout is the effect that looks for a better layout. [SearchLayout.Search]
// brings the best so far again and again.
type SearchLayout struct {
	begun   LayoutSearch
	task    siting.Task
	numbers practice.Numbers
}

func (SearchLayout) effect() {}

// LayoutFound brings what is found so far.
type LayoutFound struct{ search LayoutSearch }

func (LayoutFound) msg() {}

// searchSteps is in how many steps a search is told of.
const searchSteps = 60

// Search looks for a better layout. It tells after each step, as long as it is told to
// go on; it may run beside the window.
func (e SearchLayout) Search(goOn func(LayoutFound) bool) LayoutFound {
	f := e.begun
	search, err := siting.New(e.task, e.numbers)
	if err != nil {
		f.Why, f.Done = err.Error(), true
		return LayoutFound{f}
	}
	step := max(search.Of()/searchSteps, 2)
	for more := true; more; {
		more = search.Step(step)
		f.Found, f.Known = search.Best(), true
		if more && !goOn(LayoutFound{f}) {
			f.Stopped = true
			return LayoutFound{f}
		}
	}
	f.Done = true
	return LayoutFound{f}
}

// searching is a command that begins a search; seed tells the searches of one try-out
// apart.
func searching(mode layoutMode) func(State) (State, []Effect) {
	return func(s State) (State, []Effect) { return s.searchBegins(mode, 1) }
}

func (s State) searchBegins(mode layoutMode, seed uint64) (State, []Effect) {
	r, sheet := s.Present(), s.LayoutSheet()
	n := r.Numbers()
	s, task := mode.task(s, sheet.Try.Layout, yard.GroundOf(r.View.Yard(s.Laying.Yard)), n)
	task.Seed = seed
	s.laidOut.searches++
	begun := LayoutSearch{no: s.laidOut.searches, mode: mode, seed: seed, from: s.Laying, fresh: len(sheet.Changes) == 0}
	s.laidOut.search = &begun
	s.Busy = &Busy{mode.words, 0}
	return s, []Effect{SearchLayout{begun, task, n}}
}

// searchedOn looks further from what was found, by the same rules.
func (s State) searchedOn() (State, []Effect) {
	f := s.laidOut.search
	if f == nil {
		return s.searchBegins(turnMode, 1)
	}
	return s.searchBegins(f.mode, f.seed+1)
}

// layoutTaken is the window with what is found so far in the try-out, as one step.
func (s State) layoutTaken(m LayoutFound) State {
	f, was := m.search, s.laidOut.search
	if was == nil || was.no != f.no || !was.Looking() || s.Laying == nil || s.Laying.Yard != f.from.Yard {
		return s
	}
	s.Busy = nil
	if f.Looking() {
		s.Busy = &Busy{f.mode.words, float64(f.Tries) / float64(max(1, f.Of))}
	}
	if f.Why != "" {
		s.Note = Note{Text: f.Why}
	} else if f.Done && len(f.Steps) == 0 {
		s.Note = Note{Text: fmt.Sprintf("nothing better found in %d tries: %s", f.Tries, f.forbids())}
	}
	s.laidOut.search = &f
	if !f.Known {
		return s
	}
	s = s.laid(func(l *Laying) { l.Try, l.past, l.ahead = f.from.Try, f.from.past, f.from.ahead })
	if len(f.Steps) == 0 {
		return s
	}
	return s.stoodSo(f.Layout)
}

// forbids says what keeps a better layout from being one.
func (f *LayoutSearch) forbids() string {
	out, now := f.Outwards, f.Now
	if windy := out.Faults.Windy - now.Faults.Windy; windy > 0 && out.Queens < now.Queens {
		return fmt.Sprintf("boxes turned outwards would lose %.1f virgins instead of %.1f, but set %s in the wind, which weighs more", out.Lost, now.Lost, counted(windy, "front"))
	}
	return "what there is to gain does not pay its work"
}

// layoutStopped is the window while a search is stopped: the best so far stays.
func layoutStopped(s State) (State, []Effect) {
	f := *s.laidOut.search
	f.Stopped, s.laidOut.search, s.Busy = true, &f, nil
	return s, []Effect{StopWork{}}
}

// searchSays is how far the search is, and what it gains.
func (f *LayoutSearch) searchSays() string {
	words := fmt.Sprintf("%d of %d tries", f.Tries, f.Of)
	if f.Of >= 10_000 {
		words = fmt.Sprintf("%d of %d thousand tries", f.Tries/1000, f.Of/1000)
	}
	if f.Known {
		words += fmt.Sprintf("; drift %.1f → %.1f of 100, virgins lost %.1f → %.1f", 100*f.Was.Drift, 100*f.Now.Drift, f.Was.Lost, f.Now.Lost)
	}
	return words
}
