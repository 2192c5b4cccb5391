package unit

import (
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// figure is a number in a text, and how exactly it was told.
type figure struct {
	from, to int // bytes of the text, its sign included
	v        float64
	minus    string // its sign, as it was written
	digits   int    // that it is exact to
	decimals int
	group    string // what parts its thousands; "" for nothing
}

// signs stand before a figure; between it and a letter they are part of a name
// or a range.
const signs = "+-−–"

// isJoint tells the characters that make a figure behind them a part of
// something else: a time, a date, a version, a decimal comma.
func isJoint(r rune) bool { return strings.ContainsRune(".,:/@#_'’&=", r) }

func isWord(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }

// figureAt reads the figure whose first digit is at a byte of the text; ok is
// false where the digit belongs to a name, a time or a date.
func figureAt(text string, at int) (f figure, ok bool) {
	f.from = at
	before, n := utf8.DecodeLastRuneInString(text[:at])
	switch {
	case n > 0 && (isWord(before) || isJoint(before)):
		return f, false
	case strings.ContainsRune(signs, before) && n > 0:
		earlier, m := utf8.DecodeLastRuneInString(text[:at-n])
		if m > 0 && (isWord(earlier) || isJoint(earlier)) {
			return f, false
		}
		if before == '-' || before == '−' {
			f.from, f.minus = at-n, text[at-n:at]
		}
	}
	return f.read(text, at)
}

// read reads the digits, with spaces between thousands and a decimal point.
func (f figure) read(text string, at int) (figure, bool) {
	last, i := at, digitsEnd(text, at)
	for i-at <= 3 || f.group != "" {
		n := blank(text[i:])
		if n == 0 || text[at] == '0' || digitsEnd(text, i+n) != i+n+3 {
			break
		}
		f.v = (f.v + value(text[last:i])) * 1000
		f.group = text[i : i+n]
		last, i = i+n, i+n+3
	}
	if end := digitsEnd(text, min(i+1, len(text))); end > i+1 && text[i] == '.' {
		f.decimals = end - i - 1
		i = end
	}
	f.v += value(text[last:i])
	if f.minus != "" {
		f.v = -f.v
	}
	f.to = i
	f.digits = exactness(text[at:i])
	return f, !math.IsInf(f.v, 0) && !goesOn(text[i:])
}

// value is the value of digits, infinite if there are too many.
func value(digits string) float64 {
	v, err := strconv.ParseFloat(digits, 64)
	if err != nil {
		return math.Inf(1)
	}
	return v
}

// goesOn tells that what follows a figure makes it a part of something else.
func goesOn(rest string) bool {
	r, n := utf8.DecodeRuneInString(rest)
	if n > 0 && (unicode.IsLetter(r) || r == '_') {
		return true
	}
	return n > 0 && isJoint(r) && digitsEnd(rest, n) > n
}

// exactness is the number of digits that a figure is exact to: all from the
// first that is not 0. Zeros at the end of a long whole number only tell its
// size.
func exactness(figure string) int {
	const long = 3
	n, zeros := 0, 0
	for _, r := range figure {
		switch {
		case r == '0' && n > 0:
			n, zeros = n+1, zeros+1
		case '1' <= r && r <= '9':
			n, zeros = n+1, 0
		}
	}
	if strings.Contains(figure, ".") || n <= long {
		return n
	}
	return max(long, n-zeros)
}

func digitsEnd(text string, at int) int {
	for at < len(text) && '0' <= text[at] && text[at] <= '9' {
		at++
	}
	return at
}

// spaces are the space, and those that are narrow or keep a line together.
const spaces = " \u00a0\u2009\u202f"

// blank is the length of the space that a text begins with.
func blank(text string) int {
	r, n := utf8.DecodeRuneInString(text)
	if n > 0 && strings.ContainsRune(spaces, r) {
		return n
	}
	return 0
}

// leastDigits keeps a figure from being off by more than the twentieth part:
// 0.3 l are 0.32 qt. mostDigits keeps out what only reckoning over has brought
// in: 0.9464 l are 1 qt. A figure told in fineDigits or more was typed
// in the other system and reckoned over, and is said as it was typed: 347.287 g
// are 12.25 oz.
const (
	leastDigits = 2
	mostDigits  = 3
	fineDigits  = 4
)

// Short is a value that was reckoned over, to three figures as it is shown; one
// that is short by itself was typed so, and stays.
func Short(v float64) float64 {
	const typed, near = 6, 1e-9
	if as := figures(v, typed); math.Abs(as-v) <= near*math.Abs(v) {
		return as
	}
	return figures(v, mostDigits)
}

// figures is v to so many figures from the first that is not 0.
func figures(v float64, n int) float64 {
	short, err := strconv.ParseFloat(strconv.FormatFloat(v, 'g', n, 64), 64)
	if err != nil {
		return v // too large once it is rounded
	}
	return short
}

// as is another value, as exactly told as the figure. Degrees keep their
// decimals, for their zero is not where their first digit is.
func (f figure) as(out []byte, v float64, degrees bool) []byte {
	places := f.decimals
	if !degrees {
		places = min(max(f.digits, leastDigits), f.most()) - 1
		if v != 0 {
			places -= int(math.Floor(math.Log10(math.Abs(v))))
		}
	}
	v = rounded(v, places)
	if v < 0 {
		out = append(out, or(f.minus, "−")...)
	}
	v = math.Abs(v)
	digits := strconv.FormatFloat(v, 'f', max(0, places), 64)
	if strings.Contains(digits, ".") {
		digits = strings.TrimRight(strings.TrimRight(digits, "0"), ".")
	}
	return grouped(out, digits, f.group)
}

// most is how many digits the figure is said in at most.
func (f figure) most() int {
	if f.digits >= fineDigits {
		return fineDigits
	}
	return mostDigits
}

// rounded is v to a number of decimal places; fewer than none are tens.
func rounded(v float64, places int) float64 {
	const all = 15 // what a float64 tells
	if places > all {
		return v
	}
	scale := math.Pow10(places)
	if r := math.Round(v*scale) / scale; !math.IsInf(r, 0) && !math.IsNaN(r) {
		return r
	}
	return v
}

// grouped writes digits with a space before every three figures of the whole.
func grouped(out []byte, digits, space string) []byte {
	whole, _, _ := strings.Cut(digits, ".")
	for i := range len(whole) {
		if space != "" && i > 0 && (len(whole)-i)%3 == 0 {
			out = append(out, space...)
		}
		out = append(out, whole[i])
	}
	return append(out, digits[len(whole):]...)
}

func or(s, other string) string {
	if s == "" {
		return other
	}
	return s
}
