package state

import (
	"strings"
	"sync"

	"lidmark/domain/rules"
	"lidmark/ui/scene"
)

// face is what the lid of a nuc says, put together when it is first drawn.
type face struct {
	once   sync.Once
	ref    scene.Ref
	reason string
	turn   float64
}

func (n *Nuc) shown() *face {
	n.face.once.Do(func() {
		n.face.ref, n.face.reason = RefOf(n.Nuc.Nuc.Subject()), n.Name+"  "+n.matter()
		if !n.Stand.IsZero() {
			n.face.turn = n.reading.View.Stand(n.Stand).Turn
		}
	})
	return &n.face
}

// Tag names the nuc in a scene, with the one line that is shown when the pointer
// rests on it.
func (n *Nuc) Tag() scene.Tag { f := n.shown(); return scene.Tag{Ref: f.ref, Reason: f.reason} }

// Turn is how far the nuc is turned with its stand, degrees clockwise.
func (n *Nuc) Turn() float64 { return n.shown().turn }

// matter is why the nuc needs the keeper, with what to do and by when, or else why it is
// taken for what it is.
func (n *Nuc) matter() string {
	for _, f := range n.Findings {
		if f.NeedsYou() {
			why, _, _ := strings.Cut(f.Why, "; ")
			why, _, _ = strings.Cut(why, ": ")
			return why + "; " + n.reading.doBy(f)
		}
	}
	return n.Presumed.Why
}

// doBy is what to do about a finding, and by when: by a day, or where nature sets the
// hour by that.
func (r *Reading) doBy(f rules.Finding) string {
	by, do := f.By.In(r.View.Zone()), WithinSentence(f.Do)
	switch {
	case f.By.IsZero() || strings.Contains(do, " by "):
		return do
	case f.Hard:
		return do + " by " + by.Format("Mon 2 Jan 15:04")
	}
	return do + " by " + by.Format("Mon 2 Jan")
}
