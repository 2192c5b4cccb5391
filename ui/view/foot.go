package view

import (
	"cmp"
	"fmt"

	"lidmark/domain/line"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// foot draws whether all is saved, the book, who writes, the last entry in
// words and where the keys are listed.
func (p *sheet) foot() {
	a := p.l.Foot
	p.rect(a, scene.Ground)
	p.rule(0, a.Y, a.W, a.Y, scene.Rule)
	y := a.Y + a.H/2 + 13*0.35
	if p.s.Book == nil {
		x := p.text(state.Edge, y, "No book is open, nothing to save", ink2(13))
		p.noted(x+24, y, p.keysHint(y)-20)
		return
	}
	b := p.s.Book
	need := 0.0 // a refusal is read whole: all else gives way to it
	if p.s.Note.Bad {
		need = 24 + p.width(p.s.Note.Text, ink(13))
	}
	end := p.undoWords(p.keysHint(y)-28, y, need)
	p.add(scene.Circle{At: at(24, a.Y+a.H/2), Radius: 4, Fill: p.savedRole()})
	f := ink2(13)
	if len(p.s.Pen.Failed) > 0 {
		f = ink(13).semi().as(scene.Act)
	}
	x := p.fit(36, y, p.saved(), f, end-20)
	if b.ReadOnly != "" {
		p.hit(scene.Area{X: 16, Y: a.Y, W: max(0, x-16), H: a.H}, scene.Ref{Kind: "note"}, b.ReadOnly)
	}
	if len(p.s.Pen.Failed) > 0 {
		x = p.link(x+16, y, "try again", ink(13).as(scene.Pen), "again", false)
		p.link(x+16, y, "let it go", ink(13).as(scene.Pen), "let go", false)
		return
	}
	if x+24+p.width(b.Name, ink2(13))+need > end-20 {
		if p.s.Note.Bad {
			p.noted(x+24, y, end-20)
		}
		return // the words of the undo never give way: the book's name does
	}
	x = p.text(x+24, y, b.Name, ink2(13))
	if b.ReadOnly == "" && x+24+need < end-160 {
		x = p.link(x+24, y, p.writtenBy(), ink2(13), "writer", false)
	}
	p.noted(x+24, y, end-20)
}

// writtenBy says who writes.
func (p *sheet) writtenBy() string {
	if p.s.Pen.Writer == "" {
		return "who writes?"
	}
	return "written by " + p.s.Pen.Writer
}

// noted writes what was done last or went wrong, or how far long work has come.
func (p *sheet) noted(x, y, to float64) {
	if b := p.s.Busy; b != nil {
		said := b.Words
		if b.Share >= 0 {
			said = fmt.Sprintf("%s, %.0f %%", b.Words, 100*b.Share)
		}
		x = p.fit(x, y, said, ink(13), to-60)
		p.link(x+12, y, "stop", ink(13).as(scene.Pen), "stop", false)
		return
	}
	f := ink2(13)
	if p.s.Note.Bad {
		f = ink(13).as(scene.Act)
	}
	if said := p.fit(x, y, p.s.Note.Text, f, to); said-x >= leastTarget {
		p.hit(scene.Area{X: x, Y: p.l.Foot.Y, W: said - x, H: p.l.Foot.H}, scene.Ref{Kind: "note", ID: "said"}, p.s.Note.Text)
	}
}

func (p *sheet) savedRole() scene.Role {
	switch {
	case len(p.s.Pen.Failed) > 0:
		return scene.Act
	case p.s.Book.ReadOnly != "" || p.s.Book.Path == "" || p.s.Unsaved():
		return scene.Ink3
	}
	return scene.Good
}

func (p *sheet) saved() string {
	b := p.s.Book
	switch {
	case len(p.s.Pen.Failed) > 0:
		return "Not written: " + p.s.Pen.Why
	case b.ReadOnly != "":
		return "Reading only"
	case p.s.Book.Path == "":
		return "Not kept"
	case p.s.WaitsForWriter():
		return "Not saved yet"
	case p.s.Unsaved():
		return "Saving …"
	case b.Saved.IsZero():
		return "Saved"
	default:
		return "Saved " + b.Saved.In(p.s.Present().View.Zone()).Format("15:04")
	}
}

func (p *sheet) keysHint(y float64) float64 {
	x := p.right(p.l.Window.W-state.Edge, y, "? keys", ink2(13))
	p.command(scene.Area{X: x - 8, Y: p.l.Foot.Y, W: p.l.Window.W - x, H: p.l.Foot.H}, "keys")
	return x
}

// undoWords writes up to x what undo would take back, or else the last entry, and
// gives where that begins. So much room is kept before it.
func (p *sheet) undoWords(x, y, keep float64) float64 {
	const before, least = 36 + 28, 90 // the dot, and the air behind what is saved
	room := max(0, x-before-p.width(p.saved(), ink2(13))-keep)
	if keep > 0 && room < least {
		return x
	}
	fitted := func(words string) string { return scene.Shorten(p.measure, words, 13, scene.Regular, room) }
	if last, ok := p.s.UndoWords(); ok {
		words := fitted("undo: " + last)
		from := x - p.width(words, ink(13))
		p.link(from, y, words, ink(13), "undo", false)
		return from
	}
	v := p.s.Present().View
	e, ok := v.Last()
	if !ok {
		return x
	}
	return p.right(x, y, fitted("last: "+cmp.Or(line.Words(e.Fact, line.In(v)), "an entry")), ink(13))
}
