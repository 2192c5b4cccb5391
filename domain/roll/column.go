package roll

import (
	"fmt"
	"strings"
)

// Column is what a column of a list means.
type Column uint8

// The meanings of columns. Ignored, the zero value, is no part of the list.
const (
	Ignored Column = iota
	NucName
	BoxNumber
	Yard
	Stand
	Holds
	BatchNumber
	GraftedOn
	CellGivenOn
	VirginPutInOn
	EmergedOn
	EggsSeenOn
	LastLookOn
	QueenSeen
	Bees
	Brood
	Stores
	Line
	MarkColour
	DiscNumber
	Note
)

// columns are the words of each column, what a heading may call it, one word
// for each sign parted by a blank, and how its cells are read.
var columns = [...]struct {
	word, words string
	headings    []string
	take        func(*reading, *item, Cell) fault
}{
	Ignored:       {"ignored", "left out", nil, nil},
	NucName:       {"nuc", "the nuc's name", []string{"nuc", "nucs", "nuc name", "nuc no", "nuc number", "mating nuc", "name", "hive", "colony", "unit"}, takeName},
	BoxNumber:     {"box", "the box's number", []string{"box", "box no", "box number"}, takeText(func(it *item) *string { return &it.box })},
	Yard:          {"yard", "the yard", []string{"yard", "mating yard", "apiary", "location", "site"}, takeText(func(it *item) *string { return &it.yard })},
	Stand:         {"stand", "the stand", []string{"stand", "row", "pallet"}, takeStand},
	Holds:         {"holds", "what it holds", []string{"holds", "condition", "state", "status", "content", "contents", "inside", "queen status", "result"}, takeHolds},
	BatchNumber:   {"batch", "the batch's number", []string{"batch", "batch no", "batch number", "graft no", "graft number", "round", "series"}, takeBatch},
	GraftedOn:     {"grafted", "grafted on", []string{"grafted", "grafted on", "graft", "graft date", "date grafted", "graft day", "day of graft"}, takeDay(GraftedOn)},
	CellGivenOn:   {"cell given", "cell given on", []string{"cell given", "cell given on", "cell", "cell in", "cell date", "cell placed", "cell day", "celled", "cells in", "cells given", "date given", "given", "given on"}, takeDay(CellGivenOn)},
	VirginPutInOn: {"virgin put in", "virgin put in on", []string{"virgin put in", "virgin put in on", "virgin in", "virgin date", "virgin given", "virgin run in", "run in", "put in", "put in on"}, takeDay(VirginPutInOn)},
	EmergedOn:     {"emerged", "emerged on", []string{"emerged", "emerged on", "emergence", "hatched", "out", "hatch date", "born", "born on"}, takeDay(EmergedOn)},
	EggsSeenOn:    {"eggs", "eggs first seen on", []string{"eggs", "eggs seen", "first eggs", "eggs first seen", "eggs first seen on", "eggs on", "eggs seen on", "laying since", "laying from", "mated"}, takeDay(EggsSeenOn)},
	LastLookOn:    {"last look", "last look on", []string{"last look", "last look on", "look", "looked", "looked at", "last seen", "last checked", "checked", "check", "inspected", "last inspection", "inspection", "date", "visit", "last visit"}, takeDay(LastLookOn)},
	QueenSeen:     {"queen seen", "queen seen", []string{"queen seen", "queen", "seen", "q seen", "saw queen", "q"}, takeSeen},
	Bees:          {"bees", "bees, in sides", []string{"bees", "sides", "bees sides", "sides of bees", "strength"}, takeAmount(Bees)},
	Brood:         {"brood", "capped brood, in palms", []string{"brood", "capped", "capped brood", "palms", "sealed brood"}, takeAmount(Brood)},
	Stores:        {"stores", "stores, 0 to 3", []string{"stores", "food", "feed", "honey"}, takeAmount(Stores)},
	Line:          {"line", "the queen's line or mother", []string{"line", "mother", "mother line", "queen line", "breeder", "dam", "origin", "strain", "queen s line", "queen s mother"}, takeText(func(it *item) *string { return &it.line })},
	MarkColour:    {"colour", "the queen's colour", []string{"colour", "color", "mark", "marked", "queen mark", "mark colour", "mark color", "queen colour", "queen color", "paint"}, takeColour},
	DiscNumber:    {"disc", "her disc's number", []string{"disc", "disc no", "disc number", "disk", "disk no", "queen no", "queen number", "tag", "plate"}, takeText(func(it *item) *string { return &it.disc })},
	Note:          {"note", "a note", []string{"note", "notes", "remark", "remarks", "comment", "comments"}, takeNote},
}

// Columns are all meanings, in the order in which they are offered; the last is
// to leave a column out.
func Columns() []Column {
	var all []Column
	for c := range Column(len(columns)) {
		if c != Ignored {
			all = append(all, c)
		}
	}
	return append(all, Ignored)
}

// String is the column in a word or two, as [ParseColumn] reads it.
func (c Column) String() string { return columns[c].word }

// Words are the column as it is offered: "cell given on".
func (c Column) Words() string { return columns[c].words }

// Day tells whether the column's cells are days.
func (c Column) Day() bool {
	switch c {
	case GraftedOn, CellGivenOn, VirginPutInOn, EmergedOn, EggsSeenOn, LastLookOn:
		return true
	default:
		return false
	}
}

// ParseColumn reads a column's word, or what a heading may call it. The error
// lists the words there are.
func ParseColumn(text string) (Column, error) {
	for _, c := range Columns() {
		if strings.EqualFold(strings.TrimSpace(text), c.String()) {
			return c, nil
		}
	}
	if c := headed(text); c != Ignored {
		return c, nil
	}
	var words []string
	for _, c := range Columns() {
		words = append(words, c.String())
	}
	return Ignored, fmt.Errorf("column %q: write one of %s", text, strings.Join(words, ", "))
}
