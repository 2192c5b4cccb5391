package geofile

import (
	"encoding/xml"
	"errors"
	"fmt"
	"strconv"
	"strings"
)

// gpxFile is what is read of GPX 1.0 and 1.1.
type gpxFile struct {
	XMLName   xml.Name   `xml:"gpx"`
	Waypoints []gpxPoint `xml:"wpt"`
	Routes    []gpxLine  `xml:"rte"`
	Tracks    []struct {
		Name     string    `xml:"name"`
		Type     string    `xml:"type"`
		Segments []gpxLine `xml:"trkseg"`
	} `xml:"trk"`
}

type gpxLine struct {
	Name   string     `xml:"name"`
	Type   string     `xml:"type"`
	Route  []gpxPoint `xml:"rtept"`
	Points []gpxPoint `xml:"trkpt"`
}

type gpxPoint struct {
	Lat  string `xml:"lat,attr"`
	Lon  string `xml:"lon,attr"`
	Name string `xml:"name"`
	Type string `xml:"type"`
}

// gpx reads waypoints as points, routes and the segments of tracks as lines. A type
// that is a kind of feature says what it is.
func (r *reader) gpx(content []byte) error {
	var in gpxFile
	if err := xml.Unmarshal(content, &in); err != nil {
		var syntax *xml.SyntaxError
		if errors.As(err, &syntax) {
			return fmt.Errorf("line %d: it is no GPX from here on (%s): save it again", syntax.Line, syntax.Msg)
		}
		return fmt.Errorf("it is no GPX (%w): save it again", err)
	}
	for i, p := range in.Waypoints {
		if err := r.walked(fmt.Sprintf("waypoint %d", i+1), p.Name, p.Type, []gpxPoint{p}); err != nil {
			return err
		}
	}
	for i, l := range in.Routes {
		if err := r.walked(fmt.Sprintf("route %d", i+1), l.Name, l.Type, l.Route); err != nil {
			return err
		}
	}
	for i, t := range in.Tracks {
		for k, l := range t.Segments {
			if err := r.walked(fmt.Sprintf("track %d, segment %d", i+1, k+1), t.Name, t.Type, l.Points); err != nil {
				return err
			}
		}
	}
	if len(r.items) == 0 {
		return errors.New("it has neither waypoints nor tracks: choose another file")
	}
	return nil
}

func (r *reader) walked(where, name, kind string, points []gpxPoint) error {
	if r.count += len(points); r.count > mostPositions {
		return fmt.Errorf("%s: the file has more than %d points: simplify it", where, mostPositions)
	}
	var line []Origin
	for i, p := range points {
		at := fmt.Sprintf("%s, point %d", where, i+1)
		lat, errLat := strconv.ParseFloat(strings.TrimSpace(p.Lat), 64)
		lon, errLon := strconv.ParseFloat(strings.TrimSpace(p.Lon), 64)
		if errLat != nil || errLon != nil {
			return fmt.Errorf("%s: lat=%.20q lon=%.20q are no degrees: save it again", at, p.Lat, p.Lon)
		}
		o, err := r.degrees(at, lat, lon)
		if err != nil {
			return err
		}
		line = append(line, o)
	}
	if len(line) == 0 {
		r.notes = append(r.notes, where+" has no points and was left out")
		return nil
	}
	it := item{walked: true}
	it.Label = strings.TrimSpace(name)
	if isKind(strings.TrimSpace(kind)) {
		it.Kind = strings.TrimSpace(kind)
	}
	r.take(where, it, line, false)
	return nil
}
