package geofile

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"strings"
)

// inFeature is any object of a GeoJSON file: a collection, a feature or a geometry.
type inFeature struct {
	Type        string                     `json:"type"`
	ID          json.RawMessage            `json:"id"`
	Features    []inFeature                `json:"features"`
	Geometry    *inFeature                 `json:"geometry"`
	Geometries  []inFeature                `json:"geometries"`
	Coordinates json.RawMessage            `json:"coordinates"`
	Properties  map[string]json.RawMessage `json:"properties"`
	CRS         json.RawMessage            `json:"crs"`
	Coarse      bool                       `json:"coarse"`
	Origin      json.RawMessage            `json:"origin"`
}

// geoJSON reads a file; origin is that which the file itself names, or nil.
func (r *reader) geoJSON(content []byte) (origin *Origin, err error) {
	var in inFeature
	if err := json.Unmarshal(content, &in); err != nil {
		return nil, brokenJSON(content, err)
	}
	if err := onlyDegrees(in.CRS); err != nil {
		return nil, err
	}
	if in.Coarse {
		at, err := r.position("origin", in.Origin)
		if err != nil {
			return nil, err
		}
		origin = &at
	}
	switch in.Type {
	case "FeatureCollection":
		for i := range in.Features {
			if err := r.feature(fmt.Sprintf("feature %d", i+1), &in.Features[i]); err != nil {
				return nil, err
			}
		}
		return origin, nil
	case "Feature":
		return origin, r.feature("the feature", &in)
	}
	return origin, r.geometry("the geometry", &item{where: "the geometry"}, &in, 0)
}

// brokenJSON names the line at which a file stops being JSON.
func brokenJSON(content []byte, err error) error {
	var syntax *json.SyntaxError
	var wrong *json.UnmarshalTypeError
	at := int64(len(content))
	switch {
	case errors.As(err, &syntax):
		at = syntax.Offset
	case errors.As(err, &wrong):
		at = wrong.Offset
	}
	line := 1 + bytes.Count(content[:min(at, int64(len(content)))], []byte("\n"))
	return fmt.Errorf("line %d: it is no GeoJSON from here on (%v): save it again", line, strings.TrimPrefix(err.Error(), "json: "))
}

// onlyDegrees refuses a file that says its numbers are no degrees of WGS 84, as files
// of before RFC 7946 can.
func onlyDegrees(crs json.RawMessage) error {
	if said := string(crs); said != "" && said != "null" && !strings.Contains(said, "CRS84") && !strings.Contains(said, "4326") {
		return errors.New(`"crs": its coordinates are no degrees of WGS 84: save it as GeoJSON by RFC 7946`)
	}
	return nil
}

func (r *reader) feature(where string, f *inFeature) error {
	if f.Type != "Feature" {
		return fmt.Errorf("%s: its type is %q, want Feature: save it again", where, f.Type)
	}
	it := item{where: where}
	if err := it.say(f); err != nil {
		return err
	}
	if f.Geometry == nil {
		r.notes = append(r.notes, where+" has no place and was left out")
		return nil
	}
	return r.geometry(where, &it, f.Geometry, 0)
}

// say takes over what a feature says of itself.
func (it *item) say(f *inFeature) error {
	_ = json.Unmarshal(f.ID, &it.id) // a number is the id of another program
	for name, to := range map[string]any{
		"kind": &it.Kind, "label": &it.Label, "height_m": &it.Height, "width_m": &it.Width,
		"letter": &it.Letter, "turn_deg": &it.Turn, "places": &it.Places, "round": &it.Round,
	} {
		if raw, ok := f.Properties[name]; ok && json.Unmarshal(raw, to) != nil {
			return fmt.Errorf("%s: its %s is %.20s: write a number or a word there", it.where, name, raw)
		}
	}
	const (
		tallest, widest, mostPlaces = 200, 1000, 100
	)
	switch {
	case !(it.Height >= 0 && it.Height <= tallest):
		return fmt.Errorf("%s: height_m is %g, want 0 to %d", it.where, it.Height, tallest)
	case !(it.Width >= 0 && it.Width <= widest):
		return fmt.Errorf("%s: width_m is %g, want 0 to %d", it.where, it.Width, widest)
	case it.Places < 0 || it.Places > mostPlaces:
		return fmt.Errorf("%s: places are %d, want 1 to %d", it.where, it.Places, mostPlaces)
	}
	if raw, ok := f.Properties["name"]; ok && it.Label == "" {
		_ = json.Unmarshal(raw, &it.Label) // not a text: not a name
	}
	return nil
}

// deepest is how many collections may lie in each other.
const deepest = 4

func (r *reader) geometry(where string, it *item, g *inFeature, deep int) error {
	switch g.Type {
	case "Point":
		return r.points(where, it, []json.RawMessage{g.Coordinates})
	case "LineString":
		return r.line(where, it, g.Coordinates, false)
	case "Polygon":
		return r.polygon(where, it, g.Coordinates)
	case "MultiPoint", "MultiLineString", "MultiPolygon":
		return r.several(where, it, g)
	case "GeometryCollection":
		if deep == deepest {
			return fmt.Errorf("%s: collections lie more than %d deep: save them as features", where, deepest)
		}
		for i := range g.Geometries {
			if err := r.geometry(fmt.Sprintf("%s, geometry %d", where, i+1), it, &g.Geometries[i], deep+1); err != nil {
				return err
			}
		}
		return nil
	}
	return fmt.Errorf("%s: %q is no geometry of GeoJSON: save it again", where, g.Type)
}

func (r *reader) several(where string, it *item, g *inFeature) error {
	parts, err := list(where, g.Coordinates)
	if err != nil || g.Type == "MultiPoint" {
		return errors.Join(err, r.points(where, it, parts))
	}
	for i, part := range parts {
		at := fmt.Sprintf("%s, part %d", where, i+1)
		if g.Type == "MultiPolygon" {
			err = r.polygon(at, it, part)
		} else {
			err = r.line(at, it, part, false)
		}
		if err != nil {
			return err
		}
	}
	return nil
}

func (r *reader) polygon(where string, it *item, raw json.RawMessage) error {
	rings, err := list(where, raw)
	if err != nil {
		return err
	}
	if len(rings) == 0 {
		return fmt.Errorf("%s: the outline has no ring: draw it again", where)
	}
	if len(rings) > 1 {
		r.notes = append(r.notes, fmt.Sprintf("%s: holes in it were left out", where))
	}
	return r.line(where+", ring 1", it, rings[0], true)
}

func (r *reader) line(where string, it *item, raw json.RawMessage, ring bool) error {
	parts, err := list(where, raw)
	if err != nil {
		return err
	}
	line, err := r.positions(where, parts)
	if err != nil {
		return err
	}
	switch n := len(line); {
	case !ring && n < 2:
		return fmt.Errorf("%s: a line has two points or more, this one has %d: draw it again", where, n)
	case ring && n < 4:
		return fmt.Errorf("%s: a ring has four points or more, this one has %d: draw it again", where, n)
	case ring && line[0] != line[n-1]:
		return fmt.Errorf("%s: it is not closed, its last point is not its first: close it", where)
	}
	r.take(where, *it, line, ring)
	return nil
}

func (r *reader) points(where string, it *item, parts []json.RawMessage) error {
	line, err := r.positions(where, parts)
	for _, p := range line {
		r.take(where, *it, []Origin{p}, false)
	}
	return err
}

func (r *reader) positions(where string, parts []json.RawMessage) (line []Origin, err error) {
	if r.count += len(parts); r.count > mostPositions {
		return nil, fmt.Errorf("%s: the file has more than %d points: simplify it", where, mostPositions)
	}
	for i, raw := range parts {
		p, err := r.position(fmt.Sprintf("%s, point %d", where, i+1), raw)
		if err != nil {
			return nil, err
		}
		line = append(line, p)
	}
	return line, nil
}

// position is longitude, latitude and perhaps a height, which is passed over.
func (r *reader) position(where string, raw json.RawMessage) (Origin, error) {
	var numbers []*float64
	if err := json.Unmarshal(raw, &numbers); err != nil || len(numbers) < 2 || numbers[0] == nil || numbers[1] == nil {
		return Origin{}, fmt.Errorf("%s: %.40s is no position: write longitude and latitude in degrees", where, raw)
	}
	return r.degrees(where, *numbers[1], *numbers[0])
}

func list(where string, raw json.RawMessage) (parts []json.RawMessage, err error) {
	if json.Unmarshal(raw, &parts) != nil || parts == nil {
		return nil, fmt.Errorf("%s: its coordinates are no list: save it again", where)
	}
	return parts, nil
}
