package plan

// thin is a link as what it does to a number: of n that enter, each comes through
// with a share that all of them have in common and that is itself spread. parts
// are betas with their weights; given one of them, the number is beta-binomial.
type thin struct {
	parts []part
	rows  map[int][]float64 // by n, as far as they were asked for; nil: none are kept
}

type part struct {
	beta
	share float64
}

// each is a link of which the share is spread as one beta.
func each(b beta) thin { return thin{parts: []part{{b, 1}}} }

// thinning is a link on its own: the luck of the batch in closed form, the
// keeper's rate integrated over its nodes, or in closed form where there is no
// luck.
func (r Rate) thinning() thin {
	if r.Luck <= 0 {
		return each(r.known())
	}
	var all thin
	for _, n := range r.known().nodes(oneLink) {
		all.parts = append(all.parts, part{r.batches(n.at), n.weight})
	}
	return all
}

// keeping is the link for whoever asks it of the same numbers again.
func (t thin) keeping() thin {
	t.rows = map[int][]float64{}
	return t
}

// thinned are links by their rate.
type thinned map[Rate]thin

// thinning is what a link does, the same one again while links are kept.
func (r Rates) thinning(l Link) thin {
	if r.kept == nil {
		return r.Link[l].thinning()
	}
	t, known := r.kept[r.Link[l]]
	if !known {
		t = r.Link[l].thinning().keeping()
		r.kept[r.Link[l]] = t
	}
	return t
}

// oneLink is how many nodes integrate over the rate of one link. A test shows that
// more change no chance by 1e-6.
const oneLink = 12

// of are the chances of how many come through, from those of how many enter.
func (t thin) of(enter []float64) []float64 {
	out, one := make([]float64, len(enter)), make([]float64, len(enter))
	for n, p := range enter {
		switch {
		case p == 0:
		case t.rows == nil:
			t.add(out, one[:n+1], p)
		default:
			for k, q := range t.row(n, one[:n+1]) {
				out[k] += p * q
			}
		}
	}
	return out
}

// row are the chances of how many of n come through, kept.
func (t thin) row(n int, one []float64) []float64 {
	row, known := t.rows[n]
	if !known {
		row = make([]float64, n+1)
		t.add(row, one, 1)
		t.rows[n] = row
	}
	return row
}

// add adds the chances of how many come through of as many as one has room for, times a chance.
func (t thin) add(to, one []float64, p float64) {
	for _, part := range t.parts {
		part.binomial(one)
		for k, q := range one {
			to[k] += p * part.share * q
		}
	}
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
		return left * b.mean / (next * (1 - b.mean))
	}
	return left * (b.mean*b.weight + float64(k)) / (next * ((1-b.mean)*b.weight + left - 1))
}
