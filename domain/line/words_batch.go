package line

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
)

func (t teller) batch(f book.Fact) string {
	switch f := f.(type) {
	case book.Grafted:
		return t.grafted(f)
	case book.CellsMoved:
		if f.To.IsZero() {
			return "cells" + t.at("of", f.Batch.Subject()) + " into the incubator"
		}
		return "cells" + t.at("of", f.Batch.Subject()) + or(t.at("into", f.To.Subject()), " moved in")
	case book.TakeCounted:
		return counted(f.Accepted, "larva accepted", "larvae accepted") + t.at("of", f.Batch.Subject())
	case book.CappedCounted:
		return counted(f.Capped, "capped cell", "capped cells") + t.at("of", f.Batch.Subject())
	case book.RipeCounted:
		return counted(f.Ripe, "ripe cell", "ripe cells") + t.at("of", f.Batch.Subject())
	case book.CellsCulled:
		return counted(f.Cells, "cell", "cells") + t.at("of", f.Batch.Subject()) + " culled" + unless(": ", f.Why)
	case book.IncubatorRead:
		return commas("incubator"+t.at("of", f.Batch.Subject())+" at "+figureOf(f.Celsius)+" °C", measured("%s %% damp", f.Humidity))
	case book.ClockSeen:
		return or(f.Sign.String(), "sign seen") + t.at("in", f.Batch.Subject())
	case book.EmergedCounted:
		return commas(counted(f.Out, "virgin out", "virgins out")+t.at("of", f.Batch.Subject()), ifSaid(f.Dead > 0, counted(f.Dead, "cell dead", "cells dead")))
	default:
		return ""
	}
}

func (t teller) grafted(f book.Grafted) string {
	name := ifSaid(f.Batch.Subject() != t.card || t.card.IsZero(), fmt.Sprintf("batch %d ", f.Number))
	return commas(name+"grafted: "+counted(f.Larvae, "larva", "larvae"), unless("line ", f.Line),
		ifSaid(f.LarvaAge > 0, figureOf(f.LarvaAge)+" h old")) + t.at("from", f.Breeder.Subject()) + t.at("into", f.Starter.Subject()) + t.at("by", f.Grafter.Subject())
}

func counted(n int, one, more string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, more)
}

func (t teller) cells(f book.Fact) string {
	switch f := f.(type) {
	case book.TakenAlong:
		return t.goods(f.Count, f.What, f.Batch) + " taken along"
	case book.BroughtBack:
		return t.goods(f.Count, f.What, f.Batch) + " brought back"
	case book.Dropped:
		return t.goods(f.Count, f.What, f.Batch) + " dropped"
	case book.OwnCellsBroken:
		if f.Found.None() {
			return "searched for own cells" + t.at("in", f.Nuc.Subject()) + ": none"
		}
		return ifSaid(f.Found.Or(0) > 1, f.Found.String()+" ") + "own cells broken down" + t.at("in", f.Nuc.Subject())
	case book.WildCellsSearched:
		return "searched for wild cells" + t.at("in", f.In) + ": " + ifSaid(f.Found == 0, "none") + ifSaid(f.Found > 0, fmt.Sprintf("%d found, broken down", f.Found))
	default:
		return ""
	}
}

func (t teller) goods(n int, what book.Goods, batch book.BatchID) string {
	word := or(what.String(), "things")
	if n == 1 {
		word = word[:len(word)-1]
	}
	return fmt.Sprintf("%d %s", n, word) + t.at("from", batch.Subject())
}

func (t teller) given(f book.Fact) string {
	switch f := f.(type) {
	case book.CellGiven:
		return "cell" + t.at("from", f.Batch.Subject()) + or(t.at("into", f.Nuc.Subject()), " given") + ifSaid(f.Protected, ", in a protector")
	case book.VirginPutIn:
		who := t.called("virgin", f.Queen.Subject())
		if f.Queen.IsZero() {
			who = "virgin"
		}
		return commas(who+t.at("from", f.Batch.Subject())+or(t.at("into", f.Nuc.Subject()), " put in"), f.How.String())
	case book.VirginCaged:
		return "virgin" + unless(" ", f.Label) + t.at("from", f.Batch.Subject()) + " caged" + ifSaid(f.Cell, " as a cell") + t.at("in", f.Bank.Subject())
	default:
		return ""
	}
}

func (t teller) look(f book.Fact) string {
	switch f := f.(type) {
	case book.Looked:
		return ifSaid(t.named(f.Nuc) != "", strings.TrimSpace(t.named(f.Nuc))+": ") + or(seen(f), "looked at")
	case book.RowLooked:
		return commas(fmt.Sprintf("%d looked at", f.Looked)+t.at("on", f.Stand.Subject())+t.at("in", f.Yard.Subject())+t.at("with", f.Batch.Subject()),
			fmt.Sprintf("%d laying", f.Laying), ifSaid(f.Virgins > 0, fmt.Sprintf("%d with a virgin", f.Virgins)), ifSaid(f.None > 0, fmt.Sprintf("%d without a queen", f.None)))
	default:
		return ""
	}
}

// seen is everything a look saw.
func seen(f book.Looked) string {
	said := func(a book.Amount, words func(float64) string) string {
		if v, ok := a.Get(); ok {
			return words(v)
		}
		return ""
	}
	brood := func(float64) string { return broodSaid(f.Brood) }
	return commas(f.Queen.String(), f.Eggs.String(), ifSaid(f.Larvae, "larvae"), said(f.Brood, brood),
		ifSaid(f.DroneBrood, "drone brood in worker cells"), said(f.OwnCells, ownSaid), f.Cell.String(),
		said(f.Sides, sidesSaid), said(f.Stores, storesSaid), said(f.Temper, temperSaid),
		ifSaid(f.Thorough, "every comb seen"), ifSaid(f.Quick, "a glance"), unless("note: ", f.Note))
}
