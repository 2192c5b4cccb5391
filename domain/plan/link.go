package plan

import "lidmark/domain/practice"

// Link is one link of the chain from a larva to a queen: of so many, so many come
// through.
type Link uint8

// The links, in the order in which a chain of ripe cells has them. Where virgins
// are given, they emerge before they are placed. Placed is the cap of the nuc: one
// each. InTime is what comes in time of what comes at all, see [Graft].
const (
	Grafted Link = iota
	GraftWorks
	Taken
	RipeOfTaken
	Placed
	EmergedOfRipe
	CellAccepted
	VirginAccepted
	LayingOfAccepted
	GoodOfLaying
	InTime

	linkCount
)

type linkRow struct {
	name  string
	fails string // what goes wrong at it, beyond what is usual
	used  []practice.Key
}

var links = [linkCount]linkRow{
	Grafted:          {"grafted", "", nil},
	GraftWorks:       {"graft does not fail outright", "a graft that fails outright", []practice.Key{practice.GraftFails, practice.PriorWeight}},
	Taken:            {"take", "a poor take", []practice.Key{practice.Take, practice.BatchLuck, practice.PriorWeight}},
	RipeOfTaken:      {"capped, ripe", "cells that do not ripen", []practice.Key{practice.RipeOfTakes, practice.PriorWeight}},
	Placed:           {"given, one a nuc", "", nil},
	EmergedOfRipe:    {"emerged", "cells that do not emerge", []practice.Key{practice.EmergedOfCells, practice.PriorWeight}},
	CellAccepted:     {"accepted", "cells refused", []practice.Key{practice.AcceptCell, practice.EmergedOfCells, practice.PriorWeight}},
	VirginAccepted:   {"virgin accepted", "virgins refused", []practice.Key{practice.AcceptVirginUnderDay, practice.PriorWeight}},
	LayingOfAccepted: {"laying", "poor mating", []practice.Key{practice.LayingOfAccepted, practice.BatchLuck, practice.PriorWeight}},
	GoodOfLaying:     {"good enough", "queens not good enough", []practice.Key{practice.GoodEnough, practice.PriorWeight}},
	InTime:           {"in time", "", nil},
}

// String is the link in the keeper's words.
func (l Link) String() string { return links[l].name }

// Fails is what goes wrong at the link beyond what is usual, in the keeper's words; ""
// where nothing can.
func (l Link) Fails() string { return links[l].fails }

// Used are the numbers on which the rate of the link stands.
func (l Link) Used() []practice.Key { return links[l].used }
