package state

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
	"lidmark/domain/yard"
	"lidmark/ui/scene"
)

// LayoutSheet is what a try-out comes to beside the yard as it stands.
type LayoutSheet struct {
	Now, Try LayoutSide
	Since    calendar.Day  // when a stand was last set otherwise; zero: none stands
	Full     bool          // no virgin is to fly: reckoned as if one flew from each nuc
	Changes  []yard.Change // what the try-out changes, by stand
	Carried  int           // nucs carried or turned
	SetUp    int           // nucs on stands to be set up
	Fronts   int           // to be marked anew
	Minutes  float64       // that carrying and marking take
	Safe     calendar.Day  // from which no virgin of a carried nuc flies
	Flying   []*Nuc        // carried nucs whose virgins fly now
	Whole    bool          // sun, round and faults are reckoned too
	Compared *yard.Compared
	Kept     []KeptLayout  // the try-outs that were kept, but this one
	InBook   *book.Layout  // the try-out as the book has it; nil: it has not
	AsInBook bool          // all stands as the book has it
	Shades   []yard.Shadow // on the ground, at the hour ShadesAt
	ShadesAt time.Time
	SunDay   calendar.Day // whose sun and shade are reckoned
}

// LayoutSide is one of the two layouts with its figures.
type LayoutSide struct {
	Layout   yard.Layout // with what its nucs hold
	Cost     yard.Cost
	Sunny    int     // entrances in the sun by the hour they should be
	Round    float64 // m, from the vehicle past all stands and back
	Arrows   []yard.Arrow
	Findings []yard.Finding
	Standing []Standing
}

// leastArrow is the share of a nuc's workers from which on an arrow is drawn.
const leastArrow = 0.02

// layoutKey names what a sheet is of: a changed layout has other stands.
type layoutKey struct {
	of     *Reading
	yard   book.YardID
	tries  book.LayoutID
	stands *yard.Stand
	many   int
}

func (s State) layoutKey() layoutKey {
	l := s.Laying
	k := layoutKey{of: s.Present(), yard: l.Yard, tries: l.ID, many: len(l.Try.Stands)}
	if k.many > 0 {
		k.stands = &l.Try.Stands[0]
	}
	return k
}

// laidOut is what is known of the try-out.
type laidOut struct {
	sheet   *LayoutSheet
	is      layoutKey // of the sheet
	asked   layoutKey // what is compared, or was
	reading *Reading  // of now
	yard    book.YardID
	now     LayoutSide
	drift   map[book.NucID]float64
	holds   map[book.NucID]yard.Holding
	since   calendar.Day
	kept    []KeptLayout
	shades  []yard.Shadow
	sun     calendar.Day
	at      time.Time // of the shades

	search   *LayoutSearch
	searches int
	spared   *LayoutSpared
	written  asWritten
}

// LayoutSheet is what the try-out comes to; nil where none is worked at.
func (s State) LayoutSheet() *LayoutSheet {
	if !s.OnLayout() {
		return nil
	}
	return s.laidOut.sheet
}

// layingOut is the window after a message with the figures of the try-out: at once,
// while a stand is dragged without what takes longer; the comparison is asked for.
func (s State) layingOut() (State, []Effect) {
	if !s.OnLayout() {
		return s, nil
	}
	key := s.layoutKey()
	dragged := s.Drag.Kind == TriedDrag || s.laidOut.search.Looking()
	if key == s.laidOut.is && (s.laidOut.sheet.Whole || dragged) {
		return s, nil
	}
	s.laidOut = s.laidOut.reckon(key, s.Laying, !dragged)
	if dragged || key == s.laidOut.asked {
		return s, nil
	}
	s.laidOut.asked = key
	return s, []Effect{CompareLayouts{key, s.laidOut.sheet.Now.Layout, s.laidOut.sheet.Try.Layout, s.Present().Numbers()}}
}

func (o laidOut) reckon(key layoutKey, l *Laying, whole bool) laidOut {
	r := key.of
	n := r.Numbers()
	ground := yard.GroundOf(r.View.Yard(l.Yard))
	sheet := &LayoutSheet{Whole: whole}
	holding := func(y yard.Layout) yard.Layout {
		return y.With(func(id book.NucID) yard.Holding { return o.holds[id] })
	}
	if o.reading != r || o.yard != l.Yard {
		o.reading, o.yard = r, l.Yard
		o.holds = holdsOf(r, l.Yard)
		o.now = sideOf(holding(yard.Of(r.View, l.Yard)), n)
		o.sun = yard.SunDay(r.View, r.View.Yard(l.Yard), r.Day)
		o.now.whole(ground, o.sun, n)
		o.now.Standing = r.standingOf(o.now.Layout, func(book.StandID) scene.Ref { return TodayGround })
		o.drift = driftOf(o.now.Layout, n)
		o.since = sinceWhen(r, o.now.Layout)
		o.kept = keptOf(r, l.Yard, ground, o.sun)
		o.shades, o.at = shadesBy(ground, o.sun, r.View.Zone(), n)
	}
	sheet.Shades, sheet.ShadesAt, sheet.SunDay = o.shades, o.at, o.sun
	sheet.Now, sheet.Since = o.now, o.since
	try := holding(l.Try)
	if sheet.Full = sheet.Now.Cost.Virgins < 1; sheet.Full {
		sheet.Now = o.now.full(n)
		try = try.Full()
	}
	for _, k := range o.kept {
		if k.Layout.Layout != l.ID {
			sheet.Kept = append(sheet.Kept, k.as(sheet.Full, n))
		}
	}
	sheet.Try = sideOf(try, n)
	sheet.Try.Standing = r.standingOf(try, TriedStand)
	if whole {
		sheet.Try.whole(ground, o.sun, n)
	} else if o.sheet != nil {
		sheet.Try.apartAs(o.sheet.Try.Standing)
	}
	sheet.InBook, sheet.AsInBook = l.inBook(r.View, o.now.Layout)
	sheet.Changes = yard.ChangesOf(sheet.Now.Layout, sheet.Try.Layout, o.drift, driftOf(try, n))
	sheet.work(r, n)
	o.sheet, o.is = sheet, key
	return o
}

// holdsOf is what is in the nucs of a yard, as far as homing goes.
func holdsOf(r *Reading, id book.YardID) map[book.NucID]yard.Holding {
	holds := map[book.NucID]yard.Holding{}
	for _, n := range r.In(id) {
		holds[n.Nuc.Nuc] = r.Course.Holding(n.Nuc.Nuc)
	}
	return holds
}

func sideOf(l yard.Layout, n practice.Numbers) LayoutSide {
	return LayoutSide{Layout: l, Cost: yard.CostOf(l, n), Arrows: yard.Arrows(l, n, leastArrow)}
}

// full is the side as if a virgin flew from each nuc.
func (a LayoutSide) full(n practice.Numbers) LayoutSide {
	a.Layout = a.Layout.Full()
	a.Cost = yard.CostOf(a.Layout, n)
	return a
}

// whole reckons what takes longer: sun, round and faults.
func (a *LayoutSide) whole(g yard.Ground, d calendar.Day, n practice.Numbers) {
	a.Sunny = yard.SunnyFronts(a.Layout, g, d, n)
	_, a.Round = yard.RoundOf(a.Layout, g)
	a.Findings = yard.Findings(a.Layout, g, d, n)
}

// apartAs keeps how far stands lay apart, while one is dragged: no lid is to jump.
func (a *LayoutSide) apartAs(before []Standing) {
	apart := make(map[book.StandID]float64, len(before))
	for i := range before {
		apart[before[i].Stand.Stand] = before[i].Apart
	}
	for i := range a.Standing {
		if was, stood := apart[a.Standing[i].Stand.Stand]; stood {
			a.Standing[i].Apart = was
		}
	}
}

func driftOf(l yard.Layout, n practice.Numbers) map[book.NucID]float64 {
	return yard.HomingOf(l.Doors(yard.SpacingOf(n)), yard.WorkerKernel(n)).Drift(l)
}

// work counts what there is to carry and to mark, and whose virgins fly.
func (t *LayoutSheet) work(r *Reading, n practice.Numbers) {
	t.Safe, t.Minutes = r.Day, 0
	for _, c := range t.Changes {
		t.Fronts += c.Fronts
		moved := c.Moved()
		t.Carried += len(moved)
		if c.Was == nil {
			t.SetUp += len(c.Is.Nucs)
		}
		t.Minutes += c.Minutes(n)
		for _, nuc := range moved {
			if day, flies := rules.FliesUntil(r.Course, r.View.Nuc(nuc.ID)); flies {
				t.Flying = append(t.Flying, r.Nuc(nuc.ID))
				t.Safe = max(t.Safe, day)
			}
		}
	}
	t.Minutes += float64(t.Fronts) * n.Get(practice.MinutesPaintFront)
}

// CompareLayouts asks for a try-out held against the yard as it stands under all
// that is not known; what [CompareLayouts.Reckon] gives comes back.
type CompareLayouts struct {
	key      layoutKey
	now, try yard.Layout
	numbers  practice.Numbers
}

func (CompareLayouts) effect() {}

// LayoutsCompared brings a comparison.
type LayoutsCompared struct {
	key  layoutKey
	told yard.Compared
}

func (LayoutsCompared) msg() {}

// Reckon compares. It may run beside the window.
func (e CompareLayouts) Reckon() LayoutsCompared {
	return LayoutsCompared{e.key, yard.Compare(e.now, e.try, e.numbers)}
}

// layoutsTaken is the window with a comparison that came back, of the try-out as it
// is.
func (s State) layoutsTaken(m LayoutsCompared) State {
	if s.laidOut.sheet != nil && m.key == s.laidOut.is {
		sheet := *s.laidOut.sheet
		sheet.Compared = &m.told
		s.laidOut.sheet = &sheet
	}
	return s
}
