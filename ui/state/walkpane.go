package state

import (
	"slices"
	"sort"
	"strings"

	"lidmark/ui/scene"
)

// WalkPane says where the walk lies: its head, its rows, and the closing count.
type WalkPane struct {
	Head, Body, Foot scene.Area
	Letters          scene.Area // the list of letters; empty where it has no room
	Narrow           bool       // there is room for the least alone
	Planned          bool       // there is room for what was planned
	Offset           float64    // how far the rows are scrolled
	Rows             int
	Current          int     // the row typed into; none: below 0
	Tall             float64 // its height
	WalkColumns
	asking []int // rows with a question below them, which are higher
	long   []int // rows with a second line, which are higher; those with a third stand twice
}

// WalkColumns are where the columns of the walk begin: name, what was planned, typed
// and read back; and about what the lids stand, before and behind.
type WalkColumns struct {
	Lid, Name, Plan, Typed, Back, After float64
}

// walkColumns shares the width of a walk out.
func walkColumns(a scene.Area, planned bool) WalkColumns {
	// The line has room for a row command, what is read back for a look with a
	// cell, and the plan what is free beside them.
	const lid, name, plan, least, most, line, readsBack = 38.0, 60.0, 112.0, 262.0, 340.0, 780.0, 0.4
	c := WalkColumns{Lid: a.X + lid, Name: a.X + name, Plan: a.X + plan, Typed: a.X + plan, After: a.Right() - 40}
	if planned {
		c.Typed = a.X + min(max(a.W-line, least), most)
	}
	c.Back = c.Typed + (c.After-30-c.Typed)*readsBack
	return c
}

// Measures of the walk, dp.
const (
	WalkLine     = 33.0 // a row
	walkHead     = 80.0 // down to the rule below the heads of the columns
	walkFoot     = 64.0
	walkTall     = 116.0 // the row that is typed into
	walkAsked    = 8.0   // it is higher by, where it asks
	walkAnswers  = 28.0  // and by, where its answers take two rows
	WalkQuestion = 48.0  // a row is higher by, where its question was passed
	WalkMore     = 18.0  // and by, where it has a second line
	walkNarrow   = 960.0
	walkPlanned  = 620.0
	walkLow      = 280.0  // rows lower than this show fewer about the one typed into
	lettersLeast = 1000.0 // a window narrower has no list of letters
)

// WalkPane is where the walk lies in the layout l.
func (s State) WalkPane(l Layout) WalkPane {
	p := WalkPane{Letters: l.Card, Rows: len(s.Walk.Rows), Current: s.Walk.index(s.Walk.At)}
	p.Narrow, p.Planned = l.Main.W < walkNarrow, l.Main.W >= walkPlanned
	p.Head, p.Body = cutTop(l.Main, walkHead)
	p.Foot = scene.Area{X: l.Main.X, Y: l.Main.Bottom() - walkFoot, W: l.Main.W, H: walkFoot}
	p.Body.H = max(0, p.Foot.Y-p.Body.Y)
	p.Tall = walkTall
	if _, passing := s.Passing(); s.Asked != nil || passing {
		p.Tall += walkAsked
		if p.Narrow {
			p.Tall += walkAnswers
		}
	}
	if s.Walk.Asking > 0 {
		for i, row := range s.Walk.Rows {
			if row.Passed.Asks != "" && i != p.Current {
				p.asking = append(p.asking, i)
			}
		}
	}
	p.WalkColumns = walkColumns(l.Main, p.Planned)
	p.long = s.longRows(p)
	p.Offset = min(s.Scroll[RecordPlace], p.most())
	return p
}

// moreLines are how many lines beyond the first a plan takes in so much room, as
// [scene.Wrap] breaks it. No list of them is made, since each letter asks.
func (s State) moreLines(plan string, room float64) (lines int) {
	if !s.wider(plan, WalkSize, scene.Regular, room) {
		return 0
	}
	plan = s.Units.Say(plan)
	wide := func(from, to int) bool { return (Reckoner{}).Width(plan[from:to], WalkSize, scene.Regular) > room }
	start, at := 0, 0
	for at < len(plan) {
		end := wordEnd(plan, at)
		if strings.Trim(plan[at:end], "0123456789.") == "" && end < len(plan) && !wide(at, wordEnd(plan, end+1)) {
			end = wordEnd(plan, end+1) // a figure stays with the word behind it
		}
		if at > start && wide(start, end) {
			lines, start = lines+1, at
		}
		at = end + 1
	}
	return lines
}

// wordEnd is where the word that begins at a place of a text ends.
func wordEnd(text string, at int) int {
	if i := strings.IndexByte(text[min(at, len(text)):], ' '); i >= 0 {
		return at + i
	}
	return len(text)
}

// longRows are the rows that say more than a line holds.
func (s State) longRows(p WalkPane) (long []int) {
	const most = 3
	plan, over := "", 0 // many rows in a row plan the same
	for i := range s.Walk.Rows {
		row := &s.Walk.Rows[i]
		if i == p.Current {
			continue
		}
		if p.Planned && row.Planned != plan {
			plan, over = row.Planned, s.moreLines(row.Planned, p.Typed-12-p.Plan)
		}
		more := 0
		if p.Planned && row.Planned != "" {
			more = min(over, most)
		}
		if !row.Open() && s.longWritten(row, p) {
			more = max(more, 1)
		}
		for range more {
			long = append(long, i)
		}
	}
	return long
}

// longWritten tells whether what was written in a row takes more than a line.
func (s State) longWritten(row *WalkRow, p WalkPane) bool {
	const several, saving = 34.0, 80.0
	room := p.After - 24 - p.Back
	if row.Many() {
		room -= several
	}
	if row.Under {
		room -= saving
	}
	return s.wider(row.Typed, TypedSize, scene.SemiBold, p.Back-16-p.Typed) || s.wider(s.WalkBack(*row), WalkSize, scene.Regular, room)
}

// Sizes of what stands in a row of the walk, dp.
const WalkSize, TypedSize = 14.0, 15.0

// wider tells whether a text is wider than the room for it.
func (s State) wider(text string, size float64, weight scene.Weight, room float64) bool {
	return Reckoner{}.Width(s.Units.Say(text), size, weight) > room
}

// WalkBack is a row read back, with who wrote it and what became of it.
func (s State) WalkBack(row WalkRow) string {
	said := row.Back
	if row.Many() && len(row.Nucs) > 0 {
		said = counted(len(row.Nucs), "nuc") + ": " + said
	}
	if row.By != "" {
		said = "by " + row.By + ": " + said
	}
	switch {
	case row.Failed:
		return "not written: " + s.Pen.Why
	case row.Asks && row.Passed.Asks == "":
		return said + "; it does not fit the book"
	case row.Twice:
		return "typed twice: " + said
	}
	return said
}

// Y is where a row begins, from the top of the first one.
func (p WalkPane) Y(row int) float64 {
	asking, _ := slices.BinarySearch(p.asking, row)
	long, _ := slices.BinarySearch(p.long, row)
	y := float64(row)*WalkLine + float64(asking)*WalkQuestion + float64(long)*WalkMore
	if p.Current >= 0 && row > p.Current {
		y += p.Tall - WalkLine
	}
	return y
}

// More is how many lines a row has below its first.
func (p WalkPane) More(row int) int {
	from, _ := slices.BinarySearch(p.long, row)
	to, _ := slices.BinarySearch(p.long, row+1)
	return to - from
}

// H is how high a row is.
func (p WalkPane) H(row int) float64 { return p.Y(row+1) - p.Y(row) }

// All is the height of all rows.
func (p WalkPane) All() float64 { return p.Y(p.Rows) }

func (p WalkPane) most() float64 { return max(0, p.All()-p.Body.H) }

// Shown are the rows that show, the first and the one behind the last.
func (p WalkPane) Shown() (from, to int) {
	above := func(y float64) int { return sort.Search(p.Rows, func(i int) bool { return p.Y(i+1) > y }) }
	return above(p.Offset), min(p.Rows, above(p.Offset+p.Body.H)+1)
}

// rowShown is the walk scrolled so that the row typed into is in sight, and rows
// about it.
func (s State) rowShown() State {
	p := s.WalkPane(s.Layout())
	if p.Current < 0 {
		return s
	}
	before, behind := 0.0, WalkLine
	if p.Body.H > walkLow {
		before = min(2*WalkLine, p.Y(p.Current))
	}
	s = s.within(RecordPlace, p.Offset, p.Y(p.Current)-before, before+p.Tall+behind, p.Body.H)
	off := s.Scroll[RecordPlace]
	top := sort.Search(p.Current, func(i int) bool { return p.Y(i) >= off }) // a whole row begins at the top
	whole := p.Y(top)
	return s.scrolled(RecordPlace, whole-off)
}
