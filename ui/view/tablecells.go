package view

import (
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// say writes a cell, shortened to its column.
func (t *tableDraw) say(a scene.Area, text string, f font) {
	t.fit(a.X, a.Y+a.H/2+5, text, f, a.Right()-10)
}

// number writes a cell of figures to the right of its column.
func (t *tableDraw) number(a scene.Area, text string, f font) {
	t.right(a.Right()-14, a.Y+a.H/2+5, text, f)
}

func (t *tableDraw) nuc(n *state.Nuc, a scene.Area) {
	f := ink(14).bold()
	t.say(a, t.shortName(n.Name, f, a.W-10), f)
}

func (t *tableDraw) holds(n *state.Nuc, a scene.Area) {
	t.add(small(t.lidOf(n, at(a.X+12, a.Y+a.H/2), 23)))
	word := n.Presumed.Condition.String()
	if caught(n) {
		if word = "no queen, caught"; t.width(word, ink(13)) > a.W-36 {
			word = "queen caught"
		}
	}
	t.fit(a.X+30, a.Y+a.H/2+5, word, ink(13), a.Right()-6)
}

func (t *tableDraw) place(n *state.Nuc, a scene.Area) {
	if n.Stand.IsZero() {
		return
	}
	s := t.r.View.Stand(n.Stand)
	word := s.Letter
	if s.Places > 1 {
		word += ", " + strconv.Itoa(n.Place)
	}
	t.say(a, word, ink2(13))
}

func (t *tableDraw) batch(n *state.Nuc, a scene.Area) {
	if n.Holds.Batch.IsZero() {
		return
	}
	b := t.r.View.Batch(n.Holds.Batch)
	word := dotted(strconv.Itoa(b.Number), b.Line)
	if t.slim(a, word) {
		word = strconv.Itoa(b.Number)
	}
	t.say(a, word, ink(13))
}

func (t *tableDraw) age(n *state.Nuc, a scene.Area) {
	if n.Presumed.Emerged.IsZero() || n.Presumed.Age < 1 {
		t.number(a, "—", ink2(13))
		return
	}
	t.number(a, strconv.Itoa(n.Presumed.Age), ink(13))
}

// slim tells whether a text has no room in a cell.
func (t *tableDraw) slim(a scene.Area, text string) bool { return t.width(text, ink(13)) > a.W-10 }

// seen writes what was seen last, without what has a column of its own.
func (t *tableDraw) seen(n *state.Nuc, a scene.Area) {
	look, ok := n.LastLook()
	if !ok {
		return
	}
	for _, c := range t.shown {
		switch c.by {
		case state.ByBees:
			look.Sides = book.Amount{}
		case state.ByStores:
			look.Stores = book.Amount{}
		}
	}
	day, said := shortDay(t.r.DayOf(look.At.Instant))+"  ", " "+codes(t.r, look.Looked)
	if seen, _, noted := strings.Cut(said, " \""); noted && t.slim(a, day+said) {
		said = seen // the words are on the card
	}
	t.say(a, t.whole(day+strings.TrimPrefix(said, " "), ink2(13), a.W-10), ink2(13))
}

// due writes the work that comes first and its day: the best one, or, past due, the last
// one. Where both have no room the words are short.
func (t *tableDraw) due(n *state.Nuc, a scene.Area) {
	if n.Due == nil {
		return
	}
	days := []string{shortDay(n.DueDay)}
	switch {
	case n.PastDue() > 0:
		days[0] = shortDay(t.r.DayOf(n.Due.By))
	case n.DueDay < t.r.Day:
		days = []string{"since " + days[0], days[0]}
	}
	const apart = 8.0
	y, to := a.Y+a.H/2+5, a.Right()-apart
	for i, day := range days {
		room := to - t.width(day, ink2(13)) - apart - a.X
		said := t.firstFitting(room, actWords(n.Due.Act)...)
		if i == len(days)-1 || t.width(said, ink(13)) <= room {
			t.fit(a.X, y, said, ink(13), a.X+room)
			t.right(to, y, day, ink2(13))
			return
		}
	}
}

// actWords say what is to be done, in ever fewer words.
func actWords(act rules.Act) []string {
	word := act.String()
	fewer := strings.NewReplacer("look for capped", "capped", "the ", "", "own ", "", "coming ", "").Replace(word)
	least, ok := map[rules.Act]string{
		rules.ActLookForEggs: "for eggs", rules.ActBreakDownCells: "break down", rules.ActNarrowEntrance: "narrow", rules.ActTakeOutQueen: "take her out", rules.ActCollectCells: "collect cells",
		rules.ActOpenEntrance: "open", rules.ActMakeReady: "make ready", rules.ActKeep: "keep",
	}[act]
	if !ok {
		least = fewer
	}
	return []string{word, fewer, least}
}

func (t *tableDraw) days(n *state.Nuc, a scene.Area) {
	if n.Due == nil {
		return
	}
	f := ink(13)
	if n.PastDue() > 0 {
		f = f.semi()
		if !t.s.Away() {
			f = f.as(scene.Act)
		}
	}
	t.number(a, minus(n.Days()), f)
}

// minus writes a whole number with a true minus.
func minus(n int) string {
	return strings.Replace(thousands(n), "-", "−", 1)
}

// probably draws the chances of what the nuc holds as a strip.
func (t *tableDraw) probably(n *state.Nuc, a scene.Area) {
	c := t.r.CourseOf(n.Nuc.Nuc)
	if len(c.Days) == 0 {
		return
	}
	strip := scene.Area{X: a.X, Y: a.Y + a.H/2 - 7, W: a.W - 14, H: 14}
	t.partsStrip(strip, c.Now)
	t.hit(strip, n.Tag().Ref, n.Name+": "+c.Now.String())
}

func (t *tableDraw) bees(n *state.Nuc, a scene.Area) {
	if n.Bees.Said() {
		t.number(a, figure(n.Bees.Value), ink(13))
	}
}

func (t *tableDraw) stores(n *state.Nuc, a scene.Area) {
	if n.Stores.Said() {
		t.number(a, figure(n.Stores.Value), ink(13))
	}
}

func (t *tableDraw) need(n *state.Nuc, a scene.Area) {
	if !n.NeedsYou {
		return
	}
	t.corner(at(a.X, a.Y+a.H/2-6), 11)
	why := reasons(n)
	all := strings.Join(why, "; ")
	said := t.whole(t.firstFitting(a.W-16, all, fewerWords.Replace(all)), ink(13), a.W-16)
	t.fit(a.X+16, a.Y+a.H/2+5, said, ink(13), a.Right())
	if said != all {
		t.hit(a, n.Tag().Ref, n.Name+": "+all)
	}
}

// whole is as much of a text as has room, in whole parts, else in whole words.
func (t *tableDraw) whole(text string, f font, room float64) string {
	said := text
	for t.width(said, f) > room {
		said = strings.TrimSuffix(said, " …")
		cut := strings.LastIndex(said, "; ")
		if cut < 0 {
			cut = strings.LastIndex(strings.TrimRight(said, " "), " ")
		}
		if cut <= 0 {
			return said
		}
		said = strings.TrimRight(said[:cut], " ,") + " …"
	}
	return said
}
