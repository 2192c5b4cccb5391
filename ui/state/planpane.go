package state

import (
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
	Tall   float64       // of all in Body
	Offset float64
}

// Sizes of the room Plan, dp.
const (
	WishHeight  = 104.0
	WishTall    = 176.0 // on a narrow window
	RungHeight  = 26.0
	ladderHead  = 10.0
	partsLeast  = 268.0
	planWide    = 1120.0
	amountsTall = 320.0
	sureTall    = 300.0
	minutesTall = 260.0
	whyTall     = 330.0
	LadderRungs = 12
)

// PlanPane is how the room is divided.
func (s State) PlanPane(l Layout) (p PlanPane) {
	wish := WishHeight
	if l.Main.W < planWide {
		wish = WishTall
	}
	p.Wish, p.Body = cutTop(l.Main, wish)
	ladder := ladderHead*2 + LadderRungs*RungHeight
	if l.Main.W >= planWide && p.Body.H >= ladder+partsLeast {
		p.Ladder = scene.Area{X: p.Body.X, Y: p.Body.Y, W: p.Body.W, H: ladder}
		rest := scene.Area{X: p.Body.X, Y: p.Ladder.Bottom(), W: p.Body.W, H: p.Body.Bottom() - p.Ladder.Bottom()}
		x := rest.X
		for i, share := range [4]float64{0.285, 0.24, 0.24, 0.235} {
			p.Parts[i] = scene.Area{X: x, Y: rest.Y, W: rest.W * share, H: rest.H}
			x += rest.W * share
		}
		p.Tall = p.Body.H
		return p
	}
	p.stacked(l, ladder)
	p.Offset = min(s.Scroll[PlanPlace], max(0, p.Tall-p.Body.H))
	p.shift(-p.Offset)
	return p
}

// stacked puts the parts below each other, two in a row where they have room.
func (p *PlanPane) stacked(l Layout, ladder float64) {
	p.Ladder = scene.Area{X: p.Body.X, Y: p.Body.Y, W: p.Body.W, H: ladder}
	y, tall := p.Ladder.Bottom(), [4]float64{amountsTall, sureTall, minutesTall, whyTall}
	if p.Body.W >= 2*planColumn {
		half := p.Body.W / 2
		for i := range p.Parts {
			p.Parts[i] = scene.Area{X: p.Body.X + float64(i%2)*half, Y: y, W: half, H: max(tall[i/2*2], tall[i/2*2+1])}
			if i == 1 {
				y = p.Parts[0].Bottom()
			}
		}
		p.Tall = p.Parts[3].Bottom() - p.Body.Y
		return
	}
	for i := range p.Parts {
		p.Parts[i] = scene.Area{X: p.Body.X, Y: y, W: p.Body.W, H: tall[i]}
		y = p.Parts[i].Bottom()
	}
	p.Tall = y - p.Body.Y
}

// planColumn is the least width of a part, dp.
const planColumn = 330.0

func (p *PlanPane) shift(by float64) {
	p.Ladder.Y += by
	for i := range p.Parts {
		p.Parts[i].Y += by
	}
}

func (p PlanPane) most() float64 { return max(0, p.Tall-p.Body.H) }

// planSpan is the days that the ribbon shows in the room Plan: from some before
// today, or the first step, to the day queens are wanted.
func (s State) planSpan() (first, last calendar.Day) {
	const before, after = 4, 3
	first, last = s.Today()-before, s.Today()+wishAhead
	if sheet, _ := s.PlanSheet(); sheet != nil {
		last = sheet.By + after
		for _, b := range sheet.Batches {
			for _, r := range b.Rungs {
				last = max(last, r.By+after)
			}
		}
	}
	return first, last
}
