package paper

import (
	"fmt"
	"image/color"

	"github.com/boombuler/barcode/qr"

	"lidmark/ui/scene"
)

// qrCode draws a text as a QR code (ISO/IEC 18004) of a side, its quiet zone of
// four modules included, and tells where its ink is. It is of level M: some 15 % of it
// may be lost.
func (s *sheet) qrCode(text string, x, y, side float64) (ink scene.Area, err error) {
	code, err := qr.Encode(text, qr.M, qr.Auto)
	if err != nil {
		return ink, fmt.Errorf("code of %q: %w", text, err)
	}
	const quiet = 4
	n := code.Bounds().Dx()
	module := side / float64(n+2*quiet)
	dark := func(i, j int) bool { return color.GrayModel.Convert(code.At(i, j)).(color.Gray).Y < 0x80 }
	for j := range n {
		for i := 0; i < n; i++ {
			from := i
			for i < n && dark(i, j) {
				i++
			}
			if i > from {
				s.rect(scene.Area{
					X: x + float64(quiet+from)*module, Y: y + float64(quiet+j)*module,
					W: float64(i-from) * module, H: module,
				}, 0, black, stroke{})
			}
		}
	}
	return scene.Area{X: x, Y: y, W: side, H: side}.Inset(quiet * module), nil
}
