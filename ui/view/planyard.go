package view

import (
	"fmt"

	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

// yardNucs are how many nucs stand in the yard in which the queens of the wish are mated, and
// its name; that is "" in a book of one yard.
func (d *planDraw) yardNucs() (name string, stand int) {
	v, yards := d.s.Present().View, 0
	for range v.Yards() {
		yards++
	}
	for n := range v.Nucs() {
		if n.Yard == d.all.Yard {
			stand++
		}
	}
	if yards > 1 {
		name = rules.Name(v, d.all.Yard.Subject())
	}
	return name, stand
}

// noNuc says that none is free for the wish, and of how many.
func (d *planDraw) noNuc(room float64) string {
	name, stand := d.yardNucs()
	const do = ": say how many there will be"
	of := "no nuc is free then"
	switch {
	case stand == 0 && name != "":
		of = "no nuc stands in " + name
	case stand == 0:
		of = "no nuc is in the book"
	case name != "":
		of = fmt.Sprintf("none of %s in %s is free then", plural(stand, "nuc", "nucs"), name)
	}
	return d.firstFitting(room, of+do, of, "no nuc is free then")
}

// outOfReach says why no number of larvae makes it as sure as it is wished, and where that is
// the nucs, how many of them are free; else where the queens are mated, in a book of several
// yards.
func (d *planDraw) outOfReach(room float64) string {
	name, stand := d.yardNucs()
	switch {
	case d.all.Nucs == 0:
		return d.noNuc(room)
	case d.all.Sizing.Limit == plan.NoLimit || d.all.Chance >= d.all.Sure:
		if name == "" || len(d.all.Minds) > 0 || d.all.Turns() > 1 {
			return ""
		}
		return d.firstFitting(room, "mated in "+name, "")
	}
	out := fmt.Sprintf("%.0f of 100 is out of reach: %s", 100*d.all.Sure, d.all.Sizing.Limit)
	if d.all.Sizing.Limit != plan.NucsLimit {
		return out
	}
	in := ""
	if name != "" {
		in = " in " + name
	}
	if d.all.Nucs != d.all.Free {
		return d.firstFitting(room, out+in, out)
	}
	free := fmt.Sprint(d.all.Free)
	if d.all.Free < stand {
		free += fmt.Sprintf(" of %d", stand)
	}
	return d.firstFitting(room, out+", "+free+in+" free then", out+", "+free+in, out+", "+free, out+in, out)
}
