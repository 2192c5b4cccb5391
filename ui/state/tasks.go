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
	all := s.Reading().Tasks()
	if number < 0 || number >= len(all) || len(all[number].Of) == 0 {
		return s
	}
	s.Selection = Select(all[number].Of...)
	rt := s.Route(s.Layout())
	line := rt.task(number)
	return s.within(RoutePlace, s.Scroll[RoutePlace], line.Y, line.H, rt.Pane)
}

// stepTask goes to the next or previous line of the route that is about
// something.
func (s State) stepTask(by int) State {
	all := s.Reading().Tasks()
	i := slices.IndexFunc(all, s.TaskChosen)
	if i < 0 && by < 0 {
		i = len(all)
	}
	for i += by; i >= 0 && i < len(all); i += by {
		if len(all[i].Of) > 0 {
			return s.toTask(i)
		}
	}
	return s
}
