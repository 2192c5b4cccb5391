package unit

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Say is a text with every quantity in the system's units: figures and ranges
// that a metric unit follows, as exactly told as they were, to two digits at
// least. What stands in quotes was typed by somebody or is to be typed so, and
// stays; so does all else, byte for byte. Metric texts come back as they are.
func (s System) Say(text string) string {
	if s == Metric {
		return text
	}
	w := sayer{text: text}
	for i := w.next(0); i < len(text); i = w.next(i) {
		if text[i] < '0' || text[i] > '9' {
			i = quoteEnd(text, i)
			continue
		}
		i = w.quantity(i)
	}
	if w.out == nil {
		return text
	}
	return string(append(w.out, text[w.copied:]...))
}

// sayer writes a text anew, from the first quantity that changes.
type sayer struct {
	text   string
	out    []byte
	copied int  // bytes of text that are in out, changed or not
	last   *row // the unit of the quantity before
}

// next is where the next digit or quote stands, from a byte on.
func (w *sayer) next(from int) int {
	for i := from; i < len(w.text); i++ {
		if c := w.text[i]; '0' <= c && c <= '9' || c == '"' || strings.HasPrefix(w.text[i:], "“") || strings.HasPrefix(w.text[i:], "„") {
			return i
		}
	}
	return len(w.text)
}

// quoteEnd is the byte behind a quotation, or behind its mark if it never ends.
func quoteEnd(text string, from int) int {
	_, n := utf8.DecodeRuneInString(text[from:])
	if to := strings.IndexAny(text[from+n:], `"”“`); to >= 0 {
		_, m := utf8.DecodeRuneInString(text[from+n+to:])
		return from + n + to + m
	}
	return from + n
}

// quantity says the quantity that begins at a digit, if one does, and is the
// byte behind what it has read.
func (w *sayer) quantity(at int) int {
	first, ok := figureAt(w.text, at)
	if !ok {
		return w.wordEnd(at)
	}
	second, joint := w.second(first.to)
	end := first.to
	if joint != "" {
		end = second.to
	}
	r, from, to := unitAt(w.text, end)
	switch {
	case r != nil:
		w.last = r
	case w.last != nil && joint == "to" && strings.HasSuffix(w.text[:first.from], ": write "):
		r, from, to = w.last, end, end // bounds of the quantity before
	default:
		return first.to
	}
	step := w.isStep(first.from, to)
	w.figure(first, r, step)
	if joint != "" {
		w.figure(second, r, step || joint == "±")
	}
	if from < to {
		w.put(from, to, r.us)
	}
	return to
}

// wordEnd is the byte behind the word or name that a digit stands in.
func (w *sayer) wordEnd(at int) int {
	for i, r := range w.text[at:] {
		if !isWord(r) {
			return at + i
		}
	}
	return len(w.text)
}

// joints join two figures that have one unit.
var joints = []string{"to", "–", "-", "±"}

// second is the other end of a range, and what joins it to the first.
func (w *sayer) second(at int) (f figure, joint string) {
	gap := blank(w.text[at:])
	rest := w.text[at+gap:]
	i := slices.IndexFunc(joints, func(j string) bool { return strings.HasPrefix(rest, j) })
	if i < 0 || joints[i] == "to" && gap == 0 {
		return f, ""
	}
	f.from = at + gap + len(joints[i])
	space := blank(w.text[f.from:])
	if joints[i] == "to" && space == 0 {
		return f, ""
	}
	f.from += space
	start := f.from
	if minus, n := utf8.DecodeRuneInString(w.text[start:]); joints[i] == "to" && (minus == '-' || minus == '−') {
		f.minus, start = w.text[start:start+n], start+n
	}
	if digitsEnd(w.text, start) == start {
		return f, ""
	}
	f, ok := f.read(w.text, start)
	if !ok {
		return f, ""
	}
	return f, joints[i]
}

// unitAt is the unit behind a figure that ends at a byte, and where it stands.
// Only the sign of a degree may touch its figure.
func unitAt(text string, at int) (r *row, from, to int) {
	from = at + blank(text[at:])
	if from == at && !strings.HasPrefix(text[at:], "°") {
		return nil, at, at
	}
	to = from
	for to < len(text) {
		c, n := utf8.DecodeRuneInString(text[to:])
		if !unicode.IsLetter(c) && !unicode.IsDigit(c) && c != '°' && c != '²' && c != '³' && (c != '/' || !letterAt(text, to+n)) {
			break
		}
		to += n
	}
	return find(text[from:to]), from, to
}

func letterAt(text string, at int) bool {
	r, _ := utf8.DecodeRuneInString(text[at:])
	return unicode.IsLetter(r) || r == '°'
}

// Words around a quantity that is a difference of two.
var (
	stepBefore = []string{"±", "by", "within"}
	stepAfter  = []string{"warmer", "cooler", "colder", "hotter", "less", "more", "higher", "lower"}
)

// isStep tells a difference from a value: ± 2 °C, cooler by: 4 °C, 2 °C less.
func (w *sayer) isStep(from, to int) bool {
	before := strings.TrimRight(w.text[:from], spaces+":")
	after := strings.TrimLeft(w.text[to:], spaces)
	isBefore := func(word string) bool {
		rest, ok := strings.CutSuffix(before, word)
		r, n := utf8.DecodeLastRuneInString(rest)
		return ok && (n == 0 || !isWord(r) || word == "±")
	}
	isAfter := func(word string) bool { return strings.HasPrefix(after, word) && !letterAt(after, len(word)) }
	return slices.ContainsFunc(stepBefore, isBefore) || slices.ContainsFunc(stepAfter, isAfter)
}

// figure writes a figure of a metric unit in the other.
func (w *sayer) figure(f figure, r *row, step bool) {
	w.out = append(w.out, w.text[w.copied:f.from]...)
	w.copied = f.to
	if step {
		w.out = f.as(w.out, f.v/r.one, false)
		return
	}
	w.out = f.as(w.out, r.of(f.v), r.zero != 0)
}

// put writes a word in the place of another.
func (w *sayer) put(from, to int, word string) {
	w.out = append(append(w.out, w.text[w.copied:from]...), word...)
	w.copied = to
}
