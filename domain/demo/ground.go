package demo

import "lidmark/domain/book"

// ground is what is drawn in the yards, in metres from their origins.
var ground = []struct {
	yard          string
	what          book.FeatureKind
	points        []book.Point
	height, width float64
	label         string
}{
	{home, book.Boundary, []book.Point{{X: 0, Y: 0}, {X: 46, Y: 0}, {X: 46, Y: 34}, {X: 0, Y: 34}, {X: 0, Y: 0}}, 0, 0, ""},
	{home, book.Dwelling, []book.Point{{X: 4, Y: 25}, {X: 15, Y: 25}, {X: 15, Y: 32}, {X: 4, Y: 32}, {X: 4, Y: 25}}, 6, 0, "house"},
	{home, book.Track, []book.Point{{X: 18, Y: 34}, {X: 18, Y: 26}, {X: 24, Y: 20}}, 0, 2.6, "yard track"},
	{home, book.VehicleSpot, []book.Point{{X: 25, Y: 21}}, 0, 0, "van"},
	{home, book.Hedge, []book.Point{{X: 1, Y: 2}, {X: 20, Y: 1.4}, {X: 45, Y: 2.2}}, 1.8, 1.2, "hazel hedge"},
	{home, book.Tree, []book.Point{{X: 38, Y: 28}}, 9, 7, "walnut"},
	{home, book.Water, []book.Point{{X: 44, Y: 8}}, 0, 1.5, "trough"},

	{ledge, book.Boundary, []book.Point{{X: 0, Y: 0}, {X: 62, Y: 0}, {X: 62, Y: 46}, {X: 0, Y: 46}, {X: 0, Y: 0}}, 0, 0, ""},
	{ledge, book.Hedge, []book.Point{{X: 1, Y: 44}, {X: 16, Y: 44.8}, {X: 33, Y: 43.6}, {X: 50, Y: 44.5}, {X: 61, Y: 43.8}}, 2.2, 1.4, "holly hedge"},
	{ledge, book.Tree, []book.Point{{X: 4, Y: 30}}, 8, 6, "thorn"},
	{ledge, book.Tree, []book.Point{{X: 35, Y: 21}}, 5, 3.5, ""},
	{ledge, book.Tree, []book.Point{{X: 58, Y: 40}}, 7, 5, "ash"},
	{ledge, book.Wall, []book.Point{{X: 0.5, Y: 0.5}, {X: 24, Y: 2}, {X: 37, Y: 1}}, 1.1, 0.6, "dry wall"},
	{ledge, book.Water, []book.Point{{X: 37, Y: 1}, {X: 45, Y: 3.4}, {X: 54, Y: 2.2}, {X: 62, Y: 4}}, 0, 1.8, "Ledge beck"},
	{ledge, book.Track, []book.Point{{X: 0, Y: 19}, {X: 7, Y: 18}, {X: 11, Y: 17.5}}, 0, 2.4, "track"},
	{ledge, book.VehicleSpot, []book.Point{{X: 10, Y: 17}}, 0, 0, "vehicle"},

	{moor, book.Boundary, []book.Point{{X: 0, Y: 0}, {X: 54, Y: 0}, {X: 54, Y: 38}, {X: 0, Y: 38}, {X: 0, Y: 0}}, 0, 0, ""},
	{moor, book.Water, []book.Point{{X: 0, Y: 36}, {X: 13, Y: 34.6}, {X: 27, Y: 36.4}, {X: 41, Y: 35}, {X: 54, Y: 36.8}}, 0, 2.2, "Pellam brook"},
	{moor, book.Hedge, []book.Point{{X: 1, Y: 1.5}, {X: 22, Y: 2.1}, {X: 53, Y: 1.2}}, 1.6, 1, "gorse"},
	{moor, book.Tree, []book.Point{{X: 47, Y: 27}}, 6, 5, "rowan"},
	{moor, book.Tree, []book.Point{{X: 3, Y: 22}}, 10, 6, "pine"},
	{moor, book.ColdHollow, []book.Point{{X: 43, Y: 3}, {X: 53, Y: 3}, {X: 53, Y: 9}, {X: 44, Y: 8}, {X: 43, Y: 3}}, 0, 0, "cold hollow"},
	{moor, book.Track, []book.Point{{X: 54, Y: 14}, {X: 47, Y: 14}, {X: 44, Y: 13}}, 0, 2.4, "track"},
	{moor, book.VehicleSpot, []book.Point{{X: 43, Y: 12.5}}, 0, 0, "vehicle"},
}
