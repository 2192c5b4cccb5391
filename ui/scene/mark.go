package scene

// Mark is one thing painted. The set is closed: [Rect], [Line], [Poly],
// [Circle], [Text], [Icon], [Lid], [Photo] and [Pane].
type Mark interface {
	tag() Tag                   // what the mark stands for
	extent(c Camera) Area       // the smallest area around it that counts for hits
	hit(p Point, c Camera) bool // whether p, in the mark's own world, is on it
}

// Tag says what a mark stands for and the one line shown when the pointer rests
// on it. Marks embed it; the zero Tag stands for nothing and lets the pointer
// through to what lies beneath.
type Tag struct {
	Ref    Ref
	Reason string
}

// tag returns the tag itself, for the marks that embed one.
func (t Tag) tag() Tag { return t }

// Ref names a thing of the book or of the window: a nuc, a batch, a day, a
// button. It is comparable; the zero Ref names nothing.
type Ref struct {
	Kind string // what sort of thing, in the view's words: "nuc", "batch", "day"
	ID   string // which one: an id, a date, a name
	Part string // which part of it, where a thing has parts
}

// Whole names the thing of which r may be a part.
func (r Ref) Whole() Ref {
	r.Part = ""
	return r
}

// Stroke is a line's look. A Stroke without a role paints nothing. A width of
// exactly 1 is a hairline: upright and level ones, and the edges of a [Rect],
// are laid on whole pixels.
type Stroke struct {
	Role  Role
	Width float64    // dp
	Dash  [2]float64 // lengths of dash and gap, dp; the zero value is a full line
	Round bool       // round ends
}

// Hatch fills a shape with parallel lines at 45 degrees, rising to the right. A
// Hatch without a role paints nothing.
type Hatch struct {
	Role    Role
	Pitch   float64 // distance from line to line, dp
	Weight  float64 // width of each, dp
	Falling bool    // falling to the right instead
	Crossed bool    // with others across them
}

// Rect is an upright rectangle: fill, then hatch, then stroke. The stroke lies
// on the edge, a hairline just inside it. A Rect without colours is an area that
// can be hit.
type Rect struct {
	Area
	Radius float64 // of the corners, dp
	Fill   Role
	Clear  float64 // how much of what lies beneath shows through the fill: 0 none, 1 all
	Hatch  Hatch
	Stroke Stroke
	Tag
}

// Line is one straight line.
type Line struct {
	From, To Point
	Stroke   Stroke
	Tag
}

// Poly is a polygon, or with Open a polyline: fill, then hatch, then stroke,
// whose corners are round. An Open one is filled as if closed and hit only near
// its line.
type Poly struct {
	Points []Point
	Open   bool
	Fill   Role
	Hatch  Hatch
	Stroke Stroke
	Tag
}

// Circle is a circle: fill, then stroke. Its radius is a length of the world.
type Circle struct {
	At     Point
	Radius float64
	Fill   Role
	Stroke Stroke
	Tag
}

// Icon is a symbol drawn in lines on a square of the given side with its centre
// at At.
type Icon struct {
	At     Point
	Size   float64 // dp: 20, 24 or 32
	Symbol Symbol
	Role   Role
	Tag
}

// Photo is a photograph: a JPEG with its lower left corner at At, its lower edge
// along Side and its left edge along Up. What lies below shows through by Clear, 0
// to 1. The bytes are never changed; a JPEG that cannot be read paints nothing.
type Photo struct {
	JPEG         []byte
	At, Side, Up Point
	Clear        float64
	Tag
}

// Pane is a window into a world of its own. What of its marks lies outside Clip
// is neither painted nor hit. Clip and Camera are in the coordinates of the
// scene or pane that holds it.
type Pane struct {
	Clip   Area
	Camera Camera
	Marks  []Mark
	Tag
}

// Scene is a picture: marks in the order in which they are painted. The zero
// Scene is empty.
type Scene struct {
	Marks []Mark
}

// Add puts marks on top.
func (s *Scene) Add(marks ...Mark) { s.Marks = append(s.Marks, marks...) }
