package state

import (
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
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
	routeAxis = 228.0
	routeSlim = 190.0 // with a slim axis
	routeMin  = 100.0

	TickBox = 20.0 // the side of the box of a line

	axisUsual  = 700.0 // a pane narrower has a slim axis of windows,
	axisLeast  = 540.0 // and narrower than this none
	oneLineAll = 560.0 // and narrower than this no task on one line
	headLeast  = 280.0 // a pane lower has no heads of columns
)

// Route says where the day's route lies in its pane, from the top of the first
// stop on.
type Route struct {
	Axis  bool        // the windows of tasks are drawn
	End   float64     // what is kept at the right for windows and minutes, dp
	Hard  float64     // height of the strip of the hard deadlines
	Head  float64     // height of the heads of the columns
	Known []RouteTask // what is no work but to be known, above the first stop
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
	switch {
	case w >= axisUsual:
		rt.End = routeAxis
	case rt.Axis:
		rt.End = routeSlim
	}
	if high < headLeast {
		rt.Hard, rt.Head = routeLow, 0
	}
	if len(plan.Hard) == 0 && (len(r.Nucs) == 0 || high < headLeast) {
		rt.Hard = 0
	}
	rt.Pane = max(0, high-rt.Hard-rt.Head)
	y := 0.0
	pane := routePane{w, rt.End}
	heights := r.heights(pane)
	for _, h := range heights.known {
		if y == 0 {
			y += RouteLine
		}
		rt.Known = append(rt.Known, RouteTask{y, h})
		y += h
	}
	if y > 0 {
		y += RouteGap
	}
	page := s.Page()
	for _, stop := range page {
		at := RouteStop{Y: y}
		y += RouteLine
		for _, t := range stop.Lines {
			h := RouteLine // one that is done says no more than its names and what it was
			if !t.Done {
				h = r.lineHeight(t, heights, pane)
			}
			at.Tasks = append(at.Tasks, RouteTask{y, h})
			y += h
		}
		y += RouteGap
		rt.Stops = append(rt.Stops, at)
	}
	if len(page) > 0 {
		y += routeFoot
	}
	rt.All = y
	return rt
}

// routePane is a pane of the route: how wide it is, and what is kept at its right.
type routePane struct{ w, end float64 }

// routeHeights are how high the tasks of a day are in a pane: what is to be known,
// and the lines in their order.
type routeHeights struct{ known, lines []float64 }

// lineHeight is how high a line of the page is: as it was reckoned for the day's work,
// but for a part of it, or where its price stands in the place of why.
func (r *Reading) lineHeight(l PageLine, h routeHeights, p routePane) float64 {
	if l.Number >= len(h.lines) || l.Price > 0 {
		return r.taskHeight(l.Task, p)
	}
	return h.lines[l.Number]
}

func (r *Reading) readHeights(p routePane) (h routeHeights) {
	for _, t := range r.Plan().Waits {
		h.known = append(h.known, r.taskHeight(t, p))
	}
	for _, t := range r.Tasks() {
		h.lines = append(h.lines, r.taskHeight(t, p))
	}
	return h
}

// LidRoom is what is kept for a lid before what a task says, dp.
const LidRoom = 34.0

// Sizes of what a task says, and the room beside it, dp.
const (
	titleSize, whySize = 14.0, 13.0

	routeInset = RouteText + 10 // where a task's words begin
	routeGap   = 10.0           // between two things that a task says
	boxRoom    = 80.0           // of minutes and box beside the first line
	namesRoom  = 150.0          // of names before they are cut to "and 9 more"
)

// taskHeight is how high a task is in a pane: one line where all of it has room there, else who and when above what to
// do and why, in as many lines as these take.
func (r *Reading) taskHeight(t rules.Task, p routePane) float64 {
	m := Reckoner{}
	names := 0.0
	if said := book.Names(r.TaskNames(t), func(string) bool { return true }); said != "" {
		names = min(m.Width(said, titleSize, scene.Bold), namesRoom) + LidRoom + routeGap
	} else if len(t.Of) > 0 && t.Of[0].Kind == book.KindColony {
		names = LidRoom
	}
	by := r.ByRoom(t)
	title, why := m.Width(t.Title, titleSize, scene.Medium), m.Width(t.Why, whySize, scene.Regular)
	if one := routeInset + names + title + 2*routeGap + why + by; p.w >= oneLineAll && one <= p.w-p.end {
		return RouteLine
	}
	room := p.w - routeInset - Edge
	if names <= LidRoom {
		return RouteLine + RouteMore*unnamedLines(t, room, names, p.w-p.end-routeInset-by)
	}
	if title+routeGap+why <= room {
		return RouteLine + RouteMore
	}
	return RouteLine + RouteMore*float64(titleLines(t, room)+linesOf(t.Why, whySize, room))
}

// ByRoom is the room of the last day or hour of a task, or since when it is to be done,
// and of the gap before it.
func (r *Reading) ByRoom(t rules.Task) float64 {
	const near = 6 // days, within which the weekday says which
	at, said := t.By, "past Wed"
	if at.IsZero() {
		at, said = t.From, "since Wed"
	}
	if at.IsZero() {
		return 0
	}
	days := r.DayOf(at).Sub(r.Day)
	switch {
	case t.Hard && !t.By.IsZero() && !t.By.Before(r.View.On()):
		if said = "by Wed"; r.DayOf(t.By.Add(time.Second)) == r.DayOf(t.By) {
			said = "by Wed 00:00" // it does not end with the day
		}
	case days > near || days < -near:
		said = "since 00 Nov"
	}
	return Reckoner{}.Width(said, whySize, scene.SemiBold) + routeGap
}

// unnamedLines are how many lines beyond the first a task takes that names nobody:
// what to do begins on the first one, before when; why has the whole width.
func unnamedLines(t rules.Task, room, lid, beside float64) float64 {
	if t.By.IsZero() && t.From.IsZero() {
		beside = room - boxRoom
	}
	return float64(titleLines(t, beside-lid) - 1 + max(1, linesOf(t.Why, whySize, room)))
}

// titleLines are how many lines what to do fills in so much room.
func titleLines(t rules.Task, room float64) int {
	return len(scene.Wrap(Reckoner{}, t.Title, titleSize, scene.Medium, room))
}

// TaskNames are the names of what a task is about, in its order. A batch,
// colony or yard that its title names is left out.
func (r *Reading) TaskNames(t rules.Task) []book.Run {
	names := make([]string, 0, len(t.Of))
	for _, s := range t.Of {
		name := rules.Name(r.View, s)
		if s.Kind == book.KindNuc || !strings.Contains(strings.ToLower(t.Title), strings.ToLower(name)) {
			names = append(names, name)
		}
	}
	return book.Runs(names)
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
