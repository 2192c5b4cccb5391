package picture

import (
	"fmt"
	"regexp"
	"strconv"

	"lidmark/ui/state"
)

// mostPixels is the longest side of a picture, in dp: more would need
// gigabytes, and no screen has it.
const mostPixels = 8192

var sizeForm = regexp.MustCompile(`^([0-9]{1,6})[xX×]([0-9]{1,6})$`)

// Size reads the size of a window or picture in dp, written like 1440x900.
func Size(text string) (width, height float64, err error) {
	m := sizeForm.FindStringSubmatch(text)
	if m == nil {
		return 0, 0, fmt.Errorf("size %q: write it like 1440x900", text)
	}
	width, _ = strconv.ParseFloat(m[1], 64)
	height, _ = strconv.ParseFloat(m[2], 64)
	if width < state.LeastWidth || height < state.LeastHeight || max(width, height) > mostPixels {
		return 0, 0, fmt.Errorf("size %s: use %gx%g to %dx%d", text, state.LeastWidth, state.LeastHeight, mostPixels, mostPixels)
	}
	return width, height, nil
}

// TextSize is a text size in per cent, 100 to 200, as [state.State] has it.
func TextSize(percent float64) (float64, error) {
	if !(percent >= 100 && percent <= 200) { // so that what is no number is refused too
		return 0, fmt.Errorf("text size %g: use 100 to 200", percent)
	}
	return percent / 100, nil
}
