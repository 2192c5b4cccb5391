package state

import (
	"math"
	"strings"
	"unicode/utf8"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// Measures of the route, dp.
const (
	RouteLine = 30.0 // a line of the route
	RouteMore = 20.0 // each further line of a task
	RouteGap  = 4.0  // between two stops
	RouteText = 88.0 // from the pane's side to the text of a task

	routeHead = 36.0
	routeHard = 44.0 // the strip of the hard deadlines
	routeLow  = 30.0 // the same in a low pane
	routeFoot = 40.0 // below the last stop
	routeAxis = 252.0
	routeMin  = 100.0

	TickBox = 20.0 // the side of the box of a line

	axisLeast  = 700.0 // a pane narrower has no axis of windows
	oneLineAll = 560.0 // and narrower than this no task on one line
	headLeast  = 280.0 // a pane lower has no heads of columns
)

// Route says where the day's route lies in its pane, from the top of the first
// stop on.
type Route struct {
	Axis  bool    // the windows of tasks are drawn
	End   float64 // what is kept at the right for windows and minutes, dp
	Hard  float64 // height of the strip of the hard deadlines
	Head  float64 // height of the heads of the columns
	Stops []RouteStop
	All   float64 // height of all stops
	Pane  float64 // height of what shows of them
}

// RouteStop is where a stop and its tasks begin.
type RouteStop struct {
	Y     float64
	Tasks []RouteTask
}

// RouteTask is where a task begins and how high it is: a RouteLine, and a
// RouteMore for every further line that what to do takes below it.
type RouteTask struct {
	Y, H float64
}

// Route is the route of the day looked at in the layout l.
func (s State) Route(l Layout) Route {
	r := s.Reading()
	plan := r.Plan()
	w, high := l.Main.W, l.Main.H
	rt := Route{Axis: w >= axisLeast, End: routeMin, Hard: routeHard, Head: routeHead}
	if rt.Axis {
		rt.End = routeAxis
	}
	if high < headLeast {
		rt.Hard, rt.Head = routeLow, 0
	}
	if len(plan.Hard) == 0 && (len(r.Nucs) == 0 || high < headLeast) {
		rt.Hard = 0
	}
	rt.Pane = max(0, high-rt.Hard-rt.Head)
	y := 0.0
	page := s.Page()
	for _, stop := range page {
		at := RouteStop{Y: y}
		y += RouteLine
		for _, t := range stop.Lines {
			h := r.lineHeight(t, w, rt.End)
			at.Tasks = append(at.Tasks, RouteTask{y, h})
			y += h
		}
		y += RouteGap
		rt.Stops = append(rt.Stops, at)
	}
	if len(page) > 0 {
		rt.All = y + routeFoot
	}
	return rt
}

// lineHeight is how high a line is: one that is done says no more than its names
// and what it was.
func (r *Reading) lineHeight(l PageLine, w, end float64) float64 {
	if l.Done {
		return RouteLine
	}
	return r.taskHeight(l.Task, w, end)
}

// taskHeight is how high a task is in a pane w wide of which end is kept at the
// right.
func (r *Reading) taskHeight(t rules.Task, w, end float64) float64 {
	// State measures no text: letters are reckoned somewhat wider than those of
	// most words are, figures in bold as wide as they are.
	const letter, figure, lid, by, fewNames, text = 6.8, 8.5, 34.0, 100.0, 16, RouteText + 20
	title, names := letter*float64(utf8.RuneCountInString(t.Title)), 0
	for _, run := range r.TaskNames(t) {
		names += utf8.RuneCountInString(run.Text) + 1
	}
	need := text + title + figure*float64(min(names, fewNames))
	if !t.By.IsZero() {
		need += by
	}
	if names > 0 {
		need += lid
	}
	if w >= oneLineAll && need <= w-end {
		return RouteLine
	}
	const ragged = 55 // where a word is too long for the rest of a line
	lines, room := 1.0, w-text-Edge
	if names == 0 { // what to do stands beside the minutes
		room -= lid + routeMin - Edge
	}
	if title > room {
		lines = math.Ceil(title / max(room-ragged, letter))
	}
	return RouteLine + lines*RouteMore
}

// TaskNames are the names of what a task is about, in its order. A batch,
// colony or yard that its title names is left out.
func (r *Reading) TaskNames(t rules.Task) []Run {
	names := make([]string, 0, len(t.Of))
	for _, s := range t.Of {
		name := rules.Name(r.View, s)
		if s.Kind == book.KindNuc || !strings.Contains(strings.ToLower(t.Title), strings.ToLower(name)) {
			names = append(names, name)
		}
	}
	return Runs(names)
}

// RouteHeight is how high the day's route is with all its stops and tasks, and
// what stands above it.
func (s State) RouteHeight() float64 {
	rt := s.Route(s.Layout())
	return rt.Hard + rt.Head + rt.All
}

// task is the task of a number, counted over all stops.
func (rt Route) task(number int) RouteTask {
	for _, stop := range rt.Stops {
		if number < len(stop.Tasks) {
			return stop.Tasks[number]
		}
		number -= len(stop.Tasks)
	}
	return RouteTask{}
}
