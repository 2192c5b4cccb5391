package state

import (
	"math"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
)

// Layout says where everything in the window lies. Areas that have no room, or
// no place in the room shown, are empty.
type Layout struct {
	Window scene.Area
	Rooms  scene.Area
	Ribbon Ribbon
	Lanes  scene.Area // all visible lanes, each Lane high
	Strip  scene.Area // the orders in time, on the page of the season
	Banks  scene.Area // the banks below them, where anybody is caged
	Band   scene.Area // "You are looking at …"
	Foot   scene.Area
	Card   scene.Area
	Turns  scene.Area // the head by which parts take turns
	Main   scene.Area // route, lids, wall or table: all between Lanes, Foot and Card
	Map    scene.Area
	Side   scene.Area // kit and minutes of Today

	Lane    float64 // how high a lane is
	Columns int     // lids in a row of the grid
	Pitch   float64 // from lid to lid in a row of the grid
	Narrow  bool    // parts take turns, the ribbon has two rows
	Over    bool    // the card lies over the pane

	lettersGone bool // the list of letters of the walk has no room of its own
}

// Ribbon is the strip of days.
type Ribbon struct {
	scene.Area
	X      float64 // where the first day begins
	Column float64 // width of a day
	First  calendar.Day
	Days   int
}

// Heights and widths of the window's parts, dp.
const (
	RoomsHeight  = 44.0
	RibbonHeight = 104.0
	RibbonLow    = 64.0 // in two rows, without names
	LaneHeight   = 48.0
	BandHeight   = 30.0
	HeadHeight   = 34.0
	FootHeight   = 28.0
	CardWidth    = 338.0
	CardNarrow   = 293.0
	SideWidth    = 296.0
	Edge         = 20.0 // from a pane's side to its text
	GridPitch    = 57.0
	GridGap      = 10.0 // between two blocks of four
	gridMargin   = 26.0

	labelWidth  = 104.0 // names of the ribbon's rows
	labelNarrow = 15.0

	// Least sizes of a window, and of the panes below the lanes.
	LeastWidth, LeastHeight = 800.0, 560.0

	mapWide    = 800.0 // from here on the grid grows, not the map
	panesLeast = 540.0 // the lanes take what is more,
	lanesShare = 0.25  // and in any case this share of the height
	mostLanes  = 6
	widestDay  = 26.0
	usualDay   = 21.0
	narrowDay  = 29.0
	leastDay   = 8.0 // in the room Plan
	leastDays  = 21
	mostDays   = 63
)

// Widths of the window below which parts give way.
const (
	fewerDays = 1440.0
	oneLane   = 1200.0
	turns     = 1000.0
	cardOver  = 760.0
)

// Layout is where everything lies now.
func (s State) Layout() Layout {
	w := s.Size()
	l := Layout{Window: w, Narrow: w.W < turns, Over: w.W < cardOver}
	l.Rooms = scene.Area{W: w.W, H: RoomsHeight}
	l.Foot = scene.Area{Y: w.H - FootHeight, W: w.W, H: FootHeight}
	l.Lane = LaneHeight
	y := l.Rooms.Bottom()
	if s.ribboned() {
		l.Ribbon = s.ribbon(l, y)
		y = l.Ribbon.Bottom()
	}
	if s.OnSeason() {
		l.Lane = s.seasonLane(l, l.Foot.Y-y)
	}
	if n := s.laneCount(l, y); n > 0 {
		l.Lanes = scene.Area{Y: y, W: w.W, H: float64(n) * l.Lane}
		y = l.Lanes.Bottom()
	}
	if s.OnSeason() {
		l.Strip = scene.Area{Y: y, W: w.W, H: StripHeight}
		l.Banks = scene.Area{Y: l.Strip.Bottom(), W: w.W, H: s.bankLanes(l.Foot.Y - l.Strip.Bottom())}
		y = l.Banks.Bottom()
	}
	if s.bandKept() {
		l.Band = scene.Area{Y: y, W: w.W, H: BandHeight}
		y = l.Band.Bottom()
	}
	l.panes(s, scene.Area{Y: y, W: w.W, H: max(0, l.Foot.Y-y)})
	return l
}

// ribboned tells whether the ribbon of days stands above the room: not where no
// day matters, nor over the steps of a new book or a list that is brought.
func (s State) ribboned() bool {
	return s.Room != About && s.Room != Numbers && !s.paged() && (s.Book != nil || s.Size().H >= startRibbon)
}

// bandKept tells whether the band stands above the room. While the day is dragged
// it does if it was there before: nothing jumps under the pointer, nothing is covered,
// and the flag says which day it is.
func (s State) bandKept() bool {
	switch {
	case !s.ribboned():
		return false
	case s.Drag.Kind == DayDrag:
		return s.Drag.Away
	default:
		return s.Away()
	}
}

// panes divides what is left of the window.
func (l *Layout) panes(s State, rest scene.Area) {
	if s.Room != About && (s.Room != Plan || s.OnOrders() || s.seasonCard() || s.Form != nil) && s.Book != nil && (s.Fill != BatchFill || s.Form != nil) && !s.paged() {
		rest = l.card(s, rest)
	}
	l.Main = rest
	switch {
	case s.Book == nil || s.Room == About || s.Room == Numbers || s.Room == Plan || s.Room == Review || s.Fill != NoFill:
	case s.Room == Today && rest.W < oneLane-CardWidth, s.Room == Yard && l.Narrow && s.Pane <= Lids:
		l.Turns, l.Main = cutTop(rest, HeadHeight)
		l.takeTurns(s)
	case s.Room == Today:
		l.Side, l.Main = cutLeft(rest, SideWidth)
	case s.Pane == Split:
		l.split(s, rest)
	case s.Pane == Map:
		l.Map, l.Main = rest, scene.Area{}
	}
	if l.Columns == 0 {
		l.Columns = block
		for gridWidth(l.Columns+block) <= l.Main.W {
			l.Columns += block
		}
	}
	l.Pitch = max(0, l.Main.W-gridWidth(l.Columns))/float64(l.Columns) + GridPitch
}

// card takes the card off the right side, or lays it over the pane.
func (l *Layout) card(s State, rest scene.Area) scene.Area {
	if l.lettersGone = s.Fill == RecordFill && l.Window.W < lettersLeast && s.Form == nil; l.lettersGone {
		if s.Sheet {
			l.Card = lettersSheet(rest)
		}
		return rest // the list of letters goes first
	}
	width := CardWidth
	if l.Narrow {
		width = CardNarrow
	}
	card, left := cutRight(rest, min(width, rest.W))
	if !l.Over {
		l.Card = card
		return left
	}
	if s.Sheet {
		l.Card = card
	}
	return rest
}

// Turn is the part that has the turn: where the map was to fill Yard it is the
// map.
func (s State) Turn() Part {
	if s.Room == Yard && s.Pane == Map && s.Part == MainPart {
		return SidePart
	}
	return s.Part
}

// takeTurns gives the room to the part whose turn it is.
func (l *Layout) takeTurns(s State) {
	switch {
	case s.Room == Today && s.Part == SidePart:
		l.Side, l.Main = l.Main, scene.Area{}
	case s.Room == Yard && s.Turn() == SidePart:
		l.Map, l.Main = l.Main, scene.Area{}
	case s.Room == Yard && s.Part == LanePart:
		l.Lanes, l.Main = l.Main, scene.Area{}
	}
}

// laneCount is how many lanes there is room for above the panes.
func (s State) laneCount(l Layout, y float64) int {
	if s.OnSeason() {
		return s.seasonLanes(l, l.Foot.Y-y)
	}
	if s.Book == nil || l.Narrow || s.Fill != NoFill || s.Room != Plan && (s.Room != Yard || s.Pane > Lids) {
		return 0
	}
	if s.Room == Plan {
		return s.planLanes(l, l.Foot.Y-y) * boolInt(s.onWish())
	}
	high := l.Foot.Y - y
	room := int(max(high-panesLeast, high*lanesShare) / LaneHeight)
	if s.Pane == Map { // it fills the room to be seen large
		room = int((high - panesLeast) / LaneHeight)
	}
	if l.Window.W < oneLane {
		room = min(room, 1)
	}
	return min(s.laneCountAll(), mostLanes, max(room, 1))
}

// gridColumns is how many lids stand in a row beside the map.
func gridColumns(width, window float64) int {
	if window < oneLane {
		return block
	}
	n := 2 * block
	for width-gridWidth(n+block) > mapWide {
		n += block
	}
	return n
}

// gridWidth is how wide a grid of so many columns is, a multiple of a block.
func gridWidth(columns int) float64 {
	return float64(columns)*GridPitch + float64(columns/block-1)*GridGap + gridMargin
}

// ribbon is as many days as there is room for, begun some before today.
func (s State) ribbon(l Layout, y float64) Ribbon {
	r := Ribbon{Area: scene.Area{Y: y, W: l.Window.W, H: RibbonHeight}, X: labelWidth}
	width, before := usualDay, 3
	if l.Narrow {
		r.H, r.X, width, before = RibbonLow, labelNarrow, narrowDay, 5
	}
	room := r.W - r.X
	r.Days = min(max(int(room/width), leastDays), mostDays)
	r.Days = max(r.Days, int(math.Ceil(room/widestDay))*boolInt(!l.Narrow))
	r.Column = room / float64(r.Days)
	r.First = s.Today() - calendar.Day(r.Days/before) + calendar.Day(s.Shift)
	if s.Room == Plan && !s.OnOrders() {
		span := s.planSpan
		if s.OnSeason() {
			span = s.seasonSpan
		}
		first, last := span()
		r.Days = min(max(last.Sub(first)+1, leastDays), int(room/leastDay))
		r.Column, r.First = room/float64(r.Days), first+calendar.Day(s.Shift)
	}
	return r
}

func boolInt(b bool) int {
	if b {
		return 1
	}
	return 0
}

// At is where the middle of the day d lies, dp; it may lie outside the strip.
func (r Ribbon) At(d calendar.Day) float64 { return r.Left(d) + r.Column/2 }

// Left is where the day d begins.
func (r Ribbon) Left(d calendar.Day) float64 { return r.X + float64(d.Sub(r.First))*r.Column }

// Day is the day whose column holds x, the nearest one for an x outside.
func (r Ribbon) Day(x float64) calendar.Day {
	i := int(math.Floor((x - r.X) / r.Column))
	return r.First + calendar.Day(min(max(i, 0), r.Days-1))
}

// Last is the last day that is shown.
func (r Ribbon) Last() calendar.Day { return r.First + calendar.Day(r.Days-1) }

func cutTop(a scene.Area, h float64) (top, rest scene.Area) {
	h = min(h, a.H)
	return scene.Area{X: a.X, Y: a.Y, W: a.W, H: h}, scene.Area{X: a.X, Y: a.Y + h, W: a.W, H: a.H - h}
}

func cutLeft(a scene.Area, w float64) (left, rest scene.Area) {
	w = min(max(w, 0), a.W)
	return scene.Area{X: a.X, Y: a.Y, W: w, H: a.H}, scene.Area{X: a.X + w, Y: a.Y, W: a.W - w, H: a.H}
}

func cutRight(a scene.Area, w float64) (right, rest scene.Area) {
	rest, right = cutLeft(a, a.W-w)
	return right, rest
}
