package view

import (
	"slices"
	"strings"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// singleNames writes the names of colonies and of single boxes.
func (g *ground) singleNames(homes *claims, spots []spot) {
	f := ink(12).semi()
	for _, c := range g.r.Colonies(g.yard.Yard) {
		g.needed(c.Name, f, aboutColony(g.camera.Screen(state.OnGround(c.At)), g.width(c.Name, f)))
	}
	for _, row := range rowsOf(spots, g.frame) {
		g.rowNames(homes, row, f)
	}
}

// rowsOf are the single boxes in sight that are large enough for a name, those
// together whose names begin alike.
func rowsOf(spots []spot, frame scene.Area) (rows [][]*spot) {
	at := map[string]int{}
	for i := range spots {
		s := &spots[i]
		if s.Places > 1 || s.lid < mapLidLeast || !frame.Contains(s.at) {
			continue
		}
		word := strings.TrimRight(s.Letter, "0123456789")
		k, known := at[word]
		if !known {
			k = len(rows)
			at[word], rows = k, append(rows, nil)
		}
		rows[k] = append(rows[k], s)
	}
	return rows
}

// rowNames writes the names of a row: all on one side of it, else each left or right
// of its own box, else those of its ends alone, both or neither: in need on what is drawn
// of the ground, last at a corner, where a name may be read as that of the next box.
func (g *ground) rowNames(homes *claims, row []*spot, f font) {
	const sides, besides = 4, 2
	for side := range sides {
		if g.named(homes, row, f, side, side+1, g.free) {
			return
		}
	}
	ends := []*spot{row[0], row[len(row)-1]}
	if g.named(homes, row, f, 0, besides, g.free) || g.named(homes, ends, f, 0, sides, g.clear) {
		return
	}
	g.named(homes, ends, f, 0, 2*sides, g.clear)
}

// named writes the names of all boxes of a row at one of their places from the
// first to the last that hides nothing, else where there is room, or none.
func (g *ground) named(homes *claims, row []*spot, f font, from, to int, room func(scene.Area) bool) bool {
	var boxes []scene.Area
	var on []scene.Point
	for _, s := range row {
		w := g.width(s.Letter, f)
		places := nearest(homes, s, w, f.size, around(s.at, s.lid/2, w)[from:to])
		first := func(has func(scene.Area) bool) int {
			return slices.IndexFunc(places, func(c scene.Point) bool {
				box := nameBox(c, w, f)
				return has(box) && !slices.ContainsFunc(boxes, box.Overlaps)
			})
		}
		i := first(g.free)
		if i < 0 {
			i = first(room)
		}
		if i < 0 {
			return false
		}
		on, boxes = append(on, places[i]), append(boxes, nameBox(places[i], w, f))
	}
	for i, s := range row {
		g.write(s.Letter, f, on[i])
	}
	return true
}
