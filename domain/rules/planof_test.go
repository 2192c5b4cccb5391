package rules_test

import (
	"fmt"
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/rules"
)

// judged are the facts that are plans before they are done, and the plan.
var judged = map[string]string{
	"nuc placed": "rules.SetUp", "nuc made up": "rules.MakeUp", "grafted": "rules.Graft", "cells moved": "rules.MoveCells",
	"cell given": "rules.GiveCell", "virgin put in": "rules.PutInVirgin", "looked": "rules.OpenNuc", "bees added": "rules.AddBees",
	"batch planned": "rules.Graft", "order taken": "rules.TakeOrder", "fed": "rules.GiveFeed", "united": "rules.Unite", "queen caught": "rules.Catch", "queen handed over": "rules.HandOver",
}

// unjudged only tell what is, was seen or was counted, or nothing stands
// against them.
var unjudged = []string{
	"yard described", "stand set", "feature drawn", "wind said", "ground pictured", "layout tried", "layout planned", "layout dropped", "forage seen", "weather seen", "weather hours", "weather normal", "box built", "nuc named", "entrance set", "front marked",
	"lid painted", "colony described", "person described", "days off", "hours on", "take counted", "capped counted", "ripe counted", "cells culled",
	"incubator read", "clock seen", "emerged counted", "taken along", "brought back", "dropped", "virgin caged", "own cells broken down",
	"wild cells searched", "row looked", "brood given", "queen described", "queen marked", "queen tested", "queen put in", "queen banked",
	"queen gone", "queen ended", "shaken out", "planned", "robbed", "nuc lost", "inspected", "disease suspected", "suspicion ended", "treated",
	"paper held", "order closed", "claimed", "batch dropped", "batch readied", "put off", "number changed", "noted", "struck",
}

// Whether a fact is judged as a plan has been thought about for every kind.
func TestPlanOfEveryFact(t *testing.T) {
	p := pen(t)
	v := p.View("2027-05-14 18:00")
	for _, kind := range book.FactKinds() {
		f, err := book.DecodeFact(kind, []byte("{}"))
		if err != nil {
			t.Fatal(err)
		}
		if fed, ok := f.(book.Fed); ok {
			fed.To = a1.Subject()
			f = fed
		}
		got, want := "", judged[kind]
		if plan := rules.PlanOf(v, f); plan != nil {
			got = fmt.Sprintf("%T", plan)
		}
		switch {
		case got != want:
			t.Errorf("%s is judged as %q, want %q", kind, got, want)
		case want == "" && !slices.Contains(unjudged, kind):
			t.Errorf("%s: nobody said whether it is judged as a plan", kind)
		}
	}
}

// A nuc that stands somewhere is moved by the fact that sets up a new one.
func TestPlanOfPlace(t *testing.T) {
	p := pen(t)
	celled(p)
	v := p.View("2027-05-26 18:00")
	if _, is := rules.PlanOf(v, book.NucPlaced{Nuc: a1, Yard: atFar}).(rules.Move); !is {
		t.Error("to place a nuc that stands somewhere is no move")
	}
}

// A look lasts as long as the keeper's looks do, so that dearth can be minded.
func TestPlanOfALookTakesTime(t *testing.T) {
	p := pen(t)
	celled(p)
	plan := rules.PlanOf(p.View("2027-05-26 18:00"), book.Looked{Nuc: a1})
	if open, is := plan.(rules.OpenNuc); !is || open.Minutes != 2 {
		t.Errorf("%+v, want a nuc opened for 2 minutes", plan)
	}
}

// Who says only the line of a graft means its breeder, where one is kept.
func TestPlanOfALineIsItsBreeder(t *testing.T) {
	p := pen(t)
	rook, other := booktest.Queen("Rook 12"), booktest.Queen("Rook 14")
	breeder := func(name string, queen book.QueenID) book.ColonyDescribed {
		return book.ColonyDescribed{Colony: booktest.Colony(name), Name: name, Line: "Rook", Queen: queen, Roles: []book.Role{book.Breeder}}
	}
	p.At("2027-04-02 08:00").Write(breeder("B1", rook))
	mother := func(fact book.Fact) book.QueenID {
		return rules.PlanOf(p.View("2027-05-26 18:00"), fact).(rules.Graft).Mother
	}
	if got := mother(book.BatchPlanned{Line: "Rook"}); got != rook {
		t.Errorf("planned of the line: %v", got)
	}
	if got := mother(book.Grafted{Line: "Rook"}); got != rook {
		t.Errorf("grafted of the line: %v", got)
	}
	if got := mother(book.Grafted{Line: "Linnet"}); !got.IsZero() {
		t.Errorf("of a line without a breeder: %v", got)
	}
	p.Write(breeder("B2", other))
	if got := mother(book.Grafted{Line: "Rook"}); !got.IsZero() {
		t.Errorf("of a line with two breeders: %v", got)
	}
}
