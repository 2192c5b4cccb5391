package yard

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
)

// Homing is at which doors the bees of each door end. It is kept while doors are
// moved one by one, see [Homing.Set], always as if reckoned anew.
type Homing struct {
	kernel Kernel
	doors  []Door
	grid   *grid
	far    []float64 // how far the last neighbour that counts is from a door
	wrong  []float64
	most   float64 // no far is above it
	found  []near
}

// near is a neighbour.
type near struct {
	door int
	d    float64
}

// beyond is how many reaches away a box no longer counts: e^−10 is nothing.
const beyond = 10

// HomingOf reckons the homing of all doors. The doors are taken over.
func HomingOf(doors []Door, k Kernel) *Homing {
	at := make([]book.Point, len(doors))
	for i := range doors {
		at[i] = doors[i].At
	}
	h := &Homing{kernel: k, doors: doors, grid: newGrid(at), far: make([]float64, len(doors)), wrong: make([]float64, len(doors))}
	for i := range doors {
		h.reckon(i)
	}
	return h
}

// Doors are the doors as they stand now; they may not be changed.
func (h *Homing) Doors() []Door { return h.doors }

// Wrong is the chance, 0 to 1, that a bee of a door ends at another.
func (h *Homing) Wrong(door int) float64 { return h.wrong[door] }

// End is a door at which a bee may end, and the chance of it.
type End struct {
	Door  int
	Share float64
}

// Ends are the doors at which the bees of a door end wrongly, the likeliest first.
// The shares add up to [Homing.Wrong].
func (h *Homing) Ends(door int) []End {
	var ends []End
	sum := h.weigh(door, func(other int, w float64) { ends = append(ends, End{other, w}) })
	for i := range ends {
		ends[i].Share /= 1 + sum
	}
	slices.SortFunc(ends, func(a, b End) int { return cmp.Or(cmp.Compare(b.Share, a.Share), cmp.Compare(a.Door, b.Door)) })
	return ends
}

// Set puts a door anew: moved, turned, painted or with other bees. It gives the
// doors whose homing is another since, the door itself among them.
func (h *Homing) Set(door int, d Door) (changed []int) {
	was := h.doors[door].At
	h.doors[door] = d
	h.grid.move(door, d.At)
	seen := func(i int, r float64) {
		if r <= h.far[i]+tie && i != door && !slices.Contains(changed, i) {
			changed = append(changed, i)
		}
	}
	h.grid.within(was, h.most+tie, seen)
	h.grid.within(d.At, h.most+tie, seen)
	changed = append(changed, door)
	for _, i := range changed {
		h.reckon(i)
	}
	return changed
}

func (h *Homing) reckon(i int) {
	sum := h.weigh(i, func(int, float64) {})
	h.wrong[i] = sum / (1 + sum)
}

// tie is how far apart two distances in metres are the same.
const tie = 1e-9

// weigh calls for the neighbours that count with their weights, and gives the sum.
// Where more are equally near than places are left, they share those, so that a
// yard laid out evenly is judged evenly.
func (h *Homing) weigh(i int, yield func(other int, w float64)) (sum float64) {
	all := h.neighbours(i)
	last, sure := h.last(all)
	h.far[i] = last
	h.most = max(h.most, last)
	for k, n := range all {
		if n.d > last+tie {
			break
		}
		w := h.kernel.Weight(&h.doors[i], &h.doors[n.door])
		if k >= sure {
			w *= float64(h.kernel.Nearest-sure) / float64(h.ties(all, last)-sure)
		}
		sum += w
		yield(n.door, w)
	}
	return sum
}

// last is how far the last neighbour that counts is, as far as any may count where
// there are fewer, and how many are nearer than it beyond doubt.
func (h *Homing) last(all []near) (far float64, sure int) {
	if len(all) <= h.kernel.Nearest {
		return beyond * h.kernel.Reach, len(all)
	}
	far = all[h.kernel.Nearest-1].d
	for sure < len(all) && all[sure].d < far-tie {
		sure++
	}
	return far, sure
}

// ties is how many neighbours are no further than the last.
func (h *Homing) ties(all []near, last float64) (n int) {
	for n < len(all) && all[n].d <= last+tie {
		n++
	}
	return n
}

// neighbours are the doors around one, the nearest first; enough of them.
func (h *Homing) neighbours(i int) []near {
	most := beyond * h.kernel.Reach
	for r := gridSide / 2; ; r *= 2 {
		r = min(r, most)
		h.found = h.found[:0]
		h.grid.within(h.doors[i].At, r+2*tie, func(j int, d float64) {
			if j != i {
				h.found = append(h.found, near{j, d})
			}
		})
		if len(h.found) > h.kernel.Nearest && h.nearer(r) >= h.kernel.Nearest || r >= most {
			break
		}
	}
	slices.SortFunc(h.found, func(a, b near) int { return cmp.Or(cmp.Compare(a.d, b.d), cmp.Compare(a.door, b.door)) })
	return h.found
}

// nearer is how many of those found are no further than r.
func (h *Homing) nearer(r float64) (n int) {
	for _, f := range h.found {
		if f.d <= r {
			n++
		}
	}
	return n
}
