package window

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"lidmark/assets"
	"lidmark/ui/paint"
	"lidmark/ui/scene"
)

// Theme gives the toolkit's own dialogs the colours and the typeface of the
// scenes. Light or dark is as the window has it, not as the desktop.
type Theme struct{ Dark bool }

var _ fyne.Theme = Theme{}

var roles = map[fyne.ThemeColorName]scene.Role{
	theme.ColorNameBackground:        scene.Ground,
	theme.ColorNameForeground:        scene.Ink,
	theme.ColorNameButton:            scene.Panel,
	theme.ColorNameInputBackground:   scene.Panel,
	theme.ColorNameMenuBackground:    scene.Panel,
	theme.ColorNameOverlayBackground: scene.Panel,
	theme.ColorNameHeaderBackground:  scene.Sunk,
	theme.ColorNamePlaceHolder:       scene.Ink3,
	theme.ColorNameDisabled:          scene.Ink3,
	theme.ColorNamePrimary:           scene.Pen,
	theme.ColorNameHyperlink:         scene.Pen,
	theme.ColorNameFocus:             scene.PenTint,
	theme.ColorNameSelection:         scene.PenTint,
	theme.ColorNameHover:             scene.Sunk,
	theme.ColorNameSeparator:         scene.Rule,
	theme.ColorNameInputBorder:       scene.Rule,
	theme.ColorNameError:             scene.Act,
	theme.ColorNameWarning:           scene.Act,
	theme.ColorNameSuccess:           scene.Good,
}

// Color is the colour of a role where the scenes have one for it.
func (t Theme) Color(name fyne.ThemeColorName, _ fyne.ThemeVariant) color.Color {
	role, ok := roles[name]
	switch {
	case ok && t.Dark:
		return paint.Dark.Colour(role)
	case ok:
		return paint.Light.Colour(role)
	case t.Dark:
		return theme.DefaultTheme().Color(name, theme.VariantDark)
	default:
		return theme.DefaultTheme().Color(name, theme.VariantLight)
	}
}

// Font is IBM Plex Sans.
func (Theme) Font(style fyne.TextStyle) fyne.Resource {
	switch {
	case style.Monospace, style.Symbol:
		return theme.DefaultTheme().Font(style)
	case style.Bold:
		return fyne.NewStaticResource("IBMPlexSans-SemiBold.ttf", assets.SemiBold)
	case style.Italic:
		return fyne.NewStaticResource("IBMPlexSans-Italic.ttf", assets.Italic)
	default:
		return fyne.NewStaticResource("IBMPlexSans-Regular.ttf", assets.Regular)
	}
}

// Icon is the toolkit's.
func (Theme) Icon(name fyne.ThemeIconName) fyne.Resource { return theme.DefaultTheme().Icon(name) }

// Size is the toolkit's.
func (Theme) Size(name fyne.ThemeSizeName) float32 { return theme.DefaultTheme().Size(name) }
