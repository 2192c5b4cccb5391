package view_test

import (
	"image/color"
	"math"
	"testing"

	"lidmark/ui/paint"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestStripsAreSolidAndSeen: no strip of the table is hatched on paper with lines that
// rise, since those say "not seen yet", and no part of one is so narrow that it is all
// outline.
func TestStripsAreSolidAndSeen(t *testing.T) {
	s := open(t)
	s.Room, s.Pane = state.Yard, state.Table
	for _, width := range []float64{1440, 1920} {
		s.Width, s.Height = width, 4000
		parts := 0
		for _, p := range walk(t, window(s), s.Size()) {
			r, ok := p.mark.(scene.Rect)
			if !ok || r.Area.H != 14 || r.Stroke.Role != scene.Ink || p.clip.X > s.Layout().Card.X {
				continue
			}
			parts++
			if r.Hatch.Role != scene.None && (!r.Hatch.Falling || r.Fill == scene.Panel) {
				t.Errorf("at %v a strip is hatched at %v", width, r.Area)
			}
			if r.Area.W < 4.5 {
				t.Errorf("at %v a part is %v wide at %v", width, r.Area.W, r.Area)
			}
		}
		if parts < 100 {
			t.Errorf("at %v there are %d parts of strips", width, parts)
		}
	}
}

// TestPartsLookUnlike: on a card no two parts of a nuc have the same fill and hatch.
func TestPartsLookUnlike(t *testing.T) {
	s := open(t)
	most := 0
	for _, n := range s.Reading().Nucs {
		one := onCard(s, n)
		fills, swatches := map[scene.Rect]int{}, 0
		for _, p := range walk(t, window(one), one.Size()) {
			if r, ok := p.mark.(scene.Rect); ok && r.Area.W == 15 && r.Area.H == 15 {
				fills[scene.Rect{Fill: r.Fill, Hatch: r.Hatch}]++
				swatches++
			}
		}
		if len(fills) != swatches {
			t.Errorf("%s: %d parts look like %d", n.Name, swatches, len(fills))
		}
		most = max(most, swatches)
	}
	if most < 4 {
		t.Fatalf("at most %d parts on a card", most)
	}
}

// TestPartsDifferInGrey: without its colours a part is told from every other by how light
// it is or by its hatch; "mated" and "cell" by the virgin that stands between them and
// the letter.
func TestPartsDifferInGrey(t *testing.T) {
	const least = 1.15 // contrast of two greys side by side: virgin and cell have 1.19
	looks := swatches(t)
	for _, theme := range []paint.Theme{paint.Light, paint.Dark} {
		for one, a := range looks {
			for other, b := range looks {
				if one == other || one == "mated, not laying yet" && other == "cell" || one == "cell" && other == "mated, not laying yet" {
					continue
				}
				if got := greys(theme.Colour(a.Fill), theme.Colour(b.Fill)); got < least && a.Hatch == b.Hatch {
					t.Errorf("theme %v: %s and %s are one grey, contrast %.2f, and hatched alike", theme, one, other, got)
				}
			}
		}
		for name, look := range looks {
			if look.Hatch.Role == scene.None {
				continue
			}
			if got := greys(theme.Colour(look.Hatch.Role), theme.Colour(look.Fill)); got < 3 {
				t.Errorf("theme %v: the hatch of %s stands out by %.2f", theme, name, got)
			}
		}
	}
}

// swatches are the looks of all parts that some nuc of the demo season has on its card.
func swatches(t *testing.T) map[string]scene.Rect {
	s, all := open(t), map[string]scene.Rect{}
	for _, n := range s.Reading().Nucs {
		one := onCard(s, n)
		var box scene.Rect
		for _, p := range walk(t, window(one), one.Size()) {
			switch m := p.mark.(type) {
			case scene.Rect:
				if m.W == 15 && m.H == 15 {
					box = m
				}
			case scene.Text:
				if box.W > 0 && m.At.X > box.Right() && m.At.X < box.Right()+20 {
					all[m.Text], box = box, scene.Rect{}
				}
			}
		}
	}
	for _, want := range []string{"laying", "own virgin or cell", "drone layer", "laying workers", "cell", "virgin", "no queen", "mated, not laying yet"} {
		if _, ok := all[want]; !ok {
			t.Errorf("%q is on no card", want)
		}
	}
	return all
}

// greys is the contrast of two colours, WCAG 2.2 "contrast ratio", which looks only at
// how light they are.
func greys(a, b color.RGBA) float64 {
	light := func(c color.RGBA) (sum float64) {
		for i, v := range []uint8{c.R, c.G, c.B} {
			sum += math.Pow(float64(v)/255, 2.2) * []float64{0.2126, 0.7152, 0.0722}[i]
		}
		return sum + 0.05
	}
	return max(light(a)/light(b), light(b)/light(a))
}
