package yard

import (
	"math"

	"lidmark/domain/book"
)

// grid finds what is near on the ground: points by squares of a few metres. Points
// can be moved. What lies beyond the squares is in the outermost ones.
type grid struct {
	low        book.Point
	wide, tall int
	square     [][]int32
	at         []book.Point
}

// gridSide is the side of a square in metres: few points a square where boxes
// stand two or three metres apart.
const gridSide = 4.0

func newGrid(at []book.Point) *grid {
	g := &grid{at: at}
	g.wide, g.tall = g.size()
	g.square = make([][]int32, g.wide*g.tall)
	for i := range at {
		g.put(int32(i))
	}
	return g
}

// size is how many squares the points need, from the lowest of them on; no more than
// some for each point, however far apart they are.
func (g *grid) size() (wide, tall int) {
	if len(g.at) == 0 {
		return 1, 1
	}
	g.low = g.at[0]
	high := g.low
	for _, p := range g.at {
		g.low = book.Point{X: min(g.low.X, p.X), Y: min(g.low.Y, p.Y)}
		high = book.Point{X: max(high.X, p.X), Y: max(high.Y, p.Y)}
	}
	most := 64 + 4*math.Sqrt(float64(len(g.at)))
	squares := func(metres float64) int { return 1 + int(min(max(metres, 0)/gridSide, most)) }
	return squares(high.X - g.low.X), squares(high.Y - g.low.Y)
}

// of is the square of a point, by column and row.
func (g *grid) of(p book.Point) (x, y int) {
	return inside((p.X-g.low.X)/gridSide, g.wide), inside((p.Y-g.low.Y)/gridSide, g.tall)
}

// inside is a column or row, of so many.
func inside(x float64, n int) int {
	if !(x > 0) {
		return 0
	}
	return int(min(x, float64(n-1)))
}

func (g *grid) put(i int32) {
	x, y := g.of(g.at[i])
	k := y*g.wide + x
	g.square[k] = append(g.square[k], i)
}

// move sets a point anew.
func (g *grid) move(i int, to book.Point) {
	x, y := g.of(g.at[i])
	g.at[i] = to
	if toX, toY := g.of(to); toX == x && toY == y {
		return
	}
	k := y*g.wide + x
	all := g.square[k]
	for at, j := range all {
		if j == int32(i) {
			all[at] = all[len(all)-1]
			g.square[k] = all[:len(all)-1]
			break
		}
	}
	g.put(int32(i))
}

// within calls for each point no further than r from p.
func (g *grid) within(p book.Point, r float64, yield func(i int, d float64)) {
	x0, y0 := g.of(book.Point{X: p.X - r, Y: p.Y - r})
	x1, y1 := g.of(book.Point{X: p.X + r, Y: p.Y + r})
	for y := y0; y <= y1; y++ {
		for x := x0; x <= x1; x++ {
			for _, i := range g.square[y*g.wide+x] {
				dx, dy := p.X-g.at[i].X, p.Y-g.at[i].Y
				if d := math.Sqrt(dx*dx + dy*dy); d <= r {
					yield(int(i), d)
				}
			}
		}
	}
}
