package yard

import (
	"cmp"
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// Fault is what can be wrong with how a box stands.
type Fault int

// The faults, those that cost queens first.
const (
	OnAnother      Fault = iota + 1 // its boxes stand in those of another stand
	OnFeature                       // a box stands in a hedge, a wall, water or a house
	LooksAlike                      // a look-alike within the least distance
	RedOnBlack                      // a front that differs from one near it by red and black alone
	MarkTooSmall                    // the mark that tells two fronts apart is not seen from one to the other
	NearAlike                       // a look-alike nearer than is advised
	NearStrong                      // a full-size colony near
	InTheWind                       // the entrance faces the wind, nothing shelters it
	InHollow                        // cold air gathers
	SunAtNoon                       // no shade when the sun is highest
	NoMorningSun                    // too little sun before noon
	NearDwelling                    // a setback is not kept
	NearTrack                       // the same
	NearBoundary                    // the same
	OutsideBounds                   // beyond the boundary
	FarFromWater                    // water is too far
	FarFromVehicle                  // the vehicle is too far
	OutOfReach                      // nobody can walk to it
)

var faultWords = [...]string{
	"", "on another stand", "where no box can stand", "looks alike", "red on black", "mark too small", "near a look-alike", "near a strong colony", "in the wind",
	"in a cold hollow", "sun at noon", "no morning sun", "near a dwelling", "near a track", "near the boundary",
	"outside the boundary", "far from water", "far from the vehicle", "out of reach",
}

// String is the fault in a few words.
func (f Fault) String() string { return faultWords[f] }

// Finding is one fault of a layout: which stand or nuc, and the figure that is
// beyond its limit, both in the unit of the number that sets the limit.
type Finding struct {
	Fault  Fault
	Stand  book.StandID
	Nuc    book.NucID // zero: it is of the whole stand
	Name   string     // of the nuc, or the letter of the stand
	Other  string     // the nuc, the colony or the feature it is about
	At     book.Point
	Figure float64
	Limit  float64
	Number practice.Key // it sets the limit; 0: no number does
}

// Advice tells whether it is only advised to mend it.
func (f Finding) Advice() bool { return f.Fault == NearAlike }

// Source is where the limit comes from.
func (f Finding) Source() string {
	if f.Number == 0 {
		return ""
	}
	return practice.Of(f.Number).Source
}

// Words say a finding in a sentence.
func (f Finding) Words() string {
	switch f.Fault {
	case LooksAlike:
		return fmt.Sprintf("%s looks like %s, %.1f m away: at least %g m keeps look-alikes apart; turn one or paint its front", f.Name, f.Other, f.Figure, f.Limit)
	case RedOnBlack:
		return fmt.Sprintf("%s differs from %s by red and black alone, %.1f m away: bees see red as black; paint one white, yellow or blue", f.Name, f.Other, f.Figure)
	case MarkTooSmall:
		return fmt.Sprintf("%s is told from %s by a mark that bees see from %.1f m only, and stands %.1f m away: take a larger one, light beside dark", f.Name, f.Other, f.Figure, f.Limit)
	case NearAlike:
		return fmt.Sprintf("%s looks like %s, %.1f m away: %g m is advised", f.Name, f.Other, f.Figure, f.Limit)
	case InTheWind:
		return fmt.Sprintf("%s faces the wind, %.0f° off it, with no hedge or wall before it: turn it more than %g° away, or shelter it", f.Name, f.Figure, f.Limit)
	case OutOfReach:
		return fmt.Sprintf("nobody can walk to %s: leave a way %g m wide", f.Name, f.Limit)
	}
	return "stand " + f.Name + f.ofStand()
}

func (f Finding) ofStand() string {
	distance := func(what string) string {
		return fmt.Sprintf(": %s is %.1f m away, keep %g m", what, f.Figure, f.Limit)
	}
	switch f.Fault {
	case OnAnother:
		return ": its boxes stand in those of " + f.Other + "; move one"
	case OnFeature:
		return ": a box stands in " + f.Other + "; move it"
	case NearStrong:
		return distance("colony " + f.Other)
	case NearDwelling, NearTrack:
		return distance(f.Other)
	case NearBoundary:
		return distance("the boundary")
	case InHollow:
		return ": it stands in a cold hollow, where nights are the coldest"
	case SunAtNoon:
		return ": no shade at noon; a small box gets too hot"
	case NoMorningSun:
		return fmt.Sprintf(": %.1f h of sun before noon, %g h wanted", f.Figure, f.Limit)
	case OutsideBounds:
		return fmt.Sprintf(": it stands %.1f m outside the boundary", f.Figure)
	case FarFromWater:
		return fmt.Sprintf(": water is %.2f km away, %g km is far enough", f.Figure, f.Limit)
	}
	return fmt.Sprintf(": the vehicle is %.0f m away, %g m is far enough to carry", f.Figure, f.Limit)
}

// sorted are findings by stand and nuc as the layout has them, worst fault first.
func sorted(all []Finding, l Layout) []Finding {
	rank := map[book.StandID]int{}
	for i, s := range l.Stands {
		rank[s.ID] = i
	}
	slices.SortStableFunc(all, func(a, b Finding) int {
		return cmp.Or(cmp.Compare(rank[a.Stand], rank[b.Stand]), cmp.Compare(a.Fault, b.Fault))
	})
	return all
}
