package picture_test

import (
	"math"
	"testing"

	"lidmark/ui/picture"
)

func TestSize(t *testing.T) {
	for text, want := range map[string][2]float64{
		"1440x900": {1440, 900}, "800x560": {800, 560}, "1280X800": {1280, 800}, "8192x8192": {8192, 8192},
	} {
		if w, h, err := picture.Size(text); err != nil || w != want[0] || h != want[1] {
			t.Errorf("Size(%q) = %v, %v, %v", text, w, h, err)
		}
	}
	for _, bad := range []string{"", "big", "1440", "1440x900junk", "NaNxNaN", "Infx900", "1e9x1e9", "799x900", "1440x559", "8193x900", "-1440x900", "1000000x1000000"} {
		if w, h, err := picture.Size(bad); err == nil {
			t.Errorf("Size(%q) = %v, %v, want an error", bad, w, h)
		}
	}
}

func TestTextSize(t *testing.T) {
	if got, err := picture.TextSize(150); err != nil || got != 1.5 {
		t.Errorf("TextSize(150) = %v, %v", got, err)
	}
	for _, bad := range []float64{99, 201, math.NaN(), math.Inf(1), -150} {
		if got, err := picture.TextSize(bad); err == nil {
			t.Errorf("TextSize(%v) = %v, want an error", bad, got)
		}
	}
}
