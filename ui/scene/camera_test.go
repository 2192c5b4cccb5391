package scene_test

import (
	"math"
	"testing"

	"lidmark/ui/scene"

	"pgregory.net/rapid"
)

func coordinate(t *rapid.T, name string) float64 {
	return rapid.Float64Range(-1e4, 1e4).Draw(t, name)
}

func point(t *rapid.T, name string) scene.Point {
	return scene.Point{X: coordinate(t, name+" x"), Y: coordinate(t, name+" y")}
}

func camera(t *rapid.T, name string) scene.Camera {
	return scene.Camera{Scale: rapid.Float64Range(0.05, 50).Draw(t, name+" scale"), Shift: point(t, name+" shift")}
}

// near fails unless got and want are the same but for rounding.
func near(t *rapid.T, what string, got, want scene.Point) {
	t.Helper()
	if d := got.Sub(want); math.Hypot(d.X, d.Y) > 1e-6 {
		t.Fatalf("%s = %v, want %v", what, got, want)
	}
}

func TestCameraThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c, p := camera(t, "camera"), point(t, "p")
		near(t, "World(Screen(p))", c.World(c.Screen(p)), p)
		near(t, "Screen(World(p))", c.Screen(c.World(p)), p)
	})
}

func TestCameraZoomKeepsThePointUnderThePointer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c, p := camera(t, "camera"), point(t, "pointer")
		factor := rapid.Float64Range(0.2, 5).Draw(t, "factor")
		z := c.Zoom(p, factor)
		near(t, "Zoom: Screen(what was under the pointer)", z.Screen(c.World(p)), p)
		if got, want := z.Length(1), c.Length(1)*factor; math.Abs(got-want) > 1e-9 {
			t.Fatalf("Zoom(%v).Length(1) = %v, want %v", factor, got, want)
		}
	})
}

func TestCameraPanMovesWhatIsSeen(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c, p, d := camera(t, "camera"), point(t, "p"), point(t, "d")
		near(t, "Pan(d).Screen(p)", c.Pan(d).Screen(p), c.Screen(p).Add(d))
	})
}

func TestCameraThenIsOneAfterTheOther(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		inner, outer := camera(t, "inner"), camera(t, "outer")
		p := scene.Point{X: rapid.Float64Range(-10, 10).Draw(t, "x"), Y: 3}
		near(t, "Then", inner.Then(outer).Screen(p), outer.Screen(inner.Screen(p)))
	})
}

func TestZeroCameraShowsTheWorldAsItIs(t *testing.T) {
	p := scene.Point{X: 3, Y: -4}
	if got := (scene.Camera{}).Screen(p); got != p {
		t.Errorf("zero Camera: Screen(%v) = %v, want the same", p, got)
	}
	if got := (scene.Camera{}).World(p); got != p {
		t.Errorf("zero Camera: World(%v) = %v, want the same", p, got)
	}
}

func TestFitShowsTheWholeWorldCentred(t *testing.T) {
	world, screen := scene.Area{X: -5, Y: 10, W: 50, H: 20}, scene.Area{X: 100, Y: 100, W: 400, H: 300}
	want := scene.Area{X: 100, Y: 170, W: 400, H: 160}
	if got := scene.Fit(world, screen).ScreenArea(world); got != want {
		t.Errorf("Fit(%v, %v) shows the world in %v, want %v", world, screen, got, want)
	}
}
