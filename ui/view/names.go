package view

import (
	"math"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// name writes a name at the first of the places where it lies in the frame and
// hides nothing; where there is none it is left out. A place is the middle of
// the baseline.
func (g *ground) name(text string, f font, places []scene.Point) (scene.Area, bool) {
	i := slices.IndexFunc(places, func(c scene.Point) bool { return g.free(nameBox(c, g.width(text, f), f)) })
	if i < 0 {
		return scene.Area{}, false
	}
	return g.write(text, f, places[i]), true
}

// needed is name for what must not go without: where there is no room it lies on what is
// drawn of the ground.
func (g *ground) needed(text string, f font, places []scene.Point) (scene.Area, bool) {
	if box, ok := g.name(text, f, places); ok {
		return box, true
	}
	i := slices.IndexFunc(places, func(c scene.Point) bool { return g.clear(nameBox(c, g.width(text, f), f)) })
	if i < 0 {
		return scene.Area{}, false
	}
	return g.write(text, f, places[i]), true
}

// write writes a name, on a ground of its own where something is drawn there.
func (g *ground) write(text string, f font, c scene.Point) scene.Area {
	box := nameBox(c, g.width(text, f), f)
	if !g.drawn.free(box) {
		g.add(scene.Rect{Area: box, Radius: 2, Fill: scene.Map, Clear: 0.2})
	}
	g.take(box)
	g.centre(c.X, c.Y, text, f)
	return box
}

// take keeps names off an area.
func (g *ground) take(a scene.Area) { g.taken.take(a) }

// free tells whether a box lies in the frame and touches nothing.
func (g *ground) free(box scene.Area) bool { return g.clear(box) && g.drawn.free(box) }

// clear tells whether a box lies in the frame and touches nothing but what is drawn of
// the ground.
func (g *ground) clear(box scene.Area) bool {
	in := g.frame.Inset(2)
	return box.X >= in.X && box.Y >= in.Y && box.Right() <= in.Right() && box.Bottom() <= in.Bottom() && g.taken.free(box)
}

// standNames writes the letters of stands and the names of single boxes and
// colonies. A letter that is clicked takes its nucs.
func (g *ground) standNames(spots []spot) {
	letter := ink(14).bold()
	homes := claims{frame: g.frame}
	for i := range spots {
		homes.take(spots[i].home())
	}
	for _, c := range g.r.Colonies(g.yard.Yard) {
		homes.take(scene.Around(g.camera.Screen(state.OnGround(c.At)), colonySide))
	}
	if g.steady == nil {
		g.singleNames(&homes, spots) // there are fewer places for the ends of a row than for a letter
	}
	var squares []*spot
	for i := range spots {
		s := &spots[i]
		if w, _ := s.half(); s.Places <= 1 || !s.Row() && 2*w < plateNamed || !g.frame.Contains(s.at) {
			continue
		}
		if !s.Row() {
			squares = append(squares, s)
			continue
		}
		places := nearest(&homes, s, g.width(s.Letter, letter), letter.size, s.names(g.width(s.Letter, letter)))
		if box, ok := g.needed(s.Letter, letter, places); ok {
			g.hit(scene.Around(box.Centre(), leastTarget), s.Ref, s.Says)
		}
	}
	g.letters(&homes, squares, letter)
	if g.steady != nil {
		g.singleNames(&homes, spots)
	}
}

// colonySide is the side of a colony on the map, dp.
const colonySide = 22.0

// plateNamed is the least plate of a stand that has its letter, dp.
const plateNamed = 18.0

// letters writes the letters of stands that are no rows, all on the side where most
// have room, the others where they have it; on maps that are compared as [steadyLetters]
// have it.
func (g *ground) letters(homes *claims, stands []*spot, f font) {
	best := g.bestSide(homes, stands, f)
	if g.steady.settle(func() bool { return g.roomForAll(homes, stands, f) }) {
		for _, s := range stands {
			g.letterWithin(s, f)
		}
		return
	}
	for _, s := range stands {
		g.letter(homes, s, f, best)
	}
}

// letter writes the letter of a stand beside it, on the side where it lay or on the best
// that has room; small, on what is drawn of the ground or amid its lids where none has.
func (g *ground) letter(homes *claims, s *spot, f font, best int) {
	all := g.letterPlaces(s, f)
	order := append([]int{g.steady.side(s, best)}, g.sides(homes, s, f)...)
	order = slices.DeleteFunc(order, func(i int) bool { return !g.own(homes, s, all[i], f) })
	at := func(i int) scene.Area { return nameBox(all[i], g.width(s.Letter, f), f) }
	i := slices.IndexFunc(order, func(i int) bool { return g.free(at(i)) })
	small := i < 0 && g.steady == nil && g.smallLetter(homes, s, g.free)
	if i < 0 {
		i = slices.IndexFunc(order, func(i int) bool { return g.clear(at(i)) })
	}
	switch {
	case small:
	case i >= 0:
		box := g.write(s.Letter, f, all[order[i]])
		g.hit(scene.Around(box.Centre(), leastTarget), s.Ref, s.Says)
		g.steady.lies(s, order[i])
	case s.lid >= letterLid:
		g.letterWithin(s, f)
	case !g.smallLetter(homes, s, g.clear) && s.lid >= mapLidLeast:
		g.letterWithin(s, f)
	}
}

// sides are those of a stand's places for its letter that are its own. On maps that are
// compared one at a corner is for a stand on its corner alone.
func (g *ground) sides(homes *claims, s *spot, f font) (own []int) {
	for i, c := range g.letterPlaces(s, f) {
		if corner := i%(2*letterSides) >= letterSides; (!corner || g.steady == nil || s.askew()) && g.own(homes, s, c, f) {
			own = append(own, i)
		}
	}
	return own
}

// roomForAll tells whether each of the stands has room for its letter beside it, or is too
// small for one amid its lids.
func (g *ground) roomForAll(homes *claims, stands []*spot, f font) bool {
	return !slices.ContainsFunc(stands, func(s *spot) bool {
		places := g.letterPlaces(s, f)
		return s.lid >= mapLidLeast && !slices.ContainsFunc(g.sides(homes, s, f), func(i int) bool {
			return g.free(nameBox(places[i], g.width(s.Letter, f), f))
		})
	})
}

// smallLetter writes the letter of a stand as small as text may be beside it, where its
// place has room, and tells whether it did.
func (g *ground) smallLetter(homes *claims, s *spot, room func(scene.Area) bool) bool {
	f := ink(12).bold()
	close := around(s.at, s.lid+s.gap()/2-0.4, g.width(s.Letter, f))[:letterSides]
	for _, to := range append(close, g.letterPlaces(s, f)...) {
		if box := nameBox(to, g.width(s.Letter, f), f); g.own(homes, s, to, f) && room(box) {
			g.write(s.Letter, f, to)
			g.hit(scene.Around(box.Centre(), leastTarget), s.Ref, s.Says)
			return true
		}
	}
	return false
}

// askew tells whether a stand stands on its corner, so that beside it there is room above
// and below.
func (s *spot) askew() bool {
	const slant = 20
	by := math.Abs(math.Remainder(s.Turn, 90))
	return by > slant
}

// letterLid is how large lids are at least between which a letter hides none of theirs, dp.
const letterLid = 24.0

// letterSides are how many sides of a stand its letter may lie on: close to it, not at a
// corner.
const letterSides = 4

// letterPlaces are where the letter of a stand may lie: close to it, left, right, below
// and above, then at its corners; then the same a little further off, and last beside one
// of its lids.
func (g *ground) letterPlaces(s *spot, f font) []scene.Point {
	const close = 5.0
	w, reach := g.width(s.Letter, f), s.lid+s.gap()/2+4
	places := append(around(s.at, reach-close, w), around(s.at, reach, w)...)
	if g.steady != nil {
		return places // where stands are compared a letter keeps to the middle of a side
	}
	for _, c := range around(s.at, reach-close, w)[:letterSides] {
		aside := at(s.lid/2, 0)
		if math.Abs(c.X-s.at.X) > math.Abs(c.Y-s.at.Y) {
			aside = at(0, s.lid/2)
		}
		places = append(places, c.Sub(aside), c.Add(aside))
	}
	return places
}

// letterApart is how much nearer a letter is to its own stand than to another where stands
// are tried, dp.
const letterApart = 3.0

// own tells whether a letter there is that of its own stand and no other's.
func (g *ground) own(homes *claims, s *spot, c scene.Point, f font) bool {
	w := g.width(s.Letter, f)
	if g.steady != nil {
		w += 2 * letterApart // in a try-out stands may stand anywhere
	}
	return len(nearest(homes, s, w, f.size, []scene.Point{c})) > 0
}

// bestSide is the side on which most stands have room for their letter.
func (g *ground) bestSide(homes *claims, stands []*spot, f font) (best int) {
	most := -1
	for i := range 4 * letterSides {
		n := 0
		for _, s := range stands {
			if i%(2*letterSides) >= letterSides {
				continue
			}
			if c := g.letterPlaces(s, f)[i]; g.free(nameBox(c, g.width(s.Letter, f), f)) && g.own(homes, s, c, f) {
				n++
			}
		}
		if n > most {
			best, most = i, n
		}
	}
	return best
}

// letterWithin writes the letter of a stand between its four lids: beside it there is no
// room.
func (g *ground) letterWithin(s *spot, f font) {
	const disc, size = 7.5, 12.0
	f.size = size
	g.add(scene.Circle{At: s.at, Radius: disc, Fill: scene.Panel, Stroke: stroke(scene.Rule, 1), Tag: scene.Tag{Ref: s.Ref, Reason: s.Says}})
	g.add(scene.Text{At: s.at, Text: s.Letter, Size: size, Weight: f.weight, Anchor: scene.Centre, Middle: true, Role: f.role})
}

// names are places for the letter of a row: at its ends first.
func (s *spot) names(width float64) []scene.Point {
	places := around(s.at, s.lid+s.gap()/2+4, width)
	w, _ := s.half()
	end := turned(at(w+6+width/2, 0), s.Turn)
	return append([]scene.Point{s.at.Sub(end).Add(at(0, 5)), s.at.Add(end).Add(at(0, 5))}, places...)
}

// home is the area of a stand that its name must be nearest to.
func (s *spot) home() scene.Area {
	switch {
	case s.Places <= 1:
		return scene.Around(s.at, s.lid)
	case s.Row():
		w, h := s.half()
		a, b := turned(at(w, h), s.Turn), turned(at(w, -h), s.Turn)
		wide, high := max(math.Abs(a.X), math.Abs(b.X)), max(math.Abs(a.Y), math.Abs(b.Y))
		return scene.Area{X: s.at.X - wide, Y: s.at.Y - high, W: 2 * wide, H: 2 * high}
	default:
		return scene.Around(s.at, 2*s.reach()/math.Sqrt2)
	}
}

// nearest are those of the places for a name that are nearer to its own stand than
// to any other.
func nearest(homes *claims, s *spot, width, size float64, places []scene.Point) []scene.Point {
	clear := 0.2
	if s.Places > 1 {
		clear = size * 0.5 // else it reads as that of the stand on its other side
	}
	own := s.home()
	return slices.DeleteFunc(places, func(c scene.Point) bool {
		box := scene.Area{X: c.X - width/2, Y: c.Y - size*0.75, W: width, H: size}
		far := apart(box, own) + clear
		wrong := false
		homes.each(box.Inset(-far), func(i int) bool {
			for _, home := range homes.cells[i] {
				wrong = wrong || home != own && apart(box, home) < far
			}
			return !wrong
		})
		return wrong
	})
}

// apart is how far two areas lie apart.
func apart(a, b scene.Area) float64 {
	dx := max(0, a.X-b.Right(), b.X-a.Right())
	dy := max(0, a.Y-b.Bottom(), b.Y-a.Bottom())
	return math.Hypot(dx, dy)
}

// nameBox is what a name w wide keeps free about the middle of its baseline.
func nameBox(c scene.Point, w float64, f font) scene.Area {
	return scene.Area{X: c.X - w/2 - 2, Y: c.Y - f.size*0.78, W: w + 4, H: f.size}
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

// aboutColony are places for the name of a colony, so wide: below, above, right, left,
// then the corners.
func aboutColony(c scene.Point, width float64) []scene.Point {
	const half, air = 11.0, 3.0
	side := half + air + width/2
	near := []scene.Point{c.Add(at(0, 23)), c.Add(at(0, -14)), c.Add(at(side, 5)), c.Add(at(-side, 5))}
	return append(near, around(c, half, width)[4:]...)
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
