package state

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
	"lidmark/ui/scene"
)

// KeptLayout is a try-out that was kept, with its figures.
type KeptLayout struct {
	book.Layout
	LayoutSide
}

// keptOf are the try-outs of a yard that were kept, with what is held against others:
// not with what is wrong with how they stand.
func keptOf(r *Reading, id book.YardID, g yard.Ground, sun calendar.Day) (all []KeptLayout) {
	n, now := r.Numbers(), yard.Of(r.View, id)
	for _, l := range r.View.Layouts(id) {
		side := sideOf(now.Try(l.LayoutTried).With(r.Course.Holding), n)
		side.Sunny = yard.SunnyFronts(side.Layout, g, sun, n)
		_, side.Round = yard.RoundOf(side.Layout, g)
		all = append(all, KeptLayout{l, side})
	}
	return all
}

// as is the try-out as it is, or as if a virgin flew from each nuc.
func (k KeptLayout) as(full bool, n practice.Numbers) KeptLayout {
	if full {
		k.LayoutSide = k.full(n)
	}
	return k
}

// TriesLine is a try-out that was kept, as the list has it.
type TriesLine struct {
	Ref        scene.Ref
	Name, Says string
}

// TriesLines are the try-outs that were kept, but the one that is worked at.
func (s State) TriesLines() (all []TriesLine) {
	t := s.LayoutSheet()
	if t == nil {
		return nil
	}
	for i := range t.Kept {
		k := &t.Kept[i]
		says := fmt.Sprintf("drift %.1f %%, virgins lost %.1f", 100*k.Cost.Drift, k.Cost.Lost)
		if k.Planned() {
			says = "the plan from " + k.From.Short() + "; " + says
		}
		all = append(all, TriesLine{scene.Ref{Kind: TriesRef, ID: k.Layout.Layout.String()}, k.Name, says})
	}
	return all
}
