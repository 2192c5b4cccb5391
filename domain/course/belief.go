package course

// Belief is the chance of everything a nuc may hold at the start of a day; the
// chances sum to one. The zero Belief is of no nuc: make one by [Model.Queenless],
// [Model.Virgin] or [Model.Unknown].
//
// Two lines run beside each other: the queen who was given, and one whom the
// nuc raised itself. A cell counts down the days to her emergence; a virgin has
// her age, and waits until she is old enough to fly to mate; a mated queen has
// the days since; a laying queen the days she lays. So no step forgets how long
// something has lasted.
type Belief struct{ p [states]float64 }

// line is where the states of one line of queens begin.
type line struct{ cell, waits, flies, mated, lays int }

// How long a state is followed by the day. Beyond that nothing depends on it.
const (
	cellDays   = 16 // a cell that emerges today, tomorrow …
	waitDays   = 22 // a virgin too young to fly, by age: all fly from 21 d at the latest
	flyDays    = 41 // a virgin who flies, by age
	lagDays    = 6  // a mated queen who does not lay, by days since
	layDays    = 31 // a laying queen, by days since the first egg
	broodDays  = 9  // no queen, and open brood for nine more days, eight …
	bareDays   = 46 // no queen and no open brood, by days since
	noneDays   = broodDays + bareDays
	droneDays  = 11 // a drone layer, by days since
	workerDays = 11 // laying workers, by days since
	lineDays   = cellDays + waitDays + flyDays + lagDays + layDays

	none    = 2 * lineDays
	bare    = none + broodDays
	drone   = none + noneDays
	workers = drone + droneDays
	states  = workers + workerDays
)

// given is the line of the queen who was given, own that of the nuc's own.
var given, own = lineAt(0), lineAt(lineDays)

func lineAt(i int) line {
	return line{
		cell:  i,
		waits: i + cellDays,
		flies: i + cellDays + waitDays,
		mated: i + cellDays + waitDays + flyDays,
		lays:  i + cellDays + waitDays + flyDays + lagDays,
	}
}

// sum is the chance of some days of a state.
func (b *Belief) sum(from, days int) (s float64) {
	for _, p := range b.p[from : from+days] {
		s += p
	}
	return s
}

// scale makes the chances sum to one, and gives what they summed to.
func (b *Belief) scale() float64 {
	s := b.sum(0, states)
	if s > 0 {
		for i := range b.p {
			b.p[i] /= s
		}
	}
	return s
}

// move takes a share of some days of a state out, and gives how much that was.
func (b *Belief) move(from, days int, share float64) (moved float64) {
	for i := range b.p[from : from+days] {
		m := b.p[from+i] * share
		b.p[from+i] -= m
		moved += m
	}
	return moved
}

// spread puts chance into the days of a state by shares.
func (b *Belief) spread(at int, chance float64, shares []float64) {
	for i, s := range shares {
		b.p[at+i] += chance * s
	}
}

// add puts chance into one day of a state, the last one for any beyond.
func (b *Belief) add(at, days, day int, chance float64) {
	b.p[at+min(max(day, 0), days-1)] += chance
}
