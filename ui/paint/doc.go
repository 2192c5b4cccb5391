// Package paint turns scenes into pixels, the same for the window, for pictures
// and for tests. It needs no display, no toolkit and no fonts of the machine.
//
// A [Painter] owns the caches: outlines and masks of glyphs, and one small
// picture for every different look of a lid, painted once and then stamped. What
// it paints depends on scene, theme and scale alone, never on what it painted
// before.
//
// Colours are blended as they stand, in sRGB, so tints look as designed. Edges
// are anti-aliased by coverage; upright edges of plain rectangles and hairlines
// fall on whole pixels. Text is not hinted and stands at quarters of a pixel
// sideways, on whole pixels upwards.
package paint
