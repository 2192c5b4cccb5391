package scene

import (
	"math"
	"strings"
	"unicode/utf8"
)

// Weight is a cut of the typeface. The zero Weight is Regular.
type Weight uint8

// The weights there are. Italic is for names of ground features on maps.
const (
	Regular  Weight = iota // 400: text
	Medium                 // 500: buttons, names
	SemiBold               // 600: headings, figures that matter
	Bold                   // 700: letters of lids
	Italic                 // 400 italic
)

// Anchor says which point of a text its place is. The zero Anchor is Left.
type Anchor uint8

// The anchors, always on the baseline unless the text is Middle.
const (
	Left Anchor = iota
	Centre
	Right
)

// Text is one line of text, never turned. It cannot be hit: the scene does not
// know the typeface, so a view lays a [Rect] beneath that can.
type Text struct {
	At     Point
	Shift  Point // dp, added after the pane's camera: a label stays beside its thing
	Text   string
	Size   float64 // dp from baseline to baseline of text set solid; 12 and up
	Weight Weight
	Anchor Anchor
	Middle bool // At.Y is the middle of the figures and capitals, not the baseline
	Role   Role
}

// Measurer knows how wide text is. The painter is one.
type Measurer interface {
	// Width returns the width of one line of text in dp.
	Width(text string, size float64, weight Weight) float64
}

// LineHeight returns the distance in dp from baseline to baseline of running
// text of the given size.
func LineHeight(size float64) float64 { return math.Round(size * 1.42) }

// Shorten returns text if it is no wider than width, else as much of its
// beginning as fits with an ellipsis behind it, and "" where not even that fits.
func Shorten(m Measurer, text string, size float64, weight Weight, width float64) string {
	if m.Width(text, size, weight) <= width {
		return text
	}
	for text != "" {
		_, n := utf8.DecodeLastRuneInString(text)
		text = strings.TrimRight(text[:len(text)-n], " ")
		if short := text + "…"; m.Width(short, size, weight) <= width {
			return short
		}
	}
	return ""
}

// Wrap returns text in lines no wider than width, broken between words, but
// behind a figure or the weekday before it only where they and the next word do not
// fit into one line: "3 cells", "Sat 24 Apr". A word wider than width stands alone in its line, and no
// other word is left alone in the last line where the one above can spare one.
// Empty text has no lines.
func Wrap(m Measurer, text string, size float64, weight Weight, width float64) []string {
	var lines []string
	line, words, above := "", 0, 0
	all := bound(m, strings.Fields(text), size, weight, width)
	for _, word := range all {
		longer := word
		if line != "" {
			longer = line + " " + word
		}
		if line != "" && m.Width(longer, size, weight) > width {
			lines, above, words = append(lines, line), words, 0
			longer = word
		}
		line = longer
		words++
	}
	if line == "" {
		return lines
	}
	const spare = 3 // words in the line above
	if words == 1 && above >= spare && single(line) {
		last := all[len(all)-2]
		if both := last + " " + line; m.Width(both, size, weight) <= width {
			line = both
			lines[len(lines)-1] = strings.TrimSuffix(lines[len(lines)-1], " "+last)
		}
	}
	return append(lines, line)
}

// bound joins figures to the words behind them, and weekdays to the date behind them,
// where these fit into a line.
func bound(m Measurer, words []string, size float64, weight Weight, width float64) []string {
	var joined []string
	for i := 0; i < len(words); i++ {
		word := words[i]
		if i+1 < len(words) && isFigure(word) {
			if both := word + " " + words[i+1]; m.Width(both, size, weight) <= width {
				word, i = both, i+1
			}
		}
		if n := len(joined) - 1; n >= 0 && isWeekday(joined[n]) && isFigure(word[:1]) {
			if both := joined[n] + " " + word; m.Width(both, size, weight) <= width {
				joined[n] = both
				continue
			}
		}
		joined = append(joined, word)
	}
	return joined
}

// single tells whether a text is one word to the eye, as a share is: "1 %".
func single(text string) bool {
	_, behind, two := strings.Cut(text, " ")
	return !two || strings.HasPrefix(behind, "%")
}

func isFigure(word string) bool { return strings.Trim(word, "0123456789.") == "" }

func isWeekday(word string) bool {
	switch word {
	case "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun":
		return true
	default:
		return false
	}
}
