package paint_test

import (
	"image"
	"testing"

	"lidmark/ui/scene"
)

// unlike are the pixels in which two pictures differ to the eye.
func unlike(a, b *image.RGBA) map[image.Point]bool {
	const seen = 60
	out := map[image.Point]bool{}
	for y := range side {
		for x := range side {
			if p, q := a.RGBAAt(x, y), b.RGBAAt(x, y); max(p.G, q.G)-min(p.G, q.G) > seen || max(p.A, q.A)-min(p.A, q.A) > seen {
				out[image.Pt(x, y)] = true
			}
		}
	}
	return out
}

// smallLids are lids that are too small for much: letters that a notch would change, with
// entrances on all sides.
func smallLids(change func(*scene.Lid)) (lids []scene.Lid) {
	for _, size := range []float64{14, 16, 19.5, 21, 23.5} {
		for _, holds := range []scene.Condition{scene.Virgin, scene.NoQueen, scene.Laying, scene.Due} {
			for entrance := 0.0; entrance < 360; entrance += 90 {
				l := scene.Lid{At: scene.Point{X: 40, Y: 40}, Size: size, Condition: holds, Entrance: entrance, NoRim: true, Seen: size >= 20}
				change(&l)
				lids = append(lids, l)
			}
		}
	}
	return lids
}

// The letter of a small lid, or its dash, does not run into the notch of its entrance.
func TestTheNotchOfASmallLidKeepsOffItsLetter(t *testing.T) {
	p := painter(t)
	const scale = 1.5
	for _, l := range smallLids(func(*scene.Lid) {}) {
		blank := l
		blank.Blank = true
		body := picture(p, scale, blank)
		amid := body.RGBAAt(60, 60)
		letter := unlike(picture(p, scale, l), body)
		if len(letter) < 8 {
			t.Fatalf("%.1f dp, %v: a letter of %d pixels", l.Size, l.Condition, len(letter))
		}
		for at := range letter {
			for _, next := range []image.Point{{}, {X: 1}, {X: -1}, {Y: 1}, {Y: -1}} {
				q := at.Add(next)
				if on := body.RGBAAt(q.X, q.Y); max(on.G, amid.G)-min(on.G, amid.G) > 90 || on.A < 250 {
					t.Errorf("%.1f dp, %v, entrance at %.0f°: the letter runs into the edge at %v", l.Size, l.Condition, l.Entrance, q)
				}
			}
		}
	}
}

// The keeper's strokes lie outside a small lid, off its letter, and inside what it may
// cover; the notch still tells on which side the entrance is.
func TestTheStrokesOfASmallLidLieOutsideIt(t *testing.T) {
	p := painter(t)
	const scale = 1.5
	strokes := []scene.Paint{scene.Settled, scene.Watch, scene.ActSoon}
	for i, l := range smallLids(func(l *scene.Lid) { l.NeedsYou = true }) {
		l.Paint = strokes[i%len(strokes)]
		bare, blank := l, l
		bare.Paint, blank.Blank, blank.Paint = scene.NoPaint, true, scene.NoPaint
		plain := picture(p, scale, bare)
		letter := unlike(plain, picture(p, scale, blank))
		drawn := unlike(picture(p, scale, l), plain)
		if len(drawn) < 6 {
			t.Fatalf("%.1f dp: strokes of %d pixels", l.Size, len(drawn))
		}
		for at := range drawn {
			if letter[at] {
				t.Errorf("%.1f dp, %v, %d: a stroke lies on the letter at %v", l.Size, l.Condition, l.Paint, at)
			}
			if in := l.Size * scale * 0.22; float64(at.X) > 60-in && float64(at.Y) < 60+in {
				t.Errorf("%.1f dp, %v, %d: a stroke reaches into the lid at %v", l.Size, l.Condition, l.Paint, at)
			}
		}
	}
	for _, l := range smallLids(func(l *scene.Lid) {}) {
		whole := l
		whole.Entrance += 180
		if n := len(unlike(picture(p, scale, l), picture(p, scale, whole))); n < 8 {
			t.Errorf("%.1f dp: an entrance on the other side changes %d pixels", l.Size, n)
		}
	}
}
