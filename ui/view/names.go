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
		box := scene.Area{X: c.X - w/2 - 2, Y: c.Y - f.size*0.78, W: w + 4, H: f.size}
		if !g.free(box) {
			continue
		}
		g.take(box)
		g.centre(c.X, c.Y, text, f)
		return box, true
	}
	return scene.Area{}, false
}

// take keeps names off an area.
func (g *ground) take(a scene.Area) { g.taken.take(a) }

// free tells whether a box lies in the frame and touches nothing taken.
func (g *ground) free(box scene.Area) bool {
	in := g.frame.Inset(2)
	return box.X >= in.X && box.Y >= in.Y && box.Right() <= in.Right() && box.Bottom() <= in.Bottom() && g.taken.free(box)
}

// standNames writes the letters of stands and the names of single boxes and
// colonies. A letter that is clicked takes its nucs.
func (g *ground) standNames(spots []spot) {
	letter, small := ink(14).bold(), ink(12).semi()
	for _, s := range spots {
		if s.Places <= 1 || s.lid < mapLidLeast || !g.frame.Contains(s.at) {
			continue
		}
		box, ok := g.name(s.Letter, letter, around(s.at, s.lid+s.gap()/2+4, g.width(s.Letter, letter)))
		if ok {
			g.hit(scene.Around(box.Centre(), leastTarget), s.Ref, s.Says)
		}
	}
	for _, c := range g.r.Colonies(g.yard.Yard) {
		g.name(c.Name, small, below(g.camera.Screen(state.OnGround(c.At))))
	}
	for _, s := range spots {
		if s.Places <= 1 && s.lid >= mapLidLeast && g.frame.Contains(s.at) {
			g.name(s.Letter, small, around(s.at, s.lid/2, g.width(s.Letter, small)))
		}
	}
}

// around are places for a name of a width about a thing that reaches so far
// from its middle: left, right, below, above, then the corners.
func around(c scene.Point, reach, width float64) []scene.Point {
	side, low, high := reach+4+width/2, reach+13, reach+4
	return []scene.Point{
		c.Add(at(-side, 4.5)), c.Add(at(side, 4.5)), c.Add(at(0, low)), c.Add(at(0, -high)),
		c.Add(at(-side, -high)), c.Add(at(side, -high)), c.Add(at(-side, low)), c.Add(at(side, low)),
	}
}

// below are places for the name of a colony: below, above, right, left.
func below(c scene.Point) []scene.Point {
	return []scene.Point{c.Add(at(0, 23)), c.Add(at(0, -14)), c.Add(at(24, 5)), c.Add(at(-24, 5))}
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
