package yard

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// Change is a stand that stands otherwise in a try-out than it does, or is new.
type Change struct {
	Was, Is       *Stand  // Was is nil for a new one, and for one whose nucs were never made up
	Fronts        int     // of its nucs that get another mark
	Turned        int     // of its nucs whose boxes face elsewhere on the stand
	Before, After float64 // workers of its nucs at a wrong door, 0 to 1, their mean
}

// Carried tells whether the stand is moved or turned, or new.
func (c Change) Carried() bool { return c.Was == nil || c.Was.At != c.Is.At || c.Was.Turn != c.Is.Turn }

// Moved are the nucs that bees have to find anew: all where the stand is moved or
// turned, else those whose boxes are; none on a new stand.
func (c Change) Moved() (nucs []Nuc) {
	if c.Was == nil {
		return nil
	}
	if c.Carried() {
		return c.Is.Nucs
	}
	return c.Faced()
}

// Minutes is what it takes to carry the stand, or to set it up, and to turn boxes on it,
// without the marks.
func (c Change) Minutes(n practice.Numbers) (sum float64) {
	if c.Carried() {
		sum = float64(len(c.Is.Nucs)) * n.Get(practice.MinutesCarryStand)
	}
	if c.Was == nil {
		return sum // its boxes are set as they are to face
	}
	return sum + float64(c.Turned)*n.Get(practice.MinutesTurnNuc)
}

// Faced are the nucs whose boxes are turned on the stand; all where it is new.
func (c Change) Faced() (nucs []Nuc) {
	for _, n := range c.Is.Nucs {
		if c.Was == nil {
			nucs = append(nucs, n)
			continue
		}
		was := Layout{Stands: []Stand{*c.Was}}.nuc(n.ID)
		if was != nil && was.Bearing != n.Bearing {
			nucs = append(nucs, n)
		}
	}
	return nucs
}

// Idle tells whether nucs stand on the stand, none of which was ever made up.
func (s *Stand) Idle() bool {
	return len(s.Nucs) > 0 && !slices.ContainsFunc(s.Nucs, func(n Nuc) bool { return !n.Idle })
}

// Idle tells whether a layout is drawn and not set up yet: none of its nucs was ever
// made up.
func (l Layout) Idle() bool {
	return l.Nucs() > 0 && !slices.ContainsFunc(l.Stands, func(s Stand) bool { return len(s.Nucs) > 0 && !s.Idle() })
}

// Words are what is done with the stand.
func (c Change) Words() string {
	switch {
	case c.Was == nil:
		return "set up stand " + c.Is.Letter
	case c.Carried():
		return c.Was.To(*c.Is)
	}
	var words []string
	if c.Turned > 0 {
		words = append(words, "turn "+some(c.Turned, "a box", "boxes"))
	}
	if c.Fronts > 0 {
		words = append(words, "mark "+some(c.Fronts, "a front", "fronts"))
	}
	return strings.Join(words, ", ") + " on stand " + c.Is.Letter
}

func some(n int, one, several string) string {
	if n == 1 {
		return one
	}
	return fmt.Sprintf("%d %s", n, several)
}

// ChangesOf are the stands at which a try-out gives something to do, as they stand in
// it. What was drawn and never set up is to be set up, wherever it was drawn; of a yard
// in which nothing is set up that goes for all of it, once anything is changed. Drift are
// chances of a wrong door by nuc, of the layout as it is and of the try-out.
func ChangesOf(now, try Layout, before, after map[book.NucID]float64) (all []Change) {
	anew, any := now.Idle(), false
	for _, c := range beside(now, try, before, after) {
		changed := c.changed()
		if any = any || changed; !changed && !anew {
			continue
		}
		if c.Was != nil && c.Was.Idle() {
			c.Was = nil // where it was drawn nothing stands yet
		}
		all = append(all, c)
	}
	if !any {
		return nil
	}
	return all
}

// StepsOf are the stands that stand otherwise in a layout than in another, set up or not.
func StepsOf(before, after Layout) []Change {
	return slices.DeleteFunc(beside(before, after, nil, nil), func(c Change) bool { return !c.changed() })
}

// changed tells whether anything is done at the stand.
func (c Change) changed() bool { return c.Carried() || c.Fronts+c.Turned > 0 }

// beside are all stands of a layout beside themselves in another.
func beside(now, try Layout, before, after map[book.NucID]float64) (all []Change) {
	was := map[book.StandID]*Stand{}
	for i := range now.Stands {
		was[now.Stands[i].ID] = &now.Stands[i]
	}
	for i := range try.Stands {
		c := Change{Was: was[try.Stands[i].ID], Is: &try.Stands[i]}
		for _, n := range c.Is.Nucs {
			c.Before += before[n.ID] / float64(len(c.Is.Nucs))
			c.After += after[n.ID] / float64(len(c.Is.Nucs))
			o := now.nuc(n.ID)
			if o != nil && o.Mark != n.Mark {
				c.Fronts++
			}
			if o != nil && o.Bearing != n.Bearing {
				c.Turned++
			}
		}
		all = append(all, c)
	}
	return all
}

// Alike tells whether all stands stand so in another layout: to a millimetre and a
// hundredth of a degree, which nobody sees, held and marked as here.
func (l Layout) Alike(o Layout) bool {
	const metres, degrees = 0.001, 0.01
	return slices.EqualFunc(l.Stands, o.Stands, func(a, b Stand) bool {
		return a.ID == b.ID && a.Letter == b.Letter && a.Places == b.Places && a.Fixed == b.Fixed &&
			distance(a.At, b.At) < metres && math.Abs(math.Remainder(a.Turn-b.Turn, 360)) < degrees &&
			slices.EqualFunc(a.Nucs, b.Nucs, func(m, n Nuc) bool {
				return m.ID == n.ID && m.Place == n.Place && m.Bearing == n.Bearing && m.Mark == n.Mark
			})
	})
}

// Drift is the chance of a wrong door for the workers of each nuc.
func (h *Homing) Drift(l Layout) map[book.NucID]float64 {
	drift := make(map[book.NucID]float64, len(h.doors))
	for i := range h.doors {
		if d := &h.doors[i]; !d.Colony {
			drift[l.at(d).ID] = h.wrong[i]
		}
	}
	return drift
}

// StandOf is a stand of the book, without nucs.
func StandOf(s book.StandSet) Stand {
	return Stand{ID: s.Stand, Letter: s.Letter, At: s.At, Turn: s.Turn, Places: s.Places, Round: s.Round}
}

// Least carries and turns, in metres and degrees, that are worth a word.
const (
	leastCarry = 0.05
	leastTurn  = 1.0
)

// To is how the stand is carried and turned to stand as another does.
func (s Stand) To(o Stand) string {
	var words []string
	it := "stand " + o.Letter
	if d := distance(s.At, o.At); d >= leastCarry {
		words = append(words, fmt.Sprintf("carry %s %.1f m %s", it, d, compassWord(o.At.X-s.At.X, o.At.Y-s.At.Y)))
		it = "it"
	}
	if turn := math.Remainder(o.Turn-s.Turn, 360); math.Abs(turn) >= leastTurn {
		way := "clockwise"
		if turn < 0 {
			way = "anticlockwise"
		}
		words = append(words, fmt.Sprintf("turn %s %.0f° %s", it, math.Abs(turn), way))
	}
	if len(words) == 0 {
		return "set " + it + " as it is planned"
	}
	return strings.Join(words, ", ")
}

// compassWord is the way of a move.
func compassWord(east, north float64) string {
	return Compass(math.Atan2(east, north) * 180 / math.Pi)
}
