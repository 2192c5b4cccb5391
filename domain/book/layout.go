package book

import (
	"cmp"
	"slices"

	"lidmark/domain/calendar"
)

// Layout is a try-out of how the boxes of a yard might stand, as it was last kept.
type Layout struct {
	LayoutTried
	At   calendar.Moment // when it was kept so
	From calendar.Day    // it is the plan, to be carried out from this day on; zero: it is not
}

// Planned tells whether the layout is its yard's plan.
func (l Layout) Planned() bool { return !l.From.IsZero() }

// Layouts are the try-outs of a yard, by name. One at most is the plan.
func (v *View) Layouts(yard YardID) []Layout {
	kept := map[LayoutID]Layout{}
	var plan LayoutID
	var from calendar.Day
	for _, e := range v.lines(yard.Subject()) {
		switch f := e.Fact.(type) {
		case LayoutTried:
			kept[f.Layout] = Layout{LayoutTried: f, At: e.At}
		case LayoutPlanned:
			plan, from = f.Layout, f.From
		case LayoutDropped:
			delete(kept, f.Layout)
			if plan == f.Layout {
				plan = LayoutID{}
			}
		}
	}
	if l, ok := kept[plan]; ok {
		l.From = from
		kept[plan] = l
	}
	all := make([]Layout, 0, len(kept))
	for _, l := range kept {
		all = append(all, l)
	}
	slices.SortFunc(all, func(a, b Layout) int { return cmp.Or(cmp.Compare(a.Name, b.Name), a.Layout.compare(b.Layout)) })
	return all
}

// Layout is a try-out as it was last kept, thrown away or not; one that nobody
// kept has no name.
func (v *View) Layout(id LayoutID) (l LayoutTried) {
	for _, e := range v.lines(id.Subject()) {
		if f, ok := e.Fact.(LayoutTried); ok {
			l = f
		}
	}
	return l
}

// PlannedLayout is the layout that a yard's boxes are to be set to; ok is false
// where there is none.
func (v *View) PlannedLayout(yard YardID) (l Layout, ok bool) {
	all := v.Layouts(yard)
	if i := slices.IndexFunc(all, Layout.Planned); i >= 0 {
		return all[i], true
	}
	return Layout{}, false
}

// Left is what of the layout is not so yet in the book: stands that stand
// otherwise, fronts with another mark, and boxes that face elsewhere.
func (v *View) Left(l Layout) (left LayoutTried) {
	for _, s := range l.Stands {
		if v.Stand(s.Stand).StandSet != s {
			left.Stands = append(left.Stands, s)
		}
	}
	for _, f := range l.Fronts {
		if v.Nuc(f.Nuc).Front != f {
			left.Fronts = append(left.Fronts, f)
		}
	}
	for _, f := range l.Faces {
		if v.Nuc(f.Nuc).NucNamed.Entrance != f.Entrance {
			left.Faces = append(left.Faces, f)
		}
	}
	return left
}

// Nothing tells whether a try-out changes nothing.
func (f LayoutTried) Nothing() bool { return len(f.Stands)+len(f.Fronts)+len(f.Faces) == 0 }

// Same tells whether two try-outs change the same in the same way, whatever they are
// called.
func (f LayoutTried) Same(o LayoutTried) bool {
	return slices.Equal(f.Stands, o.Stands) && slices.Equal(f.Fronts, o.Fronts) && slices.Equal(f.Faces, o.Faces)
}
