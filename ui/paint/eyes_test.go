package paint_test

import (
	"image"
	"image/color"
	"math"
	"testing"

	"lidmark/ui/paint"
	"lidmark/ui/scene"
)

// eyes are the eyes that look at a picture: what a colour is to them.
var eyes = map[string]func(color.RGBA) color.RGBA{
	"full": func(c color.RGBA) color.RGBA { return c },
	"grey": func(c color.RGBA) color.RGBA {
		l := luminance(c)
		return shown([3]float64{l, l, l})
	},
	"protan": seenBy(protan), "deutan": seenBy(deutan), "tritan": seenBy(tritan),
}

// The dichromacies of Machado, Oliveira & Fernandes 2009, A physiologically-based
// model for simulation of color vision deficiency, IEEE Trans Vis Comput Graph
// 15(6):1291-1298, severity 1, on linear sRGB.
var (
	protan = [3][3]float64{{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}
	deutan = [3][3]float64{{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}
	tritan = [3][3]float64{{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}
)

func seenBy(m [3][3]float64) func(color.RGBA) color.RGBA {
	return func(c color.RGBA) color.RGBA {
		in, out := [3]float64{linear(c.R), linear(c.G), linear(c.B)}, [3]float64{}
		for i, row := range m {
			for j, k := range row {
				out[i] += k * in[j]
			}
		}
		return shown(out)
	}
}

// shown is a linear colour as a screen shows it (IEC 61966-2-1, sRGB).
func shown(l [3]float64) color.RGBA {
	part := func(v float64) uint8 {
		v = min(1, max(0, v))
		if v <= 0.0031308 {
			return uint8(math.Round(255 * 12.92 * v))
		}
		return uint8(math.Round(255 * (1.055*math.Pow(v, 1/2.4) - 0.055)))
	}
	return color.RGBA{part(l[0]), part(l[1]), part(l[2]), 0xFF}
}

// lab is a colour in CIE 1976 L*a*b* under D65 (CIE 15:2004).
func lab(c color.RGBA) [3]float64 {
	r, g, b := linear(c.R), linear(c.G), linear(c.B)
	f := func(t float64) float64 {
		if t > 216.0/24389 {
			return math.Cbrt(t)
		}
		return (24389.0/27*t + 16) / 116
	}
	x, y, z := f((0.4124*r+0.3576*g+0.1805*b)/0.9505), f(0.2126*r+0.7152*g+0.0722*b), f((0.0193*r+0.1192*g+0.9505*b)/1.089)
	return [3]float64{116*y - 16, 500 * (x - y), 200 * (y - z)}
}

// apart is how far two colours differ by CIE 1976: 2 is just seen, 10 at a glance.
func apart(a, b color.RGBA) float64 {
	return difference(lab(a), lab(b))
}

func difference(a, b [3]float64) float64 {
	return math.Sqrt((a[0]-b[0])*(a[0]-b[0]) + (a[1]-b[1])*(a[1]-b[1]) + (a[2]-b[2])*(a[2]-b[2]))
}

// fills are the conditions that have a fill of their own.
var fills = []scene.Condition{scene.NoQueen, scene.Cell, scene.Virgin, scene.Due, scene.Laying, scene.GoodBrood, scene.DroneLayer}

// The two fills nearest to each other for each pair of eyes, as the colours
// were chosen.
func TestFillsStayApart(t *testing.T) {
	type nearest struct {
		apart float64
		a, b  scene.Condition
	}
	want := map[string]map[string]nearest{
		"light": {
			"full": {21, scene.NoQueen, scene.Cell}, "grey": {3, scene.Laying, scene.DroneLayer}, "protan": {15, scene.Cell, scene.Virgin},
			"deutan": {15, scene.NoQueen, scene.Cell}, "tritan": {21, scene.NoQueen, scene.Cell},
		},
		"dark": {
			"full": {37, scene.NoQueen, scene.Cell}, "grey": {3, scene.Laying, scene.DroneLayer}, "protan": {23, scene.Cell, scene.Virgin},
			"deutan": {18, scene.Due, scene.DroneLayer}, "tritan": {23, scene.Virgin, scene.Laying},
		},
	}
	for name, theme := range themes {
		for eye, see := range eyes {
			got := nearest{apart: math.Inf(1)}
			for i, a := range fills {
				for _, b := range fills[i+1:] {
					if d := apart(see(theme.Colour(a.Fill())), see(theme.Colour(b.Fill()))); d < got.apart {
						got = nearest{d, a, b}
					}
				}
			}
			got.apart = math.Round(got.apart)
			if got != want[name][eye] {
				t.Errorf("%s, %s eyes: nearest are %v and %v, %v apart; want %v", name, eye, got.a, got.b, got.apart, want[name][eye])
			}
		}
	}
}

// In pure grey every two fills are a step of lightness apart, but for laying
// and trouble, which differ in shape.
func TestFillsAreStepsOfGrey(t *testing.T) {
	const step = 5.0 // of L*
	for name, theme := range themes {
		for i, a := range fills {
			for _, b := range fills[i+1:] {
				d := math.Abs(lab(theme.Colour(a.Fill()))[0] - lab(theme.Colour(b.Fill()))[0])
				if shape := a == scene.Laying && b == scene.DroneLayer; d < step && !shape {
					t.Errorf("%s: %v and %v are %.1f steps of grey apart, want %v", name, a, b, d, step)
				}
			}
		}
	}
}

// look is a pair of eyes that remembers what it has seen.
type look struct {
	see func(color.RGBA) color.RGBA
	was map[color.RGBA][3]float64
}

// at is a lid on a map as the eyes see it, pixel by pixel.
func (k look) at(p *paint.Painter, theme paint.Theme, l scene.Lid) [][3]float64 {
	side := l.Size + 8
	l.At = scene.Point{X: side / 2, Y: side / 2}
	dst := image.NewRGBA(image.Rect(0, 0, int(side), int(side)))
	p.Paint(dst, scene.Scene{Marks: []scene.Mark{scene.Rect{Area: scene.Area{W: side, H: side}, Fill: scene.Map}, l}}, theme, 1)
	out := make([][3]float64, 0, len(dst.Pix)/4)
	for i := 0; i < len(dst.Pix); i += 4 {
		c := color.RGBA{dst.Pix[i], dst.Pix[i+1], dst.Pix[i+2], dst.Pix[i+3]}
		v, ok := k.was[c]
		if !ok {
			v = lab(k.see(c))
			k.was[c] = v
		}
		out = append(out, v)
	}
	return out
}

// differ is the share of a lid's square in which two pictures differ at a glance.
func differ(a, b [][3]float64, size float64) float64 {
	const glance = 10
	n := 0
	for i := range a {
		if difference(a[i], b[i]) > glance {
			n++
		}
	}
	return float64(n) / (size * size)
}

// Whoever looks, by light and by dark: any two conditions differ at a glance on
// a thirtieth of the lid's square at least, and more so one seen from one not
// seen yet. The three troubles share fill and shape and differ by their letter
// alone, an empty place and a queenless one by outline and dash.
func TestLidsStayApart(t *testing.T) {
	const conditions, seen = 1.0 / 30, 1.0 / 12
	p := painter(t)
	for name, theme := range themes {
		for eye, see := range eyes {
			eyes := look{see, map[color.RGBA][3]float64{}}
			for _, size := range []float64{16, 24, 40, 64} {
				var lids []scene.Lid
				var pictures [][][3]float64
				for _, c := range scene.Conditions() {
					for _, s := range []bool{true, false} {
						l := scene.Lid{Size: size, Condition: c, Seen: s, Entrance: 180}
						if c != scene.Empty || s {
							lids, pictures = append(lids, l), append(pictures, eyes.at(p, theme, l))
						}
					}
				}
				for i, a := range lids {
					for j, b := range lids[:i] {
						least := conditions
						if a.Condition == b.Condition {
							least = seen
						}
						if got := differ(pictures[i], pictures[j], size); got < least {
							t.Errorf("%s, %s eyes, %v dp: %v (seen %v) and %v (seen %v) differ on %.3f of the lid, want %.3f", name, eye, size, a.Condition, a.Seen, b.Condition, b.Seen, got, least)
						}
					}
				}
			}
		}
	}
}
