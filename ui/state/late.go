package state

import (
	"fmt"
	"math"
	"slices"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// The curves of a late day reach so many hours at least, and so many beyond the hour
// at which somebody is free again.
const (
	lateHours  = 30
	lateBeyond = 6
)

// Measures of what fills a room and scrolls where it is low, dp.
const (
	LateHead  = 44.0 // the strip above the curves
	LateRow   = 56.0 // a way out
	BatchHead = 42.0
	ClockHead = 62.0   // from the top of the clock to its first step
	BatchWide = 1160.0 // from where on the columns of a batch stand side by side

	batchButtons = 104.0 // below its nucs
	BatchSplit   = 0.56  // of a narrow room is the clock's
	BatchLidWide = 48.0  // a lid of its nucs with its air, at least
	BatchLidHigh = 56.0  // with its name
	batchNucs    = 96.0  // the head of its nucs, and air

	BatchSmall     = 24.0 // a lid where the room is low, so that all are in sight,
	BatchSmallWide = 37.0 // with its air
	BatchSmallHigh = 44.0 // and its name,
	BatchSmallHead = 52.0 // below a low head

	batchNeed = 20.0 // a line about one that needs the keeper

	clockRow  = 26.0 // a step of the clock, at least
	seenBelow = 18.0 // what was seen of it, below it

	batchStream = 132.0 // at least, where the room is not low
	mostStream  = 200.0

	RefusedLine = 22.0 // why buttons cannot be used, above them

	lateWays   = 36.0 // the heads of the ways out
	lateFoot   = 56.0
	lateMost   = 5.0   // ways out that are in sight beside the curves where the room has that height
	lateChart  = 560.0 // the curves with their axis
	leastChart = 206.0 // where the room is low, so that two ways out are in sight
)

// FillHeight is how high what fills the room is, and how much of it shows.
func (s State) FillHeight(l Layout) (all, shown float64) {
	switch s.Fill {
	case LateFill:
		late, _ := s.FilledLate()
		return l.LateChart() + lateFoot + LateRow*float64(len(late.Ways)), l.Main.H - LateHead
	case CourseFill:
		return s.CoursePane(l).High(), l.Main.H - CourseHead
	case BatchFill:
		id, _ := s.FillOf.Batch()
		r := s.Reading()
		if b := r.View.Batch(id); !b.At.IsZero() {
			shown = l.clockShown()
			clock := l.ClockHigh(r.ClockOf(b)) + s.BatchBelow(l, b)
			nucs := s.BatchNucsHigh(l, b) - (shown + ClockHead - s.BatchButtons())
			if nucs > 0 {
				nucs += s.clockNow()
			}
			return shown + max(0, clock-shown, nucs), shown // the two columns scroll together
		}
	}
	return 0, 0
}

// SeenBelow tells whether what was seen of a step of the clock stands below it.
func (l Layout) SeenBelow() bool { return l.Main.W < 1000 }

// ClockRow is how high a step of the clock is, at least.
func (l Layout) ClockRow() float64 {
	if l.SeenBelow() {
		return clockRow + seenBelow
	}
	return clockRow
}

// StepHigh is how high a step of the clock is, at least: one of which nothing was seen
// has nothing below it.
func (l Layout) StepHigh(step ClockStep) float64 {
	if step.Seen == "" {
		return clockRow
	}
	return l.ClockRow()
}

// ClockHigh is how high steps of a clock are together, at least.
func (l Layout) ClockHigh(steps []ClockStep) (high float64) {
	for _, step := range steps {
		high += l.StepHigh(step)
	}
	return high
}

// BatchBelow is how high the evidence of a batch and what comes are, where they
// stand below its clock: with the most that they can need.
func (s State) BatchBelow(l Layout, b *book.Batch) float64 {
	if l.Main.W >= BatchWide {
		return 0
	}
	const flying, head, line = 170.0, 44.0, 24.0
	r := s.Reading()
	h := flying + 4*head + line*float64(len(r.LinksOf(b))+min(len(b.Log), BatchLog)+2)
	conditions := map[book.Condition]bool{}
	for _, n := range r.NucsOf(b.Batch) {
		conditions[n.Presumed.Condition] = true
	}
	h += line * float64(len(conditions)+2)
	return h + 2*line*float64(len(r.Comes(b)))
}

// BatchNucsHigh is how high the lids of a batch's nucs are, with what comes where that
// stands below them, if they scroll; 0 where they have room.
func (s State) BatchNucsHigh(l Layout, b *book.Batch) float64 {
	const line = 48.0 // of what comes, with the most that it can need
	r := s.Reading()
	w, high := CardWidth, batchNucs
	if l.Main.W < BatchWide {
		w = l.Main.W * (1 - BatchSplit)
	} else if comes := len(r.Comes(b)); comes > 0 {
		high += 36 + line*float64(comes)
	}
	nucs, need := r.NucsOf(b.Batch), 0
	for _, n := range nucs {
		need += boolInt(n.NeedsYou)
	}
	per := max(1, int((w-2*Edge)/BatchLidWide))
	high += BatchLidHigh*float64((len(nucs)+per-1)/per) + batchNeed*float64(min(need, 2))
	if high <= l.Main.H-BatchHead-l.BatchStream()-s.BatchButtons() || s.SmallLids(l, b) {
		return 0
	}
	if l.Main.W < BatchWide { // they are as small as where all are in sight
		return batchNucs + BatchSmallHigh*l.smallRows(len(nucs))
	}
	return high
}

// smallRows is in how many rows so many nucs of a batch stand where their lids are small.
func (l Layout) smallRows(nucs int) float64 {
	per := max(1, int((l.Main.W*(1-BatchSplit)-2*Edge)/BatchSmallWide))
	return float64((nucs + per - 1) / per)
}

// BatchButtons is how high the buttons below the nucs of a batch are, with why the first
// of them cannot be used.
func (s State) BatchButtons() float64 {
	why := map[string]func(State) string{"late day": noLate, "batch work": noBatchWork, "batch nucs": noBatchNucs}
	if why[s.BatchWork().Command](s) != "" {
		return batchButtons + RefusedLine
	}
	return batchButtons
}

// SmallLids tells whether the nucs of a batch are all in sight in a small room where
// their lids are small. Where larger ones have room it is not asked.
func (s State) SmallLids(l Layout, b *book.Batch) bool {
	if l.Main.W >= BatchWide {
		return false
	}
	room := l.Main.H - BatchHead - l.BatchStream() - s.BatchButtons() - BatchSmallHead
	return BatchSmallHigh*l.smallRows(len(s.Reading().NucsOf(b.Batch))) <= room
}

// BatchLog is how many of the last readings of the incubator stand below the clock.
const BatchLog = 6

// LateChart is how high the curves of the late day are, with their axis.
func (l Layout) LateChart() float64 {
	return min(lateChart, max(leastChart, l.Main.H-LateHead-lateFoot-lateMost*LateRow))
}

// BatchStream is how high the stream of the batch that fills the room is.
func (l Layout) BatchStream() float64 {
	return min(max(batchStream, l.Main.H*0.2), l.Main.H*0.26, mostStream)
}

// FillOffset is how far what fills the room is scrolled.
func (s State) FillOffset(l Layout) float64 {
	all, shown := s.FillHeight(l)
	return min(s.Scroll[FillPlace], max(0, all-shown))
}

// Late is the late day of a batch: the ways out, and each of them by the hour.
type Late struct {
	rules.LateCard
	Curves []rules.LateCurve
	Hours  int     // of the curves that are drawn: to some hours beyond the next free one
	Spread float64 // hours by which the clock of the whole batch may be off, one standard deviation
	Kept   []Span  // of each way, if the clock is off by that much
	Later  []Span  // of those, how many can be caged at the next free hour, for want of a nuc
	Taken  []Span  // and in 10–90 % besides, as each is accepted or not
}

// Ends is the instant up to which the curves are drawn.
func (l Late) Ends() time.Time { return l.Now.Add(time.Duration(l.Hours) * time.Hour) }

// Span is from how many to how many.
type Span struct{ Low, High float64 }

// String is a span in whole numbers: "13 to 17", "about 12", and where it is one
// whole number "24".
func (s Span) String() string {
	low, high := math.Round(s.Low), math.Round(s.High)
	switch {
	case low != high:
		return fmt.Sprintf("%.0f to %.0f", low, high)
	case math.Abs(s.Low-low) < 0.05 && math.Abs(s.High-high) < 0.05:
		return fmt.Sprintf("%.0f", low)
	default:
		return fmt.Sprintf("about %.0f", low)
	}
}

// Late is the late day of a batch; false when its cells are not together, or
// their hard hour is far, or so long past that they are out.
func (r *Reading) Late(batch book.BatchID) (Late, bool) {
	l := r.late(batch)
	return l, l.Cells > 0
}

func (r *Reading) readLate(batch book.BatchID) Late {
	if !rules.LateSoon(r.View, batch, r.Course.Clock(batch)) {
		return Late{}
	}
	card, ok := rules.LateDay(r.View, batch, rules.NextFree(r.View))
	if !ok || len(card.Ways) == 0 { // they are out: nothing is left to choose
		return Late{}
	}
	off := r.Numbers().Duration(practice.SharedShiftSpread)
	l := Late{LateCard: card, Spread: off.Hours()}
	l.Hours = max(lateHours, int(math.Ceil(card.Next.Sub(card.Now).Hours()))+lateBeyond)
	l.Curves = rules.LateCurves(r.View, card, l.Hours+int(math.Ceil(l.Spread))) // the band looks so far ahead
	l.span(r.lateWays(card, off), r.lateWays(card, -off))
	return l
}

// lateWays are the ways out of a card if its cells were older by that much.
func (r *Reading) lateWays(card rules.LateCard, older time.Duration) []bee.WayOut {
	next := card.Next.Add(older)
	if next.Before(card.Now) {
		next = card.Now
	}
	other, _ := rules.LateDay(r.View, card.Batch, next)
	return other.Ways
}

// span takes in what the ways are worth if the clock of the batch is off, to one
// side and to the other.
func (l *Late) span(others ...[]bee.WayOut) {
	for _, w := range l.Ways {
		kept, later, taken := Span{w.Kept, w.Kept}, Span{w.Later, w.Later}, Span{w.Accepted, w.Accepted}
		for _, ways := range others {
			for _, o := range ways {
				if o.Way == w.Way {
					kept, later, taken = kept.with(o.Kept), later.with(o.Later), taken.with(o.Accepted)
				}
			}
		}
		l.Kept, l.Later, l.Taken = append(l.Kept, kept), append(l.Later, later), append(l.Taken, taken.ofEach(l.Cells))
	}
}

// KeptAt is a curve at any hour from now, between its points.
func KeptAt(kept []float64, hour float64) float64 {
	hour = min(max(hour, 0), float64(len(kept)-1))
	i := min(int(hour), len(kept)-2)
	return kept[i] + (kept[i+1]-kept[i])*(hour-float64(i))
}

// Lost is how many are lost by an instant within the hours of the curves if nothing
// is done, the clock of the batch being off to either side.
func (l Late) Lost(by time.Time) Span {
	i := slices.IndexFunc(l.Curves, func(c rules.LateCurve) bool { return c.Way == bee.Wait })
	if i < 0 {
		return Span{}
	}
	lost := func(hour float64) float64 { return float64(l.Cells) - KeptAt(l.Curves[i].Kept, hour) }
	h := by.Sub(l.Now).Hours()
	return Span{lost(h - l.Spread), lost(h + l.Spread)}
}

// ofEach is a span about the luck of each of so many wider: 10–90 % of a binomial
// number, by its normal approximation.
func (s Span) ofEach(n int) Span {
	const tenth = 1.28 // a normal value is below -1.28 or above 1.28 once in ten each
	luck := func(mean float64) float64 { return tenth * math.Sqrt(max(0, mean*(1-mean/float64(max(n, 1))))) }
	return Span{max(0, s.Low-luck(s.Low)), min(float64(n), s.High+luck(s.High))}
}

func (s Span) with(v float64) Span { return Span{min(s.Low, v), max(s.High, v)} }

// Fate is how many cells of a batch became something.
type Fate struct {
	Word string
	N    int
}

// CulledLost are the cells of a batch that were taken out, found dead or dropped.
const CulledLost = "culled, lost"

// FateOf is what became of the cells of a batch; together they are all that were
// counted.
func FateOf(b *book.Batch) []Fate {
	placed := 0
	for _, g := range b.Given {
		placed += boolInt(!g.Virgin)
	}
	return []Fate{
		{"given", placed},
		{"caged", len(b.Caged)},
		{"out", b.Out},
		{CulledLost, b.Culled + b.Dead + b.Lost},
		{"left", b.Unplaced()},
	}
}
