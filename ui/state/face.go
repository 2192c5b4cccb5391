package state

import (
	"sync"

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

// matter is what is the matter with the nuc, or why it is taken for what it is.
func (n *Nuc) matter() string {
	for _, f := range n.Findings {
		if f.NeedsYou() {
			return f.What
		}
	}
	return n.Presumed.Why
}
