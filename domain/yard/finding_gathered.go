package yard

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// Gathering is all findings of one fault.
type Gathering struct {
	Fault Fault
	Of    []Finding
}

// Gathered are findings by fault, the worst first.
func Gathered(all []Finding) (groups []Gathering) {
	all = slices.Clone(all)
	slices.SortStableFunc(all, func(a, b Finding) int { return cmp.Compare(a.Fault, b.Fault) })
	for _, f := range all {
		if n := len(groups); n == 0 || groups[n-1].Fault != f.Fault {
			groups = append(groups, Gathering{Fault: f.Fault})
		}
		last := &groups[len(groups)-1]
		last.Of = append(last.Of, f)
	}
	return groups
}

// gathered say what is wrong with several at once; L is the limit.
var gathered = [...]string{
	OnAnother:      "stands have boxes in those of another",
	OnFeature:      "stands have a box in a hedge, a wall, water or a house",
	LooksAlike:     "nucs look like another nearer than L m",
	RedOnBlack:     "nucs differ from the next by red and black alone, which bees see as one",
	MarkTooSmall:   "nucs have marks that bees see too late to tell them from the next",
	NearAlike:      "nucs look like another nearer than the L m advised",
	NearStrong:     "stands are nearer than L m to a full-size colony",
	InTheWind:      "nucs face the wind with no hedge or wall before them",
	InHollow:       "stands are in a cold hollow, where nights are the coldest",
	SunAtNoon:      "stands have no shade at noon, where small boxes get too hot",
	NoMorningSun:   "stands have less than L h of sun before noon",
	NearDwelling:   "stands are nearer than L m to a dwelling",
	NearTrack:      "stands are nearer than L m to a track",
	NearBoundary:   "stands are nearer than L m to the boundary",
	OutsideBounds:  "stands are outside the boundary",
	FarFromWater:   "stands are further than L km from water",
	FarFromVehicle: "stands are further than L m from the vehicle",
	OutOfReach:     "nucs cannot be walked to, leave ways L m wide",
}

// Words say a single finding as it is, and several with the names of the first.
func (g Gathering) Words() string {
	if len(g.Of) == 1 {
		return g.Of[0].Words()
	}
	const few = 6
	var names []string
	for _, f := range g.Of[:min(few, len(g.Of))] {
		names = append(names, f.Name)
	}
	said := strings.Replace(gathered[g.Fault], "L", fmt.Sprintf("%g", g.Of[0].Limit), 1)
	text := fmt.Sprintf("%d %s: %s", len(g.Of), said, strings.Join(names, ", "))
	if more := len(g.Of) - few; more > 0 {
		text += fmt.Sprintf(" and %d more", more)
	}
	return text
}
