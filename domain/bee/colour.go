package bee

// Colour is a colour queens are marked with. The zero Colour is no mark.
type Colour int

// The five colours of the international convention, in its order from the
// years that end in 1 or 6.
const (
	NoColour Colour = iota
	White
	Yellow
	Red
	Green
	Blue
)

// String gives the colour's name, or "" for no mark.
func (c Colour) String() string {
	return [...]string{"", "white", "yellow", "red", "green", "blue"}[c]
}

// MarkColour gives the colour for queens born in a year: by the convention,
// years that end in 1 or 6 are white, 2 or 7 yellow, 3 or 8 red, 4 or 9
// green, 5 or 0 blue.
func MarkColour(year int) Colour {
	last := (year%5 + 5) % 5
	return [...]Colour{Blue, White, Yellow, Red, Green}[last]
}
