package plan

import (
	"math"
	"slices"
)

// placing is a graft that works: the chances of how many are ripe, what comes of so
// many that are placed, and the product of both, from the first to the last that
// counts.
type placing struct {
	tail   []float64 // of so many ripe ones or more
	queens []complex128
	from   int
	back   []complex128 // the product, from the last one back
	sums   []complex128 // of the product, up to that index
}

// negligible is a part of a chance so small that all that are left out together
// change nothing that is shown.
const negligible = 1e-9

func (p *placing) weigh(ripe, tail []float64, queens []complex128) {
	p.tail, p.queens = tail, queens
	p.back, p.sums, p.from = p.back[:0], append(p.sums[:0], 0), 0
	to := 0
	for n, q := range queens {
		v := complex(ripe[n], 0) * q
		switch counts := math.Abs(real(v))+math.Abs(imag(v)) > negligible; {
		case counts:
			to = n + 1
		case to == 0:
			p.from = n + 1
			continue
		}
		p.back = append(p.back, v)
		p.sums = append(p.sums, p.sums[len(p.sums)-1]+v)
	}
	p.back = p.back[:max(0, to-p.from)]
	slices.Reverse(p.back)
}

// gives is what a graft that works and those after it give, with so many nucs free
// for it, and so many fresh ones for the next.
func (p *placing) gives(free, fresh int, after state) complex128 {
	full := min(free, len(p.tail)-2)
	sum := complex(p.tail[full], 0) * p.queens[full] * after.at(free-full+fresh)
	last := len(after.of) - 1
	at := free + fresh - after.low - p.from // where the first one leads
	n := max(0, min(len(p.back), full-p.from))
	same := max(0, min(n, at-last)) // so many of them lead to where no nuc is lacking
	sum += p.sums[same] * after.of[last]
	if same == n {
		return sum
	}
	lead := after.of[at-n+1 : at-same+1] // the last of them leads to the first of these
	back := p.back[len(p.back)-n : len(p.back)-same]
	return sum + product(back, lead)
}

// product is the sum of the products of two lists as long as each other. Four sums
// side by side take half the time of one, in which each waits for the last.
func product(a, b []complex128) complex128 {
	var s, t, u, v complex128
	for len(a) >= 4 && len(b) >= 4 {
		s += a[0] * b[0]
		t += a[1] * b[1]
		u += a[2] * b[2]
		v += a[3] * b[3]
		a, b = a[4:], b[4:]
	}
	for i := range min(len(a), len(b)) {
		s += a[i] * b[i]
	}
	return s + t + u + v
}
