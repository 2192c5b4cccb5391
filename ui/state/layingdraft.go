package state

import (
	"bytes"
	"fmt"
	"maps"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/yard"
)

// unkept is what a try-out changes, where the book does not have it so; ok is false
// where nothing would be lost with it.
func (l *Laying) unkept(v *book.View) (t book.LayoutTried, ok bool) {
	now := yard.Of(v, l.Yard)
	t = l.Try.TriedAs(l.ID, l.Name, now)
	kept := book.LayoutTried{Yard: l.Yard, Name: l.Name}
	for _, k := range v.Layouts(l.Yard) {
		if k.Layout == l.ID {
			kept = now.Try(k.LayoutTried).TriedAs(l.ID, k.Name, now)
		}
	}
	same := t.Name == kept.Name && t.Same(kept)
	return t, !same
}

// laidAside is the window with the try-out put by, so that it is there again when its
// yard is laid out again.
func (s State) laidAside() State {
	if s.Laying == nil {
		return s
	}
	s.Laid = maps.Clone(s.Laid)
	if s.Laid == nil {
		s.Laid = map[book.YardID]*Laying{}
	}
	s.Laid[s.Laying.Yard] = s.Laying
	return s
}

// empty tells whether nothing stands in a try-out and nothing was done in it: it is then
// as if it had never been begun.
func (l *Laying) empty() bool {
	return l == nil || len(l.Try.Stands)+len(l.past)+len(l.ahead) == 0 && l.ID.IsZero()
}

// triesUnkept are the try-outs that the book does not have as they are, by yard.
func (s State) triesUnkept() (all []book.LayoutTried) {
	for _, l := range s.laidAside().Laid {
		for ; l != nil; l = l.left {
			if t, unkept := l.unkept(s.Present().View); unkept {
				all = append(all, t)
			}
		}
	}
	slices.Reverse(all) // the one that is worked at last
	slices.SortStableFunc(all, func(a, b book.LayoutTried) int { return bytes.Compare(a.Yard[:], b.Yard[:]) })
	return all
}

// triedSince tells whether a try-out is another one than before; not while a stand is
// dragged.
func (s State) triedSince(before State) bool {
	was := before.Laying
	if before.Drag.Kind == TriedDrag {
		was = before.Drag.Laying
	}
	return s.Drag.Kind != TriedDrag && !s.Laying.same(was)
}

// same tells whether two try-outs are the same try of the same layout.
func (l *Laying) same(o *Laying) bool {
	if l == nil || o == nil || l == o {
		return l == o
	}
	first := func(y yard.Layout) *yard.Stand {
		if len(y.Stands) == 0 {
			return nil
		}
		return &y.Stands[0]
	}
	return l.Yard == o.Yard && l.ID == o.ID && l.Name == o.Name && first(l.Try) == first(o.Try)
}

// triedBefore is the window with the try-outs of a draft in it; said tells of them.
func (s State) triedBefore(all []book.LayoutTried) (next State, said string) {
	v := s.Present().View
	for _, t := range all {
		if !s.Present().Known(t.Yard.Subject()) {
			continue
		}
		if !slices.ContainsFunc(v.Layouts(t.Yard), func(l book.Layout) bool { return l.Layout == t.Layout }) {
			t.Layout = book.LayoutID{}
		}
		next := &Laying{Yard: t.Yard, ID: t.Layout, Name: t.Name, Try: yard.Of(v, t.Yard).Try(t), Grid: layoutGrid}
		if s.Laying != nil && s.Laying.Yard == t.Yard {
			next.left = s.Laying
		}
		s = s.laidAside()
		s.Laying = next
		said = fmt.Sprintf("try-out %q of %s, not kept yet, is here again: Alt+Z", t.Name, v.Yard(t.Yard).Name)
	}
	return s, said
}
