package view

import (
	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// lidOf is the lid of a nuc, the same on map, grid, wall, lists and card; what
// a place leaves out it takes away.
func (p *sheet) lidOf(n *state.Nuc, centre scene.Point, size float64) scene.Lid {
	r := p.reading
	subject := n.Nuc.Nuc.Subject()
	ref := state.RefOf(subject)
	return scene.Lid{
		At: centre, Size: size, Condition: scene.Condition(n.Presumed.Condition), Seen: n.Presumed.Seen && !r.Ahead,
		Entrance: n.NucNamed.Entrance + p.turnOf(n), Timed: n.Timed, Used: n.Used,
		NeedsYou: n.NeedsYou, Ahead: p.away, Caught: caught(n), Paint: scene.Paint(n.Paint),
		Selected: p.s.Selection.Has(subject) || p.batchChosen(n), Hover: p.hovered(n, ref),
		Tag: scene.Tag{Ref: ref, Reason: p.reason(n)},
	}
}

// batchChosen tells whether the batch of a nuc's queen is selected.
func (p *sheet) batchChosen(n *state.Nuc) bool {
	b := n.Holds.Batch
	return !b.IsZero() && p.s.Selection.Has(b.Subject())
}

// hovered tells whether the pointer is over a nuc, or over the batch of its
// queen.
func (p *sheet) hovered(n *state.Nuc, ref scene.Ref) bool {
	h := p.s.Hover.Ref
	return h == ref || h.Kind == book.KindBatch.String() && h == state.RefOf(n.Holds.Batch.Subject())
}

// turnOf is how far a nuc is turned with its stand.
func (p *sheet) turnOf(n *state.Nuc) float64 {
	if n.Stand.IsZero() {
		return 0
	}
	return p.reading.View.Stand(n.Stand).Turn
}

// caught tells whether a nuc is without a queen since she was caught.
func caught(n *state.Nuc) bool {
	k := len(n.Caught)
	return n.Presumed.Condition == book.NoQueen && k > 0 && n.Caught[k-1].At == n.Queenless
}

// frontMark is the mark on a nuc's front.
func frontMark(n *state.Nuc) scene.Front {
	return scene.Front{Shape: shapes[n.Front.Shape], Role: colours[n.Front.Colour]}
}

// shapes and colours are how front marks are named in a book.
var (
	shapes = map[string]scene.Shape{
		"disc": scene.Disc, "square": scene.Square, "triangle": scene.Triangle, "bar": scene.LevelBar, "post": scene.Post, "ring": scene.Ring,
	}
	colours = map[string]scene.Role{
		"white": scene.White, "yellow": scene.Yellow, "red": scene.Red, "green": scene.Green,
		"blue": scene.Blue, "sky": scene.Sky, "black": scene.Black, "orange": scene.Orange,
	}
)

// reason is the one line that a lid shows when the pointer rests on it.
func (p *sheet) reason(n *state.Nuc) string {
	for _, f := range n.Findings {
		if f.NeedsYou() {
			return n.Name + "  " + f.What
		}
	}
	return n.Name + "  " + n.Presumed.Why
}

// small is a lid for a list: without rim, corner and strokes.
func small(l scene.Lid) scene.Lid {
	l.NoRim, l.Timed, l.NeedsYou, l.Paint, l.Selected, l.Hover = true, false, false, scene.NoPaint, false, false
	return l
}
