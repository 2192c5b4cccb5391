package scene_test

import (
	"slices"
	"testing"

	"lidmark/ui/scene"

	"pgregory.net/rapid"
)

func tag(id string) scene.Tag {
	return scene.Tag{Ref: scene.Ref{Kind: "thing", ID: id}, Reason: "because of " + id}
}

// gallery holds one mark of every kind that can be hit, all about (50, 50).
func gallery() map[string]scene.Mark {
	at := scene.Point{X: 50, Y: 50}
	return map[string]scene.Mark{
		"rect":     scene.Rect{Area: scene.Around(at, 20), Tag: tag("rect")},
		"line":     scene.Line{From: scene.Point{X: 40, Y: 40}, To: scene.Point{X: 60, Y: 60}, Tag: tag("line")},
		"polygon":  scene.Poly{Points: []scene.Point{{X: 50, Y: 40}, {X: 60, Y: 60}, {X: 40, Y: 60}}, Tag: tag("polygon")},
		"polyline": scene.Poly{Points: []scene.Point{{X: 40, Y: 60}, {X: 50, Y: 50}, {X: 60, Y: 60}}, Open: true, Tag: tag("polyline")},
		"circle":   scene.Circle{At: at, Radius: 10, Tag: tag("circle")},
		"icon":     scene.Icon{At: at, Size: 20, Tag: tag("icon")},
		"lid":      scene.Lid{At: at, Size: 20, Tag: tag("lid")},
		"pane":     scene.Pane{Clip: scene.Around(at, 20), Tag: tag("pane")},
	}
}

func TestEveryMarkIsHitWhereItLies(t *testing.T) {
	for name, m := range gallery() {
		s := scene.Scene{Marks: []scene.Mark{m}}
		if got, ok := s.At(scene.Point{X: 50, Y: 50.5}); !ok || got != tag(name) {
			t.Errorf("%s: At its middle = %v, %v, want %v, true", name, got, ok, tag(name))
		}
		if got, ok := s.At(scene.Point{X: 50, Y: 70}); ok {
			t.Errorf("%s: At beside it = %v, want nothing", name, got)
		}
		in := s.In(scene.Area{X: 45, Y: 45, W: 2, H: 10})
		if want := []scene.Ref{tag(name).Ref}; name != "pane" && !slices.Equal(in, want) {
			t.Errorf("%s: In a band across it = %v, want %v", name, in, want)
		}
		if in := s.In(scene.Area{X: 45, Y: 62, W: 2, H: 10}); len(in) != 0 {
			t.Errorf("%s: In a band beside it = %v, want nothing", name, in)
		}
	}
}

func TestUppermostMarkWinsAndPlainOnesLetThrough(t *testing.T) {
	var s scene.Scene
	area := scene.Area{W: 100, H: 100}
	s.Add(
		scene.Rect{Area: area, Tag: tag("low")},
		scene.Rect{Area: scene.Area{W: 50, H: 50}, Tag: tag("high")},
		scene.Rect{Area: area, Fill: scene.Panel},
		scene.Text{At: scene.Point{X: 10, Y: 10}, Text: "word"},
	)
	for _, c := range []struct {
		p    scene.Point
		want string
	}{{scene.Point{X: 10, Y: 10}, "high"}, {scene.Point{X: 60, Y: 10}, "low"}} {
		if got, _ := s.At(c.p); got != tag(c.want) {
			t.Errorf("At(%v) = %v, want %v", c.p, got, tag(c.want))
		}
	}
}

func TestTurnedLidIsHitInItsTurnedSquare(t *testing.T) {
	l := scene.Lid{At: scene.Point{X: 50, Y: 50}, Size: 20, Turn: 45, Tag: tag("lid")}
	s := scene.Scene{Marks: []scene.Mark{l}}
	if _, ok := s.At(scene.Point{X: 63, Y: 50}); !ok {
		t.Error("the corner of a lid turned by 45 degrees, 13 to the right of its centre, is not hit")
	}
	if _, ok := s.At(scene.Point{X: 58.5, Y: 58.5}); ok {
		t.Error("the empty corner of a lid turned by 45 degrees is hit")
	}
}

func TestPaneLimitsHitsAndLooksThroughItsCamera(t *testing.T) {
	// Metres at 10 dp each, seen in a pane of 100 by 100.
	pane := scene.Pane{
		Clip:   scene.Area{X: 100, Y: 100, W: 100, H: 100},
		Camera: scene.Camera{Scale: 10, Shift: scene.Point{X: 100, Y: 100}},
		Marks:  []scene.Mark{scene.Rect{Area: scene.Area{X: -5, Y: 2, W: 50, H: 3}, Tag: tag("bed")}},
	}
	s := scene.Scene{Marks: []scene.Mark{pane}}
	if got, _ := s.At(scene.Point{X: 150, Y: 130}); got != tag("bed") {
		t.Errorf("At inside the pane = %v, want the bed", got)
	}
	if got, ok := s.At(scene.Point{X: 90, Y: 130}); ok {
		t.Errorf("At left of the pane, where the bed is cut off, = %v, want nothing", got)
	}
	if got := s.In(scene.Area{X: 0, Y: 0, W: 99, H: 300}); len(got) != 0 {
		t.Errorf("In left of the pane = %v, want nothing", got)
	}
	if got, want := s.In(scene.Area{X: 120, Y: 0, W: 10, H: 300}), []scene.Ref{tag("bed").Ref}; !slices.Equal(got, want) {
		t.Errorf("In across the pane = %v, want %v", got, want)
	}
}

func TestInNamesEachThingOnceLowestFirst(t *testing.T) {
	var s scene.Scene
	s.Add(
		scene.Lid{At: scene.Point{X: 20, Y: 20}, Size: 16, Tag: tag("a")},
		scene.Lid{At: scene.Point{X: 50, Y: 20}, Size: 16, Tag: tag("b")},
		scene.Rect{Area: scene.Area{X: 10, Y: 30, W: 20, H: 10}, Tag: tag("a")},
		scene.Lid{At: scene.Point{X: 90, Y: 20}, Size: 16, Tag: tag("c")},
	)
	got := s.In(scene.Between(scene.Point{X: 60, Y: 60}, scene.Point{}))
	if want := []scene.Ref{tag("a").Ref, tag("b").Ref}; !slices.Equal(got, want) {
		t.Errorf("In = %v, want %v", got, want)
	}
}

// What the pointer is over is among what a small rubber band about it takes.
func TestAtAndInAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var s scene.Scene
		for i := range rapid.IntRange(1, 12).Draw(t, "lids") {
			s.Add(scene.Lid{
				At:   scene.Point{X: rapid.Float64Range(0, 200).Draw(t, "x"), Y: rapid.Float64Range(0, 200).Draw(t, "y")},
				Size: rapid.Float64Range(12, 96).Draw(t, "size"), Tag: tag(string(rune('a' + i))),
			})
		}
		p := scene.Point{X: rapid.Float64Range(0, 200).Draw(t, "px"), Y: rapid.Float64Range(0, 200).Draw(t, "py")}
		if hit, ok := s.At(p); ok && !slices.Contains(s.In(scene.Around(p, 1)), hit.Ref) {
			t.Fatalf("At(%v) = %v, not in In about it", p, hit.Ref)
		}
	})
}
