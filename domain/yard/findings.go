package yard

import (
	"cmp"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Findings are the faults of a layout on a ground, by stand. Sun and shade are those
// of a day. What is not drawn and what nobody said is not judged: no water, no
// vehicle spot, no wind.
func Findings(l Layout, g Ground, d calendar.Day, n practice.Numbers) []Finding {
	j := judge{layout: l, ground: &g, numbers: n, doors: l.Doors(SpacingOf(n)), light: g.LightOn(d), wind: g.Breeze(n)}
	j.near = gridOf(j.doors)
	for i := range j.doors {
		if !j.doors[i].Colony {
			j.door(i)
		}
	}
	for i := range l.Stands {
		j.stand(i)
	}
	j.reach()
	return sorted(j.found, l)
}

// SunnyFronts is how many entrances of nucs have sun in the morning of a day, before
// the hour by which they should.
func SunnyFronts(l Layout, g Ground, d calendar.Day, n practice.Numbers) int {
	return g.LightOn(d).FrontsInSun(l.Doors(SpacingOf(n)), n.Get(practice.SunOnFrontBy))
}

type judge struct {
	layout  Layout
	ground  *Ground
	numbers practice.Numbers
	doors   []Door
	near    *grid
	light   Light
	wind    Wind
	found   []Finding
}

func (j *judge) add(f Finding, key practice.Key) {
	if f.Number = key; key != 0 && f.Limit == 0 {
		f.Limit = j.numbers.Get(key)
	}
	j.found = append(j.found, f)
}

// nuc is a finding about a nuc.
func (j *judge) nuc(door int, fault Fault, other string, figure float64) Finding {
	d := &j.doors[door]
	s := &j.layout.Stands[d.Stand]
	return Finding{Fault: fault, Stand: s.ID, Nuc: s.Nucs[d.Nuc].ID, Name: j.name(door), Other: other, At: d.At, Figure: figure}
}

func (j *judge) name(door int) string {
	d := &j.doors[door]
	s := &j.layout.Stands[d.Stand]
	return cmp.Or(s.Nucs[d.Nuc].Name, "a nuc on stand "+s.Letter)
}

func (j *judge) door(i int) {
	j.fronts(i)
	d := &j.doors[i]
	if off, is := j.wind.On(d.At, d.Bearing); is {
		j.add(j.nuc(i, InTheWind, "", off), practice.WindOnFront)
	}
}

// fronts looks for fronts near one that bees take for it.
func (j *judge) fronts(i int) {
	least, advised := j.numbers.Get(practice.AlikeApart), j.numbers.Get(practice.AlikeApartAdvised)
	other, metres := nearestAlike(j.doors, j.near, i, max(least, advised))
	switch {
	case other < 0:
		j.mark(i, least)
	case metres < least && redAndBlack(j.doors[i].Mark, j.doors[other].Mark):
		j.add(j.nuc(i, RedOnBlack, j.name(other), metres), practice.AlikeApart)
	case metres < least:
		j.add(j.nuc(i, LooksAlike, j.name(other), metres), practice.AlikeApart)
	default:
		j.add(j.nuc(i, NearAlike, j.name(other), metres), practice.AlikeApartAdvised)
	}
}

// mark looks for the front near one whose mark, by which alone it differs, is not
// seen as far as from one to the other; the nearest.
func (j *judge) mark(i int, within float64) {
	best, far := -1, 0.0
	a := &j.doors[i]
	j.near.within(a.At, within, func(k int, d float64) {
		b := &j.doors[k]
		if k == i || d >= within || !facesAlike(a, b) || ToldFrom(a.Mark, b.Mark, j.numbers) >= d {
			return
		}
		if best < 0 || d < far || d == far && k < best {
			best, far = k, d
		}
	})
	if best >= 0 {
		f := j.nuc(i, MarkTooSmall, j.name(best), ToldFrom(a.Mark, j.doors[best].Mark, j.numbers))
		f.Limit = far
		j.add(f, practice.MarkSize)
	}
}
