package state

import "lidmark/ui/scene"

// Reckoner tells how wide text is without a typeface, which state has none of: a
// little wider than it will be, by five widths of letters. The view measures
// what it draws; this only says how much room to keep.
type Reckoner struct{}

// Width is about the width of a line of text, dp.
func (Reckoner) Width(text string, size float64, weight scene.Weight) float64 {
	const heavier = 1.04
	sum := 0.0
	for _, r := range text {
		sum += letterWide(r)
	}
	if weight == scene.SemiBold || weight == scene.Bold {
		sum *= heavier
	}
	return sum * size
}

// letterWide is how wide a letter is, in sizes of its text.
func letterWide(r rune) float64 {
	switch r {
	case ' ', '\'', ',', '.', 'i', 'j', 'l':
		return 0.28
	case '!', ':', ';', '(', ')', '[', ']', '{', '}', '|', 'f', 't', 'r', '-', '/', 'I', '"':
		return 0.39
	case 'M', 'W', 'm', 'w', '@', '%', '…', '→', '—':
		return 0.97
	}
	const ascii, small, digit, capital, foreign = 0x7f, 0.57, 0.6, 0.7, 1.0
	switch {
	case r > ascii && r >= 0x2000:
		return foreign
	case 'A' <= r && r <= 'Z' || r == '#' || r == '&':
		return capital
	case 'a' <= r && r <= 'z':
		return small
	}
	return digit
}

// linesOf is how many lines a text fills at most, in so much room.
func linesOf(text string, size, room float64) int {
	return len(scene.Wrap(Reckoner{}, text, size, scene.Regular, room))
}
