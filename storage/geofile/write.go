package geofile

import (
	"bufio"
	"encoding/json"
	"io"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"lidmark/domain/book"
)

// Sheet is what is drawn of a yard.
type Sheet struct {
	Features []book.FeatureDrawn
	Stands   []book.StandSet
}

// snapped is the nearest point of the coarse grid.
func snapped(o Origin) Origin {
	lat, lon := book.Rough(o.Lat, o.Lon)
	return Origin{Lat: lat, Lon: lon}
}

type outFeature struct {
	Type       string       `json:"type"`
	ID         string       `json:"id,omitempty"`
	Geometry   *outGeometry `json:"geometry"`
	Properties properties   `json:"properties"`
}

type outGeometry struct {
	Type        string `json:"type"`
	Coordinates any    `json:"coordinates"`
}

// properties are those of a feature or of a stand.
type properties struct {
	Kind   string  `json:"kind"`
	Label  string  `json:"label,omitempty"`
	Height float64 `json:"height_m,omitzero"`
	Width  float64 `json:"width_m,omitzero"`
	Letter string  `json:"letter,omitempty"`
	Turn   float64 `json:"turn_deg,omitzero"`
	Places int     `json:"places,omitzero"`
	Round  string  `json:"round,omitempty"`
}

const standKind = "stand"

// Write writes a sheet as GeoJSON, a feature a line. Positions are rounded to a
// hundred-millionth of a degree, a millimetre. Roughly moves the whole yard, and
// reading that back for the same yard gives the same metres.
func Write(w io.Writer, s Sheet, o Origin, p book.Positions) error {
	out := bufio.NewWriter(w)
	out.WriteString(`{"type":"FeatureCollection",`)
	if p == book.Roughly {
		o = snapped(o)
		origin, _ := json.Marshal(position(PlaneAt(o), book.Point{})) // two numbers
		out.WriteString(`"coarse":true,"origin":` + string(origin) + `,`)
	}
	out.WriteString(`"features":[`)
	plane := PlaneAt(o)
	all := features(s, plane)
	for i := range all {
		if p == book.Nowhere {
			all[i].Geometry = nil
		}
		line, err := json.Marshal(all[i])
		if err != nil {
			return err
		}
		if i > 0 {
			out.WriteByte(',')
		}
		out.WriteByte('\n')
		out.Write(line)
	}
	out.WriteString("\n]}\n")
	return out.Flush()
}

func features(s Sheet, plane Plane) (all []outFeature) {
	for _, f := range s.Features {
		all = append(all, outFeature{
			Type: "Feature", ID: f.Feature.String(), Geometry: geometryOf(f, plane),
			Properties: properties{Kind: f.What.String(), Label: f.Label, Height: f.Height, Width: f.Width},
		})
	}
	for _, f := range s.Stands {
		all = append(all, outFeature{
			Type: "Feature", ID: f.Stand.String(), Geometry: &outGeometry{"Point", position(plane, f.At)},
			Properties: properties{Kind: standKind, Letter: f.Letter, Turn: f.Turn, Places: f.Places, Round: f.Round},
		})
	}
	return all
}

// geometryOf is a point, an outline where the feature is closed or always is one,
// else a line; none where it has no points.
func geometryOf(f book.FeatureDrawn, plane Plane) *outGeometry {
	line := make(orb.LineString, len(f.Points))
	for i, p := range f.Points {
		line[i] = position(plane, p)
	}
	n := len(line)
	switch closed := n > 3 && line[0] == line[n-1]; {
	case n == 0:
		return nil
	case n == 1:
		return &outGeometry{"Point", line[0]}
	case closed:
		return &outGeometry{"Polygon", orb.Polygon{outward(orb.Ring(line))}}
	case n > 2 && line[0] != line[n-1] && slices.Contains(outlined, f.What):
		return &outGeometry{"Polygon", orb.Polygon{outward(orb.Ring(append(line, line[0])))}}
	}
	return &outGeometry{"LineString", line}
}

// outward is a ring against the clock, as the RFC has outer rings, from the same point.
func outward(r orb.Ring) orb.Ring {
	around := r.Clone()
	for i := range around {
		around[i][0] = r[0][0] + math.Remainder(r[i][0]-r[0][0], 360) // over the date line
	}
	if around.Orientation() == orb.CW {
		r.Reverse()
	}
	return r
}

func position(plane Plane, p book.Point) orb.Point {
	const fine = 1e8
	o := plane.Degrees(p.X, p.Y)
	return orb.Point{math.Round(o.Lon*fine) / fine, math.Round(o.Lat*fine) / fine}
}
