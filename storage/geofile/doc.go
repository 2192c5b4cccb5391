// Package geofile takes the ground and the stands of a yard out as GeoJSON (RFC
// 7946) and in from GeoJSON and from GPX tracks and waypoints. Files have degrees
// (WGS 84), a yard has metres from its origin: a [Plane] is both.
//
// What comes from outside is checked before it is believed: size, shape and range
// of every position, rings that are closed and do not cross themselves, and whether
// it lies near the yard. An error names the place in the file.
//
// In GeoJSON a feature's id is that of the book, and its properties are kind (of
// [book.FeatureKind], or "stand"), label, height_m and width_m; of a stand letter,
// turn_deg, places and round. A ring across the date line is not cut, as the RFC
// would have it, so that it stays one outline.
package geofile
