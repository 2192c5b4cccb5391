package state

import (
	"cmp"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
)

// Walk is the walk of one day while it is typed in: its rows in walking order,
// the line being typed, and the count at its end. It is never changed, only
// replaced.
type Walk struct {
	Day     calendar.Day
	Yard    book.YardID // whose nucs are walked; zero: those of all yards
	Part    calendar.Part
	All     bool     // rows for all nucs, not only for those of the day
	Stands  []string // letters of the stands whose rows alone are shown; none: all rows
	Reader  string   // who reads aloud; "" until somebody is chosen
	Rows    []WalkRow
	At      RowName // the row that is typed into
	Says    LineSays
	Refused string // what was typed when Enter found that it makes no sense
	Passed  Passed // the question asked again of the row that is typed into
	Warned  bool   // it was said once what is typed and not written
	Closing []rules.Closing
	Twins   []rules.Twin // lines that stand twice
	Done    int          // nucs that are written
	Nucs    int          // nucs of the walk
	Asking  int          // rows that do not fit the book, and nobody has said why
	Before  *Reading     // the book as it was when the walk was opened

	behind  book.NucID          // the nuc behind which the walk goes on, once it is read anew
	hidden  []book.NucID        // open nucs of stands that are not shown
	since   int                 // the deeds written before the walk was opened
	nucs    []*Nuc              // in the order in which they are driven to and walked
	kept    map[book.NucID]bool // nucs whose rows were struck: they stay to be typed anew
	season  *book.Season        // the book with all that is on its way into it
	view    *book.View          // of the walk's day
	course  *course.Course
	present *Reading             // the same of now
	coming  map[book.BatchID]int // rows that are to get a cell, by its batch
	ids     []book.NucID         // in walking order
	places  map[book.NucID]int   // of the nucs in walking order
	plan    map[book.NucID]string
	ground  []book.Entry // of the season, what every nuc's clock rests on
}

// WalkField is the field of the line of the row that is typed into.
const WalkField = "walk.line"

// RowRef is the kind of a [scene.Ref] that names a row of the walk; its ID is
// that of [WalkRow.Ref].
const RowRef = "row"

// noWalk says why no walk can be opened.
func noWalk(s State) string {
	if s.Ahead() {
		return "that day has not come: type it in when it has, or go back to now with Home"
	}
	return noPen(s)
}

// notWalking says why there is no walk to do something in.
func notWalking(s State) string {
	switch {
	case s.Walk == nil:
		return "no walk is open"
	case s.Asked != nil:
		return "answer the question first"
	}
	return ""
}

// toWalk is the window with the walk of the day looked at, and the keys going to
// its first open row.
func (s State) toWalk() State {
	yard := s.Yards[Today]
	s = s.entered(Today)
	s.Fill, s.Selection, s.Sheet = RecordFill, Selection{}, false
	s.Walk = nil
	before := s.Reading()
	w := &Walk{Day: s.Looked(), Yard: yard, Before: before, present: s.Present(), since: s.Pen.Deeds}
	if s.Looked() == s.Today() {
		w.Part = partBy(s.Now.In(before.View.Zone()).Hour())
	}
	w.laidOut()
	s.Walk = w
	s = s.walkRead()
	return s.rowOpened(s.Walk.nextOpen(RowName{}))
}

// partBy is the part of the day that is over at an hour, or running.
func partBy(hour int) calendar.Part {
	const noon, afternoon = 12, 15 // common practice, no source
	switch {
	case hour < noon:
		return calendar.Morning
	case hour < afternoon:
		return calendar.Midday
	}
	return calendar.Afternoon
}

// laidOut sets what the walk takes from the book as it was when it was opened.
func (w *Walk) laidOut() {
	w.nucs = driven(w.Before, w.Yard)
	w.ground, w.plan = groundOf(w.Before.View), w.plans()
	w.places, w.ids = map[book.NucID]int{}, nil
	for i, n := range w.nucs {
		w.places[n.Nuc.Nuc] = i
		w.ids = append(w.ids, n.Nuc.Nuc)
	}
}

// driven are the nucs of a yard, of all yards for the zero one in the order in
// which the route drives to them; yards it does not lead to come last.
func driven(r *Reading, yard book.YardID) []*Nuc {
	var order []book.YardID
	for _, stop := range r.Plan().Stops {
		if !slices.Contains(order, stop.Yard) {
			order = append(order, stop.Yard)
		}
	}
	place := func(n *Nuc) int {
		if i := slices.Index(order, n.Yard); i >= 0 {
			return i
		}
		return len(order)
	}
	nucs := slices.Clone(r.In(yard))
	slices.SortStableFunc(nucs, func(a, b *Nuc) int { return cmp.Compare(place(a), place(b)) })
	return nucs
}

// nextReader is the window with the next person of the book reading aloud, behind
// the last one nobody.
func (s State) nextReader() State {
	names := []string{""}
	for p := range s.Present().View.People() {
		if p.Name != s.Pen.Writer {
			names = append(names, p.Name)
		}
	}
	at := slices.Index(names, s.Walk.Reader)
	return s.withWalk(func(w *Walk) { w.Reader = names[(at+1)%len(names)] })
}

// withWalk is the window with a changed copy of the walk.
func (s State) withWalk(change func(*Walk)) State {
	w := *s.Walk
	change(&w)
	s.Walk = &w
	return s
}

// walked is the window after a message, with the walk in step with the book, the
// day and the room.
func (s State) walked(before State) State {
	w := s.Walk
	switch {
	case w == nil:
		return s
	case s.Fill != RecordFill || s.Room != Today || s.Book == nil:
		return s.unwalked()
	case s.Looked() != w.Day || s.Filled() != w.Yard:
		if noWalk(s) != "" {
			return s.unwalked().entered(Today)
		}
		return s.toWalk()
	case s.closed(before):
		return s.walkRead().walkLeft()
	case s.Book != before.Book || s.Pen.moved(before.Pen):
		s = s.asBefore(before).walkRead()
		if !s.Walk.has(s.Walk.At) {
			s = s.rowOpened(s.Walk.openBehind(s.Walk.behind))
		}
		s = s.rowShown()
	case s.Asked != before.Asked || s.Size() != before.Size():
		s = s.rowShown()
	}
	if s.Form == nil && (s.Focus == scene.Ref{} || before.Form != nil) {
		s.Focus = FieldNamed(WalkField)
	}
	return s
}

// tickedTo is the window with the clock moved. A walk stays one of its day when
// that is over.
func (s State) tickedTo(now time.Time) State {
	s.Now = now
	if s.Walk != nil && s.Day.IsZero() && s.Walk.Day != s.Today() {
		s = s.on(s.Walk.Day)
	}
	return s
}

// unwalked is the window after a walk: with it end the question that waits in it,
// its forms, and its line.
func (s State) unwalked() State {
	s.Walk, s.Asked = nil, nil
	if rec, ok := RecordNamed(s.formName()); ok && rec.ofWalk() {
		s = s.formLeft()
	}
	if s.InField() == WalkField {
		s.Focus = scene.Ref{}
	}
	return s
}

// moved tells whether something was written, undone or refused since.
func (p Pen) moved(before Pen) bool {
	return p.Deeds != before.Deeds || len(p.Sent) != len(before.Sent) || len(p.Failed) != len(before.Failed) ||
		p.Writer != before.Writer
}

// season is the book, in a walk with all that is on its way into it.
func (s State) season() *book.Season {
	if s.Walk == nil {
		return s.Book.Season
	}
	var under []book.Entry
	for _, d := range slices.Concat(s.Pen.Failed, s.Pen.Sent) {
		under = append(under, d.Entries...)
	}
	if len(under) == 0 {
		return s.Book.Season
	}
	return s.Book.Season.With(under...)
}

// walkRead is the window with the walk read anew from the book and from what is
// on its way into it.
func (s State) walkRead() State {
	w := *s.Walk
	w.season = s.season()
	on := s.Now
	if w.Day < s.Today() {
		on = (w.Day + 1).Start(w.Before.View.Zone()).Add(-time.Second)
	}
	w.view = w.season.At(on)
	w.course = course.New(w.view)
	w.Closing = rules.Close(w.view, w.Day)
	w.Twins = rules.TwinsOn(w.view, w.Day)
	w.Rows = w.rows(s.Pen, s.Now)
	w.counted()
	s.Walk = &w
	return s.says()
}

// parted is the walk with its lines of a part of the day. A key that sets clears
// nothing: what is lit stays lit.
func parted(p calendar.Part) func(State) (State, []Effect) {
	return pure(func(s State) State {
		return s.withWalk(func(w *Walk) {
			w.Part = p
		}).says()
	})
}

// allNucs is the walk with rows for all nucs, or again only for those of the day.
func (s State) allNucs() State {
	s = s.withWalk(func(w *Walk) {
		w.All = !w.All
		w.Rows = w.rows(s.Pen, s.Now)
		w.counted()
	})
	if !s.Walk.has(s.Walk.At) {
		return s.rowOpened(s.Walk.nextOpen(RowName{}))
	}
	return s.rowShown()
}

// walkLeft is the window without the walk, and in the foot what is left of it.
func (s State) walkLeft() State {
	s.Note = Note{Text: s.Walk.left()}
	s.Walk = nil
	return s.entered(Today)
}

// asBefore is the window with its walk resting on the book as it was without what
// the walk itself wrote, once something written before it is undone or redone.
func (s State) asBefore(before State) State {
	if len(s.Pen.Undone) == len(before.Pen.Undone) {
		return s
	}
	var here []book.Entry
	for _, d := range slices.Concat(s.Pen.Done, s.Pen.Sent, s.Pen.Failed) {
		if d.Number > s.Walk.since && !d.Turns {
			here = append(here, d.Entries...)
		}
	}
	b := &Book{Name: s.Book.Name, Season: s.season().With(unwritten(here)...)}
	r := b.On(s.Now, s.Walk.Day)
	return s.withWalk(func(w *Walk) {
		w.Before = r
		w.laidOut()
	})
}

// Readers tells whether there is somebody to choose who reads aloud.
func (s State) Readers() bool {
	for p := range s.Present().View.People() {
		if p.Name != s.Pen.Writer {
			return true
		}
	}
	return false
}
