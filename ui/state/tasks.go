package state

import (
	"slices"
	"strconv"

	"lidmark/domain/rules"
	"lidmark/ui/scene"
)

// Tasks are the lines of the route in their order, over all stops.
func (r *Reading) Tasks() []rules.Task {
	var all []rules.Task
	for _, stop := range r.Plan().Stops {
		all = append(all, stop.Tasks...)
	}
	return all
}

// TaskOf names a line of the route in a scene.
func TaskOf(number int) scene.Ref { return scene.Ref{Kind: TaskRef, ID: strconv.Itoa(number)} }

// TaskChosen tells whether just the subjects of a task are selected.
func (s State) TaskChosen(t rules.Task) bool {
	if len(t.Of) == 0 || s.Selection.Len() != len(t.Of) {
		return false
	}
	for _, sub := range t.Of {
		if !s.Selection.Has(sub) {
			return false
		}
	}
	return true
}

// toTask is the window with the subjects of a line of the route selected, and
// the line in sight; without such a line it stays as it is.
func (s State) toTask(number int) State {
	return s.toLine(slices.IndexFunc(s.Lines(), func(l PageLine) bool { return !l.Done && l.Number == number }))
}

// toLine is that of a line of the page, which may be done.
func (s State) toLine(i int) State {
	all := s.Lines()
	if i < 0 || i >= len(all) || len(all[i].Of) == 0 {
		return s
	}
	s.Selection = Select(all[i].Of...)
	s.DayPage.line = nameOf(all[i].Task)
	rt := s.Route(s.Layout())
	at := rt.task(i)
	return s.within(RoutePlace, s.Scroll[RoutePlace], at.Y, at.H, rt.Pane)
}

// stepTask goes to the next or previous line of the route that is left to do.
func (s State) stepTask(by int) State {
	all := s.Lines()
	i := s.lineAt(all)
	if i < 0 && by < 0 {
		i = len(all)
	}
	for i += by; i >= 0 && i < len(all); i += by {
		if !all[i].Done && len(all[i].Of) > 0 {
			return s.toLine(i)
		}
	}
	return s
}

// LineAt is where the line taken last stands among the lines of the page; below 0
// for none.
func (s State) LineAt() int {
	if s.Room != Today || s.Selection.Len() == 0 {
		return -1
	}
	return s.lineAt(s.Lines())
}

// lineAt is where the line taken last stands, or the first whose subjects are
// selected; below 0 for none.
func (s State) lineAt(all []PageLine) int {
	chosen := func(l PageLine) bool { return s.TaskChosen(l.Task) }
	at := slices.IndexFunc(all, func(l PageLine) bool { return chosen(l) && nameOf(l.Task) == s.DayPage.line })
	if at < 0 {
		at = slices.IndexFunc(all, chosen)
	}
	return at
}
