package rules

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// facesOn are the boxes on a stand that a layout turns.
func facesOn(v *book.View, left book.LayoutTried, on book.StandID) (faces []book.NucFaced) {
	for _, f := range left.Faces {
		if v.Nuc(f.Nuc).Stand == on {
			faces = append(faces, f)
		}
	}
	return faces
}

// facesSaid is which way boxes are turned, on a stand that is turned so.
func facesSaid(v *book.View, turn float64, faces []book.NucFaced) string {
	words := make([]string, len(faces))
	for i, f := range faces {
		words[i] = fmt.Sprintf("%s to the %s", v.Nuc(f.Nuc).Name, yard.Compass(f.Entrance+turn))
	}
	return "turn " + strings.Join(words, ", ")
}

// boxesTurn is the work at the stands that stay, on which boxes are to face elsewhere:
// a task a stand, told at the first of the boxes.
func (p *pass) boxesTurn(y *yardCase, plan book.Layout, left book.LayoutTried) {
	var done []book.StandID
	for _, to := range left.Stands {
		done = append(done, to.Stand) // told with it
	}
	for _, f := range left.Faces {
		n := p.view.Nuc(f.Nuc)
		if n.Yard != y.id || slices.Contains(done, n.Stand) {
			continue
		}
		done = append(done, n.Stand)
		p.add(y, p.boxesTurned(y, plan, n.Stand, facesOn(p.view, left, n.Stand)))
	}
}

func (p *pass) boxesTurned(y *yardCase, plan book.Layout, on book.StandID, faces []book.NucFaced) Finding {
	nucs := make([]*book.Nuc, len(faces))
	for i, f := range faces {
		nucs[i] = p.view.Nuc(f.Nuc)
	}
	from, held := p.flown(plan.From, nucs)
	f := Finding{
		Rule: LayoutStep, Of: nucs[0].Nuc.Subject(), Act: ActCarryStand, Takes: p.numbers.Get(practice.MinutesTurnNuc) * float64(len(nucs)),
		Since: plan.At.Instant, From: p.clock(practice.Dusk, from, y.zone), Best: p.clock(practice.Dusk, max(from, y.today), y.zone),
		What: "boxes on a stand are to face elsewhere",
		Do:   "After dusk, entrances shut: " + facesSaid(p.view, p.view.Stand(on).Turn, faces),
		Why:  fmt.Sprintf("the layout %q is the plan from %s", plan.Name, plan.From.ShortFrom(p.today)),
		Sure: sureCalendar, Used: []practice.Key{practice.VirginMayFlyFrom, practice.MinutesTurnNuc, practice.Dusk},
	}
	for _, n := range nucs[1:] {
		f.Also = append(f.Also, n.Nuc.Subject())
	}
	if held != "" {
		f.Why += "; " + held
	}
	return f
}
