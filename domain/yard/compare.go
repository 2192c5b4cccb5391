package yard

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"lidmark/domain/practice"
)

// Difference is by how much less a second layout has of something bad than a
// first, over all the ways homing may be: the kernel is little known.
type Difference struct {
	Mean      float64
	Low, High float64 // nine in ten ways lie between
	Better    float64 // share of the ways in which the second is better by more than counts
	Worse     float64 // by which it is worse
	Told      float64 // how large a share of the ways has to agree
}

// Said tells whether the layouts differ, or the difference is smaller than what is
// known: -1 the second is worse, 1 it is better, 0 no difference.
func (d Difference) Said() int {
	switch {
	case d.Better >= d.Told:
		return 1
	case d.Worse >= d.Told:
		return -1
	}
	return 0
}

// Words say whether there is less or more of it, and in how many trials.
func (d Difference) Words() string {
	switch d.Said() {
	case 1:
		return fmt.Sprintf("less in %.0f of 100 trials", 100*d.Better)
	case -1:
		return fmt.Sprintf("more in %.0f of 100 trials", 100*d.Worse)
	}
	return "no difference; what there is is smaller than its error"
}

// Compared is how two layouts differ.
type Compared struct {
	Lost  Difference // virgins lost on their return, of those who fly
	Drift Difference // workers at a wrong door, 0 to 1
}

// trials is how many ways homing may be are tried. They are spread evenly over the
// ranges of the numbers and always the same.
const trials = 100

// Compare holds a layout against another under all that is not known of homing: how
// much a door counts and how far it reaches, whether bearing and marks do anything.
// One trial found 4 % of queens astray and no effect of spacing or bearing
// (Perez-Sato et al. 2008, Apidologie 39:708), growers tell of far more.
func Compare(was, now Layout, n practice.Numbers) Compared {
	a, b := was.Doors(SpacingOf(n)), now.Doors(SpacingOf(n))
	var drift, gone []float64
	for i := range trials {
		v, w := VirginKernel(n).tried(i, practice.HomingVirgins, practice.HomingVirginsReach), WorkerKernel(n).tried(i, practice.HomingWorkers, practice.HomingWorkersReach)
		gone = append(gone, lostOf(was, HomingOf(a, v))-lostOf(now, HomingOf(b, v)))
		drift = append(drift, driftOf(HomingOf(a, w))-driftOf(HomingOf(b, w)))
	}
	told, counts := n.Get(practice.LayoutTold), n.Get(practice.LayoutCounts)
	return Compared{
		Lost:  differ(gone, counts*max(flying(was), flying(now)), told),
		Drift: differ(drift, counts, told),
	}
}

// tried is one of the ways the kernel may be, within the ranges of its numbers.
func (k Kernel) tried(i int, share, reach practice.Key) Kernel {
	k.Share = within(share, k.Share, halton(i+1, 2))
	k.Reach = within(reach, k.Reach, halton(i+1, 3))
	k.Facing = within(practice.HomingFacing, k.Facing, halton(i+1, 5))
	k.OneWay = within(practice.HomingOneMark, k.OneWay, halton(i+1, 7))
	k.BothWays = min(k.OneWay, within(practice.HomingBothMarks, k.BothWays, halton(i+1, 7)))
	return k
}

// within is a value from the range of a number, by a share of the triangle that
// rises to the keeper's own value and falls from it.
func within(k practice.Key, value, u float64) float64 {
	r := practice.Of(k)
	low, high := min(r.Min, value), max(r.Max, value)
	if high == low {
		return value
	}
	if peak := (value - low) / (high - low); u < peak {
		return low + math.Sqrt(u*(high-low)*(value-low))
	}
	return high - math.Sqrt((1-u)*(high-low)*(high-value))
}

// halton is the i-th number, from 1, of the sequence of Halton (1960) to a base:
// evenly spread from 0 to 1 however many are taken.
func halton(i, base int) (x float64) {
	for f := 1 / float64(base); i > 0; i, f = i/base, f/float64(base) {
		x += f * float64(i%base)
	}
	return x
}

func lostOf(l Layout, h *Homing) (sum float64) {
	for i := range h.doors {
		if d := &h.doors[i]; !d.Colony && l.at(d).Virgins > 0 {
			sum += l.at(d).Virgins * l.Lost(h, i)
		}
	}
	return sum
}

func driftOf(h *Homing) (mean float64) {
	nucs := 0
	for i := range h.doors {
		if !h.doors[i].Colony {
			mean += h.Wrong(i)
			nucs++
		}
	}
	return mean / float64(max(1, nucs))
}

func flying(l Layout) (sum float64) {
	for i := range l.Stands {
		for _, n := range l.Stands[i].Nucs {
			sum += n.Virgins
		}
	}
	return sum
}

// differ sums up the differences of the trials; one of no more than counts is none.
func differ(all []float64, counts, told float64) Difference {
	slices.SortFunc(all, cmp.Compare[float64])
	d := Difference{Low: all[len(all)/20], High: all[len(all)-1-len(all)/20], Told: told}
	for _, x := range all {
		d.Mean += x / float64(len(all))
		switch {
		case x > counts:
			d.Better += 1 / float64(len(all))
		case x < -counts:
			d.Worse += 1 / float64(len(all))
		}
	}
	return d
}
