package state

import (
	"fmt"

	"lidmark/domain/practice"
	"lidmark/ui/scene"
)

// NumberWord is a word below the list of numbers, that leads to other numbers or
// to what is kept for this machine.
type NumberWord struct {
	scene.Area
	Word string
	Ref  scene.Ref // none: it only says what follows
	On   bool
}

// NumberWords are the words below the list, in as many rows as they need: no
// group is out of reach in a narrow window.
func (s State) NumberWords(l Layout) []NumberWord {
	all := s.numberWords()
	high := flow(all, l.Main)
	top := l.Main.Bottom() - high
	if l.NumbersLow() {
		top = s.NumberRows(l).Y + s.NumbersHigh(l) - high - s.NumberOffset(l)
	}
	for i := range all {
		all[i].Y += top
	}
	return all
}

// numberWords are the words, not laid out yet.
func (s State) numberWords() []NumberWord {
	first := NumberWord{Word: "More:"}
	if s.Group != 0 {
		first = NumberWord{Word: "The 25 that matter", Ref: scene.Ref{Kind: GroupRef}}
	}
	all := []NumberWord{first}
	for _, g := range practice.Groups() {
		n := 0
		for row := range practice.All() {
			n += boolInt(row.Group == g)
		}
		all = append(all, NumberWord{Word: fmt.Sprintf("%s %d", g, n), Ref: scene.Ref{Kind: GroupRef, ID: g.String()}, On: s.Group == g})
	}
	return append(all, NumberWord{Word: "This machine", Ref: CommandOf("settings"), On: s.Number == 0})
}

// Measures of the words below the list, dp.
const (
	numberWordRow = 28.0
	numberWordAir = 8.0 // above and below the rows of words
	numberWordGap = 16.0
)

// flow lays words into as few rows as an area needs, all about as long, so that no
// word is left alone in the last, from 0 down. It tells how high they are with air
// above and below.
func flow(all []NumberWord, a scene.Area) float64 {
	const less = 8.0
	to := a.Right() - Edge
	high := flowTo(all, a.X+Edge, to)
	for flowTo(all, a.X+Edge, to-less) == high && to > a.X+less {
		to -= less
	}
	return flowTo(all, a.X+Edge, to)
}

// flowTo lays words into rows between two edges.
func flowTo(all []NumberWord, from, to float64) float64 {
	x, y := from, numberWordAir
	for i := range all {
		weight := scene.SemiBold
		if all[i].Ref == (scene.Ref{}) {
			weight = scene.Regular
		}
		w := Reckoner{}.Width(all[i].Word, 13, weight)
		if x+w > to && x > from {
			x, y = from, y+numberWordRow
		}
		all[i].Area = scene.Area{X: x, Y: y, W: w, H: numberWordRow}
		x += w + numberWordGap
	}
	return y + numberWordRow + numberWordAir
}
