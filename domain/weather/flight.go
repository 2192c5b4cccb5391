package weather

// Layer says where a day's figure comes from. The layers of what a keeper has
// are never mixed: the first of them that says anything of a day is the only
// one that counts for it.
type Layer int

// The layers, the best first. Seen was seen or measured; Forecast was foretold;
// Typical follows from the normals of the month; Assumed is a day of which
// nobody said anything, in a month without normals: as those of other months
// make it, or where too few are told as the keeper's number has it.
const (
	Seen Layer = iota + 1
	Forecast
	Typical
	Assumed
)

// String is the layer in plain words.
func (l Layer) String() string {
	switch l {
	case Seen:
		return "seen"
	case Forecast:
		return "forecast"
	case Typical:
		return "typical"
	case Assumed:
		return "assumed"
	}
	return ""
}

// Flight is one day's hours fit for mating flights at a yard.
type Flight struct {
	Hours  float64 // expected hours fit to fly, 0 to about 6
	Chance float64 // of at least one fit hour; 0 or 1 for a day that was seen
	Layer  Layer
	Why    string // one line in the keeper's words with its numbers
	Guess  bool   // neither the day nor any month tells how warm it is: the hours are the keeper's number
}
