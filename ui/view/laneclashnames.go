package view

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// clashLane are the clashes of a batch, whose bars lie in the line above its stream.
type clashLane struct {
	seasonDraw
	lane  scene.Area
	marks []state.ClashMark
	bars  []scene.Area
}

// clashWord is what is written beside bars, and where.
type clashWord struct {
	scene.Area
	says string
}

// words name all bars: each kind beside one of its own; where these have no room all of them in
// one line beside all bars, else as many as have room and how many more kinds there are.
func (c clashLane) words(named map[scene.Ref]bool) []clashWord {
	kinds := c.kinds(named)
	for n := len(kinds); n > 0; n-- {
		if words := c.beside(kinds[:n], len(kinds)-n); words != nil {
			return words
		}
		if n < len(kinds) {
			continue
		}
		if all, ok := c.place(c.around(kinds), inOneLine(kinds), c.bars); ok {
			return []clashWord{all}
		}
	}
	for _, kind := range kinds {
		if word := c.beside([]string{kind}, len(kinds)-1); word != nil {
			return word
		}
	}
	if len(kinds) > 0 {
		if w, ok := c.place(c.around(kinds), fmt.Sprintf("%s +%d", kinds[0], len(kinds)-1), c.bars); ok {
			return []clashWord{w}
		}
	}
	return nil
}

// kinds are the names of the clashes in sight, each once, in the order in which they have room.
func (c clashLane) kinds(named map[scene.Ref]bool) (all []string) {
	var marks []state.ClashMark
	for i, m := range c.marks {
		if c.bars[i].W > 0 {
			marks = append(marks, m)
		}
	}
	slices.SortStableFunc(marks, func(a, b state.ClashMark) int { return clashRank(a, named) - clashRank(b, named) })
	for _, m := range marks {
		if !slices.Contains(all, m.Name) {
			all = append(all, m.Name)
		}
	}
	return all
}

// beside are some kinds each beside a bar of its own, the last one with how many more there are;
// nil where one has no room.
func (c clashLane) beside(kinds []string, more int) (words []clashWord) {
	taken := slices.Clone(c.bars)
	for i, kind := range kinds {
		says := kind
		if i == len(kinds)-1 && more > 0 {
			says += fmt.Sprintf(" +%d", more)
		}
		found := false
		for k, m := range c.marks {
			if m.Name != kind || c.bars[k].W <= 0 || found {
				continue
			}
			if w, ok := c.place(c.bars[k], says, taken); ok {
				words, taken, found = append(words, w), append(taken, w.Area), true
			}
		}
		if !found {
			return nil
		}
	}
	return words
}

// around is what all bars of some kinds span.
func (c clashLane) around(kinds []string) (all scene.Area) {
	for i, m := range c.marks {
		switch bar := c.bars[i]; {
		case bar.W <= 0 || !slices.Contains(kinds, m.Name):
		case all.W <= 0:
			all = bar
		default:
			x := min(all.X, bar.X)
			all = scene.Area{X: x, Y: bar.Y, W: max(all.Right(), bar.Right()) - x, H: bar.H}
		}
	}
	return all
}

// inOneLine are kinds of clashes in one line: what is too little of several is said once.
func inOneLine(kinds []string) string {
	const few = "too few "
	var all, rest []string
	for _, k := range kinds {
		if what, is := strings.CutPrefix(k, few); is {
			all = append(all, what)
			continue
		}
		rest = append(rest, k)
	}
	if len(all) > 0 {
		rest = append([]string{few + strings.Join(all, ", ")}, rest...)
	}
	return strings.Join(rest, "; ")
}

// place is where words stand right behind a bar or right before it, where nothing is taken;
// elsewhere they would be read as those of another one.
func (c clashLane) place(bar scene.Area, says string, taken []scene.Area) (w clashWord, ok bool) {
	const air = 6.0
	w = clashWord{scene.Area{X: bar.Right() + air, Y: c.lane.Y + 2, W: c.width(says, clashFont), H: laneTop - 1}, says}
	free := func() bool {
		for _, t := range taken {
			if t.W > 0 && w.Overlaps(t.Inset(-air/2)) {
				return false
			}
		}
		return w.Right() <= c.lane.Right()-30
	}
	if free() {
		return w, true
	}
	w.X = bar.X - air - w.W
	return w, w.X >= c.l.Ribbon.Left(c.s.Today()+1)+air && free()
}
