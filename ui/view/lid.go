package view

import (
	"lidmark/domain/book"
	"lidmark/domain/strength"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// lidOf is the lid of a nuc, the same on map, grid, wall, lists and card; what
// a place leaves out it takes away.
func (p *sheet) lidOf(n *state.Nuc, centre scene.Point, size float64) scene.Lid {
	subject, tag := n.Nuc.Nuc.Subject(), n.Tag()
	l := scene.Lid{
		At: centre, Size: size, Condition: scene.Condition(n.Presumed.Condition), Seen: n.Presumed.Seen && !p.reading.Ahead,
		Entrance: n.NucNamed.Entrance + n.Turn(), Timed: n.Timed, Used: n.Used,
		NeedsYou: n.NeedsYou, Ahead: p.away, Caught: caught(n), Paint: scene.Paint(n.Paint),
		Selected: p.s.Selection.Has(subject) || p.batchChosen(n), Hover: p.hovered(n, tag.Ref),
		Tag: tag,
	}
	p.layerOn(n, &l)
	return l
}

// layerOn makes a lid of Yard say what the layer shows: lids and wall keep the
// condition, and hatch it by its doubt or show robbers.
func (p *sheet) layerOn(n *state.Nuc, l *scene.Lid) {
	switch {
	case p.s.Room != state.Yard:
	case p.s.Layer == state.BySureness:
		l.Reason = n.SurenessSays()
		if s := n.Sureness(); s.Known {
			l.Doubt = 1 + uint8(s.Doubt())
		}
	case p.s.Layer == state.ByRobbing:
		l.Reason, l.Robbing = n.RobbingSays(), n.Robbing().Level > strength.Quiet
	}
}

// batchChosen tells whether the batch of a nuc's queen is selected.
func (p *sheet) batchChosen(n *state.Nuc) bool {
	b := n.Holds.Batch
	return !b.IsZero() && p.s.Selection.Len() > 0 && p.s.Selection.Has(b.Subject())
}

// hovered tells whether the pointer is over a nuc, or over the batch of its
// queen.
func (p *sheet) hovered(n *state.Nuc, ref scene.Ref) bool {
	if h := p.s.Hover.Ref; h.Kind != book.KindBatch.String() {
		return h == ref
	}
	return p.hoverBatch == n.Holds.Batch.Subject()
}

// caught tells whether a nuc is without a queen since she was caught.
func caught(n *state.Nuc) bool { return n.WithoutCaught() }

// frontMark is the mark on a nuc's front.
func frontMark(n *state.Nuc) scene.Front {
	return scene.Front{Shape: shapes[n.Front.Shape], Role: colours[n.Front.Colour]}
}

// shapes and colours are how front marks are named in a book.
var (
	shapes = map[string]scene.Shape{
		"disc": scene.Disc, "square": scene.Square, "triangle": scene.Triangle, "bar": scene.LevelBar, "post": scene.Post, "ring": scene.Ring,
		"cross": scene.Cross,
	}
	colours = map[string]scene.Role{
		"white": scene.White, "yellow": scene.Yellow, "red": scene.Red, "green": scene.Green,
		"blue": scene.Blue, "sky": scene.Sky, "black": scene.Black, "orange": scene.Orange,
	}
)

// small is a lid for a list: without rim, corner and strokes.
func small(l scene.Lid) scene.Lid {
	l.NoRim, l.Timed, l.NeedsYou, l.Paint, l.Selected, l.Hover = true, false, false, scene.NoPaint, false, false
	return l
}
