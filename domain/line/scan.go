package line

import (
	"slices"
	"strconv"
	"strings"
	"unicode"
)

// scanner walks over the characters of a line.
type scanner struct {
	text []rune
	at   int
}

func (s *scanner) end() bool { return s.at >= len(s.text) }

// peek is the character n places on, 0 behind the end.
func (s *scanner) peek(n int) rune {
	if i := s.at + n; i >= 0 && i < len(s.text) {
		return s.text[i]
	}
	return 0
}

func (s *scanner) blanks() {
	for !s.end() && unicode.IsSpace(s.peek(0)) {
		s.at++
	}
}

func (s *scanner) take(n int) string {
	from := s.at
	s.at = min(s.at+n, len(s.text))
	return string(s.text[from:s.at])
}

func (s *scanner) span(from int) string { return string(s.text[from:s.at]) }

// starts tells whether the text goes on with sign.
func (s *scanner) starts(sign string) bool {
	i := 0
	for _, r := range sign {
		if s.peek(i) != r {
			return false
		}
		i++
	}
	return true
}

// word is the length of phrase if the text goes on with it as whole words, in
// capitals or not and with any blanks between; else 0.
func (s *scanner) word(phrase string) int {
	i := 0
	for _, r := range phrase {
		switch {
		case r == ' ' && unicode.IsSpace(s.peek(i)):
			for unicode.IsSpace(s.peek(i)) {
				i++
			}
		case r == unicode.ToLower(s.peek(i)):
			i++
		default:
			return 0
		}
	}
	if unicode.IsLetter(s.peek(i)) || unicode.IsDigit(s.peek(i)) {
		return 0
	}
	return i
}

// name is the length of a name if one stands here: one or two capitals and a
// number; else 0.
func (s *scanner) name() int {
	capitals := s.capitals()
	if capitals == 0 {
		return 0
	}
	i := capitals
	for isDigit(s.peek(i)) {
		i++
	}
	if i == capitals || i > capitals+4 {
		return 0
	}
	return i
}

// raise makes a name in small letters that stands here one in capitals.
func (s *scanner) raise() bool {
	letters := 0
	for letters < 2 && 'a' <= s.peek(letters) && s.peek(letters) <= 'z' {
		letters++
	}
	i := letters
	for isDigit(s.peek(i)) {
		i++
	}
	if letters == 0 || i == letters || unicode.IsLetter(s.peek(i)) || s.peek(i) == '.' {
		return false
	}
	for n := range letters {
		s.text[s.at+n] = unicode.ToUpper(s.peek(n))
	}
	return true
}

func (s *scanner) capitals() (n int) {
	for n < 2 && 'A' <= s.peek(n) && s.peek(n) <= 'Z' {
		n++
	}
	return n
}

// mostDigits are the digits that a figure has at most.
const mostDigits = 6

// number reads a figure of up to six digits; a comma before a digit is a point
// as well.
func (s *scanner) number() (v float64, ok bool) {
	from := s.at
	for isDigit(s.peek(0)) {
		s.at++
	}
	digits := s.at - from
	if (s.peek(0) == '.' || s.peek(0) == ',') && isDigit(s.peek(1)) {
		for s.at++; isDigit(s.peek(0)); s.at++ {
			digits++
		}
	}
	if digits == 0 || digits > mostDigits {
		s.at = from
		return 0, false
	}
	v, err := strconv.ParseFloat(strings.Replace(s.span(from), ",", ".", 1), 64)
	return v, err == nil
}

func isDigit(r rune) bool { return '0' <= r && r <= '9' }

// longest are the rows of a table by the length of their signs, longest first.
func longest(rows []code) []code {
	rows = slices.Clone(rows)
	slices.SortStableFunc(rows, func(a, b code) int { return len(b.sign) - len(a.sign) })
	return rows
}

var (
	codesLongest   = longest(codes)
	phrasesLongest = longest(phrases)
)
