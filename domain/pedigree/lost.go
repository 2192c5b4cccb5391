package pedigree

import (
	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// Lost is what of the brood of a mother's daughters is to be expected to be lost,
// mated in a yard: of all fertilised eggs the share with two like sex alleles.
type Lost struct {
	Share   float64      // for all drones of the yard together, kin and chance
	Kinship float64      // of the daughters with the yard's drone colonies, the mean; unknown ones are kin to nobody
	Worst   float64      // of any one of these colonies
	With    book.QueenID // the closest of them; zero: none is kin
	Drones  int          // recorded drone colonies with a known queen
}

// Daughters is what is lost of the brood of daughters of a mother who fly from a
// yard. A daughter has half of her genes from her mother, and half from a drone
// the mother mated with.
func Daughters(v *book.View, mother book.QueenID, yard book.YardID, n practice.Numbers) Lost {
	k := New(v, n.Get(practice.MatesOfQueen))
	drones := k.Drones(yard)
	l := Lost{}
	for _, d := range drones {
		if d.IsZero() {
			continue
		}
		l.Drones++
		kin := k.Daughter(mother, d)
		l.Kinship += kin / float64(len(drones))
		if kin > l.Worst {
			l.Worst, l.With = kin, d
		}
	}
	chance := 1 / n.Get(practice.SexAlleles)
	l.Share = l.Kinship + (1-l.Kinship)*chance
	return l
}

// Daughter is the kinship of a daughter yet to be born with a queen.
func (k *Kin) Daughter(mother, with book.QueenID) float64 {
	fathers := k.meanOf(k.matedWith(mother), func(d book.QueenID) float64 { return k.Between(d, with) })
	if with == mother {
		return (k.Between(mother, mother) + fathers) / 2
	}
	if k.mother(with) == mother {
		return k.sisterOf(mother, with)
	}
	return (k.Between(mother, with) + fathers) / 2
}

// sisterOf is the kinship of a daughter yet to be born with one who is there.
func (k *Kin) sisterOf(mother, sister book.QueenID) float64 {
	all := k.sires(sister)
	cross := 2 * k.meanOf(all, func(d book.QueenID) float64 { return k.Between(mother, d) })
	fathers := k.meanOf(all, func(d book.QueenID) float64 {
		return k.meanOf(all, func(e book.QueenID) float64 { return k.Between(d, e) })
	})
	return (k.Between(mother, mother) + cross + 1/k.mates + (1-1/k.mates)*fathers) / 4
}
