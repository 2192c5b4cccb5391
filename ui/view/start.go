package view

import (
	"fmt"
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
	left := body
	if !p.l.Narrow {
		left.W = min(body.W*0.46, 660)
		p.parted(left, body)
	}
	p.clipped(left, scene.Tag{}, func() {
		p.rect(left, scene.Panel)
		p.welcome(left)
	})
}

// parted draws how to read a lid in what left leaves of the body.
func (p *sheet) parted(left, body scene.Area) {
	p.rule(left.Right(), left.Y, left.Right(), left.Bottom(), scene.Rule)
	p.clipped(body, scene.Tag{}, func() {
		p.howToRead(scene.Area{X: left.Right(), Y: body.Y, W: body.W - left.W, H: body.H})
	})
}

// offer is something that can be opened.
type offer struct{ number, title, text, word, command string }

var offers = []offer{
	{"1", "Open the demo season", "An invented valley with its yards, nucs and batches, as they stand today. Look round: nothing can break.", "Open the demo", "demo"},
	{"2", "Open a book", "A book is one file. The terminal program lidbook begins a new one and writes in it; here you look at it.", "Choose a file", "open"},
}

// welcomeLow is the height below which the welcome is only its offers, dp.
const welcomeLow = 360.0

// welcome says what the program is and offers what can be opened; in a small
// window the letters follow where they have room.
func (p *sheet) welcome(a scene.Area) {
	x := a.X + min(64, a.W*0.06)
	w := a.Right() - x - 24
	low, slogan, y := a.H < welcomeLow, 28.0, a.Y+56
	if p.l.Narrow {
		slogan, y = 22, a.Y+40
	} else {
		w = min(w, 540)
	}
	p.add(scene.Lid{At: at(x+17, y-7), Size: 34, Condition: scene.Laying, Seen: true, Entrance: 90, Timed: true, Used: 0.3})
	p.text(x+46, y, "Lidmark", ink(20).bold())
	y += 24
	if !low {
		y = p.wrap(x, y+slogan*0.9, "Keeps the clock, the map and the memory of your nucs", ink(slogan).semi(), w, 3) - 8
	}
	for i, o := range offers {
		p.rule(x, y, x+w, y, scene.Rule)
		y = p.offer(o, x, y, w, low, i == 0)
	}
	p.rule(x, y, x+w, y, scene.Rule)
	if y+40 < a.Bottom() {
		p.wrap(x, y+24, "Nothing leaves this computer unless you send it.", ink2(14), w, 1)
		y += 44
	}
	if list := (scene.Area{X: x, Y: y + 6, W: w}); p.l.Narrow && list.Y+p.lettersHigh(w) < a.Bottom() {
		p.letterList(list)
	}
}

// besideButton is the width from which an offer's button stands beside its text.
const besideButton = 420.0

// offer draws one offer below y and gives where the next begins.
func (p *sheet) offer(o offer, x, y, w float64, low, main bool) float64 {
	word := p.width(o.word, ink(14).medium()) + 28
	p.text(x, y+33, o.number, ink3(26))
	if low {
		p.fit(x+36, y+30, o.title, ink(15).semi(), x+w-word-12)
		p.button(x+w-word, y+8, o.word, o.command, main)
		return y + 50
	}
	room := w - 40
	if w >= besideButton {
		room -= word + 24
	}
	p.fit(x+40, y+30, o.title, ink(20).semi(), x+40+room)
	below := p.wrap(x+40, y+54, o.text, ink2(15), room, 5)
	if w >= besideButton {
		p.button(x+w-word, y+12, o.word, o.command, main)
		return max(below+4, y+58)
	}
	p.button(x+40, below-10, o.word, o.command, main)
	return below + 36
}

// about draws the room Book: what the open book holds, and how to read a lid.
func (p *sheet) about() {
	body := scene.Area{Y: state.RoomsHeight, W: p.l.Window.W, H: p.l.Foot.Y - state.RoomsHeight}
	left := body
	if !p.l.Over {
		left.W = max(300, min(body.W*0.42, 560))
		p.parted(left, body)
	}
	p.clipped(left, scene.Tag{}, func() {
		p.rect(left, scene.Panel)
		if p.l.Over {
			p.bookInShort(left)
			return
		}
		p.bookFacts(left)
	})
}

// bookInShort names the book and how much it holds in one line, with the letters
// below.
func (p *sheet) bookInShort(a scene.Area) {
	b, r := p.s.Book, p.s.Present()
	x, end := a.X+state.Edge, a.Right()-state.Edge
	said := fmt.Sprintf("%s, %s", plural(b.Season.Len(), "entry", "entries"), plural(len(r.Nucs), "nuc", "nucs"))
	from := p.right(end, a.Y+24, said, ink2(13))
	p.fit(x, a.Y+24, b.Name, ink(17).semi(), from-12)
	p.rule(x, a.Y+36, end, a.Y+36, scene.Rule)
	p.compact(scene.Area{X: x, Y: a.Y + 26, W: end - x, H: a.H - 26})
}

// bookFacts says what the open book holds.
func (p *sheet) bookFacts(a scene.Area) {
	b, r := p.s.Book, p.s.Present()
	c := &cardDraw{sheet: p, r: r, x: a.X + 40, w: min(a.W-80, 440), y: a.Y + 60}
	if p.l.Narrow {
		c.x, c.w, c.y = a.X+24, a.W-48, a.Y+42
	}
	name := ink(28).semi()
	if c.width(b.Name, name) > c.w {
		name.size = 20
	}
	c.fit(c.x, c.y, b.Name, name, c.x+c.w)
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
	if b.ReadOnly != "" {
		c.heading("Reading only")
		c.para(sentence(b.ReadOnly), ink(14), 4)
	}
	c.heading("Cautions")
	c.para("Stings can kill. Who works bees knows the signs of a severe reaction and has a plan and a telephone within reach.", ink(14), 4)
	c.para("What is by the calendar is reckoned from stated numbers, not promised. Moving, selling, treating and feeding follow the local authority and the label.", ink2(13), 4)
}
