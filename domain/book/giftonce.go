package book

import (
	"slices"

	"lidmark/domain/calendar"
)

// gift is what a nuc is given of a batch on one day, however often that is
// written.
type gift struct {
	nuc    NucID
	virgin bool
}

func giftOf(f Fact) (gift, bool) {
	switch f := f.(type) {
	case CellGiven:
		return gift{f.Nuc, false}, true
	case VirginPutIn:
		return gift{f.Nuc, true}, true
	default:
		return gift{}, false
	}
}

// giftsOnce are the lines of a batch without those by which a nuc would get a
// second cell of it, or a second virgin, on one day: two writers wrote down what
// happened once. So striking one of the two changes no count. Lines without such
// ones are given as they are, so that a fold can go on from them.
func (v *View) giftsOnce(lines []*Entry) []*Entry {
	var day calendar.Day
	var given map[gift]bool // nil before the first
	var again []*Entry
	if !severalGifts(lines) {
		return lines // most often, and then nobody asks for the zone
	}
	for _, e := range lines {
		g, ok := giftOf(e.Fact)
		if !ok {
			continue
		}
		if d := e.At.Day(v.Zone()); d != day || given == nil {
			day, given = d, map[gift]bool{}
		}
		if given[g] {
			again = append(again, e)
		}
		given[g] = true
	}
	if len(again) == 0 {
		return lines
	}
	return slices.DeleteFunc(slices.Clone(lines), func(e *Entry) bool { return slices.Contains(again, e) })
}

func severalGifts(lines []*Entry) bool {
	n := 0
	for _, e := range lines {
		if _, ok := giftOf(e.Fact); ok {
			if n++; n > 1 {
				return true
			}
		}
	}
	return false
}
