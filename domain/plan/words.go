package plan

import (
	"fmt"
	"unicode"
	"unicode/utf8"
)

// Sentence begins words with a capital letter.
func Sentence(s string) string {
	first, n := utf8.DecodeRuneInString(s)
	if n == 0 {
		return ""
	}
	return string(unicode.ToUpper(first)) + s[n:]
}

// OfHundred is a share in words that promise nothing for certain, neither 0 nor 100.
func OfHundred(share float64) string {
	switch said := fmt.Sprintf("%.0f", 100*share); said {
	case "100":
		return "over 99 of 100"
	case "0", "-0":
		return "under 1 of 100"
	default:
		return said + " of 100"
	}
}

// Times is how many times, in words: "twice", "3 times".
func Times(n int) string {
	if n == 2 {
		return "twice"
	}
	return fmt.Sprintf("%d times", n)
}

// QueensSaid is so many queens in words: "1 queen", "3 queens".
func QueensSaid(n int) string {
	if n == 1 {
		return "1 queen"
	}
	return fmt.Sprintf("%d queens", n)
}
