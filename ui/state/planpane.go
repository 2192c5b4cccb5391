package state

import (
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
)

// PlanPane says where the parts of the room Plan lie. In a wide window they stand
// side by side; in another one below each other, and scroll.
type PlanPane struct {
	Wish   scene.Area
	Body   scene.Area // all below the wish: it scrolls where it is higher than its place
	Ladder scene.Area
	Parts  [4]scene.Area // amounts, how sure, minutes, why
	Kept   scene.Area    // what is on the plan, and what was kept beside, where parts stand below each other
	Head   float64       // of the ladder, above its steps; 0: beside the first ones
	Rung   float64       // how high a step of the ladder is
	Tall   float64       // of all in Body
	Offset float64
}

// Sizes of the room Plan, dp.
const (
	LadderRungs  = 12
	WishHeight   = 104.0
	wishTall     = 176.0 // the answer below the wish
	wishLine     = 44.0  // one more line of the wish
	wishNarrow   = 780.0 // below, the wish needs a second line
	wishNarrower = 700.0 // and a third
	wishHour     = 40.0  // what the hour of a graft takes of a line
	wishSeveral  = 900.0 // below, the words of several grafts need one more
	headTall     = 24.0  // a line above the steps, in a narrow window
	rungMost     = 26.0
	rungLeast    = 19.1
	LadderEdge   = 6.0 // above its steps, and below them
	partsLeast   = 246.0
	bodyLeast    = 190.0  // where less is left below the wish, that scrolls as well
	PlanWide     = 1200.0 // from here on the parts stand side by side
	amountsTall  = 420.0
	sureTall     = 300.0
	whyTall      = 380.0
	keptLine     = 22.0
)

// PlanPane is how the room is divided. In a wide window all is in sight; else parts
// stand below each other and scroll, in a low one the wish with them. The day looked at
// changes nothing of it: steps are as high as if the band, and the lane of a planned batch,
// were always there, and what these take the parts give.
func (s State) PlanPane(l Layout) (p PlanPane) {
	wish, wide := WishHeight, l.Main.W >= PlanWide
	if !wide {
		wish = wishTall + wishLine*float64(s.wishMore(l.Main.W))
	}
	p.Wish, p.Body = cutTop(l.Main, wish)
	rest, whole := p.Body, p.Body.H+l.Band.H
	if whole < bodyLeast {
		p.Body, rest.Y = l.Main, l.Main.Y+wish
		p.Wish.H = wish
	}
	p.Rung = min(rungMost, max(rungLeast, (whole+l.Lanes.H-s.planOver(l)-2*LadderEdge-partsLeast)/LadderRungs))
	p.Ladder = scene.Area{X: rest.X, Y: rest.Y, W: rest.W, H: LadderEdge*2 + LadderRungs*p.Rung}
	if wide && whole >= p.Ladder.H+partsLeast+BandHeight {
		p.beside(rest)
		return p
	}
	if more := float64(boolInt(s.Planning.Forwards)) * wishLine; wide && more > 0 && whole >= bodyLeast+more { // the button stands beside it
		p.Wish, p.Body = cutTop(l.Main, wish+more)
		rest, whole = p.Body, whole-more
		p.Ladder.Y = rest.Y
	}
	p.Head = headTall
	p.Rung = rungOf(whole - headTall - LadderEdge)
	p.Ladder.H = headTall + LadderEdge*2 + LadderRungs*p.Rung
	p.stacked(rest, s.keptLines())
	p.Offset = min(s.Scroll[PlanPlace], p.most())
	p.shift(-p.Offset)
	return p
}

// wishMore is how many lines more than two the wish takes in a narrow window: the hour of a graft
// takes room of one, how far grafts are apart most of another.
func (s State) wishMore(room float64) int {
	several := 0
	if w, _ := s.Wish(); w.Grafts > 1 {
		several = boolInt(room < wishSeveral)
	}
	if s.Planning.Forwards {
		room -= wishHour
	}
	return several + boolInt(room < wishNarrow) + boolInt(room < wishNarrower)
}

// RungReach is how far a step reaches below its middle, and above: its words, and the end of a
// bar that is hard.
const RungReach = 10.0

// rungOf is how high steps are of which as many as can be are in sight, each whole.
func rungOf(room float64) float64 {
	last := room - RungReach // the middle of the last one in sight
	shown := min(LadderRungs, max(1, math.Floor(last/rungLeast+0.5)))
	return min(rungMost, max(rungLeast, min(room/shown, last/(shown-0.5))))
}

// beside puts the parts side by side below the ladder.
func (p *PlanPane) beside(rest scene.Area) {
	a := scene.Area{X: rest.X, Y: p.Ladder.Bottom(), H: rest.Bottom() - p.Ladder.Bottom()}
	for i, share := range [4]float64{0.285, 0.24, 0.24, 0.235} {
		a.W = rest.W * share
		p.Parts[i] = a
		a.X += a.W
	}
	p.Tall = p.Body.H
}

// stacked puts the parts below each other, two in a row where they have room.
func (p *PlanPane) stacked(rest scene.Area, kept int) {
	y, tall := p.Ladder.Bottom(), [4]float64{amountsTall, sureBoth, sureTall, whyTall}
	half := rest.W / 2
	for i := range p.Parts {
		a := scene.Area{X: rest.X, Y: y, W: rest.W, H: tall[i]}
		if half >= planColumn {
			a.X, a.W, a.H = rest.X+float64(i%2)*half, half, tall[i/2*2+i/2]
		}
		p.Parts[i] = a
		if half < planColumn || i%2 == 1 {
			y = a.Bottom()
		}
	}
	if kept > 0 {
		p.Kept = scene.Area{X: rest.X + Edge, Y: y, W: rest.W - 2*Edge, H: float64(kept) * keptLine}
		y = p.Kept.Bottom()
	}
	p.Tall = y - p.Body.Y
}

// keptLines is how many lines what is on the plan and what was kept beside take.
func (s State) keptLines() (n int) {
	if planned := len(s.PlannedBatches()); planned > 0 {
		n += planned + 3
	}
	if len(s.Planning.Tries) > 0 {
		n += len(s.TryRows()) + 2
	}
	return n
}

// TryRows are the names of the figures of a try-out that are compared: the line only where
// they are of unlike ones.
func (s State) TryRows() []string {
	rows := []string{"wanted", "by", "graft", "larvae", "nucs", "hours", "of 100", "at 90 %"}
	all := s.Planning.Tries
	if now, _ := s.Wish(); slices.ContainsFunc(all, func(t PlanTry) bool { return t.Wish.Line != now.Line }) {
		rows = slices.Insert(rows, 2, "line")
	}
	return rows
}

// planLanes is how many lanes of planned batches stand above the wish: two at most, and
// none that takes the parts beside each other their room. So the room stays as it is
// when a wish is made the plan.
func (s State) planLanes(l Layout, high float64) int {
	return min(len(s.PlannedBatches()), planLanesMost(l, high))
}

// planLanesMost is how many lanes have room there.
func planLanesMost(l Layout, high float64) int {
	const beside, most = WishHeight + 2*LadderEdge + LadderRungs*rungLeast + partsLeast + BandHeight, 2
	if l.Window.W < PlanWide {
		return 0
	}
	return max(0, min(most, int((high-beside)/LaneHeight)))
}

// planOver is what band and lanes over the wish take where they are there: the lane of one
// batch also while none is planned.
func (s State) planOver(l Layout) float64 {
	most := planLanesMost(l, l.Main.H+l.Band.H+l.Lanes.H)
	return BandHeight + LaneHeight*float64(min(most, max(1, len(s.PlannedBatches()))))
}

// PlannedUnseen are the planned batches that have no lane in sight.
func (s State) PlannedUnseen(l Layout) []book.BatchPlan {
	shown := s.PlannedLanes(l)
	return slices.DeleteFunc(slices.Clone(s.PlannedBatches()), func(b book.BatchPlan) bool {
		return slices.ContainsFunc(shown, func(p PlannedLane) bool { return p.Batch == b.Batch })
	})
}

// planColumn is the least width of a part, dp.
const planColumn = 330.0

func (p *PlanPane) shift(by float64) {
	if p.Body.Y == p.Wish.Y {
		p.Wish.Y += by
	}
	p.Ladder.Y += by
	p.Kept.Y += by
	for i := range p.Parts {
		p.Parts[i].Y += by
	}
}

func (p PlanPane) most() float64 { return max(0, p.Tall-p.Body.H) }

// planSpan is the days that the ribbon shows in the room Plan: from some before
// today, or the first step, to the day queens are wanted.
func (s State) planSpan() (first, last calendar.Day) {
	const after = 3
	last = s.Today() + wishAhead
	if sheet, _ := s.PlanSheet(); sheet != nil {
		last = sheet.By + after
		for _, b := range sheet.Batches {
			for _, r := range b.Rungs {
				last = max(last, r.By+after)
			}
		}
	}
	return s.Today() - s.daysBefore(last), last
}

// daysBefore is how many days before today the ribbon shows there, up to a last one: as
// many as have room for the name of a month and "now", or, in a narrow window, where names
// stand over the days, for one of those; there as many more of that month as have room for the
// name of a batch and its line.
func (s State) daysBefore(last calendar.Day) (n calendar.Day) {
	const usual, most, name, named = 4, 14, 69.0, 104.0
	width, from := s.Size().W, labelWidth
	narrow := width < turns
	if narrow {
		from = labelNarrow
	}
	wide := func() float64 { return float64(n) * (width - from) / float64(last.Sub(s.Today())+int(n)+1) }
	for n = usual; n < most && wide() < name; n++ {
	}
	_, _, first := (s.Today() - n).Date()
	for ; narrow && n < most && first > 1 && wide() < named; n, first = n+1, first-1 {
	}
	return n
}
