package yard

import (
	"math"

	"lidmark/domain/book"
)

// grid finds what is near on the ground: points by squares of a few metres. Points
// can be moved. Negative squares are squares like others.
type grid struct {
	side   float64
	square map[[2]int32][]int32
	at     []book.Point
}

// gridSide is the side of a square in metres: few points a square where boxes
// stand two or three metres apart.
const gridSide = 4.0

func newGrid(at []book.Point) *grid {
	g := &grid{side: gridSide, square: make(map[[2]int32][]int32, len(at)), at: at}
	for i := range at {
		g.put(int32(i))
	}
	return g
}

func (g *grid) of(p book.Point) [2]int32 {
	return [2]int32{int32(math.Floor(p.X / g.side)), int32(math.Floor(p.Y / g.side))}
}

func (g *grid) put(i int32) {
	k := g.of(g.at[i])
	g.square[k] = append(g.square[k], i)
}

// move sets a point anew.
func (g *grid) move(i int, to book.Point) {
	was := g.of(g.at[i])
	g.at[i] = to
	if g.of(to) == was {
		return
	}
	all := g.square[was]
	for k, j := range all {
		if j == int32(i) {
			all[k] = all[len(all)-1]
			g.square[was] = all[:len(all)-1]
			break
		}
	}
	g.put(int32(i))
}

// within calls for each point no further than r from p.
func (g *grid) within(p book.Point, r float64, yield func(i int, d float64)) {
	low, high := g.of(book.Point{X: p.X - r, Y: p.Y - r}), g.of(book.Point{X: p.X + r, Y: p.Y + r})
	for x := low[0]; x <= high[0]; x++ {
		for y := low[1]; y <= high[1]; y++ {
			for _, i := range g.square[[2]int32{x, y}] {
				if d := distance(p, g.at[i]); d <= r {
					yield(int(i), d)
				}
			}
		}
	}
}
