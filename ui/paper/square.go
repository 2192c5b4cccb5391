package paper

import (
	"math"
	"strings"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// square is what stands in a square; without a name and a letter it is a place
// where no nuc stands.
type square struct {
	name, letter       string
	seen, trouble, due bool
	empty              bool
}

// square draws a square: bold where the route leads, a cut corner in trouble,
// name and letter above, the rest to write into.
func (d yardSheet) square(a scene.Area, q square) {
	k := a.W / side
	if q.empty {
		d.rect(a, 0, none, stroke{hair, 0.15})
		return
	}
	d.rect(a, 0, white, stroke{black, 0.24})
	if q.due {
		d.rect(a.Inset(0.33*math.Sqrt(k)), 0, none, stroke{black, 0.66 * math.Sqrt(k)})
	}
	end := a.Right() - 1.4*k
	if q.trouble {
		cut := 3.4 * k
		if k < 1 {
			cut = a.W * 0.55
		}
		d.polygon([]scene.Point{{X: a.Right() - cut, Y: a.Y}, {X: a.Right(), Y: a.Y}, {X: a.Right(), Y: a.Y + cut}}, black, stroke{})
		end -= 2.2 * k
	}
	d.corner(a, end, q)
}

// squareOf is the square of a nuc on a stand whose letter is left out of names.
func (d yardSheet) squareOf(n *state.Nuc, stand string) square {
	c := n.Presumed.Condition
	name := n.Name
	if rest, ok := strings.CutPrefix(name, stand); ok && rest != "" {
		name = rest
	}
	return square{
		name: name, letter: c.Letter(), seen: n.Presumed.Seen && !d.Ahead,
		trouble: c.Trouble(), due: d.due[n.Nuc.Nuc],
	}
}

// corner writes name and letter.
func (d yardSheet) corner(a scene.Area, end float64, q square) {
	f := bold(8.6)
	if !q.seen {
		f = look{size: 8.6, tone: pale}
	}
	if q.name == "" {
		d.centre(a.Centre().X, a.Centre().Y+1.1, q.letter, f)
		return
	}
	if q.letter == "·" {
		d.circle(scene.Point{X: end - 0.7, Y: a.Y + 2.5}, 0.42, black, stroke{})
		end -= 1.6
	} else {
		end = d.ends(end, a.Y+3.8, q.letter, f)
	}
	for _, size := range []float64{7.2, 5.8, 5} {
		if n := plain(size); d.width(q.name, n) <= end-a.X-1.9 {
			d.text(a.X+1.4, a.Y+3.5, q.name, n)
			return
		}
	}
	n := plain(5)
	d.lines(a.X+1.4, a.Y+3.5, d.broken(q.name, n, end-a.X-1.9, a.W-2.6), n)
}
