package plan

import (
	"fmt"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// NucKind is a kind of nuc by its combs.
type NucKind uint8

// The kinds: on mini combs, or of combs nobody told the size of; on half combs; on full ones.
const (
	MiniNuc NucKind = iota
	HalfNuc
	FullNuc

	kindsOfNucs
)

// String is the kind in the keeper's words.
func (k NucKind) String() string { return [...]string{"mini", "half-frame", "full-frame"}[k] }

// ByKind is how many there are of each kind.
type ByKind [kindsOfNucs]int

// OfKind is so many of a kind.
type OfKind struct {
	Kind   string
	Amount float64
}

// halvesOfComb is how many half combs a full one is.
const halvesOfComb = 2

func (p *Planner) kindOf(n *book.Nuc) NucKind {
	switch {
	case n.Side >= p.numbers.Get(practice.FullCombSide):
		return FullNuc
	case n.Side >= p.numbers.Get(practice.HalfCombSide):
		return HalfNuc
	default:
		return MiniNuc
	}
}

// kindsOf are kinds with how many there are; none where all are mini nucs.
func kindsOf(all ByKind) (kinds []OfKind) {
	if all[HalfNuc]+all[FullNuc] == 0 {
		return nil
	}
	for k, n := range all {
		if n > 0 {
			kinds = append(kinds, OfKind{NucKind(k).String(), float64(n)})
		}
	}
	return kinds
}

// combsByKind are the combs of brood as the nucs get them; none where all are full.
func (m MakeUp) combsByKind() (kinds []OfKind) {
	if m.Halves == 0 {
		return nil
	}
	if full := m.Combs - m.Halves/halvesOfComb; full > hardlyAny {
		kinds = append(kinds, OfKind{"full", full})
	}
	return append(kinds, OfKind{"of half size", m.Halves})
}

// KindsSaid are kinds with their amounts in words; "" where there are none.
func (n Need) KindsSaid() string {
	var all []string
	for _, k := range n.Kinds {
		all = append(all, fmt.Sprintf("%s %s", strconv.FormatFloat(k.Amount, 'f', -1, 64), k.Kind))
	}
	return strings.Join(all, ", ")
}

// Cup is what the keeper's cup of bees holds, and what they weigh.
type Cup struct{ Litres, Grams float64 }

// CupOf is the cup of some numbers.
func CupOf(n practice.Numbers) Cup {
	return Cup{n.Get(practice.CupOfBees), 1000 * n.Get(practice.BeesPerCup) / n.Get(practice.BeesPerKilogram)}
}

// String is the cup in words.
func (c Cup) String() string { return fmt.Sprintf("%.2f l, %.0f g of bees", c.Litres, c.Grams) }
