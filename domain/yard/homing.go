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
	far    []float64     // how far the last neighbour that counts is from a door
	beside [][]neighbour // those that count, kept while nobody is moved
	wrong  []float64
	most   float64 // no far is above it
	found  []near
}

// near is a door around another.
type near struct {
	door int
	d    float64
}

// neighbour is a door that counts, with the share of its place among the nearest:
// 1, less where several are equally near.
type neighbour struct {
	door  int
	share float64
}

// beyond is how many reaches away a box no longer counts: e^−10 is nothing.
const beyond = 10

// HomingOf reckons the homing of all doors. The doors are taken over.
func HomingOf(doors []Door, k Kernel) *Homing {
	at := make([]book.Point, len(doors))
	for i := range doors {
		at[i] = doors[i].At
	}
	h := &Homing{kernel: k, doors: doors, grid: newGrid(at), far: make([]float64, len(doors)), wrong: make([]float64, len(doors)), beside: make([][]neighbour, len(doors))}
	for i := range doors {
		h.settle(i)
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
	ends := make([]End, 0, len(h.beside[door]))
	h.Astray(door, func(other int, share float64) { ends = append(ends, End{other, share}) })
	slices.SortFunc(ends, func(a, b End) int { return cmp.Or(cmp.Compare(b.Share, a.Share), cmp.Compare(a.Door, b.Door)) })
	return ends
}

// Astray calls for the doors at which the bees of a door end wrongly, the nearest
// first, with the chance of each. Unlike [Homing.Ends] it costs no memory.
func (h *Homing) Astray(door int, yield func(other int, share float64)) {
	home := 1 - h.wrong[door] // 1 of all the weights
	for _, n := range h.beside[door] {
		yield(n.door, h.weight(door, n)*home)
	}
}

// Near calls for each door no further than so many metres from a point.
func (h *Homing) Near(at book.Point, metres float64, yield func(door int)) {
	h.grid.within(at, metres, func(i int, _ float64) { yield(i) })
}

// Set puts a door anew: moved, turned, painted or with other bees. It gives the
// doors whose homing is another since, the door itself among them.
func (h *Homing) Set(door int, d Door) (changed []int) {
	return h.SetAll([]int{door}, []Door{d}, nil)
}

// SetAll puts several doors anew at once, as [Homing.Set] does. What it gives takes
// the place of a list that is no longer needed.
func (h *Homing) SetAll(which []int, to []Door, changed []int) []int {
	changed = changed[:0]
	moved := false
	for k, i := range which {
		changed = h.seeing(h.doors[i].At, changed)
		if h.doors[i].At != to[k].At {
			moved = true
			h.grid.move(i, to[k].At)
			changed = h.seeing(to[k].At, changed)
		}
		h.doors[i] = to[k]
	}
	for _, i := range which {
		if !slices.Contains(changed, i) {
			changed = append(changed, i)
		}
	}
	for _, i := range changed {
		if moved {
			h.settle(i)
		}
		h.reckon(i)
	}
	return changed
}

// seeing adds the doors to a list for which a door at a point may count.
func (h *Homing) seeing(p book.Point, to []int) []int {
	h.grid.within(p, h.most+tie, func(i int, r float64) {
		if r <= h.far[i]+tie && !slices.Contains(to, i) {
			to = append(to, i)
		}
	})
	return to
}

func (h *Homing) reckon(i int) {
	var sum float64
	for _, n := range h.beside[i] {
		sum += h.weight(i, n)
	}
	h.wrong[i] = sum / (1 + sum)
}

func (h *Homing) weight(i int, n neighbour) float64 {
	return h.kernel.Weight(&h.doors[i], &h.doors[n.door]) * n.share
}

// tie is how far apart two distances in metres are the same.
const tie = 1e-9

// settle finds the neighbours of a door that count. Where more are equally near than
// places are left, they share those, so that a yard laid out evenly is judged evenly.
func (h *Homing) settle(i int) {
	all := h.neighbours(i)
	last, sure := h.last(all)
	h.far[i] = last
	h.most = max(h.most, last)
	h.beside[i] = h.beside[i][:0]
	tied := 1.0
	if sure < len(all) {
		tied = float64(h.kernel.Nearest-sure) / float64(h.ties(all, last)-sure)
	}
	for k, n := range all {
		if n.d > last+tie {
			break
		}
		share := 1.0
		if k >= sure {
			share = tied
		}
		h.beside[i] = append(h.beside[i], neighbour{n.door, share})
	}
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
	for r := max(gridSide/2, h.far[i]); ; r *= 2 {
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
