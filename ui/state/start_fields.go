package state

import (
	"fmt"
	"strconv"
	"strings"
)

// The fields of a new book. Those of a row of boxes and of people are numbered.
const (
	StartYard    = "start.yard"
	StartZone    = "start.zone"
	StartLat     = "start.lat"
	StartLon     = "start.lon"
	StartFile    = "start.file"
	StartBatch   = "start.batch" // "graft" or "none"
	StartGrafted = "start.grafted"
	StartLarvae  = "start.larvae"
	StartAge     = "start.age"
	StartLine    = "start.line"
)

// OwnKind is the kind of a row of boxes whose combs are said one by one.
const OwnKind = "own"

// mostRows and mostPeople are as many as a new book asks for; more are added
// later.
const (
	mostRows   = 6
	mostPeople = 4
)

// rowField is a field of a row of boxes: names, per, kind, sides, area, face0 …
func rowField(row int, of string) string { return fmt.Sprintf("start.row%d.%s", row, of) }

// rowOf is the row that a field belongs to.
func rowOf(name string) (row int, ok bool) {
	rest, ok := strings.CutPrefix(name, "start.row")
	if !ok || rest == "" {
		return 0, false
	}
	return int(rest[0] - '0'), true
}

func personField(i int) string { return fmt.Sprintf("start.person%d", i) }

// RowField is the field of a row of boxes in which something is said.
func (s State) RowField(row int, of string) string { return rowField(row, of) }

// StartRows is how many rows of boxes there are.
func (s State) StartRows() int {
	n := 1
	for row := range mostRows {
		if s.Typed(rowField(row, "names")) != "" || row == s.Start.Row {
			n = row + 1
		}
	}
	return n
}

// People are the fields of people that are asked: those filled in, and one more.
func (s State) People() (names []string) {
	for i := range mostPeople {
		names = append(names, personField(i))
		if s.Typed(personField(i)) == "" {
			break
		}
	}
	return names
}

// noMoreRows says why no other boxes can be told of now.
func noMoreRows(s State) string {
	switch n := s.StartRows(); {
	case s.Fill != StartFill:
		return noSteps(s)
	case n == mostRows:
		return "more boxes are added later, in the room Yard"
	case s.Typed(rowField(n-1, "names")) == "":
		return "say first how these nucs are called"
	}
	return ""
}

// rowAdded is the window with another row of boxes, of the kind of the last.
func (s State) rowAdded() State {
	n := s.StartRows()
	for _, of := range []string{"per", "kind", "sides", "area", "face0", "face1", "face2", "face3"} {
		s = s.WithField(rowField(n, of), s.Field(rowField(n-1, of)))
	}
	s.Start.Row = n
	return s.toField(rowField(n, "names"))
}

// FacesAsked is of how many nucs of a box it is asked where they face: more of
// them face those ways in turn.
const FacesAsked = 4

// Faces are the ways in which the entrances of a row face, in turn, by the
// letters of the compass: as they were said, else spread evenly from the south.
func (s State) Faces(row int) []string {
	per, _ := strconv.Atoi(s.Typed(rowField(row, "per")))
	n := min(max(per, 1), FacesAsked)
	faces := make([]string, n)
	const south, around = 4, 8
	for i := range faces {
		faces[i] = s.Typed(rowField(row, fmt.Sprintf("face%d", i)))
		if faces[i] == "" {
			faces[i] = Compass[(south+i*around/n)%around]
		}
	}
	return faces
}

// Compass are the ways in which an entrance can face, clockwise from north.
var Compass = [8]string{"N", "NE", "E", "SE", "S", "SW", "W", "NW"}
