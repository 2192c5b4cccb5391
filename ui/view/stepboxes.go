package view

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"lidmark/domain/founding"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// boxFields ask for the rows of boxes: the one that is open in full, the others
// in a line each.
func (d *stepDraw) boxFields() {
	for row := range d.s.StartRows() {
		if row == d.s.Start.Row {
			d.openRow(row)
		} else {
			d.shutRow(row)
		}
	}
	c, _ := state.CommandNamed("start row")
	d.link(d.x, d.y+18, c.Word, ink(14).as(scene.Pen), "start row", false)
	d.y += 32
}

// shutRow draws a row of boxes in one line; a click opens it.
func (d *stepDraw) shutRow(row int) {
	a := scene.Area{X: d.x, Y: d.y, W: d.w, H: 30}
	typed := func(of string) string { return d.s.Typed(d.s.RowField(row, of)) }
	said := typed("per") + " in a box, " + typed("kind") + ", facing " + strings.Join(d.s.Faces(row), ", ")
	name := typed("names")
	if name == "" {
		name = "not named yet"
	}
	end := d.fit(a.X, a.Y+20, name, ink(15).semi(), a.X+a.W*0.5)
	d.fit(end+14, a.Y+20, said, ink2(14), a.Right())
	d.rule(a.X, a.Bottom(), a.Right(), a.Bottom(), scene.Hair)
	d.hit(a, scene.Ref{Kind: state.StepRef, ID: "row", Part: strconv.Itoa(row)}, "change these boxes")
	d.y += 40
}

// openRow draws what is asked of a row of boxes.
func (d *stepDraw) openRow(row int) {
	field := func(of string) string { return d.s.RowField(row, of) }
	d.ask(d.x, stepField{label: "Names of the nucs, as they stand", name: field("names"), empty: "A1-A12, B1-B6 or A1-R4", w: d.w})
	d.next()
	const per = 104.0
	d.ask(d.x, stepField{label: "Nucs in a box", name: field("per"), w: per})
	x := d.x + per + 28
	d.fit(x, d.y+12, "Kind of box", ink2(14), d.x+d.w)
	d.choices(x, d.y+stepLabel+2, d.x+d.w-x, field("kind"), boxKinds())
	d.said(x, d.y+stepLabel+fieldHeight+14, d.kindSays(row), ink2(13), d.x+d.w-x)
	d.next()
	if d.s.Typed(field("kind")) == state.OwnKind {
		x := d.ask(d.x, stepField{label: "Sides of comb in a nuc", name: field("sides"), empty: "6", note: "Both sides of a comb count", w: 160})
		_, in := d.s.Units.Of(1, "dm²")
		d.ask(x+16, stepField{label: "One side is, " + in, name: field("area"), empty: "2", w: 160})
		d.next()
	}
	d.faces(row)
}

// boxKinds are the kinds of box that can be chosen.
func boxKinds() (all []state.Option) {
	for _, k := range founding.Kinds() {
		all = append(all, state.Option{Value: k.Kind, Word: k.Kind})
	}
	return append(all, state.Option{Value: state.OwnKind, Word: "other"})
}

// kindSays is how much comb the kind of a row has.
func (d *stepDraw) kindSays(row int) string {
	for _, k := range founding.Kinds() {
		if k.Kind == d.s.Typed(d.s.RowField(row, "kind")) {
			return fmt.Sprintf("%d sides of %g dm²", k.Sides, k.Area)
		}
	}
	return ""
}

// Measures of a rose, dp.
const (
	roseSize   = 124.0
	roseLow    = 88.0 // in rows of three
	roseTarget = 28.0
)

// faces draws a rose for each nuc of a box: where its entrance faces.
func (d *stepDraw) faces(row int) {
	faces := d.s.Faces(row)
	size, pitch := roseSize, d.w/float64(len(faces))
	if d.low || pitch < roseSize {
		size = roseLow
	}
	d.whole(scene.Area{X: d.x, Y: d.y, W: d.w, H: stepLabel + size})
	d.fit(d.x, d.y+12, "Where the entrances face", ink2(14), d.x+d.w)
	d.y += stepLabel
	pitch = min(size+24, pitch)
	for i, face := range faces {
		c := at(d.x+size/2+float64(i)*pitch, d.y+size/2)
		number := ""
		if len(faces) > 1 {
			number = strconv.Itoa(i + 1)
		}
		d.rose(c, size, d.s.RowField(row, fmt.Sprintf("face%d", i)), face, number)
	}
	d.y += size + 12
}

// rose draws the eight ways about a lid whose entrance faces one of them: in a
// circle, or close together in rows of three.
func (d *stepDraw) rose(c scene.Point, size float64, name, face, number string) {
	bearing, _ := founding.ParseFacing(face)
	lid := 40.0
	if size < roseSize {
		lid = 27
	}
	d.add(scene.Lid{At: c, Size: lid, Condition: scene.Empty, Seen: true, Entrance: bearing[0], NoRim: true, Blank: true})
	d.centre(c.X, c.Y+4.5, number, ink(13).semi())
	for i, letters := range state.Compass {
		turn := float64(i) * math.Pi / 4
		way := at(math.Sin(turn), -math.Cos(turn)).Mul((size - roseTarget) / 2)
		if size < roseSize {
			way = at(math.Round(math.Sin(turn)), -math.Round(math.Cos(turn))).Mul(roseTarget + 1)
		}
		f := ink2(13)
		r := scene.Rect{Area: scene.Around(c.Add(way), roseTarget), Radius: roseTarget / 2, Tag: scene.Tag{Ref: state.ChoiceOf(name, letters), Reason: "faces " + letters}}
		switch {
		case letters == face:
			f, r.Fill = ink(13).semi().as(scene.Ground), scene.Ink
		case d.hovers(r.Ref):
			r.Fill = scene.Sunk
		}
		d.add(r)
		d.centre(r.Centre().X, r.Centre().Y+4.5, letters, f)
	}
}
