package main

import (
	"strconv"

	"lidmark/domain/plan"
)

// larvaeShape is how sure a wish is with so many larvae a graft, in JSON.
type larvaeShape struct {
	Larvae int     `json:"larvae"`
	Chance float64 `json:"chance"`
	Nucs   int     `json:"nucs"`   // that most probably get a cell, of those there are
	Enough bool    `json:"enough"` // as sure as is wished
	Fewest bool    `json:"fewest"` // no fewer are enough
}

func shapeByLarvae(a plan.Answer) []larvaeShape {
	all := []larvaeShape{}
	for _, n := range a.ByLarvae() {
		all = append(all, larvaeShape{n.Larvae, thousandth(n.Chance), n.Nucs, n.Enough, n.Fewest})
	}
	return all
}

// printByLarvae prints how sure the wish is by larvae.
func (a *app) printByLarvae(s wishShape) {
	if len(s.ByLarvae) == 0 {
		return
	}
	head := "  how sure by larvae"
	if len(s.Grafts) > 1 {
		head += " of each graft"
	}
	rows := [][]string{{head, "", "nucs that get a cell", ""}}
	for _, n := range s.ByLarvae {
		note := ""
		switch {
		case n.Fewest:
			note = "the fewest that are enough"
		case n.Larvae == s.Larvae:
			note = "as above"
		}
		rows = append(rows, []string{"  " + strconv.Itoa(n.Larvae), plan.OfHundred(n.Chance), strconv.Itoa(n.Nucs), note})
	}
	a.table(rows)
}
