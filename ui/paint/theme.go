package paint

import (
	"image/color"

	"lidmark/ui/scene"
)

// Theme gives each role its colour. The zero Theme is Light.
type Theme uint8

// The two themes. They are one design: on light paper a lid's fill gets darker
// the further along the nuc is, on dark paper lighter.
const (
	Light Theme = iota
	Dark
)

// Colour returns the theme's colour for the role, always opaque but for None,
// which is fully transparent.
func (t Theme) Colour(r scene.Role) color.RGBA { return palettes[t][r] }

// palette holds a theme's colours by role.
type palette [scene.RoleCount]color.RGBA

var palettes = [...]palette{Light: newPalette(lightSheet, lightConditions), Dark: newPalette(darkSheet, darkConditions)}

// newPalette joins the colours of a theme's sheet, of its conditions and of
// paint, which is the same in every theme.
func newPalette(sheet map[scene.Role]uint32, conditions map[scene.Condition][3]uint32) palette {
	var p palette
	for r, c := range sheet {
		p[r] = rgb(c)
	}
	for r, c := range paints {
		p[r] = rgb(c)
	}
	for c, v := range conditions {
		if c.Fill() != scene.None {
			p[c.Fill()] = rgb(v[0])
		}
		p[c.Line()], p[c.Letter()] = rgb(v[1]), rgb(v[2])
	}
	return p
}

// rgb returns the opaque colour written as 0xRRGGBB.
func rgb(v uint32) color.RGBA {
	return color.RGBA{R: uint8(v >> 16), G: uint8(v >> 8), B: uint8(v), A: 0xFF}
}
