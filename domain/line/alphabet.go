package line

import "lidmark/domain/unit"

// Letter is a row of the list of letters, as the sheet and the help print it.
type Letter struct{ Sign, Words string }

// Letters are the letters of the line, in the order of the list.
func Letters() []Letter { return LettersIn(unit.Metric) }

// LettersIn are the letters of the line where figures without a unit are in
// the system's.
func LettersIn(s unit.System) []Letter {
	return []Letter{
		{"q", "queen seen"},
		{"n", "no queen seen"},
		{"v", "virgin seen"},
		{"e  e0", "eggs; no eggs"},
		{"l", "larvae"},
		{"b4  b0", "capped worker brood, 4 palms; none"},
		{"d", "drone brood in worker cells"},
		{"w", "many eggs a cell"},
		{"o  o3", "own cells seen; 3 of them"},
		{"o0", "own cells broken down"},
		{"c3", "cell of batch 3 given"},
		{"i2", "virgin 2 put in"},
		{"s5", "bees on 5 sides of comb"},
		{"h0 h1 h2 h3", "stores: none … full"},
		fedLetter(s),
		{"a2", "2 cups of bees added"},
		{"k  k7  k0", "queen caught; into cage 7; culled"},
		{"uD4", "united with D4"},
		{"r  p", "robbed; perished: died out"},
		{"t1 t2 t3 t4", "temper: calm … fierce"},
		{"/  //  x", "settled, watch, act"},
		{`"old one"`, "a note in your words"},
		{"@am @noon @pm @eve @night @14:30", "part of the day, or the time"},
	}
}

// Phrases are the whole words that a line understands, for what has no letter.
func Phrases() []string {
	all := make([]string, len(phrases))
	for i, p := range phrases {
		all[i] = p.sign
	}
	return all
}
