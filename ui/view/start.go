package view

import (
	"time"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// start draws the window without a book: what can be opened, and how to read a
// lid.
func (p *sheet) start() {
	w := p.l.Window
	body := scene.Area{Y: state.RoomsHeight, W: w.W, H: w.H - state.RoomsHeight - state.FootHeight}
	p.right(w.W-state.Edge, 28, "no book open", ink2(14))
	p.rule(0, state.RoomsHeight-1, w.W, state.RoomsHeight-1, scene.Rule)
	left := p.leftPart(body, min(body.W*0.46, 660))
	p.clipped(left, scene.Tag{}, func() {
		p.rect(left, scene.Panel)
		p.welcome(left)
	})
	p.rule(left.Right(), left.Y, left.Right(), left.Bottom(), scene.Rule)
	p.clipped(body, scene.Tag{}, func() {
		p.howToRead(scene.Area{X: left.Right(), Y: body.Y, W: body.W - left.W, H: body.H})
	})
	p.foot()
	p.over()
}

// welcome says what the program is and offers what can be opened.
func (p *sheet) welcome(a scene.Area) {
	x := a.X + min(64, a.W*0.08)
	w := min(a.Right()-x-24, 540)
	y := a.Y + 56
	p.add(scene.Lid{At: at(x+17, y-7), Size: 34, Condition: scene.Laying, Seen: true, Entrance: 90, Timed: true, Used: 0.3})
	p.text(x+46, y, "Lidmark", ink(20).bold())
	y = p.wrap(x, y+54, "Keeps the clock, the map and the memory of your nucs", ink(28).semi(), w, 3) - 4
	for _, offer := range []struct{ number, title, text, word, command string }{
		{"1", "Open the demo season", "An invented valley with its yards, nucs and batches, as they stand today. Look round: nothing can break.", "Open the demo", "demo"},
		{"2", "Open a book", "A book is one file. The terminal program lidbook begins a new one and writes in it; here you look at it.", "Choose a file", "open"},
	} {
		p.rule(x, y, x+w, y, scene.Rule)
		p.text(x, y+34, offer.number, ink3(28))
		p.text(x+40, y+30, offer.title, ink(20).semi())
		p.wrap(x+40, y+56, offer.text, ink2(15), w-40-170, 4)
		word := p.width(offer.word, ink(14).medium()) + 28
		p.button(x+w-word, y+12, offer.word, offer.command, offer.number == "1")
		y += 142
	}
	p.rule(x, y, x+w, y, scene.Rule)
	p.wrap(x, y+28, "Nothing leaves this computer unless you send it.", ink2(14), w, 2)
}

// leftPart is the left of two parts; where two have no room it is all.
func (p *sheet) leftPart(body scene.Area, width float64) scene.Area {
	if p.l.Over {
		width = body.W
	}
	return scene.Area{X: body.X, Y: body.Y, W: width, H: body.H}
}

// about draws the room Book: what the open book holds, and how to read a lid.
func (p *sheet) about() {
	body := scene.Area{Y: state.RoomsHeight, W: p.l.Window.W, H: p.l.Foot.Y - state.RoomsHeight}
	left := p.leftPart(body, min(body.W*0.42, 560))
	p.clipped(left, scene.Tag{}, func() {
		p.rect(left, scene.Panel)
		p.bookFacts(left)
	})
	p.rule(left.Right(), left.Y, left.Right(), left.Bottom(), scene.Rule)
	p.clipped(body, scene.Tag{}, func() {
		p.howToRead(scene.Area{X: left.Right(), Y: body.Y, W: body.W - left.W, H: body.H})
	})
}

// bookFacts says what the open book holds.
func (p *sheet) bookFacts(a scene.Area) {
	b, r := p.s.Book, p.s.Present()
	c := &cardDraw{sheet: p, r: r, x: a.X + 40, w: min(a.W-80, 440), y: a.Y + 60, bottom: a.Bottom() - 20}
	c.fit(c.x, c.y, b.Name, ink(28).semi(), c.x+c.w)
	c.y += 28
	c.para(b.Path, ink2(13), 2)
	c.y += 16
	c.hair()
	figures := ink(14).semi()
	c.count("entries", thousands(b.Season.Len()), figures)
	c.count("nucs", thousands(len(r.Nucs)), figures)
	c.count("batches", thousands(len(r.Batches())), figures)
	yards, colonies, first := 0, 0, time.Time{}
	for range r.View.Yards() {
		yards++
	}
	for range r.View.Colonies() {
		colonies++
	}
	for e := range b.Season.Entries() {
		first = e.At.Instant
		break
	}
	c.count("yards", thousands(yards), figures)
	c.count("colonies", thousands(colonies), figures)
	if !first.IsZero() {
		c.count("begun", r.DayOf(first).Short(), figures)
	}
	if b.ReadOnly != "" && c.heading("Reading only") {
		c.para(sentence(b.ReadOnly), ink(14), 4)
	}
	if c.heading("Cautions") {
		c.para("Stings can kill. Who works bees knows the signs of a severe reaction and has a plan and a telephone within reach.", ink(14), 4)
		c.para("What is by the calendar is reckoned from stated numbers, not promised. Moving, selling, treating and feeding follow the local authority and the label.", ink2(13), 4)
	}
}
