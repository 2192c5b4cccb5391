package view

import (
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// name writes a name at the first of the places where it lies in the frame and
// hides nothing; where there is none it is left out. A place is the middle of
// the baseline.
func (g *ground) name(text string, f font, places []scene.Point) (scene.Area, bool) {
	w := g.width(text, f)
	for _, c := range places {
		box := scene.Area{X: c.X - w/2, Y: c.Y - f.size*0.78, W: w, H: f.size}
		if !g.free(box) {
			continue
		}
		g.taken = append(g.taken, box)
		g.centre(c.X, c.Y, text, f)
		return box, true
	}
	return scene.Area{}, false
}

// free tells whether a box lies in the frame and touches nothing taken.
func (g *ground) free(box scene.Area) bool {
	in := g.frame.Inset(2)
	if box.X < in.X || box.Y < in.Y || box.Right() > in.Right() || box.Bottom() > in.Bottom() {
		return false
	}
	for _, t := range g.taken {
		if t.Overlaps(box) {
			return false
		}
	}
	return true
}

// standNames writes the letters of stands and the names of single boxes and
// colonies. A letter that is clicked takes its nucs.
func (g *ground) standNames(spots []spot) {
	for _, s := range spots {
		if s.Places <= 1 {
			continue
		}
		half := s.lid + 4
		box, ok := g.name(s.Letter, ink(14).bold(), around(s.at, half+7, half+14, half+5))
		if ok {
			g.hit(scene.Around(box.Centre(), leastTarget), state.RefOf(s.Stand.Stand.Subject()), "stand "+s.Letter+": its nucs")
		}
	}
	for c := range g.r.View.Colonies() {
		if c.Yard == g.yard.Yard {
			g.name(c.Name, ink(12).semi(), around(g.camera.Screen(state.OnGround(c.At)), 24, 23, 14))
		}
	}
	for _, s := range spots {
		if s.Places > 1 {
			continue
		}
		half := s.lid / 2
		g.name(s.Letter, ink(12).semi(), around(s.at, half+12, half+12, half+3))
	}
}

// around are places for a name about a thing: left, right, below, above.
func around(c scene.Point, side, below, above float64) []scene.Point {
	return []scene.Point{
		c.Add(at(-side, 5)), c.Add(at(side, 5)), c.Add(at(0, below)), c.Add(at(0, -above)),
		c.Add(at(-side, -above)), c.Add(at(side, -above)), c.Add(at(-side, below)), c.Add(at(side, below)),
	}
}

// roles are what a colony is kept for, in words.
func roles(c *book.Colony) string {
	var words []string
	for _, r := range c.Roles {
		words = append(words, r.String())
	}
	if len(words) == 0 {
		return "colony"
	}
	return strings.Join(words, ", ")
}
