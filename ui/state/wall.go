package state

import (
	"math"
	"strconv"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// LidWall is the wall of lids now: rows of small lids, section by section.
type LidWall struct {
	Parts  []WallPart
	PerRow int
	Lid    float64 // size of a lid: as large as all have room for, from 16 to 64
	Named  bool    // names stand under the lids
	Across float64 // from lid to lid in a row
	Down   float64 // and from row to row
	Offset float64
	Height float64    // of the lids' part of the pane
	Legend SignLegend // what lies below them
	All    float64    // height of all rows
}

// WallPart is one section of the wall.
type WallPart struct {
	Section
	Y, H float64 // where it begins below the top of the wall, and how high it is
}

// Measures of the wall, dp.
const (
	WallGap     = 3.5                   // from lid to lid
	WallName    = 13.0                  // size of the names under lids
	wallNamed   = 21.0                  // from lid to lid below: a name, and the frame of the lid
	wallApart   = 8.0                   // from name to name
	wallClose   = 5.0                   // from lid to lid where there are names
	wallLong    = 64.0                  // a longer name is shortened
	WallGroup   = 7.0                   // gap after eight lids
	WallNames   = 164.0                 // where the lids begin
	WallWide    = WallNames - Edge - 32 // the words before them
	WallRow     = 18.0                  // a line of these
	WallHead    = 46.0
	wallGap     = 16.0
	wallFolded  = 36.0
	wallLeast   = 44.0
	wallCount   = 110.0
	wallSlender = 620.0
)

// WallCounts is what a wall of some width keeps free for the counts at the
// right; in a slender one they stand under the names.
func WallCounts(width float64) float64 {
	if width < wallSlender {
		return 0
	}
	return wallCount
}

// Wall is the wall of lids in the layout l. Its lids are as though the band stood over the
// room's head, and the legend had all it ever has: they are the same on every day.
func (s State) Wall(l Layout) LidWall {
	pane := l.Main
	if l.Band.Empty() {
		pane.H = max(0, pane.H-BandHeight)
	}
	w := s.wall(pane, s.wallLegend(pane))
	if w.All > w.Height && w.Legend.Low && !s.Signs {
		w = s.wall(pane, folded())
	}
	w.Legend.Hollow = w.Lid < lidHatched
	w.Height = max(0, l.Main.H-WallHead-w.Legend.Height)
	w.Offset = min(s.Scroll[WallPlace], max(0, w.All-w.Height))
	return w
}

// wall is the wall above a legend in a pane: the lids with names, the largest that have
// room, else those without.
func (s State) wall(pane scene.Area, legend SignLegend) LidWall {
	const least, most, named, step = 16.0, 36.0, 28.0, 2.0
	sections := s.Sections()
	words := make([]float64, len(sections))
	for i := range sections {
		words[i] = wallWords(&sections[i], pane.W)
	}
	w := LidWall{Parts: make([]WallPart, 0, len(sections)), Legend: legend, Height: max(0, pane.H-WallHead-legend.Height)}
	if w.sized(named, 0); w.lays(sections, words, pane.W) { // what has no room under the shortest names is not measured
		names := longestName(sections)
		for lid := lidWithName; lid >= named; lid -= step {
			if w.sized(lid, names); w.lays(sections, words, pane.W) {
				return w
			}
		}
	}
	for lid := most; lid >= least; lid -= step {
		w.Lid, w.Named, w.Across, w.Down = lid, false, lid+WallGap, lid+WallGap
		if w.lays(sections, words, pane.W) {
			break
		}
	}
	return w
}

// lidWithName is the size of a lid from which its name stands in it, dp: in the wall none
// is larger.
const lidWithName = 60.0

// sized gives the lids a size, with names below so wide.
func (w *LidWall) sized(lid, names float64) {
	w.Lid, w.Named, w.Across, w.Down = lid, true, max(lid+wallClose, names+wallApart), lid+wallNamed
}

// longestName is how wide the widest name of a nuc is, within bounds.
func longestName(sections []Section) (w float64) {
	for i := range sections {
		for _, n := range sections[i].Nucs {
			w = max(w, Reckoner{}.Width(n.Name, WallName, scene.SemiBold))
		}
	}
	return min(w, wallLong)
}

// lays lays the sections one below the other in a pane so wide, each at least as high
// as its words, and tells whether all are in sight.
func (w *LidWall) lays(sections []Section, words []float64, width float64) bool {
	room := width - WallNames - WallCounts(width)
	const step = 4
	w.PerRow, w.All, w.Parts = step, 0, w.Parts[:0]
	for wide := func(n int) float64 { return float64(n)*w.Across + float64((n-1)/8)*WallGroup }; wide(w.PerRow+step) <= room; {
		w.PerRow += step
	}
	for i, sec := range sections {
		h := max(math.Ceil(float64(len(sec.Nucs))/float64(w.PerRow))*w.Down, wallLeast, words[i]) + wallGap
		if sec.Folded {
			h = wallFolded
		}
		w.Parts = append(w.Parts, WallPart{sec, w.All, h})
		w.All += h
	}
	return w.All <= w.Height
}

// wallWords is how high the words before the lids of a section are: its name and its
// count in up to two lines each, and in a slender wall how many may need the keeper.
func wallWords(sec *Section, width float64) float64 {
	lines := wallLines(sec.Word, 14)
	if sec.Note == "" {
		lines++
	} else {
		lines += wallLines(sec.Note+", "+counted(len(sec.Nucs), "nuc"), 13)
	}
	if WallCounts(width) == 0 {
		lines += needLines(len(sec.Nucs))
	}
	return WallRow * float64(lines)
}

// needLines is how many lines before the lids have room for how many of so many nucs need
// the keeper.
func needLines(nucs int) int {
	if (Reckoner{}).Width(strconv.Itoa(nucs)+" "+willNeed, 13, scene.SemiBold) <= WallWide {
		return 1
	}
	return 2
}

// lidHatched is the size of a lid from which what nobody saw is hatched, dp; smaller ones
// are hollow.
const lidHatched = 20.0

// wallLegend is the legend below the wall, as high as it is where it has all signs.
func (s State) wallLegend(pane scene.Area) SignLegend {
	all, _ := s.FullLegend(s.Filled())
	ever := s.moreSigns(tally{caught: 1, strokes: map[book.Stroke]int{book.Settled: 1, book.Watch: 1, book.Act: 1}})
	l := s.rowsLegend(pane, hollowed(inRows(all, ever), false))
	l.Wall = true
	return l
}

// wallLines is how many lines before the lids a text takes, two at most.
func wallLines(text string, size float64) int {
	if (Reckoner{}).Width(text, size, scene.SemiBold) <= WallWide {
		return 1
	}
	return min(2, linesOf(text, size, WallWide))
}
