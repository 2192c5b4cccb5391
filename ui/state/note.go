package state

// Note is a sentence for the foot. The zero Note is none.
type Note struct {
	Text string
	Bad  bool // something went wrong
}

// Busy is long work under way.
type Busy struct {
	Words string
	Share float64 // done, from 0 to 1; below 0: nobody knows
}
