package yard_test

import (
	"testing"

	"lidmark/domain/yard"
)

func TestFacing(t *testing.T) {
	for bearing, want := range map[float64]string{
		0: "0° north", 359.7: "0° north", -90: "270° west", 120: "120° south-east", 112.6: "113° south-east", 180: "180° south", 405: "45° north-east",
	} {
		if got := yard.Facing(bearing); got != want {
			t.Errorf("%g is %q, want %q", bearing, got, want)
		}
	}
}

func TestBearing(t *testing.T) {
	for degrees, want := range map[float64]float64{-3: 357, 345: 345, 359.6: 0, 360: 0, -0.2: 0, 725: 5} {
		if got := yard.Bearing(degrees); got != want {
			t.Errorf("%g is said as %g, want %g", degrees, got, want)
		}
	}
}
