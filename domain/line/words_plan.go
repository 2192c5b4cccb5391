package line

import (
	"fmt"

	"lidmark/domain/book"
)

// batchPlanned is a graft that is meant: "graft planned for Mon 19 Apr: 96
// larvae of Rook, 64 nucs in Home Yard, 40 queens laying by Mon 31 May".
func (t teller) batchPlanned(f book.BatchPlanned) string {
	day := unless(" for ", t.names.day(f.Day)) + ifSaid(f.Minute > 0, " "+clock(f.Minute))
	larvae := ifSaid(f.Larvae > 0, counted(f.Larvae, "larva", "larvae")+unless(" of ", f.Line)+t.at("from", f.Breeder.Subject()))
	nucs := ifSaid(f.Nucs > 0, count(float64(f.Nucs), "nuc")+t.at("in", f.Yard.Subject()))
	return "graft planned" + day + unless(": ", commas(larvae, nucs, ifSaid(f.Virgins, "as virgins"), t.wished(f), f.Why))
}

// wished is what a planned graft is for.
func (t teller) wished(f book.BatchPlanned) string {
	ready := " ready by "
	if f.Laying {
		ready = " laying by "
	}
	queens := ifSaid(f.Queens > 0, counted(f.Queens, "queen", "queens"))
	return commas(or(queens, ifSaid(!f.By.IsZero(), "queens"))+unless(ready, t.names.day(f.By)), ifSaid(f.Sure > 0, fmt.Sprintf("wished %.0f of 100", 100*f.Sure)), unless("for order ", namesOf(t, f.Orders)))
}

// namesOf are the names of things, those that have one.
func namesOf[T interface{ Subject() book.Subject }](t teller, all []T) string {
	var names []string
	for _, one := range all {
		if name := t.called("", one.Subject()); name != "" {
			names = append(names, name[1:])
		}
	}
	return list(names)
}
