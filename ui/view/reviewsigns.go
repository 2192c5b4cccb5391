package view

import (
	"lidmark/domain/course"
	"lidmark/domain/review"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// token is a sign of what is done with a nuc.
type token uint8

const (
	leaveToken token = iota
	cellToken
	virginToken
	lookToken
	otherToken // an icon says what
)

// tokenOf is the sign of a way.
func tokenOf(w review.Way, hand review.Hand) token {
	switch {
	case w.Kind == review.Leave:
		return leaveToken
	case w.Kind == review.LookFirst:
		return lookToken
	case w.Gives() && hand.Wares[w.Ware-1].Virgin:
		return virginToken
	case w.Gives():
		return cellToken
	default:
		return otherToken
	}
}

// wayIcons are the icons of what gives neither a cell nor a virgin.
var wayIcons = map[review.Kind]scene.Symbol{
	review.BreakDown: scene.CellIcon, review.TakeOut: scene.LayingQueenIcon, review.ShakeOut: scene.ShakeOutIcon, review.GiveBrood: scene.StandIcon,
	review.AddBees: scene.BeesIcon, review.Feed: scene.FeedIcon, review.Narrow: scene.NarrowIcon, review.Unite: scene.UniteIcon,
	review.Catch: scene.LayingQueenIcon, review.MakeUp: scene.NucIcon,
}

// token draws a sign about a point, r from its middle to its top; ground is what it
// lies on.
func (p *sheet) token(t token, c scene.Point, r float64, ground scene.Role) {
	line := stroke(scene.Ink, 1.4)
	switch t {
	case leaveToken:
		p.add(scene.Circle{At: c, Radius: r * 0.6, Fill: ground, Stroke: stroke(scene.Ink, 1.6)})
	case cellToken:
		x := r * 0.62
		p.add(scene.Poly{Points: []scene.Point{at(c.X-x, c.Y-r*0.8), at(c.X+x, c.Y-r*0.8), at(c.X+x, c.Y+r*0.1), at(c.X, c.Y+r), at(c.X-x, c.Y+r*0.1)}, Fill: scene.Cell.Fill(), Stroke: line})
	case virginToken:
		p.add(scene.Rect{Area: scene.Area{X: c.X - r*0.5, Y: c.Y - r*0.9, W: r, H: r * 1.8}, Radius: r * 0.5, Fill: scene.Virgin.Fill(), Stroke: line})
	case lookToken:
		p.add(scene.Rect{Area: scene.Area{X: c.X - r*0.8, Y: c.Y - r*0.1, W: r * 1.6, H: r * 0.9}, Radius: 1, Fill: ground, Stroke: line},
			scene.Line{From: at(c.X-r*0.9, c.Y-r*0.35), To: at(c.X+r*0.7, c.Y-r*0.95), Stroke: stroke(scene.Ink, 1.6)})
	}
}

// waySign draws the sign of a way.
func (p *sheet) waySign(w review.Way, hand review.Hand, c scene.Point, r float64, ground scene.Role) {
	if t := tokenOf(w, hand); t != otherToken {
		p.token(t, c, r, ground)
		return
	}
	p.add(scene.Icon{At: c, Size: 2.2 * r, Symbol: wayIcons[w.Kind], Role: scene.Ink})
}

// strip draws what a nuc may hold, in whole per cent where there is room; hovering a
// part says it.
func (p *sheet) strip(c course.Chances, a scene.Area, ref scene.Ref, more string) {
	parts := state.ChanceParts(c)
	most := 0
	for i, part := range parts {
		if part.P > parts[most].P {
			most = i
		}
	}
	const least, shown = state.ChanceShown, 22.0
	x, before := a.X, 0.0
	for i, part := range parts {
		w := a.W * part.P
		if part.P < least {
			continue
		}
		p.add(partLooks[part.Look].in(scene.Area{X: x, Y: a.Y, W: w, H: a.H}))
		if before >= partLeast && w >= partLeast { // beside a narrower one a line would be all that is seen of it
			p.rule(x, a.Y, x, a.Y+a.H, scene.Ink)
		}
		before = w
		if w >= shown {
			f := ink(13)
			if i == most {
				f = f.semi()
			}
			p.centre(x+w/2, a.Y-5, percent(part.P), f)
		}
		ref.Part = part.Word
		p.hit(scene.Area{X: x, Y: a.Y - 14, W: max(w, 6), H: a.H + 14}, ref, percent(part.P)+" % "+part.Says+more)
		x += w
	}
	p.add(scene.Rect{Area: a, Stroke: stroke(scene.Ink, 1)})
}
