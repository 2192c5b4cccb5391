package handover

// Stand is how an order stands as to what it misses: what comes next for it.
type Stand uint8

// The stands, from none missing to a customer who waits in vain.
const (
	NoneShort   Stand = iota
	LookFirst         // looks that are due may show all that is missing, see [Served.Look]
	Covered           // what stands in nucs, and what is planned or grafted, is meant to give all
	GraftFor          // a graft by [Served.GraftBy] is in time for what is still missing
	StillComing       // all are to be expected by its day, see [Served.Next]
	RingLater         // they come, but after its day: its customer is to be rung
	RingWithout       // no day is in sight by which they come: likewise
)

// Stand is how the order stands.
func (s Served) Stand() Stand {
	coming := !s.Next.Day.IsZero() && s.Next.Day <= s.On
	switch {
	case s.Short == 0:
		return NoneShort
	case len(s.Look) > 0:
		return LookFirst
	case !s.Lost && !coming && s.Missing() <= 0:
		return Covered
	case !s.Lost && !coming:
		return GraftFor
	case s.Next.Day.IsZero():
		return RingWithout
	case coming:
		return StillComing
	default:
		return RingLater
	}
}

// Rings tells whether the customer is to be rung.
func (s Stand) Rings() bool { return s == RingLater || s == RingWithout }
