package pedigree

import (
	"slices"

	"lidmark/domain/book"
)

// Kin reckons kinship among the queens of a view. It remembers what it reckoned
// and is for one goroutine.
type Kin struct {
	view  *book.View
	mates float64 // drones a queen mates with
	known map[pair]float64
	fed   map[book.QueenID][]book.QueenID // whose drones she mated with
	deep  map[book.QueenID]int
	years map[int]*book.View
}

type pair struct{ a, b book.QueenID }

// New reckons on a view, for queens who mate with so many drones, one at least.
func New(v *book.View, mates float64) *Kin {
	return &Kin{
		view: v, mates: max(1, mates), known: map[pair]float64{},
		fed: map[book.QueenID][]book.QueenID{}, deep: map[book.QueenID]int{}, years: map[int]*book.View{},
	}
}

// Between is the kinship of two queens, 0 to 1: the chance that an allele drawn
// from the one and one drawn from the other come from the same forebear. It is
// the share of the one's fertilised eggs that would be lost to like sex alleles,
// for that reason, if she mated with drones of the other. With itself it is
// ½ (1 + [Kin.Inbred]). Twice the kinship is the relationship in breeders' tables.
func (k *Kin) Between(a, b book.QueenID) float64 {
	if a.IsZero() || b.IsZero() {
		return 0
	}
	if k.depth(a) < k.depth(b) {
		a, b = b, a // the younger first: a queen is never her own forebear's forebear
	}
	key := pair{a, b}
	if f, ok := k.known[key]; ok {
		return f
	}
	k.known[key] = 0 // a record that makes a queen her own forebear goes no further
	f := k.reckon(a, b)
	k.known[key] = f
	return f
}

func (k *Kin) reckon(a, b book.QueenID) float64 {
	mother := k.mother(a)
	switch {
	case a == b:
		return (1 + k.Inbred(a)) / 2
	case k.depth(a) == 0:
		return 0 // both are founders
	case !mother.IsZero() && mother == k.mother(b):
		return k.sisters(a, b)
	default:
		return (k.Between(mother, b) + k.meanOf(k.sires(a), func(d book.QueenID) float64 { return k.Between(d, b) })) / 2
	}
}

// sisters are two daughters of one queen. With one father in so many they share
// the very drone, else they have two of the colonies'.
func (k *Kin) sisters(a, b book.QueenID) float64 {
	mother := k.mother(a)
	cross := k.meanOf(k.sires(a), func(d book.QueenID) float64 { return k.Between(mother, d) }) +
		k.meanOf(k.sires(b), func(d book.QueenID) float64 { return k.Between(mother, d) })
	same := 0.0
	if slices.Equal(k.sires(a), k.sires(b)) {
		same = 1 / k.mates
	}
	fathers := k.meanOf(k.sires(a), func(d book.QueenID) float64 {
		return k.meanOf(k.sires(b), func(e book.QueenID) float64 { return k.Between(d, e) })
	})
	return (k.Between(mother, mother) + cross + same + (1-same)*fathers) / 4
}

// Inbred is the chance that both alleles of a queen come from one forebear: the
// kinship of her mother with the colonies whose drones that one mated with.
func (k *Kin) Inbred(q book.QueenID) float64 {
	mother := k.mother(q)
	if mother.IsZero() {
		return 0
	}
	return k.meanOf(k.sires(q), func(d book.QueenID) float64 { return k.Between(mother, d) })
}

// meanOf is a mean over queens; 0 of none: drones of nobody's recording are
// related to nobody.
func (k *Kin) meanOf(all []book.QueenID, of func(book.QueenID) float64) float64 {
	if len(all) == 0 {
		return 0
	}
	var sum float64
	for _, d := range all {
		sum += of(d)
	}
	return sum / float64(len(all))
}

func (k *Kin) mother(q book.QueenID) book.QueenID { return k.view.Queen(q).Mother }

// sires are the queens whose drones the mother of a queen mated with.
func (k *Kin) sires(q book.QueenID) []book.QueenID {
	mother := k.mother(q)
	if mother.IsZero() {
		return nil
	}
	all, ok := k.fed[mother]
	if !ok {
		all = k.matedWith(mother)
		k.fed[mother] = all
	}
	return all
}

// depth is how many generations of recorded forebears a queen has. A record that
// makes a queen her own forebear counts as none.
func (k *Kin) depth(q book.QueenID) int {
	if d, ok := k.deep[q]; ok {
		return d
	}
	k.deep[q] = 0
	d := 0
	if mother := k.mother(q); !mother.IsZero() {
		d = k.depth(mother) + 1
		for _, s := range k.sires(q) {
			d = max(d, k.depth(s)+1)
		}
	}
	k.deep[q] = d
	return d
}
