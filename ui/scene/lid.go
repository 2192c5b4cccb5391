package scene

// LidStroked is the size of a lid, dp, from which the keeper's strokes are drawn on it,
// wherever it lies.
const LidStroked = 14.0

// Lid is the drawing of a nuc: letter and fill tell its condition, the rim how
// much of the time to its next deadline is used, the notch where its entrance
// looks, the corners what needs the keeper. It is comparable.
type Lid struct {
	At        Point   // the centre
	Size      float64 // outer side, rim included, dp; 12 to 96
	Condition Condition
	Doubt     uint8   // not seen: the more doubtful the denser the hatch, 1 to 3; 0 is the usual hatch
	Seen      bool    // somebody saw it: filled; else hatched, below 20 dp hollow
	Entrance  float64 // bearing of the entrance, degrees clockwise from the top
	Turn      float64 // turn of the box, degrees clockwise; letters stay upright

	NoRim bool    // the lid has no room for a rim, so its body is larger
	Timed bool    // the rim is drawn (from 20 dp)
	Used  float64 // share of the time used, 0 to 1; above 1 is past due

	NeedsYou bool // the corner, upper left
	Ahead    bool // another day than now is shown: corner and closed rim are hollow and grey
	Caught   bool // with NoQueen: just caught, brood left
	Weak     bool // the wedge, lower right
	Robbing  bool // the chevrons at the entrance
	Blank    bool // without its letter
	Wash     Role // its fill in the place of the condition's, for layers of a map

	Name  string // inside from 64 dp, else under the lid
	Paint Paint  // the keeper's strokes, lower left (from LidStroked)
	Brush Role   // their colour; None stands for Ink
	Front Front  // the mark on the nuc's front, upper right (from 20 dp)

	Selected, Hover, Focus bool
	Faded                  bool // stepped back behind a filter
	Tag
}

// NameInside is the size in dp from which a lid's name stands on its body.
const NameInside = 64.0

// Paint is what the keeper's paint strokes on a lid say.
type Paint uint8

// The three codes of strokes. NoPaint is the zero value.
const (
	NoPaint Paint = iota
	Settled       // one stroke: leave it alone
	Watch         // two strokes: keep an eye on it
	ActSoon       // a cross: something has to be done
)

// Shape is the outline of a front mark. NoShape, the zero value, is no mark.
type Shape uint8

// The shapes of front marks.
const (
	NoShape Shape = iota
	Disc
	Square
	Triangle
	LevelBar
	Post
	Ring
	Cross
)

// Front is a mark painted on a nuc's front so that its queen finds home.
type Front struct {
	Shape Shape
	Role  Role
}
