package state

import (
	"math"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// Drag is what a pressed button is doing. The zero Drag is no drag.
type Drag struct {
	Kind     DragKind
	From, To scene.Point
	Tag      scene.Tag    // what was under the pointer when it went down
	Camera   scene.Camera // of the map, then
	Add      bool         // the band adds to the selection
	Away     bool         // another day than today was looked at when it began
	Split    float64      // how far the division of Yard was dragged, then
	Laying   *Laying      // the try-out, then, while its stands are dragged
	Plan     *planHeld    // the room Plan, then, while something of a plan is dragged
}

// DragKind is a kind of drag.
type DragKind uint8

// The kinds of drag. Held is a button that went down and has not moved far
// enough to be a drag: let go, it is a click.
const (
	NoDrag DragKind = iota
	Held
	DayDrag
	PanDrag
	BandDrag
	SplitDrag
	RungDrag    // a step of the plan, to another day
	PlannedDrag // the lane of a planned batch
	TriedDrag   // the picked stands of a try-out
	OrderDrag   // an order, to the day on which it is due
)

// slack is how far a held pointer may move and still click, dp.
const slack = 4.0

// begun is the drag that a press begins in a layout.
func begun(m Pressed, l Layout, camera scene.Camera) Drag {
	d := Drag{Kind: Held, From: m.At, To: m.At, Tag: m.Tag, Camera: camera, Add: m.Mods.Has(Ctrl), Away: !l.Band.Empty()}
	switch {
	case m.Tag.Ref.Kind == SplitRef:
		d.Kind = SplitDrag
	case m.Tag.Ref.Kind == RungRef:
		d.Kind = RungDrag
	case m.Tag.Ref.Kind == PlannedRef && l.Lanes.Contains(m.At):
		d.Kind = PlannedDrag
	case m.Tag.Ref.Kind == FlagRef && l.Strip.Contains(m.At):
		d.Kind = OrderDrag
	case l.Ribbon.Contains(m.At) && m.At.X >= l.Ribbon.X, dayOf(m.Tag.Ref) != 0:
		d.Kind = DayDrag
	case m.Tag.Ref.Kind == TriedRef && m.Button != Secondary && !m.Mods.Has(Shift):
		d.Kind = TriedDrag
	case inTry(m.Tag.Ref) && (m.Button == Secondary || m.Mods.Has(Shift)):
		d.Kind = PanDrag
	case l.Map.Contains(m.At) && (m.Button == Secondary || m.Mods.Has(Shift)):
		d.Kind = PanDrag
	}
	return d
}

// moved is the drag after the pointer moved to p. A held button becomes a
// rubber band where the ground is empty, and on nucs, which cannot be dragged.
func (d Drag) moved(p scene.Point) Drag {
	d.To = p
	if d.Kind == Held && banding[d.Tag.Ref.Kind] && d.far() {
		d.Kind = BandDrag
	}
	return d
}

// far tells whether the pointer moved further than it does in a click.
func (d Drag) far() bool { return math.Hypot(d.To.X-d.From.X, d.To.Y-d.From.Y) > slack }

// banding are the kinds of things on which a rubber band can begin.
var banding = map[string]bool{PaneRef: true, book.KindNuc.String(): true, book.KindStand.String(): true}

// Band is the rubber band being drawn; empty when there is none.
func (s State) Band() scene.Area {
	if s.Drag.Kind != BandDrag {
		return scene.Area{}
	}
	return scene.Between(s.Drag.From, s.Drag.To)
}
