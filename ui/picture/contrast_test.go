package picture_test

import (
	"fmt"
	"image/color"
	"math"
	"testing"

	"lidmark/ui/paint"
	"lidmark/ui/picture"
	"lidmark/ui/scene"
	"lidmark/ui/view"
)

// least is the contrast that WCAG 2.2 (W3C Recommendation, 2024) asks of text,
// success criterion 1.4.3.
const least = 4.5

// Every word of every room stands out from what it lies on.
func TestEveryWordCanBeRead(t *testing.T) {
	p, err := paint.New()
	if err != nil {
		t.Fatal(err)
	}
	for _, theme := range []paint.Theme{paint.Light, paint.Dark} {
		seen := map[string]bool{}
		for _, room := range picture.Rooms() {
			s, err := picture.Enter(demoState(t), room)
			if err != nil {
				t.Fatal(err)
			}
			g := ground{theme: theme, painter: p}
			g.lay(view.Window(s, p).Marks, scene.Camera{}, scene.Area{W: s.Width, H: s.Height})
			for _, w := range g.words {
				k := fmt.Sprint(w.role, w.on)
				if r := contrast(w.ink, w.on); r < least && !seen[k] {
					seen[k] = true
					t.Errorf("theme %v, %s: %q: role %d on %v is %.2f to 1, want %v", theme, room, w.text, w.role, w.on, r, least)
				}
			}
			if len(g.words) == 0 {
				t.Errorf("%s: no words", room)
			}
		}
	}
}

// ground is what has been painted so far, for asking what lies under a word.
type ground struct {
	theme   paint.Theme
	painter *paint.Painter
	fills   []fill
	words   []word
}

// fill is a filled mark: where it covers, and how much shows through it.
type fill struct {
	covers func(scene.Point) bool
	colour color.RGBA
	clear  float64
}

// word is a text at one of its points, and what it lies on there.
type word struct {
	text    string
	role    scene.Role
	ink, on color.RGBA
}

// lay puts marks on top, seen through a camera and cut to a clip.
func (g *ground) lay(marks []scene.Mark, c scene.Camera, clip scene.Area) {
	add := func(role scene.Role, clear float64, covers func(scene.Point) bool) {
		if role != scene.None {
			g.fills = append(g.fills, fill{func(p scene.Point) bool { return clip.Contains(p) && covers(c.World(p)) }, g.theme.Colour(role), clear})
		}
	}
	for _, m := range marks {
		switch m := m.(type) {
		case scene.Rect:
			add(m.Fill, m.Clear, m.Area.Contains)
		case scene.Circle:
			add(m.Fill, 0, func(p scene.Point) bool { return math.Hypot(p.X-m.At.X, p.Y-m.At.Y) <= m.Radius })
		case scene.Poly:
			probe := m
			probe.Open, probe.Tag = false, scene.Tag{Ref: scene.Ref{Kind: "this"}}
			add(m.Fill, 0, func(p scene.Point) bool { _, on := scene.Scene{Marks: []scene.Mark{probe}}.At(p); return on })
		case scene.Text:
			g.read(m, c, clip)
		case scene.Pane:
			g.lay(m.Marks, m.Camera.Then(c), c.ScreenArea(m.Clip).Intersect(clip))
		}
	}
}

// read asks what lies under the beginning, the middle and the end of a text.
func (g *ground) read(m scene.Text, c scene.Camera, clip scene.Area) {
	at := c.Screen(m.At).Add(m.Shift)
	wide := g.painter.Width(m.Text, m.Size, m.Weight)
	left := at.X - map[scene.Anchor]float64{scene.Centre: wide / 2, scene.Right: wide}[m.Anchor]
	up := m.Size * 0.35
	if m.Middle {
		up = 0
	}
	for _, share := range []float64{0.02, 0.5, 0.98} {
		p := scene.Point{X: left + wide*share, Y: at.Y - up}
		if m.Text == "" || !clip.Contains(p) {
			continue
		}
		g.words = append(g.words, word{m.Text, m.Role, g.theme.Colour(m.Role), g.under(p)})
	}
}

// under is the colour at a point.
func (g *ground) under(p scene.Point) (on color.RGBA) {
	for _, f := range g.fills {
		if !f.covers(p) {
			continue
		}
		mix := func(was, is uint8) uint8 { return uint8(float64(was)*f.clear + float64(is)*(1-f.clear)) }
		on = color.RGBA{mix(on.R, f.colour.R), mix(on.G, f.colour.G), mix(on.B, f.colour.B), 255}
	}
	return on
}

func contrast(a, b color.RGBA) float64 {
	x, y := luminance(a), luminance(b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

func luminance(c color.RGBA) float64 {
	part := func(v uint8) float64 {
		s := float64(v) / 255
		if s <= 0.04045 {
			return s / 12.92
		}
		return math.Pow((s+0.055)/1.055, 2.4)
	}
	return 0.2126*part(c.R) + 0.7152*part(c.G) + 0.0722*part(c.B)
}
