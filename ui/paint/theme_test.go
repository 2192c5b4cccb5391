package paint_test

import (
	"image/color"
	"math"
	"testing"

	"lidmark/ui/paint"
	"lidmark/ui/scene"
)

var themes = map[string]paint.Theme{"light": paint.Light, "dark": paint.Dark}

func TestEveryRoleHasAColour(t *testing.T) {
	for name, theme := range themes {
		for r := range scene.Role(scene.RoleCount) {
			unused := r == scene.None || r == scene.NoQueen.Fill()-3 // the fill that Empty lacks
			if got := theme.Colour(r).A; (got == 0xFF) == unused {
				t.Errorf("%s: role %d has opacity %d", name, r, got)
			}
		}
	}
}

// luminance is the relative luminance of WCAG 2.2 (W3C Recommendation, 2024),
// "relative luminance".
func luminance(c color.RGBA) float64 {
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}

// linear is the light of a part of a colour, 0 to 1.
func linear(v uint8) float64 {
	s := float64(v) / 255
	if s <= 0.04045 {
		return s / 12.92
	}
	return math.Pow((s+0.055)/1.055, 2.4)
}

// contrast is the contrast ratio of WCAG 2.2, "contrast ratio".
func contrast(a, b color.RGBA) float64 {
	x, y := luminance(a), luminance(b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

// least is what WCAG 2.2 asks of text, success criterion 1.4.3.
const least = 4.5

func TestTextStandsOutFromItsGround(t *testing.T) {
	// The ratios are those the colours were chosen for: on ground, on panel.
	text := map[scene.Role]map[string][2]float64{
		scene.Ink:  {"light": {15.9, 17.0}, "dark": {15.0, 14.0}},
		scene.Ink2: {"light": {7.7, 8.3}, "dark": {9.8, 9.1}},
		scene.Ink3: {"light": {5.2, 5.6}, "dark": {6.7, 6.2}},
		scene.Pen:  {"light": {7.0, 7.5}, "dark": {9.4, 8.7}},
		scene.Act:  {"light": {5.2, 5.6}, "dark": {8.5, 7.9}},
		scene.Good: {"light": {5.1, 5.5}, "dark": {8.4, 7.8}},
	}
	for role, byTheme := range text {
		for name, want := range byTheme {
			for i, ground := range []scene.Role{scene.Ground, scene.Panel} {
				got := contrast(themes[name].Colour(role), themes[name].Colour(ground))
				if got < least || math.Abs(got-want[i]) > 0.051 {
					t.Errorf("%s: contrast of role %d on %d = %.2f, want %.1f and at least %v", name, role, ground, got, want[i], least)
				}
			}
		}
	}
}

// grounds are what text and marks lie on.
var grounds = []scene.Role{scene.Ground, scene.Panel, scene.Sunk, scene.Map, scene.PenTint, scene.ActTint, scene.GoodTint}

// Any text can come to lie on any ground: a selected row is tinted, whatever
// stands in it.
func TestTextStandsOutFromEveryGround(t *testing.T) {
	for name, theme := range themes {
		check := func(role, ground scene.Role) {
			if got := contrast(theme.Colour(role), theme.Colour(ground)); got < least {
				t.Errorf("%s: contrast of text in role %d on %d = %.2f, want at least %v", name, role, ground, got, least)
			}
		}
		for _, ground := range grounds {
			for _, role := range []scene.Role{scene.Ink, scene.Ink2, scene.Ink3, scene.Pen, scene.Act, scene.Good} {
				check(role, ground)
			}
		}
		check(scene.WaterLine, scene.Map) // the name of a water is written in its colour
		for _, filled := range []scene.Role{scene.Ink, scene.Pen, scene.Act} {
			check(scene.Ground, filled) // a main button, a flag
		}
		for _, under := range []scene.Role{scene.Tree, scene.Shadow, scene.Water} {
			check(scene.Ink, under) // the name of a nuc that stands there
		}
	}
}

// leastMark is what WCAG 2.2 asks of marks that mean something, success
// criterion 1.4.11.
const leastMark = 3.0

// Rule, Hair, Contour and BarLight are left out: they carry nothing alone.
func TestMarksStandOut(t *testing.T) {
	for name, theme := range themes {
		check := func(role, ground scene.Role) {
			if got := contrast(theme.Colour(role), theme.Colour(ground)); got < leastMark {
				t.Errorf("%s: contrast of a mark in role %d on %d = %.2f, want at least %v", name, role, ground, got, leastMark)
			}
		}
		for _, ground := range grounds {
			for _, c := range append(scene.Conditions(), scene.Mated) {
				check(c.Line(), ground)
			}
		}
		for _, c := range scene.Conditions() {
			check(c.Line(), scene.Paper)
		}
		for _, role := range []scene.Role{scene.WaterLine, scene.Hedge, scene.TreeLine, scene.Track} {
			check(role, scene.Map)
		}
		for _, ground := range []scene.Role{scene.Ground, scene.Panel, scene.Map} {
			check(scene.Bar, ground)
		}
		check(scene.Act, scene.Paper)
		check(scene.Ink3, scene.Paper)
		check(scene.GoodBrood.Fill(), scene.Paper) // the band of a nuc just caught
	}
}

func TestConditionsStandOut(t *testing.T) {
	// Letter on fill, fill on ground, hatch on ground; 0 where there is no fill.
	want := map[string]map[scene.Condition][3]float64{
		"light": {
			scene.Empty: {5.2, 0, 3.7}, scene.NoQueen: {17.0, 1.1, 15.9}, scene.Cell: {11.5, 1.4, 5.4},
			scene.Virgin: {9.6, 1.6, 5.0}, scene.Due: {7.6, 2.1, 4.6}, scene.Laying: {5.6, 3.2, 5.0},
			scene.GoodBrood: {9.0, 8.4, 8.4}, scene.DroneLayer: {4.9, 3.6, 5.1}, scene.LayingWorkers: {4.9, 3.6, 5.1}, scene.Robbed: {4.9, 3.6, 5.1},
		},
		"dark": {
			scene.Empty: {6.7, 0, 4.9}, scene.NoQueen: {15.0, 1.0, 15.0}, scene.Cell: {7.2, 2.1, 6.5},
			scene.Virgin: {5.7, 3.2, 7.3}, scene.Due: {11.1, 10.4, 10.4}, scene.Laying: {6.4, 6.0, 7.7},
			scene.GoodBrood: {15.4, 14.4, 14.4}, scene.DroneLayer: {5.8, 5.5, 8.5}, scene.LayingWorkers: {5.8, 5.5, 8.5}, scene.Robbed: {5.8, 5.5, 8.5},
		},
	}
	for name, theme := range themes {
		ground := theme.Colour(scene.Ground)
		for _, c := range scene.Conditions() {
			fill, got := ground, [3]float64{}
			if c.Fill() != scene.None {
				fill = theme.Colour(c.Fill())
				got[1] = contrast(fill, ground)
			}
			got[0], got[2] = contrast(theme.Colour(c.Letter()), fill), contrast(theme.Colour(c.Line()), ground)
			for i := range got {
				if math.Abs(got[i]-want[name][c][i]) > 0.051 {
					t.Errorf("%s %v: contrasts %.2f, want %.1f", name, c, got, want[name][c])
				}
			}
			if got[0] < least {
				t.Errorf("%s %v: contrast of letter on fill %.2f, want at least %v", name, c, got[0], least)
			}
		}
	}
}

// The further along a nuc is, the further its fill is from the ground.
func TestFillsLeaveTheGround(t *testing.T) {
	for name, theme := range themes {
		last := 0.0
		for _, c := range []scene.Condition{scene.NoQueen, scene.Cell, scene.Virgin, scene.Laying, scene.GoodBrood} {
			got := contrast(theme.Colour(c.Fill()), theme.Colour(scene.Ground))
			if got <= last {
				t.Errorf("%s: fill of %v stands out by %.2f, no more than the one before it, %.2f", name, c, got, last)
			}
			last = got
		}
	}
}
