package book

// BoxBuilt describes a box: the number painted on its body, its kind in the
// keeper's words, how many nucs it holds, and whether its wood is thin, which
// costs warmth.
type BoxBuilt struct {
	Box    BoxID  `json:"box"`
	Number string `json:"number"`
	Model  string `json:"model,omitzero"`
	Nucs   int    `json:"nucs"`
	Thin   bool   `json:"thin,omitzero"`
}

// NucNamed describes a nuc, the room of a box with an entrance of its own:
// its name, its box, the bearing of its entrance on an unturned box in degrees
// clockwise from north, how many sides of comb it has, and the area of a side
// in dm².
type NucNamed struct {
	Nuc      NucID   `json:"nuc"`
	Name     string  `json:"name"`
	Box      BoxID   `json:"box,omitzero"`
	Entrance float64 `json:"entranceDeg,omitzero"`
	Sides    int     `json:"sides"`
	Side     float64 `json:"sideDM2,omitzero"`
}

// NucPlaced sets a nuc on a place of a stand, counted from 1, or only in a
// yard when it stands on no stand.
type NucPlaced struct {
	Nuc   NucID   `json:"nuc"`
	Yard  YardID  `json:"yard"`
	Stand StandID `json:"stand,omitzero"`
	Place int     `json:"place,omitzero"`
}

// NucMadeUp fills an empty nuc: cups of bees, capped and open worker brood in
// palms (1 dm²), food in grams, and where they came from. Shut tells that it
// was shut in before it stood open. Queenless it begins.
type NucMadeUp struct {
	Nuc    NucID    `json:"nuc"`
	Cups   float64  `json:"cups,omitzero"`
	Capped float64  `json:"cappedDM2,omitzero"`
	Open   float64  `json:"openDM2,omitzero"`
	Food   float64  `json:"foodG,omitzero"`
	Shut   bool     `json:"shut,omitzero"`
	From   ColonyID `json:"from,omitzero"`
}

// EntranceSet sets the open area of a nuc's entrance in cm²; 0 is shut.
type EntranceSet struct {
	Nuc  NucID   `json:"nuc"`
	Area float64 `json:"areaCM2"`
}

// FrontMarked paints or hangs a mark on a nuc's front, one that bees can tell:
// a shape and a colour.
type FrontMarked struct {
	Nuc    NucID  `json:"nuc"`
	Shape  string `json:"shape"`
	Colour string `json:"colour"`
}

// Stroke is the keeper's own paint on a lid.
type Stroke = Word[strokeWords]

// The strokes on a lid. NoStroke wipes the lid.
const (
	NoStroke Stroke = iota
	Settled         // /
	Watch           // //
	Act             // x
)

type strokeWords struct{}

func (strokeWords) words() (string, []string) {
	return "stroke", []string{"none", "settled", "watch", "act"}
}

// LidPainted puts a stroke on a nuc's lid in place of the one before.
type LidPainted struct {
	Nuc    NucID  `json:"nuc"`
	Stroke Stroke `json:"stroke"`
}

// BeesAdded gives a nuc cups of bees from a colony or another nuc.
type BeesAdded struct {
	Nuc  NucID   `json:"nuc"`
	Cups float64 `json:"cups"`
	From Subject `json:"from,omitzero"`
}

// BroodGiven puts combs of brood into a nuc or a colony: palms (1 dm²) of
// capped and of open worker brood, eggs and young larvae being open. Where it
// is queenless, or above an excluder, open brood starts a clock of wild cells.
type BroodGiven struct {
	To     Subject `json:"to"`
	Combs  float64 `json:"combs,omitzero"`
	Capped float64 `json:"cappedDM2,omitzero"`
	Open   float64 `json:"openDM2,omitzero"`
	From   Subject `json:"from,omitzero"`
}

// Fed gives a nuc or a colony litres of syrup or grams of fondant.
type Fed struct {
	To      Subject `json:"to"`
	Litres  float64 `json:"litres,omitzero"`
	Fondant float64 `json:"fondantG,omitzero"`
}

// United puts a nuc's bees to another nuc or to a colony; the nuc is empty
// after it.
type United struct {
	Nuc  NucID   `json:"nuc"`
	With Subject `json:"with"`
}

// ShakenOut shakes a nuc's bees out before other colonies; it is empty after.
type ShakenOut struct {
	Nuc NucID `json:"nuc"`
}

// Robbed tells that robbers are or were at a nuc.
type Robbed struct {
	Nuc NucID `json:"nuc"`
}

// Mishap is how a nuc was lost other than by robbers.
type Mishap = Word[mishapWords]

// The mishaps.
const (
	Toppled Mishap = iota + 1
	Stolen
	Flooded
	Ants
	Absconded
	DiedOut
)

type mishapWords struct{}

func (mishapWords) words() (string, []string) {
	return "mishap", []string{"", "toppled", "stolen", "flooded", "ants", "absconded", "died out"}
}

// NucLost tells that a nuc's colony is lost.
type NucLost struct {
	Nuc NucID  `json:"nuc"`
	How Mishap `json:"how"`
}

func (f BoxBuilt) about(add func(Subject))    { add(f.Box.Subject()) }
func (f NucNamed) about(add func(Subject))    { add(f.Nuc.Subject()); add(f.Box.Subject()) }
func (f NucPlaced) about(add func(Subject))   { add(f.Nuc.Subject()); add(f.Stand.Subject()) }
func (f NucMadeUp) about(add func(Subject))   { add(f.Nuc.Subject()); add(f.From.Subject()) }
func (f EntranceSet) about(add func(Subject)) { add(f.Nuc.Subject()) }
func (f FrontMarked) about(add func(Subject)) { add(f.Nuc.Subject()) }
func (f LidPainted) about(add func(Subject))  { add(f.Nuc.Subject()) }
func (f BeesAdded) about(add func(Subject))   { add(f.Nuc.Subject()); add(f.From) }
func (f BroodGiven) about(add func(Subject))  { add(f.To); add(f.From) }
func (f Fed) about(add func(Subject))         { add(f.To) }
func (f United) about(add func(Subject))      { add(f.Nuc.Subject()); add(f.With) }
func (f ShakenOut) about(add func(Subject))   { add(f.Nuc.Subject()) }
func (f Robbed) about(add func(Subject))      { add(f.Nuc.Subject()) }
func (f NucLost) about(add func(Subject))     { add(f.Nuc.Subject()) }
