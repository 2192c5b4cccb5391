package course

import (
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// What a nuc may hold, for the tables below.
var (
	aCell     = State{Holds: HoldsCell, Days: 3}
	aRipeCell = State{Holds: HoldsCell}
	anOwnCell = State{Holds: HoldsCell, Own: true, Days: 3}
	aVirgin   = State{Holds: HoldsVirgin, Days: 6}
	itsVirgin = State{Holds: HoldsVirgin, Own: true, Days: 6}
	mated     = State{Holds: HoldsMated, Days: 1}
	itsMated  = State{Holds: HoldsMated, Own: true, Days: 1}
	laysToday = State{Holds: HoldsLaying}
	laysOne   = State{Holds: HoldsLaying, Days: 1}
	laysTwo   = State{Holds: HoldsLaying, Days: 2}
	laysThree = State{Holds: HoldsLaying, Days: 3}
	laysLong  = State{Holds: HoldsLaying, Own: true, Days: 20}
	noQueen   = State{Holds: HoldsNone, Days: 5}
	newDrones = State{Holds: HoldsDroneLayer, Days: 8}
	oldDrones = State{Holds: HoldsDroneLayer, Days: 9}
	newLayers = State{Holds: HoldsWorkers, Days: 8}
	oldLayers = State{Holds: HoldsWorkers, Days: 9}
)

// chance is that of a sight where one state is so.
func chance(m *Model, at State, s Sight) float64 {
	only := Belief{Each(func(is State) float64 {
		if is == at {
			return 1
		}
		return 0
	}).w}
	only.scale() // a virgin of an age may wait or fly
	return only.Expect(m.Sees(s))
}

func near(t *testing.T, what string, got, want float64) {
	t.Helper()
	if !(math.Abs(got-want) < 1e-12) {
		t.Errorf("%s: %.15g, want %.15g", what, got, want)
	}
}

// TestFindingAQueen: a virgin is found in 0.55 of looks, a mated queen in 0.65, a
// laying one and a drone layer in 0.85, and where none is a slip says so in 0.002.
// A thorough look counts for two, so it misses her as often as two would; a glance
// for 0.3. "No queen seen" counts for 0.4 of a search. A virgin is called one in 0.9,
// who is mated and does not lay in 0.6, who lays in 0.1, who is not there at even odds.
func TestFindingAQueen(t *testing.T) {
	m := NewModel(practice.Numbers{})
	for _, c := range []struct {
		at                         State
		usual, thorough, quick     float64 // share in which she is missed
		missed, search, under, vir float64 // that by "none seen", and called a virgin
	}{
		{aVirgin, 0.45, 0.2025, 0.7869801062, 0.7265826205, 0.5279223043, 0.9086267152, 0.9},
		{itsVirgin, 0.45, 0.2025, 0.7869801062, 0.7265826205, 0.5279223043, 0.9086267152, 0.9},
		{mated, 0.35, 0.1225, 0.7298278188, 0.6570935705, 0.4317719604, 0.8816336651, 0.6},
		{itsMated, 0.35, 0.1225, 0.7298278188, 0.6570935705, 0.4317719604, 0.8816336651, 0.6},
		{laysToday, 0.15, 0.0225, 0.5660142664, 0.4682054920, 0.2192163827, 0.7963994494, 0.1},
		{laysLong, 0.15, 0.0225, 0.5660142664, 0.4682054920, 0.2192163827, 0.7963994494, 0.1},
		{newDrones, 0.15, 0.0225, 0.5660142664, 0.4682054920, 0.2192163827, 0.7963994494, 0.1},
		{noQueen, 0.998, 0.998, 0.998, 0.9991995195, 0.9991995195, 0.9991995195, 0.5},
		{aCell, 0.998, 0.998, 0.998, 0.9991995195, 0.9991995195, 0.9991995195, 0.5},
		{anOwnCell, 0.998, 0.998, 0.998, 0.9991995195, 0.9991995195, 0.9991995195, 0.5},
		{oldLayers, 0.998, 0.998, 0.998, 0.9991995195, 0.9991995195, 0.9991995195, 0.5},
	} {
		for _, look := range []struct {
			s            Sight
			misses, none float64
		}{
			{Sight{}, c.usual, c.missed},
			{Sight{Thorough: true}, c.thorough, c.search},
			{Sight{Quick: true}, c.quick, c.under},
		} {
			s := look.s
			s.Queen = book.QueenSeen
			close9(t, c.at, s, chance(m, c.at, s), 1-look.misses)
			s.Queen = book.VirginSeen
			close9(t, c.at, s, chance(m, c.at, s), (1-look.misses)*c.vir)
			s.Queen = book.NoneSeen
			close9(t, c.at, s, chance(m, c.at, s), look.none)
		}
	}
}

func close9(t *testing.T, at State, s Sight, got, want float64) {
	t.Helper()
	if !(math.Abs(got-want) < 1e-9) {
		t.Errorf("%+v, %v (thorough %v, quick %v): %.12f, want %.10f", at, s, s.Thorough, s.Quick, got, want)
	}
}

// TestFindingEggs: eggs of today are seen in 0.5, of yesterday in 0.8, later in
// 0.95, a drone layer's in 0.5, workers' in 0.9; many a cell in 0.15 of a queen
// new to laying, in 0.2 of a drone layer, in all but slips of workers.
func TestFindingEggs(t *testing.T) {
	m := NewModel(practice.Numbers{})
	const slip = 0.002
	for _, c := range []struct {
		at                            State
		usual, thorough, quick, heaps float64 // share in which eggs are missed; of eggs seen, many a cell
	}{
		{laysToday, 0.5, 0.25, 0.8122523964, 0.15},
		{laysOne, 0.2, 0.04, 0.6170338627, 0.15},
		{laysTwo, 0.05, 0.0025, 0.4070905315, 0.15},
		{laysThree, 0.05, 0.0025, 0.4070905315, slip},
		{laysLong, 0.05, 0.0025, 0.4070905315, slip},
		{newDrones, 0.5, 0.25, 0.8122523964, 0.2},
		{oldLayers, 0.1, 0.01, 0.5011872336, 1 - slip},
		{aCell, 1 - slip, 1 - slip, 1 - slip, slip},
		{anOwnCell, 1 - slip, 1 - slip, 1 - slip, slip},
		{aVirgin, 1 - slip, 1 - slip, 1 - slip, slip},
		{mated, 1 - slip, 1 - slip, 1 - slip, slip},
		{noQueen, 1 - slip, 1 - slip, 1 - slip, slip},
	} {
		for misses, s := range map[float64]Sight{c.quick: {Quick: true}, c.thorough: {Thorough: true}, c.usual: {}} {
			s.Eggs = book.NoEggs
			close9(t, c.at, s, chance(m, c.at, s), misses)
			s.Eggs = book.SingleEggs
			close9(t, c.at, s, chance(m, c.at, s), (1-misses)*(1-c.heaps))
			s.Eggs = book.ManyEggs
			close9(t, c.at, s, chance(m, c.at, s), (1-misses)*c.heaps)
		}
	}
}

// TestSeeingBroodAndCells: each other thing that a look may tell, by what is there.
// How the look was made changes none of them.
func TestSeeingBroodAndCells(t *testing.T) {
	const slip, cell, wrong, left, seen, odd = 0.002, 0.9, 0.05, 0.3, 0.9, 0.03
	day := func(s State, days int) State { s.Days = days; return s }
	m := NewModel(practice.Numbers{})
	for name, c := range map[string]struct {
		s    Sight
		want map[State]float64
	}{
		"larvae and no word of eggs": {Sight{Larvae: true}, map[State]float64{
			laysTwo: slip, laysThree: 0.95, laysLong: 0.95, newDrones: 0.95, oldLayers: slip, noQueen: slip, aVirgin: slip, mated: slip, aCell: slip,
		}},
		"capped brood": {Sight{Capped: Some}, map[State]float64{
			day(laysOne, 8): slip, day(laysOne, 9): 0.95, laysLong: 0.95, oldDrones: slip, oldLayers: slip, noQueen: slip, aVirgin: slip, mated: slip, anOwnCell: slip,
		}},
		"no capped brood": {Sight{Capped: No}, map[State]float64{
			day(laysOne, 8): 1 - slip, day(laysOne, 9): 0.05, laysLong: 0.05, oldDrones: 1 - slip, noQueen: 1 - slip, aVirgin: 1 - slip,
		}},
		"drone brood in worker cells": {Sight{Drones: true}, map[State]float64{
			newDrones: 0.05, oldDrones: 0.95, newLayers: 0.05, oldLayers: 0.95, laysLong: slip, noQueen: slip, aVirgin: slip, mated: slip, aCell: slip,
		}},
		"cell shut": {Sight{Cell: book.CellShut}, map[State]float64{
			aCell: cell, aRipeCell: cell, anOwnCell: wrong, aVirgin: wrong, laysLong: wrong, mated: wrong, noQueen: wrong, oldDrones: wrong, oldLayers: wrong,
		}},
		"cell open at the tip": {Sight{Cell: book.CellOpenAtTip}, map[State]float64{
			aRipeCell: wrong, aCell: wrong / 4, anOwnCell: left, itsVirgin: left, itsMated: left, laysLong: left, noQueen: left, oldLayers: left,
			aVirgin: cell, mated: cell, laysThree: cell, oldDrones: cell,
		}},
		"cell torn at the side": {Sight{Cell: book.CellTornAtSide}, map[State]float64{
			aCell: wrong, anOwnCell: 1 - left, itsVirgin: 1 - left, itsMated: 1 - left, laysLong: 1 - left, noQueen: 1 - left, oldLayers: 1 - left,
			aVirgin: slip, mated: slip, laysThree: slip, oldDrones: slip,
		}},
		"own cells": {Sight{OwnCells: Some}, map[State]float64{
			anOwnCell: seen, aCell: odd, day(aVirgin, 1): odd, itsVirgin: odd, mated: odd, laysLong: odd, noQueen: odd, oldDrones: odd, oldLayers: odd,
		}},
		"no own cells": {Sight{OwnCells: No}, map[State]float64{
			anOwnCell: 1 - seen, aCell: 1 - odd, aVirgin: 1 - odd, laysLong: 1 - odd, noQueen: 1 - odd,
		}},
		"own cells, brood was left lately": {Sight{OwnCells: Some, Young: true}, map[State]float64{
			anOwnCell: seen, aCell: seen * 0.7, day(aVirgin, 1): seen * 0.7, day(aVirgin, 2): odd, day(itsVirgin, 1): odd, mated: odd, laysLong: odd, noQueen: odd,
		}},
		"no own cells, brood was left lately": {Sight{OwnCells: No, Young: true}, map[State]float64{
			aCell: 1 - seen*0.7, day(aVirgin, 1): 1 - seen*0.7, day(aVirgin, 2): 1 - odd, noQueen: 1 - odd,
		}},
		"nothing": {Sight{Young: true}, map[State]float64{aCell: 1, aVirgin: 1, mated: 1, laysLong: 1, noQueen: 1, oldDrones: 1, oldLayers: 1}},
	} {
		for at, want := range c.want {
			for _, thorough := range []bool{false, true} {
				for _, quick := range []bool{false, true} {
					c.s.Thorough, c.s.Quick = thorough, quick
					near(t, name, chance(m, at, c.s), want)
				}
			}
		}
	}
}

// TestThingsSeenTogether: what is seen of a nuc in one look is independent but for
// what it holds, so chances multiply.
func TestThingsSeenTogether(t *testing.T) {
	m := NewModel(practice.Numbers{})
	all := Sight{Queen: book.QueenSeen, Eggs: book.SingleEggs, Capped: Some, Drones: true, OwnCells: No, Cell: book.CellOpenAtTip}
	near(t, "laying for twelve days, everything told", chance(m, State{Holds: HoldsLaying, Days: 12}, all), 0.85*0.95*0.998*0.95*0.002*0.97*0.9)
}

// TestJustBelieved: a queen and eggs seen where there is no queen, or laying
// workers: by how often one says what is not so that is just believed, once in
// a hundred thousand looks, or just not.
//
//	no queen  slip · slip (1 − slip); workers  slip · 0.9 slip; at even odds
//	slip      0.0032: 9.71 e-6; 0.0033: 10.33 e-6
func TestJustBelieved(t *testing.T) {
	for slip, want := range map[float64]bool{0.0032: false, 0.0033: true} {
		n, err := practice.Numbers{}.With(practice.SeenAmiss, slip)
		if err != nil {
			t.Fatal(err)
		}
		m := NewModel(n)
		var b Belief
		b.p[bare], b.p[workers] = 0.5, 0.5
		was := b
		seen := m.Weigh(&b, Sight{Queen: book.QueenSeen, Eggs: book.SingleEggs})
		near(t, "seen", seen, (slip*slip*(1-slip)+slip*0.9*slip)/2)
		if believed := b != was; believed != want {
			t.Errorf("with slips of %g, a look of chance %g believed: %v", slip, seen, believed)
		}
	}
}

// TestCellsBrokenDown: a tenth is overlooked; the rest has no queen, as long as
// larvae are too old for new cells, unless some are young enough still.
func TestCellsBrokenDown(t *testing.T) {
	m := NewModel(practice.Numbers{})
	for young, again := range map[bool]float64{false: 0, true: 0.7} {
		var b Belief
		b.p[own.cell+4] = 1
		m.BreakDown(&b, young)
		over := m.numbers.Get(practice.OwnCellsOverlooked)
		near(t, "overlooked or begun again", b.sum(own.cell, cellDays), over+(1-over)*again)
		near(t, "without a queen for five days", b.p[none+5], (1-over)*(1-again))
		near(t, "all", b.sum(0, states), 1)
	}
}

// TestNothingKnown: what is held likely of a nuc nobody told of is the keeper's.
func TestNothingKnown(t *testing.T) {
	b := NewModel(practice.Numbers{}).Unknown()
	c := b.Chances()
	for what, p := range map[string][2]float64{
		"laying": {c.Laying, 0.4}, "virgin": {c.Virgin, 0.2}, "drone layer": {c.DroneLayer, 0.1}, "workers": {c.LayingWorkers, 0.1}, "no queen": {c.None, 0.2},
	} {
		near(t, what, p[0], p[1])
	}
}
