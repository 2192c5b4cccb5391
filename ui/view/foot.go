package view

import (
	"cmp"

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
		p.text(state.Edge, y, "No book is open, nothing to save", ink2(13))
		p.keysHint(y)
		return
	}
	b := p.s.Book
	end := p.lastEntry(p.keysHint(y)-28, y)
	p.add(scene.Circle{At: at(24, a.Y+a.H/2), Radius: 4, Fill: p.savedRole()})
	x := p.fit(36, y, p.saved(), ink2(13), end-20)
	x = p.fit(x+24, y, b.Name, ink2(13), end-20)
	if by := "written by " + b.Writer; b.Writer != "" && x+24+p.width(by, ink2(13)) < end-20 {
		p.text(x+24, y, by, ink2(13))
	}
	if b.ReadOnly != "" {
		p.hit(scene.Area{X: 16, Y: a.Y, W: max(0, x-16), H: a.H}, scene.Ref{Kind: "note"}, b.ReadOnly)
	}
}

func (p *sheet) savedRole() scene.Role {
	if p.s.Book.ReadOnly != "" {
		return scene.Ink3
	}
	return scene.Good
}

func (p *sheet) saved() string {
	b := p.s.Book
	switch {
	case b.ReadOnly != "":
		return "Reading only"
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

// lastEntry writes the last entry in words up to x and gives where it begins.
func (p *sheet) lastEntry(x, y float64) float64 {
	v := p.s.Present().View
	e, ok := v.Last()
	if !ok {
		return x
	}
	words := "last: " + cmp.Or(line.Words(e.Fact, line.In(v)), "an entry")
	room := min(p.l.Window.W*0.5, x-260)
	words = scene.Shorten(p.measure, words, 13, scene.Regular, max(0, room))
	return p.right(x, y, words, ink(13))
}
