package state

import (
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/crew"
	"lidmark/domain/rules"
)

// crewPager deals the lines of a day out to the hands of a day.
type crewPager struct {
	*Reading
	day    crew.Day
	less   Less
	lines  map[lineName]PageLine // what is left to do, whole
	stops  map[lineName]rules.Stop
	number int          // of the next part of a line of which one stands already
	given  map[int]bool // numbers that stand already
	names  bool         // stops say whose they are
}

// dealt is the work of a day dealt out to its hands: a stop for each person and place,
// who begins first first, and behind them what waits, dearest first.
func (r *Reading) dealt(day crew.Day, l Less) (stops []PageStop) {
	c := crewPager{Reading: r, day: day, less: l, lines: map[lineName]PageLine{}, stops: map[lineName]rules.Stop{}, given: map[int]bool{}, names: len(day.Sheets) > 1}
	for _, stop := range r.page() {
		for _, l := range stop.Lines {
			c.lines[workName(l.Task)], c.stops[workName(l.Task)] = l, stop.Stop
			c.number = max(c.number, l.Number+1)
		}
	}
	sheets := slices.Clone(day.Sheets)
	slices.SortStableFunc(sheets, func(a, b crew.Sheet) int { return a.From.Compare(b.From) })
	for _, sheet := range sheets {
		stops = append(stops, c.sheet(sheet)...)
	}
	if waits := c.gathered(day.Waits, true); len(waits) > 0 {
		stops = append(stops, PageStop{Lines: waits})
	}
	return stops
}

// workName names a line for what is dealt out of it. Cells that some collect and that wait
// besides are of one line, whatever number it says.
func workName(t rules.Task) lineName {
	n := nameOf(t)
	if t.Act == rules.ActCollectCells {
		n.title = ""
	}
	return n
}

// withDone is work dealt out, with what is done already on a page at the head of the
// first stop of its place.
func withDone(dealt, page []PageStop) []PageStop {
	all := slices.Clone(dealt)
	for _, stop := range slices.Backward(page) {
		stop.Lines = slices.DeleteFunc(slices.Clone(stop.Lines), func(l PageLine) bool { return !l.Done })
		if len(stop.Lines) == 0 {
			continue
		}
		i := slices.IndexFunc(all, func(s PageStop) bool { return !s.Waits() && s.at(stop) })
		if i < 0 {
			stop.Start, stop.Drive = time.Time{}, 0
			all = slices.Insert(all, 0, stop)
			continue
		}
		all[i].Lines = slices.Concat(stop.Lines, all[i].Lines)
	}
	return all
}

// sheet is the stops of one person, in the order in which they are driven and walked.
func (c *crewPager) sheet(p crew.Sheet) (stops []PageStop) {
	at, back := p.From, 0.0
	for _, v := range p.Visits {
		far := c.View.Yard(v.Yard).Drive
		drive := back + far
		for _, part := range c.rounds(v) {
			stop := part.stop
			stop.Start, stop.Drive, drive = after(at, drive), drive, 0
			if stop.Dusk.After(stop.Start) && !at.IsZero() {
				stop.Start = stop.Dusk
			}
			minutes := 0.0
			for _, w := range part.work {
				minutes += w.Minutes
			}
			at = after(stop.Start, minutes)
			page := PageStop{Stop: stop, Lines: c.gathered(part.work, false)}
			if c.names {
				page.Who = p.Name
			}
			stops = append(stops, page)
		}
		back = far
	}
	return stops
}

// after is so many minutes later; no time stays none.
func after(t time.Time, minutes float64) time.Time {
	if t.IsZero() {
		return t
	}
	return t.Add(time.Duration(minutes * float64(time.Minute)))
}

// round is the work of a visit in one round of its yard.
type round struct {
	stop rules.Stop
	work []crew.Work
}

// rounds is the work of a visit by the rounds of the route.
func (c *crewPager) rounds(v crew.Visit) (all []round) {
	for _, w := range v.Work {
		stop, ok := c.stops[workName(w.Task)]
		if !ok {
			continue
		}
		if n := len(all); n == 0 || all[n-1].stop.Yard != stop.Yard || all[n-1].stop.Round != stop.Round {
			stop.Tasks = nil
			all = append(all, round{stop: stop})
		}
		last := &all[len(all)-1]
		last.work = append(last.work, w)
	}
	return all
}

// gathered are pieces of work as lines, those of one line together.
func (c *crewPager) gathered(all []crew.Work, waits bool) (lines []PageLine) {
	at := map[lineName]int{}
	of := map[lineName][]crew.Work{}
	for _, w := range all {
		name := workName(w.Task)
		if _, ok := c.lines[name]; !ok {
			continue
		}
		if _, ok := at[name]; !ok {
			at[name] = len(lines)
			lines = append(lines, c.lines[name])
		}
		of[name] = append(of[name], w)
	}
	for name, i := range at {
		lines[i] = lineOfWork(lines[i], of[name], waits)
	}
	for i := range lines {
		if c.given[lines[i].Number] {
			lines[i].Number, c.number = c.number, c.number+1
		}
		c.given[lines[i].Number] = true
	}
	return lines
}

// lineOfWork is a line with some of its pieces; of what waits with its price in the place
// of why.
func lineOfWork(l PageLine, all []crew.Work, waits bool) PageLine {
	in := make(map[book.Subject]bool, len(all))
	of := make([]book.Subject, 0, len(all))
	minutes := 0.0
	for _, w := range all {
		in[w.Of], of, minutes = true, append(of, w.Of), minutes+w.Minutes
		l.Price += w.Price.Queens * float64(boolInt(waits))
	}
	if len(of) < len(l.Of) {
		l.Of, l.Findings = of, rules.FindingsOf(l.Findings, in)
	}
	if t := all[0].Task; t.Title != l.Title {
		l.Title, l.Findings = t.Title, t.Findings // so many of the cells
	}
	l.Minutes, l.Waits = minutes, waits
	if waits {
		l.Why = priceWords(l.Price, all)
	}
	return l
}

// priceWords are what it costs to let pieces of work wait, and why the dearest does.
func priceWords(price float64, all []crew.Work) string {
	dearest := slices.MaxFunc(all, func(a, b crew.Work) int {
		switch {
		case a.Price.Queens < b.Price.Queens:
			return -1
		case a.Price.Queens > b.Price.Queens:
			return 1
		}
		return 0
	})
	const least = 0.05
	if price < least {
		return dearest.Price.Why
	}
	words := queensSaid(price) + ": " + dearest.Price.Why
	if len(all) > 1 {
		words += ", the dearest"
	}
	return words
}

// crewStops are the stops of a day with the hands there are, as the kit is packed for
// them.
func (r *Reading) crewStops(l Less) (stops []rules.Stop, ok bool) {
	if c := r.crew(l); c.ok {
		for _, stop := range c.stops {
			if stop.Waits() {
				continue
			}
			for _, line := range stop.Lines {
				stop.Tasks = append(stop.Tasks, line.Task)
			}
			stops = append(stops, stop.Stop)
		}
		return stops, true
	}
	return nil, false
}
