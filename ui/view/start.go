package view

import (
	"strings"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// start draws what can be opened, and how to read a lid; while no book is open
// below the days, which are empty.
func (p *sheet) start() {
	top := p.l.Rooms.Bottom()
	if !p.l.Ribbon.Empty() {
		top = p.l.Ribbon.Bottom()
		p.noDays()
	}
	body := scene.Area{Y: top, W: p.l.Window.W, H: p.l.Foot.Y - top}
	left := body
	left.W = min(body.W*0.46, 660)
	if p.l.Narrow {
		left.W = body.W * 0.52
	}
	if left.W >= leastOffers && body.H >= p.howToHigh(body.W-left.W)-compactFoot {
		p.parted(left, body)
	} else {
		left.W = body.W
	}
	p.clipped(left, scene.Tag{}, func() {
		p.rect(left, scene.Panel)
		p.welcome(left)
	})
}

// noDays draws the days of a window without a book.
func (p *sheet) noDays() {
	p.ribbon()
	p.handle()
	for _, write := range p.names {
		write()
	}
}

// parted draws how to read a lid in what left leaves of the body.
func (p *sheet) parted(left, body scene.Area) {
	p.rule(left.Right(), left.Y, left.Right(), left.Bottom(), scene.Rule)
	p.clipped(body, scene.Tag{}, func() {
		p.howToRead(scene.Area{X: left.Right(), Y: body.Y, W: body.W - left.W, H: body.H})
	})
}

// offer is a way to a book.
type offer struct{ number, title, text, short, command string }

var offers = []offer{
	{"1", "Open the demo season", "An invented valley with its yards, nucs and batches, as they stand today. Look round, change things: nothing can break.", "An invented valley to look round in", "demo"},
	{"2", "Start a book", "Four short steps: the yard and where it lies, the boxes and entrances, the people, the first batch. About ten minutes.", "Four short steps, about ten minutes", "start book"},
	{"3", "Bring a list", "From a table (CSV or XLSX) of nucs, dates and queens. You see what was understood before anything is kept.", "From a table of nucs, dates and queens: CSV, XLSX", "choose list"},
}

// leastOffers is how wide the pane of the welcome is at least beside how to read a
// lid, dp.
const leastOffers = 400.0

// Heights of the pane of the welcome, dp, below which the slogan, then the
// words below each offer, are left out.
const (
	welcomeHigh = 660.0
	welcomeLow  = 500.0
)

// welcome says what the program is and offers what can be opened.
func (p *sheet) welcome(a scene.Area) {
	x := a.X + min(64, a.W*0.055)
	w := min(a.Right()-x-24, 540)
	if a.W == p.l.Window.W { // alone in the window, it stands in its middle
		w = min(a.W-2*(x-a.X), 660)
		x = a.X + (a.W-w)/2
	}
	low, y := a.H < welcomeLow, a.Y+56
	if a.H < welcomeHigh {
		y = a.Y + 40
	}
	y = p.banner(x, y, w, a)
	for i, o := range offers {
		p.rule(x, y, x+w, y, scene.Rule)
		y = p.offer(o, x, y, w, low, i == 0)
	}
	p.rule(x, y, x+w, y, scene.Rule)
	y = p.recent(x, y+30, w, a.Bottom())
	if p.s.Note.Bad && y < a.Bottom() {
		p.wrap(x, y, sentence(p.s.Note.Text), ink(14).as(scene.Act), w, 2)
		return
	}
	if y+4 < a.Bottom() {
		p.wrap(x, y, "A book is one file on this computer. Nothing leaves it unless you send it.", ink2(14), w, whole)
	}
}

// banner writes what the program is, as far as there is room, and gives where
// the offers begin.
func (p *sheet) banner(x, y, w float64, a scene.Area) float64 {
	const slogan, none = "Keeps the clock, the map and the memory of your nucs", 240.0
	if a.H < none {
		return a.Y
	}
	p.sign(at(x+17, y-7), 38)
	end := p.text(x+46, y, "Lidmark", ink(20).bold())
	if a.H >= welcomeHigh {
		return p.wrap(x, y+47, slogan, ink(28).semi(), min(w, 420), 3) - 8
	}
	if f := ink2(14); p.width(slogan, f) <= x+w-end-14 {
		p.text(end+14, y, slogan, f)
		return y + 22
	}
	return p.wrap(x, y+32, slogan, ink2(14), w, 2) - 4
}

// offer draws one offer below y and gives where the next begins.
func (p *sheet) offer(o offer, x, y, w float64, low, main bool) float64 {
	const wide = 150.0
	c, _ := state.CommandNamed(o.command)
	button := scene.Area{X: x + w - wide, Y: y + 12, W: wide, H: 38}
	p.text(x, y+35, o.number, ink3(26))
	if low {
		return p.lowOffer(o, x, y, button, main)
	}
	room := button.X - 22 - (x + 40)
	p.fit(x+40, y+32, o.title, ink(20).semi(), x+40+room)
	below := p.wrap(x+40, y+57, o.text, ink2(15), room, whole)
	p.wideButton(button, c.Word, o.command, main)
	return max(below+2, y+64)
}

// lowOffer draws an offer where there is little room, with its words in short
// where they have some.
func (p *sheet) lowOffer(o offer, x, y float64, button scene.Area, main bool) float64 {
	const wordsHigh = 400.0
	c, _ := state.CommandNamed(o.command)
	button.Y, button.H = y+7, 34
	high := 48.0
	p.fit(x+36, y+30, o.title, ink(17).semi(), button.X-12)
	if p.l.Foot.Y-p.l.Rooms.Bottom() >= wordsHigh {
		button.Y = y + 13
		high = p.wrap(x+36, y+50, o.short, ink2(14), button.X-16-x-36, whole) - y - 8
	}
	p.wideButton(button, c.Word, o.command, main)
	return y + high
}

// recentRow is how high a row of a book opened lately is, dp.
const recentRow = 30.0

// recent lists the books opened lately, and leads to others; y is the baseline
// of its head. It gives the baseline of what comes next.
func (p *sheet) recent(x, y, w, bottom float64) float64 {
	c, _ := state.CommandNamed("open")
	p.link(x+w-p.width(c.Word, ink(14)), y, c.Word, ink(14).as(scene.Pen), "open", false)
	if p.s.Book != nil {
		p.link(x, y, "Back to "+p.s.Book.Name, ink(14).as(scene.Pen), "give back", false)
		y += 32
	}
	if len(p.s.Recent) == 0 {
		return y + 28*boolFloat(p.s.Book == nil)
	}
	p.text(x, y, "Opened lately", ink(14).semi())
	y += 10
	for _, path := range p.s.Recent {
		if y+recentRow+26 > bottom {
			break
		}
		p.recentBook(scene.Area{X: x, Y: y, W: w, H: recentRow}, path)
		y += recentRow
	}
	return y + 24
}

// recentBook draws a book opened lately: its name and its folder.
func (p *sheet) recentBook(a scene.Area, path string) {
	ref := scene.Ref{Kind: state.RecentRef, ID: path}
	if p.hovers(ref) {
		p.add(scene.Rect{Area: scene.Area{X: a.X - 8, Y: a.Y, W: a.W + 16, H: a.H}, Radius: 4, Fill: scene.Ground})
	}
	file, folder := state.FileName(path)
	y := a.Y + a.H/2 + 5
	name := strings.TrimSuffix(file, state.BookExtension)
	end := p.fit(a.X, y, name, ink(15).medium(), a.X+a.W*0.5)
	said := folder
	if p.s.Book != nil && p.s.Book.Path == path {
		said = "open now"
	}
	p.fit(end+14, y, said, ink2(13), a.Right())
	p.hit(a, ref, "open "+path)
}
