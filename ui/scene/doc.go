// Package scene describes a picture of the window as a value: marks in the order
// in which they are painted, what each of them stands for, and where it lies.
//
// Views build scenes, package paint turns them into pixels, and the pointer asks
// the same scene what it is over. So what is seen and what is hit cannot differ,
// and a view can be tested without any picture:
//
//	var s scene.Scene
//	s.Add(
//		scene.Rect{Area: scene.Area{W: 400, H: 300}, Fill: scene.Ground},
//		scene.Lid{
//			At: scene.Point{X: 60, Y: 60}, Size: 40, Condition: scene.Virgin, Entrance: 180,
//			Tag: scene.Tag{Ref: scene.Ref{Kind: "nuc", ID: "F3"}, Reason: "virgin, by the calendar"},
//		},
//		scene.Text{At: scene.Point{X: 60, Y: 95}, Text: "F3", Size: 13, Weight: scene.Medium, Anchor: scene.Centre, Role: scene.Ink},
//	)
//	tag, ok := s.At(scene.Point{X: 70, Y: 50}) // the lid's Tag, true
//
// # Lengths
//
// All lengths are device-independent pixels (dp) at text size 1.0, x to the right
// and y downwards. The painter multiplies them by one scale. Inside a [Pane] with
// a [Camera], *places* (points, areas, radii of circles) are in the pane's own
// world, such as metres of a yard, and pass through the camera; *sizes* (lines,
// text, lids, icons, corner radii, the pitch of a hatch) stay in dp.
//
// # Colours
//
// A scene knows no colours, only the [Role] of each: Ink, Act, Laying.Fill(). The
// theme that resolves them belongs to the painter, so a scene is the same by
// light and by dark.
package scene
