package view

import "lidmark/ui/scene"

// claims are the areas of a frame that are taken, filed by where they lie, so
// that a place among thousands is soon found to be free.
type claims struct {
	frame   scene.Area
	columns int
	cells   [][]scene.Area
}

// claimCell is the side of the squares by which claims are filed, dp.
const claimCell = 48.0

// take takes the part of an area that lies in the frame.
func (c *claims) take(a scene.Area) {
	if c.cells == nil {
		c.columns = int(c.frame.W/claimCell) + 1
		c.cells = make([][]scene.Area, c.columns*(int(c.frame.H/claimCell)+1))
	}
	c.each(a, func(i int) bool {
		c.cells[i] = append(c.cells[i], a)
		return true
	})
}

// free tells whether an area touches nothing that is taken.
func (c *claims) free(a scene.Area) bool {
	free := true
	c.each(a, func(i int) bool {
		for _, t := range c.cells[i] {
			free = free && !t.Overlaps(a)
		}
		return free
	})
	return free
}

// each gives the squares that an area touches, until told to stop.
func (c *claims) each(a scene.Area, do func(i int) bool) {
	if c.cells == nil || !a.Overlaps(c.frame) {
		return
	}
	rows := len(c.cells) / c.columns
	square := func(v, from float64, most int) int { return min(max(int((v-from)/claimCell), 0), most-1) }
	x, right := square(a.X, c.frame.X, c.columns), square(a.Right(), c.frame.X, c.columns)
	bottom := square(a.Bottom(), c.frame.Y, rows)
	for y := square(a.Y, c.frame.Y, rows); y <= bottom; y++ {
		for x := x; x <= right; x++ {
			if !do(y*c.columns + x) {
				return
			}
		}
	}
}
