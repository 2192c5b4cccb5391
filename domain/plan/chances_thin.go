package plan

// thin is a link as what it does to a number: of n that enter, each comes through
// with a share that all of them have in common and that is itself spread. parts
// are betas with their weights; given one of them, the number is beta-binomial.
type thin []part

type part struct {
	beta
	share float64
}

// each is a link of which the share is spread as one beta.
func each(b beta) thin { return thin{{b, 1}} }

// thinning is a link on its own: the luck of the batch in closed form, the
// keeper's rate integrated over its nodes, or in closed form where there is no
// luck.
func (r Rate) thinning() thin {
	if r.Luck <= 0 {
		return each(r.known())
	}
	var all thin
	for _, n := range r.known().nodes(oneLink) {
		all = append(all, part{r.batches(n.at), n.weight})
	}
	return all
}

// oneLink is how many nodes integrate over the rate of one link. A test shows that
// more change no chance by 1e-6.
const oneLink = 12

// of are the chances of how many come through, from those of how many enter.
func (t thin) of(enter []float64) []float64 {
	out := make([]float64, len(enter))
	row := make([]float64, len(enter))
	for n, p := range enter {
		if p == 0 {
			continue
		}
		for _, part := range t {
			part.binomial(row[:n+1])
			for k, q := range row[:n+1] {
				out[k] += p * part.share * q
			}
		}
	}
	return out
}

// binomial fills in the chances of 0 to n successes: beta-binomial, or binomial
// where the share is one point. Each follows from its neighbour, from
// about the likeliest on both ways, so that nothing is lost to very small numbers.
func (b beta) binomial(p []float64) {
	n := len(p) - 1
	clear(p)
	switch {
	case b.mean <= 0:
		p[0] = 1
		return
	case b.mean >= 1:
		p[n] = 1
		return
	}
	peak := int(b.mean * float64(n))
	p[peak] = 1
	sum := 1.0
	for k := peak; k < n; k++ {
		p[k+1] = p[k] * b.up(n, k)
		sum += p[k+1]
	}
	for k := peak; k > 0; k-- {
		p[k-1] = p[k] / b.up(n, k-1)
		sum += p[k-1]
	}
	for k := range p {
		p[k] /= sum
	}
}

// up is the chance of k+1 successes of n over that of k.
func (b beta) up(n, k int) float64 {
	left, next := float64(n-k), float64(k+1)
	if b.point() {
		return left / next * b.mean / (1 - b.mean)
	}
	return left / next * (b.mean*b.weight + float64(k)) / ((1-b.mean)*b.weight + left - 1)
}
