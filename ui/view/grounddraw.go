package view

import (
	"fmt"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// drawing draws what is being drawn on the ground: its points, and a line to the pointer
// with its length and where that is.
func (m *layoutMap) drawing() {
	m.brought()
	m.origin()
	points := make([]scene.Point, 0, len(m.s.Drawn())+1)
	for _, p := range m.s.Drawn() {
		points = append(points, m.camera.Screen(state.OnGround(p)))
	}
	to, long, pointing := m.s.DrawPointer()
	line := points
	if pointing && len(points) > 0 && !m.s.DrawsPoint() {
		line = append(line, m.camera.Screen(state.OnGround(to)))
	}
	if wide := m.camera.Length(m.s.DrawnWide()); len(points) == 1 && wide > 0 {
		m.add(scene.Circle{At: points[0], Radius: wide / 2, Stroke: penDash(2)})
	}
	m.add(scene.Poly{Points: line, Open: true, Stroke: penDash(2)})
	if len(line) > 2 && m.s.DrawsOutline() {
		m.add(scene.Line{From: line[len(line)-1], To: line[0], Stroke: penDash(1)})
	}
	for _, p := range points {
		m.add(scene.Circle{At: p, Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Pen, 2)})
	}
	if pointing {
		words := fmt.Sprintf("%.1f m east, %.1f north", to.X, to.Y)
		if len(line) > len(points) {
			words = fmt.Sprintf("%.1f m long; ", long) + words
		}
		m.noteAt(m.camera.Screen(state.OnGround(to)), words)
	}
}

// origin marks the place from which metres count, while the ground is drawn.
func (m *layoutMap) origin() {
	c := m.camera.Screen(scene.Point{})
	if !m.s.Laying.Ground || !m.frame.Contains(c) {
		return
	}
	const arm = 8.0
	m.rule(c.X-arm, c.Y, c.X+arm, c.Y, scene.Pen)
	m.rule(c.X, c.Y-arm, c.X, c.Y+arm, scene.Pen)
	m.text(c.X+5, c.Y-5, "0,0", ink(12).semi().as(scene.Pen))
}

func penDash(width float64) scene.Stroke {
	return scene.Stroke{Role: scene.Pen, Width: width, Dash: [2]float64{6, 3}}
}

// noteAt writes words in a box beside a point, within the frame.
func (m *layoutMap) noteAt(p scene.Point, words string) {
	const off = 14.0
	f := ink(13).semi().as(scene.Pen)
	box := scene.Area{X: p.X + off, Y: p.Y + off, W: m.width(words, f) + 12, H: 22}
	in := m.frame.Inset(4)
	if box.Right() > in.Right() {
		box.X = max(in.X, p.X-off-box.W)
	}
	if box.Bottom() > in.Bottom() {
		box.Y = p.Y - off - box.H
	}
	m.add(scene.Rect{Area: box, Radius: 3, Fill: scene.Panel, Stroke: stroke(scene.Pen, 1)})
	m.text(box.X+6, box.Y+15.5, words, f)
}
