package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// Window is the whole window as a scene, in dp at text size 1.0; paint it at
// the text size.
func Window(s state.State, m scene.Measurer) scene.Scene {
	p := newSheet(s, m)
	p.rect(p.l.Window, scene.Ground)
	switch {
	case s.Fill != state.NoFill:
		p.filled()
	case s.Book == nil:
		p.start()
	default:
		p.room()
	}
	p.rooms()
	p.foot()
	ring := focusRing(s, scene.Scene{Marks: p.marks})
	p.add(ring...) // menus and the sheet of keys lie over it
	p.over()
	if ring == nil {
		p.add(focusRing(s, scene.Scene{Marks: p.marks})...)
	}
	return scene.Scene{Marks: p.marks}
}

// room draws the room that is entered.
func (p *sheet) room() {
	switch p.s.Room {
	case state.Today:
		p.today()
	case state.Yard:
		p.yard()
	case state.Plan:
		p.plan()
	case state.Review:
		p.review()
	case state.Numbers:
		p.numbers()
	case state.About:
		p.about()
	}
}

// filled draws what fills the room.
func (p *sheet) filled() {
	switch p.s.Fill {
	case state.RecordFill:
		p.record()
	case state.LateFill:
		p.late()
	case state.BatchFill:
		p.batchRoom()
	case state.CourseFill:
		p.courseRoom()
	case state.LayoutFill:
		p.layoutRoom()
	case state.StartFill:
		p.steps()
	case state.ListFill:
		p.bringList()
	case state.BooksFill:
		p.start()
	}
}

// yard draws the room Yard.
func (p *sheet) yard() {
	l := p.l
	if !l.Turns.Empty() {
		p.turns()
	}
	if !l.Map.Empty() {
		p.mapPane(l.Map)
	}
	if !l.Main.Empty() {
		switch p.s.Pane {
		case state.Wall:
			p.wall(l.Main)
		case state.Table:
			p.table(l.Main)
		default:
			p.grid(l.Main)
		}
	}
	p.splitter()
	p.card()
	p.days()
}

// days draws ribbon, lanes, band and the handle that runs through them.
func (p *sheet) days() {
	p.ribbon()
	if !p.l.Lanes.Empty() {
		p.lanes()
	}
	p.handle()
	for _, write := range p.names {
		write()
	}
	if !p.l.Band.Empty() {
		p.band()
	}
}

// over draws what lies over the room: menus, the rubber band, the sheet of
// keys.
func (p *sheet) over() {
	if band := p.s.Band(); !band.Empty() {
		p.add(scene.Rect{Area: band, Fill: scene.PenTint, Clear: 0.6, Stroke: stroke(scene.Pen, 1)})
	}
	p.filterWords()
	p.menu()
	p.askedSheet()
	p.tip()
	if p.s.Keys {
		p.keys()
	}
}
