package book

import (
	"iter"
	"slices"
	"sort"
	"sync"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// View is a season as it stood at an instant: what had happened by then, as
// it is known now, or as it was known at another instant. Subjects are folded
// when they are first asked for and remembered. A View may be used from
// several goroutines; what it returns is shared and must not be changed.
type View struct {
	season *Season
	on     time.Time
	known  time.Time
	ahead  bool         // of a day ahead, as a whole
	since  calendar.Day // that it is looked ahead from
	struck *struck

	numbers func() practice.Numbers
	zone    func() *time.Location
	last    func() *Entry
	order   func() []*Nuc              // the nucs in walking order
	names   func() map[string][]*Nuc   // by name
	rows    func() map[YardID][]*Stand // the stands of a yard, in order
	yards   folds[YardID, Yard]
	stands  folds[StandID, Stand]
	boxes   folds[BoxID, BoxBuilt]
	nucs    folds[NucID, Nuc]
	cols    folds[ColonyID, Colony]
	people  folds[PersonID, Person]
	queens  folds[QueenID, Queen]
	batches folds[BatchID, Batch]
	orders  folds[OrderID, Order]
}

// At is the season at an instant, as it is known now.
func (s *Season) At(on time.Time) *View { return s.AsKnown(on, time.Time{}) }

// AsKnown is the season at an instant as it was known at another: entries
// written later than known do not count. A zero known is now.
func (s *Season) AsKnown(on, known time.Time) *View {
	v := &View{season: s, on: on, known: known}
	v.struck = s.struckBy(known)
	v.numbers = sync.OnceValue(v.foldNumbers)
	v.zone = sync.OnceValue(v.homeZone)
	v.last = sync.OnceValue(v.writtenLast)
	v.order = sync.OnceValue(v.orderNucs)
	v.rows = sync.OnceValue(v.orderStands)
	v.names = sync.OnceValue(v.nameNucs)
	return v
}

// Later is the season at an instant of a day ahead of another, from which it is looked at.
func (s *Season) Later(on time.Time, from calendar.Day) *View {
	v := s.At(on)
	v.since = from
	return v
}

// Ahead is [Season.Later], read for the whole of that day.
func (s *Season) Ahead(on time.Time, from calendar.Day) *View {
	v := s.Later(on, from)
	v.ahead = true
	return v
}

// From is the day from which the view's own is looked at: an earlier one, or its own.
func (v *View) From() calendar.Day {
	if v.since.IsZero() {
		return v.Today()
	}
	return min(v.since, v.Today())
}

// Begun is the instant up to which the hours of the view's day are over: its own; zero
// where it is of a day ahead as a whole, see [Season.Ahead].
func (v *View) Begun() time.Time {
	if v.ahead {
		return time.Time{}
	}
	return v.on
}

// On is the instant the view is of.
func (v *View) On() time.Time { return v.on }

// Known is the instant whose knowledge the view has; zero for now.
func (v *View) Known() time.Time { return v.known }

// Season is the season the view is of.
func (v *View) Season() *Season { return v.season }

// Numbers are the keeper's numbers as they stood.
func (v *View) Numbers() practice.Numbers { return v.numbers() }

// Today is the view's day in the zone of the home yard.
func (v *View) Today() calendar.Day { return calendar.DayOf(v.on, v.Zone()) }

// Lines yields the entries about a subject that count, in the order of the
// book: up to the view's instant, as known, and not struck.
func (v *View) Lines(of Subject) iter.Seq[Entry] {
	return func(yield func(Entry) bool) {
		for _, e := range v.lines(of) {
			if !yield(*e) {
				return
			}
		}
	}
}

// LinesSince are the entries about a subject that count and are not before an
// instant, in the order of the book. It costs a search, not a walk over them.
func (v *View) LinesSince(of Subject, since time.Time) []*Entry {
	lines := v.lines(of)
	from := sort.Search(len(lines), func(i int) bool { return !lines[i].At.Instant.Before(since) })
	return slices.Clip(lines[from:])
}

// All yields every entry that counts, in the order of the book.
func (v *View) All() iter.Seq[Entry] {
	return func(yield func(Entry) bool) {
		for e := range v.counted(v.season.all) {
			if !yield(*e) {
				return
			}
		}
	}
}

// OfDay yields the entries of one day that count, in the order of the book. It
// costs a search, not a walk over the book.
func (v *View) OfDay(d calendar.Day) iter.Seq[Entry] {
	zone := v.Zone()
	from, to := v.from(d.Start(zone)), v.from((d + 1).Start(zone))
	return func(yield func(Entry) bool) {
		for e := range v.counted(v.season.all[from:to]) {
			if !yield(*e) {
				return
			}
		}
	}
}

// PutOffs yields the entries that put a finding off and count, in the order of
// the book. It costs a walk over these, not over the book.
func (v *View) PutOffs() iter.Seq[PutOff] {
	return func(yield func(PutOff) bool) {
		for e := range v.counted(v.season.putOffs) {
			if !yield(e.Fact.(PutOff)) {
				return
			}
		}
	}
}

// Robberies yields at which nuc robbers were and when, as far as it counts, in
// the order of the book. It costs a walk over these, not over the book.
func (v *View) Robberies() iter.Seq2[calendar.Moment, NucID] {
	return func(yield func(calendar.Moment, NucID) bool) {
		for e := range v.counted(v.season.robberies) {
			if !yield(e.At, e.Fact.(Robbed).Nuc) {
				return
			}
		}
	}
}

// Line is one entry about a subject, struck ones included, for a history.
type Line struct {
	Entry
	Struck bool
}

// History yields the entries about a subject in the order of the book, the
// struck ones marked.
func (v *View) History(of Subject) iter.Seq[Line] {
	return func(yield func(Line) bool) {
		for _, e := range v.season.about[of] {
			if v.happened(e) && v.written(e) && !yield(Line{*e, v.struck.entries[e.ID]}) {
				return
			}
		}
	}
}

// Subjects yields all of a kind that the book has a line about, struck or not, at whatever
// instant.
func (v *View) Subjects(kind Kind) iter.Seq[Subject] { return slices.Values(v.season.kinds[kind]) }

// Last is the entry that was written last, of those that count; an undo would
// strike it. Strikes themselves are passed over.
func (v *View) Last() (Entry, bool) {
	if last := v.last(); last != nil {
		return *last, true
	}
	return Entry{}, false
}

func (v *View) writtenLast() (last *Entry) {
	for e := range v.counted(v.season.all) {
		if _, strike := e.Fact.(Struck); !strike && (last == nil || compareWritten(last, e) < 0) {
			last = e
		}
	}
	return last
}

// lines are the entries about a subject that count, in the order of the book:
// a beginning of the season's own list where nothing has to be left out.
func (v *View) lines(of Subject) []*Entry {
	all := v.season.about[of]
	if n := len(all); n > 0 && !v.happened(all[n-1]) {
		all = all[:sort.Search(n, func(i int) bool { return !v.happened(all[i]) })]
	}
	if v.known.IsZero() && !v.struck.about[of] {
		return all
	}
	return slices.Collect(v.counted(all))
}

func (v *View) counted(entries []*Entry) iter.Seq[*Entry] {
	return func(yield func(*Entry) bool) {
		for _, e := range entries {
			if !v.happened(e) {
				return
			}
			if v.written(e) && !v.struck.entries[e.ID] && !yield(e) {
				return
			}
		}
	}
}

func (v *View) happened(e *Entry) bool { return !e.At.Instant.After(v.on) }

func (v *View) written(e *Entry) bool { return v.known.IsZero() || !e.Written.After(v.known) }

// from is the index of the first entry at or after an instant.
func (v *View) from(t time.Time) int {
	i, _ := slices.BinarySearchFunc(v.season.all, t, func(e *Entry, t time.Time) int {
		return e.At.Instant.Compare(t)
	})
	return i
}

// foldNumbers goes through what is remembered, so that views that know the same
// changes have the very same numbers.
func (v *View) foldNumbers() practice.Numbers {
	return v.season.folded.numbers.get(Subject{}, v.lines(Subject{}), practice.Numbers{}, numbers{}).Numbers
}

type numbers struct{ practice.Numbers }

func (n *numbers) again() numbers { return *n }

func (n *numbers) take(e *Entry) {
	if f, ok := e.Fact.(NumberChanged); ok {
		n.Numbers = changed(n.Numbers, f)
	}
}

// changed leaves the numbers as they are when a number is unknown or its
// value out of range: folding never fails.
func changed(n practice.Numbers, f NumberChanged) practice.Numbers {
	key, ok := practice.ByName(f.Number)
	if !ok {
		return n
	}
	if f.Back {
		return n.Without(key)
	}
	if next, err := n.With(key, f.Value); err == nil {
		if f.In != "" && practice.Of(key).Unit == practice.Money {
			return next.InMoney(f.In)
		}
		return next
	}
	return n
}
