package paper_test

import (
	"bytes"
	"compress/zlib"
	"fmt"
	"io"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode/utf16"

	"pgregory.net/rapid"
)

// printed is a page as its drawing commands tell.
type printed struct {
	w, h   float64 // mm
	texts  []word
	bars   []bar    // rectangles filled with black
	inks   []string // every colour told
	frames []bar    // rectangles of thin lines, to write into

	outlines []bar // rectangles of a line only

	corners [][2]float64 // points through which lines go, mm
}

// word is a piece of text and where it begins, mm from the upper left corner, and the
// size of its type, mm.
type word struct {
	x, y float64
	text string
	size float64
}

// bar is a rectangle, mm.
type bar struct{ x, y, w, h float64 }

// The commands of a page that tests read.
var (
	mediaBox = regexp.MustCompile(`/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]`)
	stream   = regexp.MustCompile(`<</Filter /FlateDecode /Length (\d+)>>\nstream\n`)
	fontSize = regexp.MustCompile(`^BT /F\w+ ([\d.]+) Tf ET$`)
	text     = regexp.MustCompile(`(?s)^BT (-?[\d.]+) (-?[\d.]+) Td \(((?:\\.|[^\\)])*)\) Tj ET\n`)
)

const millimetre = 72 / 25.4

// read reads the pages of a document.
func read(t rapid.TB, pdf []byte) (pages []printed) {
	t.Helper()
	before := 0
	for _, at := range stream.FindAllSubmatchIndex(pdf, -1) {
		w, h := size(t, pdf, before, at[0])
		before = at[1]
		n, _ := strconv.Atoi(string(pdf[at[2]:at[3]]))
		z, err := zlib.NewReader(bytes.NewReader(pdf[at[1] : at[1]+n]))
		if err != nil {
			t.Fatal(err)
		}
		body, err := io.ReadAll(z)
		if err != nil {
			t.Fatal(err)
		}
		pages = append(pages, page(body, w, h))
	}
	if len(pages) == 0 {
		t.Fatal("the document has no pages")
	}
	return pages
}

// size is the format of the page that is told of in this part of a document: its own, else
// that of the document, which is told last.
func size(t rapid.TB, pdf []byte, from, to int) (w, h float64) {
	t.Helper()
	m := mediaBox.FindSubmatch(pdf[from:to])
	if all := mediaBox.FindAllSubmatch(pdf, -1); m == nil && len(all) > 0 {
		m = all[len(all)-1]
	}
	if m == nil {
		t.Fatal("the document tells no format")
	}
	return number(m[1]) / millimetre, number(m[2]) / millimetre
}

// page reads the commands of a page, one a line; a text may hold line breaks.
func page(body []byte, w, h float64) printed {
	p := printed{w: w, h: h}
	dark, width, size := false, 0.0, 0.0
	for len(body) > 0 {
		if m := text.FindSubmatch(body); m != nil {
			p.texts = append(p.texts, word{number(m[1]) / millimetre, h - number(m[2])/millimetre, unicode(m[3]), size})
			body = body[len(m[0]):]
			continue
		}
		line, rest, _ := bytes.Cut(body, []byte("\n"))
		body = rest
		if m := fontSize.FindSubmatch(line); m != nil {
			size = number(m[1]) / millimetre
		}
		f := bytes.Fields(line)
		if len(f) == 0 {
			continue
		}
		switch string(f[len(f)-1]) {
		case "g", "rg", "G", "RG":
			p.inks = append(p.inks, string(line))
			if s := string(f[len(f)-1]); s == "g" || s == "rg" {
				dark = string(line) == "0.000 g"
			}
		case "m", "l":
			if len(f) == 3 {
				p.corners = append(p.corners, [2]float64{number(f[0]) / millimetre, h - number(f[1])/millimetre})
			}
		case "w":
			width = number(f[0]) / millimetre
		case "S":
			if len(f) == 6 && string(f[4]) == "re" {
				p.outlines = append(p.outlines, bar{number(f[0]) / millimetre, h - number(f[1])/millimetre, number(f[2]) / millimetre, -number(f[3]) / millimetre})
			}
		case "B":
			if thin := width > 0.2 && width < 0.36; thin && len(f) == 6 && string(f[4]) == "re" {
				if b := (bar{number(f[0]) / millimetre, h - number(f[1])/millimetre, number(f[2]) / millimetre, -number(f[3]) / millimetre}); b.w > 6 {
					p.frames = append(p.frames, b)
				}
			}
		case "f":
			if dark && len(f) == 6 && string(f[4]) == "re" {
				p.bars = append(p.bars, bar{number(f[0]) / millimetre, h - number(f[1])/millimetre, number(f[2]) / millimetre, -number(f[3]) / millimetre})
			}
		}
	}
	return p
}

func number(b []byte) float64 {
	f, err := strconv.ParseFloat(string(b), 64)
	if err != nil {
		return math.NaN()
	}
	return f
}

// unicode is the text of a string of the document, UTF-16 with escapes.
func unicode(b []byte) string {
	var plain []byte
	for i := 0; i < len(b); i++ {
		if b[i] == '\\' {
			i++
			if b[i] == 'r' {
				plain = append(plain, '\r')
				continue
			}
		}
		plain = append(plain, b[i])
	}
	units := make([]uint16, len(plain)/2)
	for i := range units {
		units[i] = uint16(plain[2*i])<<8 | uint16(plain[2*i+1])
	}
	return string(utf16.Decode(units))
}

// lines are the texts of a page from top to bottom, those on one line in one.
func (p printed) lines() (lines []string) {
	texts := slices.Clone(p.texts)
	slices.SortStableFunc(texts, func(a, b word) int {
		if math.Abs(a.y-b.y) > 0.4 {
			return int(math.Copysign(1, a.y-b.y))
		}
		return int(math.Copysign(1, a.x-b.x))
	})
	for i, w := range texts {
		if i > 0 && math.Abs(w.y-texts[i-1].y) <= 0.4 {
			lines[len(lines)-1] += "  " + w.text
			continue
		}
		lines = append(lines, w.text)
	}
	return lines
}

// all is the text of a document, page by page.
func all(pages []printed) string {
	var b strings.Builder
	for i, p := range pages {
		fmt.Fprintf(&b, "-- page %d of %d --\n", i+1, len(pages))
		for _, l := range p.lines() {
			b.WriteString(l + "\n")
		}
	}
	return b.String()
}

// count is how often a text stands by itself in a document.
func count(pages []printed, text string) (n int) {
	for _, p := range pages {
		for _, w := range p.texts {
			if w.text == text {
				n++
			}
		}
	}
	return n
}
