package state

import "lidmark/ui/scene"

// Reckoner tells how wide text is without a typeface, which state has none of: by the
// widths of its letters, which are written down. The view measures what it draws; this
// says how much room to keep.
type Reckoner struct{}

// Width is the width of a line of text, dp, or a hair more: pairs of letters that the
// painter sets closer are not reckoned with.
func (Reckoner) Width(text string, size float64, weight scene.Weight) float64 {
	sum := 0
	for _, r := range text {
		sum += letterWide(r, weight)
	}
	if sum == 0 {
		return 0
	}
	const thousandths, hair, pair = 1000, 1.01, 70 // a few pairs are set wider
	return (float64(sum)*hair + pair) * size / thousandths
}

// letterWide is how wide a letter is, in thousandths of the size of its text.
func letterWide(r rune, weight scene.Weight) int {
	const space, latin, others, capital, foreign = 0x20, 0x100, 0x2000, 700, 1000
	if int(weight) >= len(advances) {
		weight = scene.Medium // the slanted cut is no wider
	}
	switch {
	case r < space:
		return 0
	case r < latin:
		return int(advances[weight][r-space])
	case r < others:
		return capital
	}
	if w, ok := signs[r]; ok {
		return int(w)
	}
	return foreign
}

// linesOf is how many lines a text fills at most, in so much room.
func linesOf(text string, size, room float64) int {
	return len(scene.Wrap(Reckoner{}, text, size, scene.Regular, room))
}
