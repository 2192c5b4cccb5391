package book

import "lidmark/domain/calendar"

// WindSaid tells from where the wind mostly blows in a yard, in degrees clockwise
// from north.
type WindSaid struct {
	Yard YardID  `json:"yard"`
	From float64 `json:"fromDeg"`
}

// GroundPictured lays a photograph of the ground under a yard's map: a JPEG so many
// pixels wide and high, with its lower left corner at a point, its lower side turned
// clockwise from east by Turn degrees, and so many metres to a pixel. One without a
// picture takes it away.
type GroundPictured struct {
	Yard  YardID  `json:"yard"`
	JPEG  []byte  `json:"jpeg,omitempty"`
	Wide  int     `json:"widePixels,omitzero"`
	High  int     `json:"highPixels,omitzero"`
	At    Point   `json:"at"`
	Turn  float64 `json:"turnDeg,omitzero"`
	Scale float64 `json:"metresPerPixel,omitzero"`
}

// LayoutTried keeps a try-out of how the boxes of a yard might stand: the stands
// that are new or stand otherwise than they do, the front marks that are others, and
// the boxes that face elsewhere. A later one of the layout takes its place.
type LayoutTried struct {
	Layout LayoutID      `json:"layout"`
	Yard   YardID        `json:"yard"`
	Name   string        `json:"name"`
	Stands []StandSet    `json:"stands,omitempty"`
	Fronts []FrontMarked `json:"fronts,omitempty"`
	Faces  []NucFaced    `json:"faces,omitempty"`
}

// NucFaced is which way the box of a nuc is to face in a try-out: the bearing of its
// entrance while its stand is not turned, as in [NucNamed].
type NucFaced struct {
	Nuc      NucID   `json:"nuc"`
	Entrance float64 `json:"entranceDeg"`
}

// LayoutPlanned makes a try-out the plan of its yard, to be carried out from a day
// on. Another of the yard takes its place.
type LayoutPlanned struct {
	Layout LayoutID     `json:"layout"`
	Yard   YardID       `json:"yard"`
	From   calendar.Day `json:"from"`
}

// LayoutDropped throws a try-out away, whether it was the plan or not.
type LayoutDropped struct {
	Layout LayoutID `json:"layout"`
	Yard   YardID   `json:"yard"`
}

func (f WindSaid) about(add func(Subject))       { add(f.Yard.Subject()) }
func (f GroundPictured) about(add func(Subject)) { add(f.Yard.Subject()) }

func (f LayoutTried) about(add func(Subject)) {
	add(f.Layout.Subject())
	add(f.Yard.Subject())
}

func (f LayoutPlanned) about(add func(Subject)) {
	add(f.Layout.Subject())
	add(f.Yard.Subject())
}

func (f LayoutDropped) about(add func(Subject)) {
	add(f.Layout.Subject())
	add(f.Yard.Subject())
}
