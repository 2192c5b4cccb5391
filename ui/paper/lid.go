package paper

import (
	"math"

	"lidmark/ui/paint"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// lidSide is the side of a lid as the painters reckon it, dp: one that is
// hatched where nobody saw what is beneath.
const lidSide = 24.0

// lid draws a nuc's lid in black and white: filled white where somebody saw
// what it holds, else hatched; the foot black where the queen was caught and
// brood is left.
func (s *sheet) lid(r *state.Reading, n *state.Nuc, c scene.Point, side float64) {
	l := scene.Lid{
		Size: lidSide, NoRim: true, Condition: scene.Condition(n.Presumed.Condition), Seen: n.Presumed.Seen && !r.Ahead,
		Entrance: n.NucNamed.Entrance,
	}
	if !n.Stand.IsZero() {
		l.Entrance += r.View.Stand(n.Stand).Turn
	}
	k := side / lidSide
	body := paint.Body(&l)
	for i := range body {
		body[i] = c.Add(body[i].Mul(k))
	}
	band := caught(n)
	s.lidFill(l, body, c, side, band)
	s.polygon(body, none, lidLine(l))
	s.lidLetter(l, c, side, band)
}

// lidLine is the outline: thin where a lid is empty, heavy in trouble.
func lidLine(l scene.Lid) stroke {
	switch {
	case l.Condition == scene.Empty:
		return stroke{grey, 0.22}
	case l.Condition.Trouble():
		return stroke{black, 0.5}
	}
	return stroke{black, 0.32}
}

// lidFill hatches a lid that nobody looked beneath and blackens the foot of one
// whose queen was caught.
func (s *sheet) lidFill(l scene.Lid, body []scene.Point, c scene.Point, side float64, band bool) {
	s.polygon(body, white, stroke{})
	hatched := !l.Seen && l.Condition != scene.Empty
	if !band && !hatched {
		return
	}
	s.clipped(body, func() {
		if band {
			s.rect(scene.Area{X: c.X - side/2, Y: c.Y + side*0.17, W: side, H: side}, 0, black, stroke{})
			return
		}
		const pitch = 1.05
		for d := -math.Ceil(side/pitch) * pitch; d < side; d += pitch {
			s.line(c.X+d-side/2, c.Y+side/2, c.X+d+side/2, c.Y-side/2, stroke{black, 0.24})
		}
	})
}

// lidLetter writes the letter, upon a plate where there is a hatch.
func (s *sheet) lidLetter(l scene.Lid, c scene.Point, side float64, band bool) {
	if l.Condition == scene.Empty {
		s.circle(c, side*0.055, black, stroke{})
		return
	}
	f := bold(side * 0.5 / point)
	sign := l.Condition.Sign()
	if !l.Seen && !band {
		s.circle(c, side*0.29, white, stroke{})
	}
	y := c.Y + f.size*point*0.35
	if band {
		y -= side * 0.12
	}
	s.centre(c.X, y, sign, f)
}

// caught tells whether a nuc is without a queen since she was caught.
func caught(n *state.Nuc) bool {
	k := len(n.Caught)
	return n.Presumed.Condition.Letter() == scene.NoQueen.Sign() && k > 0 && n.Caught[k-1].At == n.Queenless
}
