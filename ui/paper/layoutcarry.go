package paper

import (
	"cmp"
	"context"
	"fmt"
	"maps"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
	"lidmark/domain/yard"
	"lidmark/ui/state"
)

// carry is a stand to be carried, turned or set up, or on which boxes are turned, and from when that may be.
type carry struct {
	yard.Change
	from calendar.Day // not before this day
	held []string     // the nucs whose virgins fly until then
}

// carries are the stands at which is carried or turned, those that wait last, else in the order of a
// short walk.
func (d *layoutSheet) carries() (all []carry) {
	first := max(d.laid.From, d.Day)
	for _, c := range d.changes {
		if !c.Carried() && c.Turned == 0 {
			continue
		}
		k := carry{Change: c, from: first}
		for _, n := range c.Moved() {
			if n.ID.IsZero() {
				continue
			}
			if day, flies := rules.FliesUntil(d.Course, d.View.Nuc(n.ID)); flies && day > first {
				k.held = append(k.held, n.Name)
				k.from = max(k.from, day)
			}
		}
		all = append(all, k)
	}
	walk, _ := yard.RoundOf(d.laid.Try, d.ground)
	rank := map[book.StandID]int{}
	for i, s := range walk {
		rank[d.laid.Try.Stands[s].ID] = i
	}
	slices.SortStableFunc(all, func(a, b carry) int {
		return cmp.Or(cmp.Compare(a.from, b.from), cmp.Compare(rank[a.Is.ID], rank[b.Is.ID]))
	})
	return all
}

// does is what is done with the stand and with boxes on it, and which way they face then.
func (c carry) does() string {
	faced := c.Faced()
	switch {
	case len(faced) == 0:
		return c.Words()
	case !c.Carried():
		return "turn on the stand: " + c.Is.FacesWords(faced)
	}
	return c.Words() + "; " + c.Is.FacesWords(faced)
}

// carrying draws the carrying list.
func (d *layoutSheet) carrying(ctx context.Context) error {
	all := d.carries()
	if len(all) == 0 || d.anew() { // of a new yard the list of stands says all
		return nil
	}
	work := 0.0
	for _, c := range all {
		work += c.Minutes(d.numbers)
	}
	t := list{d.flow, []column{{"stand", 12, false}, {"boxes on it", 24, false}, {"what is done", 40, false}, {"when", 26, false}}, true, nil}
	title, when := "To carry and turn", "after dusk, entrances shut; "+minutes(work)+" in all"
	said := []string{fmt.Sprintf("A virgin who flies does not find her box again after a move of less than %g km. Never carry or turn over midday.", d.numbers.Get(practice.MoveDistanceLeast)), state.CarryCaution, caution}
	if !slices.ContainsFunc(all, func(c carry) bool { return c.Was != nil }) {
		title, when, said = "To set up", "", []string{caution}
	}
	if err := t.part(ctx, title, when); err != nil {
		return err
	}
	for _, c := range all {
		l := listLine{look: plain(9), cells: []string{c.Is.Letter, names(c.Is.Nucs), sentence(c.does()), "from " + c.from.Short()}}
		if len(c.held) > 0 {
			l.look = semi(9)
			l.cells[3] = "wait until " + c.from.Short() + ": " + virgins(c.held)
		}
		if err := t.put(ctx, l); err != nil {
			return err
		}
	}
	d.y += 1.6
	for _, words := range said {
		if _, err := d.need(ctx, 5); err != nil {
			return err
		}
		d.remark(words, soft(8.25), d.right())
	}
	return nil
}

// virgins says whose virgins fly.
func virgins(of []string) string {
	if len(of) == 1 {
		return "the virgin of " + of[0] + " flies"
	}
	return "the virgins of " + strings.Join(of, ", ") + " fly"
}

// names are the names of boxes.
func names(nucs []yard.Nuc) string {
	var all []string
	for _, n := range nucs {
		all = append(all, n.Name)
	}
	return strings.Join(all, ", ")
}

// fronts draws the list of the fronts to be marked, stand by stand. In a new yard the list
// of stands says all marks.
func (d *layoutSheet) fronts(ctx context.Context) error {
	if d.anew() {
		return nil
	}
	was := map[book.NucID]yard.Mark{}
	for _, s := range d.now.Stands {
		for _, n := range s.Nucs {
			was[n.ID] = n.Mark
		}
	}
	note, begun := "best when nobody flies", false
	if slices.ContainsFunc(slices.Collect(maps.Values(was)), func(m yard.Mark) bool { return m != yard.Mark{} }) {
		note += "; the old mark goes"
	}
	t := list{d.flow, []column{{"stand", 10, false}, {"nucs", 24, false}, {"mark today", 34, false}, {"mark to be painted or hung", 34, false}}, true, nil}
	for _, s := range d.laid.Try.Stands {
		marked := slices.DeleteFunc(slices.Clone(s.Nucs), func(n yard.Nuc) bool { return was[n.ID] == n.Mark })
		for nucs := range slices.Chunk(marked, rowOfNucs) {
			if !begun {
				begun = true
				if err := t.part(ctx, "Fronts to mark", note); err != nil {
					return err
				}
			}
			today := each(nucs, func(n *yard.Nuc) string { return markWords(was[n.ID]) })
			if err := t.put(ctx, listLine{look: plain(9), cells: []string{s.Letter, names(nucs), today, each(nucs, func(n *yard.Nuc) string { return markWords(n.Mark) })}}); err != nil {
				return err
			}
		}
	}
	return nil
}
