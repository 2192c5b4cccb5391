package book

import (
	"iter"
	"maps"
	"slices"
	"sync"
	"time"
)

// Zones finds a time zone by its name, as [time.LoadLocation] does. It is an
// argument so that folding reads no file.
type Zones func(name string) (*time.Location, error)

// Season is a set of entries, each found under its subjects. It is immutable;
// [Season.With] makes the next one. The same set of entries makes the same
// season, in whatever order and grouping they arrive. What its views fold is
// remembered, which makes them quicker and changes none of their answers.
type Season struct {
	zones      Zones
	all        []*Entry             // in the order of the book
	about      map[Subject][]*Entry // each in the order of the book; entries about nothing under the zero Subject
	kinds      map[Kind][]Subject   // every subject there is
	suspicions []*Entry             // of disease, begun and ended, in the order of the book
	putOffs    []*Entry             // in the order of the book
	robberies  []*Entry             // in the order of the book
	struck     func() *struck       // all that is struck, as known now
	folded     *memory              // shared with the seasons it was made from and those made from it
}

// NewSeason is the season of entries, in any order; an entry that is there
// twice counts once; a journal never keeps two entries of one id. With nil zones every yard keeps UTC. It takes time in
// proportion to the entries, and sorts them only if they are not in order.
func NewSeason(zones Zones, entries []Entry) *Season {
	s := &Season{zones: zones, all: sorted(entries), about: map[Subject][]*Entry{}, kinds: map[Kind][]Subject{}, folded: &memory{}}
	s.struck = sync.OnceValue(s.findStruck)
	keys := newKeys()
	for _, e := range s.all {
		for _, sub := range keys.of(e) {
			s.know(sub)
			s.about[sub] = append(s.about[sub], e)
		}
		if list := s.special(e.Fact); list != nil {
			*list = append(*list, e)
		}
	}
	return s
}

// With is the season with more entries. What is there already is left out.
// It costs a copy of the index, not a new fold: what was folded of subjects that
// the new entries do not touch is known to the new season too.
func (s *Season) With(entries ...Entry) *Season {
	next := new(*s)
	next.about, next.kinds = maps.Clone(s.about), map[Kind][]Subject{}
	for kind, subs := range s.kinds {
		next.kinds[kind] = slices.Clip(subs) // so that appending copies
	}
	more := slices.DeleteFunc(sorted(entries), func(e *Entry) bool { return contains(s.all, e) })
	next.insert(more)
	if slices.ContainsFunc(more, s.struck().touches) {
		next.struck = sync.OnceValue(next.findStruck)
	}
	return next
}

// insert takes in entries that are new to the season, in the order of the book.
func (s *Season) insert(more []*Entry) {
	s.all = merged(s.all, more)
	about, special := map[Subject][]*Entry{}, map[*[]*Entry][]*Entry{}
	keys := newKeys()
	for _, e := range more {
		for _, sub := range keys.of(e) {
			if len(about[sub]) == 0 {
				s.know(sub)
			}
			about[sub] = append(about[sub], e)
		}
		if list := s.special(e.Fact); list != nil {
			special[list] = append(special[list], e)
		}
	}
	for sub, entries := range about {
		s.about[sub] = merged(s.about[sub], entries)
	}
	for list, entries := range special {
		*list = merged(*list, entries)
	}
}

// know notes a subject when it is met for the first time.
func (s *Season) know(sub Subject) {
	if _, known := s.about[sub]; !known {
		s.kinds[sub.Kind] = append(s.kinds[sub.Kind], sub)
	}
}

// special is the list of entries that are asked for whatever they are about, to
// which a fact belongs; nil for most.
func (s *Season) special(f Fact) *[]*Entry {
	switch f.(type) {
	case DiseaseSuspected, SuspicionEnded:
		return &s.suspicions
	case PutOff:
		return &s.putOffs
	case Robbed:
		return &s.robberies
	default:
		return nil
	}
}

// zone is the time zone of a name, or UTC when there is none of that name.
func (s *Season) zone(name string) *time.Location {
	if s.zones == nil {
		return time.UTC
	}
	if z, err := s.zones(name); err == nil && name != "" {
		return z
	}
	return time.UTC
}

// Len is the number of entries.
func (s *Season) Len() int { return len(s.all) }

// Entries yields all entries in the order of the book.
func (s *Season) Entries() iter.Seq[Entry] {
	return func(yield func(Entry) bool) {
		for _, e := range s.all {
			if !yield(*e) {
				return
			}
		}
	}
}

// Entry finds an entry by its id. It costs a walk over the entries.
func (s *Season) Entry(id EntryID) (Entry, bool) {
	for _, e := range s.all {
		if e.ID == id {
			return *e, true
		}
	}
	return Entry{}, false
}

// keys lists the subjects under which entries are found, of one entry after the
// other in the same memory. Make it with [newKeys].
type keys struct {
	seen []Subject
	add  func(Subject)
}

func newKeys() *keys {
	k := &keys{}
	k.add = func(sub Subject) {
		if !sub.IsZero() && !slices.Contains(k.seen, sub) {
			k.seen = append(k.seen, sub)
		}
	}
	return k
}

// of are the subjects of an entry without repeats, or the zero Subject when it
// has none. They are good until the next entry is asked for.
func (k *keys) of(e *Entry) []Subject {
	k.seen = k.seen[:0]
	e.Fact.about(k.add)
	if len(k.seen) == 0 {
		k.seen = append(k.seen, Subject{})
	}
	return k.seen
}

func compareEntries(a, b *Entry) int { return a.Compare(*b) }

func sorted(entries []Entry) []*Entry {
	all := make([]*Entry, len(entries))
	for i := range entries {
		all[i] = &entries[i]
	}
	if !slices.IsSortedFunc(all, compareEntries) {
		slices.SortFunc(all, compareEntries)
	}
	return slices.CompactFunc(all, func(a, b *Entry) bool { return compareEntries(a, b) == 0 })
}

func contains(all []*Entry, e *Entry) bool {
	_, found := slices.BinarySearchFunc(all, e, compareEntries)
	return found
}

// merged is a new list of the entries of two that have none in common, in the
// order of the book. It is quickest when those of the second come last.
func merged(all, more []*Entry) []*Entry {
	next := make([]*Entry, 0, len(all)+len(more))
	for _, e := range more {
		i, _ := slices.BinarySearchFunc(all, e, compareEntries)
		next = append(append(next, all[:i]...), e)
		all = all[i:]
	}
	return append(next, all...)
}
