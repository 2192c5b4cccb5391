package scene

// Symbol is one of the icons. The zero Symbol draws nothing.
type Symbol uint8

// The icons. An icon stands with its word; alone only in a row with a legend.
const (
	NoIcon          Symbol = iota
	CellIcon               // peg: flat top, pointed foot
	VirginIcon             // slim capsule
	LayingQueenIcon        // slim capsule, one dot under it
	CageIcon               // box with two bars
	BeesIcon               // cup with three dots: a cup of bees
	FeedIcon               // jar upside down over a line
	NucIcon                // lid with its entrance
	ColonyIcon             // square in a square
	StandIcon              // four lids
	UniteIcon              // two squares into one
	ShakeOutIcon           // square tipped, three dots
	NarrowIcon             // entrance between two stops
	LookIcon               // lid lifted off a box
	GraftIcon              // hook over a cup
	PaintIcon              // one stroke
	DeadlineIcon           // tick with a thick end
	FlyingIcon             // sun above a line: flying hours
	WindIcon               // arrow
	ShadeIcon              // disc and its shadow
	MeasureIcon            // line with end ticks
	TurnIcon               // square on its corner, quarter arc
	LineUpIcon             // three squares on a line
	TryOutIcon             // dashed square over a square
	PrintIcon              // sheet with three lines
	NoteIcon               // line under a pen tip
	RobbersIcon            // two chevrons to an entrance
	WeakIcon               // wedge down
	DriftIcon              // bent arrow between two squares
	symbolCount
)

// SymbolCount is the number of symbols, NoIcon included: for tables by symbol.
const SymbolCount = int(symbolCount)
