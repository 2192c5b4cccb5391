package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// rooms draws the bar of rooms with their counts, the yard shown, and at the
// far end the book.
func (p *sheet) rooms() {
	a := p.l.Rooms
	p.rect(a, scene.Ground)
	p.rule(0, a.Bottom()-1, a.W, a.Bottom()-1, scene.Rule)
	x := state.Edge
	present := p.s.Present()
	tasks := 0
	for _, stop := range present.Plan().Stops {
		tasks += len(stop.Tasks)
	}
	words := []roomCount{
		{"Today", tasks, "today", state.Today},
		{"Yard", len(present.In(p.s.Yards[state.Yard])), "yard", state.Yard},
		{"Plan", len(p.s.PlannedBatches()), "plan", state.Plan},
		{"Review", p.s.ReviewCount(), "review", state.Review},
	}
	for _, w := range words {
		x = p.roomWord(x, w)
	}
	end := p.roomRight(a.W-state.Edge, "Book", "about", p.s.Room == state.About)
	end = p.roomRight(end-12, "My numbers", "numbers", p.s.Room == state.Numbers)
	p.yardChoice(x, end)
}

// roomCount is a room's word, and how much there is in it.
type roomCount struct {
	word    string
	count   int
	command string
	room    state.Room
}

// countsLeast is the width of a window, dp, below which rooms stand close and
// without their counts.
const countsLeast = 560.0

// smallRooms is the width of a window, dp, below which the words of the rooms are
// smaller.
const smallRooms = 440.0

// roomSize is how large the words of the rooms are.
func (p *sheet) roomSize() float64 {
	if p.l.Window.W < smallRooms {
		return 13.5
	}
	return 16
}

// roomWord draws one room's word with its count and gives where the next begins.
func (p *sheet) roomWord(x float64, w roomCount) float64 {
	size := p.roomSize()
	f, on, gap, air := ink2(size), p.s.Room == w.room, 30.0, 10.0
	switch {
	case size < 16:
		w.count, gap, air = 0, 10, 4
	case p.l.Window.W < countsLeast:
		w.count, gap, air = 0, 14, 6
	}
	switch {
	case p.s.Book == nil:
		f, on = ink3(size), false
	case on:
		f = ink(size).semi()
	}
	end := p.text(x, 28, w.word, f)
	if w.count > 0 {
		end = p.text(end+6, 28, thousands(w.count), ink2(13))
	}
	if on {
		p.rect(scene.Area{X: x, Y: state.RoomsHeight - 5, W: end - x, H: 4}, scene.Ink)
	}
	p.command(scene.Area{X: x - air, Y: 4, W: end - x + 2*air, H: state.RoomsHeight - 8}, w.command)
	return end + gap
}

// roomRight draws a room's word that ends at x and gives where it begins.
func (p *sheet) roomRight(x float64, word, command string, on bool) float64 {
	size := p.roomSize()
	f := ink2(size)
	switch {
	case p.s.Book == nil:
		f, on = ink3(size), false
	case on:
		f = ink(size).semi()
	}
	from := p.right(x, 28, word, f)
	if on {
		p.rect(scene.Area{X: from, Y: state.RoomsHeight - 5, W: x - from, H: 4}, scene.Ink)
	}
	p.command(scene.Area{X: from - 10, Y: 4, W: x - from + 20, H: state.RoomsHeight - 8}, command)
	return from - 16
}

// yardChoice draws the name of the yard shown, which opens the list of yards.
func (p *sheet) yardChoice(from, to float64) {
	if p.s.Room == state.About {
		return
	}
	if p.s.Book == nil {
		p.right(to-12, 28, "no book open", ink2(14))
		return
	}
	p.rule(to, 14, to, state.RoomsHeight-12, scene.Rule)
	tip := to - 12
	p.add(scene.Poly{Points: []scene.Point{at(tip-9, 20), at(tip, 20), at(tip-4.5, 26)}, Fill: scene.Ink2})
	name := scene.Shorten(p.measure, p.yardName(), 14, scene.Regular, tip-15-from)
	x := p.right(tip-15, 28, name, ink2(14))
	p.command(scene.Area{X: x - 8, Y: 6, W: tip - x + 14, H: 32}, "yards")
}

// yardName is the name of the yard shown in the room.
func (p *sheet) yardName() string {
	yard := p.s.Filled()
	if p.s.OnLayout() {
		yard = p.s.Laying.Yard
	}
	if !yard.IsZero() {
		return p.s.Reading().View.Yard(yard).Name
	}
	n := 0
	for range p.s.Reading().View.Yards() {
		n++
	}
	if n == 1 {
		return p.s.Reading().View.HomeYard().Name
	}
	return "all yards"
}
