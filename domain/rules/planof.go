package rules

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// PlanOf is a fact as a plan to be judged by [Check] before it is done: a cell
// written as given is a cell one means to give. It is nil for what needs no
// judging: counts, descriptions, and all that only tells what was seen.
func PlanOf(v *book.View, fact book.Fact) Intent {
	switch f := fact.(type) {
	case book.Grafted:
		p, planned := v.BatchPlan(f.Batch)
		return Graft{LarvaAge: f.LarvaAge, Mother: motherOf(v, f.Mother, f.Breeder, f.Line), Yard: p.Yard, Unasked: !planned, Plan: graftedAs(v, p, f), For: p.Day}
	case book.BatchPlanned:
		return Graft{Mother: motherOf(v, f.Mother, f.Breeder, f.Line), Yard: f.Yard, On: f.Day, Plan: book.BatchPlan{BatchPlanned: f}}
	case book.OrderTaken:
		return TakeOrder{f}
	case book.CellsMoved:
		return MoveCells{Batch: f.Batch}
	case book.CellGiven:
		return GiveCell{Nuc: f.Nuc, Batch: f.Batch}
	case book.VirginPutIn:
		return PutInVirgin{Nuc: f.Nuc, Queen: f.Queen, Batch: f.Batch}
	case book.QueenCaught:
		return Catch{Nuc: f.Nuc, AsVirgin: f.Culled || v.Nuc(f.Nuc).Holds.Condition == book.Virgin}
	case book.QueenHandedOver:
		return HandOver{f.Queen, f.Order}
	default:
		return planOfNuc(v, fact)
	}
}

// graftedAs is a planned batch as it was grafted: so many larvae, at its hour where it is
// written down, else now.
func graftedAs(v *book.View, p book.BatchPlan, f book.Grafted) book.BatchPlan {
	at := v.Batch(f.Batch).At.Instant
	if at.IsZero() {
		at = v.On()
	}
	at = at.In(v.Zone())
	p.Day, p.Minute, p.Larvae = calendar.DayOf(at, v.Zone()), at.Hour()*60+at.Minute(), f.Larvae
	return p
}

// motherOf is whose larvae are grafted: the queen that was said, else the breeder's, else
// that of the only breeder of the line; none where several are kept.
func motherOf(v *book.View, said book.QueenID, breeder book.ColonyID, line string) (mother book.QueenID) {
	switch {
	case !said.IsZero():
		return said
	case !breeder.IsZero():
		return v.Colony(breeder).Queen
	case line == "":
		return mother
	}
	found := 0
	for c := range v.Colonies() {
		if c.Is(book.Breeder) && c.Line == line {
			found, mother = found+1, c.Queen
		}
	}
	if found > 1 {
		return book.QueenID{}
	}
	return mother
}

// planOfNuc is a doing at a nuc as a plan.
func planOfNuc(v *book.View, fact book.Fact) Intent {
	switch f := fact.(type) {
	case book.NucPlaced:
		return planOfPlace(v, f)
	case book.NucMadeUp:
		return MakeUp{Nucs: []book.NucID{f.Nuc}, Cups: f.Cups, Shut: f.Shut, From: f.From}
	case book.BeesAdded:
		return AddBees{Nuc: f.Nuc, Cups: f.Cups, From: f.From}
	case book.Looked:
		return OpenNuc{Nuc: f.Nuc, Minutes: ActLookInside.Minutes(v.Numbers(), fullCombs(v.Nuc(f.Nuc), v.Numbers()))}
	case book.United:
		return Unite{f.Nuc, f.With}
	case book.Fed:
		if id, ok := f.To.Nuc(); ok {
			return GiveFeed{Nuc: id, Litres: f.Litres}
		}
	}
	return nil
}

// planOfPlace tells carrying a nuc that stands somewhere from setting it up.
func planOfPlace(v *book.View, f book.NucPlaced) Intent {
	p := SetUp{Nuc: f.Nuc, Yard: f.Yard, Stand: f.Stand, Place: f.Place}
	if v.Nuc(f.Nuc).Yard.IsZero() {
		return p
	}
	return Move(p)
}
