package state

import (
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// DayPage is the route of a day as the keeper works it off: what is done stays
// on it until the day is left. It is never changed, only replaced.
type DayPage struct {
	Day  calendar.Day
	Less Less       // how much less time there is than was planned
	of   *Reading   // the reading that it was made of last
	all  []PageStop // every line that was on it so far, done or not
	now  []PageStop // as it stands
	line lineName   // the line taken last
}

// PageStop is one stop of the page. Without a yard it holds what waits for
// another day.
type PageStop struct {
	rules.Stop        // its tasks are in the lines
	Who        string // does it, where several share the day
	Lines      []PageLine
}

// Waits tells whether the stop is no stop, but what waits for another day.
func (s PageStop) Waits() bool { return len(s.Lines) > 0 && s.Lines[0].Waits }

// PageLine is one line of the page.
type PageLine struct {
	rules.Task
	Number int     // among the tasks of the reading; below 0 for what is done
	Done   bool    // nothing of it is left to do
	Off    string  // until when it was put off, where it was
	Waits  bool    // there is no time for it today
	Price  float64 // of waiting, in queens
}

// lineName is what a line keeps while the book goes on.
type lineName struct {
	act   rules.Act
	title string
	first book.Subject
}

func nameOf(t rules.Task) lineName {
	n := lineName{act: t.Act, title: t.Title}
	if len(t.Of) > 0 {
		n.first = t.Of[0]
	}
	return n
}

// goesOn tells whether a line is what an earlier one has become: under its name, or the
// same work of which the first things are done.
func (l PageLine) goesOn(now PageLine) bool {
	was, is := nameOf(l.Task), nameOf(now.Task)
	return was == is || was.act == is.act && was.title == is.title && slices.Contains(l.Of, is.first)
}

// at tells whether two stops are the same one of the route.
func (s PageStop) at(t PageStop) bool {
	return s.Yard == t.Yard && s.Round == t.Round && s.Load == t.Load && s.Last == t.Last
}

// Page is the day's route with what was done of it.
func (s State) Page() []PageStop {
	r := s.Reading()
	if s.DayPage.of == r {
		return s.DayPage.now
	}
	return r.page()
}

// Lines are the lines of the page in their order, over all stops.
func (s State) Lines() (all []PageLine) {
	for _, stop := range s.Page() {
		all = append(all, stop.Lines...)
	}
	return all
}

// readPage is the page of the day's plan, with nothing done.
func (r *Reading) readPage() (page []PageStop) {
	number := 0
	for _, stop := range r.Plan().Stops {
		p := PageStop{Stop: stop}
		for _, t := range stop.Tasks {
			p.Lines = append(p.Lines, PageLine{Task: t, Number: number})
			number++
		}
		page = append(page, p)
	}
	return page
}

// turnedPage is the window with the page of the day in step with the book.
func (s State) turnedPage() State {
	if s.Book == nil || s.Room != Today || s.Walk != nil || s.Ahead() && !s.DayPage.Less.On() {
		return s
	}
	r, p := s.Reading(), s.DayPage
	if p.Day != s.Looked() {
		p = DayPage{Day: s.Looked()}
	}
	if p.of == r {
		return s
	}
	p.of, p.all = r, newStops(p.all, r.page())
	p.now = s.pageNow(p)
	s.DayPage = p
	return s
}

// newStops is all that was on a page, with what has come to it where it stands in
// the new one: behind what it stands behind there.
func newStops(all, now []PageStop) []PageStop {
	next := slices.Clone(all)
	at := -1
	for _, stop := range now {
		i := slices.IndexFunc(next, func(old PageStop) bool { return old.at(stop) })
		if i < 0 {
			at++
			next = slices.Insert(next, at, stop)
			continue
		}
		at = i
		next[i].Stop, next[i].Lines = stop.Stop, newLines(next[i].Lines, stop.Lines)
	}
	return next
}

func newLines(all, now []PageLine) []PageLine {
	next := slices.Clone(all)
	at := -1
	for _, l := range now {
		i := slices.IndexFunc(next, func(old PageLine) bool { return old.goesOn(l) })
		if i < 0 {
			at++
			next = slices.Insert(next, at, l)
			continue
		}
		at = i
		next[i].Of = union(next[i].Of, l.Of)
	}
	return next
}

// union are the subjects of both, those first that were there.
func union(old, now []book.Subject) []book.Subject {
	if slices.Equal(old, now) {
		return old
	}
	known := make(map[book.Subject]bool, len(old))
	for _, of := range old {
		known[of] = true
	}
	all := slices.Clone(old)
	for _, of := range now {
		if !known[of] {
			all = append(all, of)
		}
	}
	return all
}

// work is one kind of work at one thing.
type work struct {
	act rules.Act
	of  book.Subject
}

// pageNow is a page as it stands: in the place of each line what is done of it,
// and what is left to do.
func (s State) pageNow(p DayPage) (page []PageStop) {
	r := p.of
	plan := r.page()
	open := map[work]bool{}
	for _, stop := range plan {
		for _, l := range stop.Lines {
			for _, of := range l.Of {
				open[work{l.Act, of}] = true
			}
		}
	}
	told := map[doneWork]bool{}
	for _, stop := range p.all {
		var left []PageLine
		if i := slices.IndexFunc(plan, func(now PageStop) bool { return now.at(stop) }); i >= 0 {
			left = plan[i].Lines
		} else {
			stop.Start, stop.Drive = time.Time{}, 0 // nobody has to go there any more
		}
		lines := stop.Lines
		stop.Lines = nil
		for _, l := range lines {
			if done, ok := r.doneOf(l, open, told); ok {
				stop.Lines = append(stop.Lines, done)
			}
			if i := slices.IndexFunc(left, func(now PageLine) bool { return l.goesOn(now) }); i >= 0 {
				stop.Lines = append(stop.Lines, left[i])
				left = slices.Concat(left[:i], left[i+1:])
			}
		}
		// One of which the first thing is done stands under another name.
		if stop.Lines = append(stop.Lines, left...); len(stop.Lines) > 0 {
			page = append(page, stop)
		}
	}
	if p.Less.On() {
		return s.lessPage(p, page)
	}
	return page
}

// doneWork is work under its title.
type doneWork struct {
	work
	title string
}

// doneOf is what is done of a line, and whether any of it is: work that is not
// open any more at things of which it was written on the day that it was done. What was
// told by a line before is left out: once its first thing was gone the same work
// stood under another name.
func (r *Reading) doneOf(l PageLine, open map[work]bool, told map[doneWork]bool) (PageLine, bool) {
	var of []book.Subject
	off := ""
	for _, sub := range l.Of {
		name := doneWork{work{l.Act, sub}, l.Title}
		if open[name.work] || told[name] {
			continue
		}
		if until := r.offUntil(l, sub); until != 0 {
			off = until.Short()
			of = append(of, sub)
		} else if r.did(l.Act, sub) {
			of = append(of, sub)
		} else {
			continue
		}
		told[name] = true
	}
	if len(of) == 0 {
		return PageLine{}, false
	}
	l.Minutes *= float64(len(of)) / float64(len(l.Of))
	l.Of, l.Number, l.Done, l.Off = of, -1, true, off
	return l, true
}

// offUntil is until when what a line asks of a thing was put off.
func (r *Reading) offUntil(l PageLine, sub book.Subject) calendar.Day {
	for _, asked := range l.Findings {
		if !slices.Contains(asked.Subjects(), sub) {
			continue
		}
		for _, f := range r.About(asked.Of) {
			if f.Rule == asked.Rule && !f.PutOff.IsZero() {
				return f.PutOff
			}
		}
	}
	return 0
}

// did tells whether it was written on the day that an act was done at a thing.
func (r *Reading) did(act rules.Act, sub book.Subject) bool {
	return slices.ContainsFunc(r.View.LinesSince(sub, r.Day.Start(r.View.Zone())), func(e *book.Entry) bool { return act.Did(e.Fact) })
}
