package allot

import (
	"encoding/binary"
	"math"
	"slices"
)

// A model is a problem in whole units: subjects with the same useful
// ways are one group.
type model struct {
	core
	members [][]int // the subjects of every group, rising
	unions  []joint // by union
}

// A joint is a union in whole units.
type joint struct{ gain, minutes float64 }

func modelOf(p Problem, m measure) model {
	md := model{core: core{left: append([]int{0}, p.Supply...), minutes: m.limit}}
	md.arcs = make([]arc, 0, p.many())
	joined, group := make([]bool, len(p.Ways)), make([]int, len(p.Ways))
	for _, u := range p.Unions {
		joined[u.A], joined[u.B] = true, true
	}
	alike := map[string]int{}
	var kept []int
	var arcs []arc
	var key []byte
	for i, ways := range p.Ways {
		kept = useful(kept, ways, m.timely)
		arcs = arcsOf(arcs, ways, kept, m)
		key = keyOf(key[:0], arcs)
		if joined[i] {
			key = binary.AppendVarint(key[:0], int64(i)) // shorter than any key of arcs, so of no other
		}
		g, known := alike[string(key)]
		if !known {
			g = len(md.members)
			alike[string(key)] = g
			md.members = append(md.members, nil)
			md.add(class{group: g}, arcs)
		}
		md.members[g] = append(md.members[g], i)
		group[i] = g
	}
	md.count()
	if len(p.Unions) > 0 {
		md.join(p, m, group)
	}
	return md
}

// count tells classes how many they are, and arcs that all can go along.
func (md *model) count() {
	for g := range md.classes {
		md.classes[g].count = len(md.members[g])
	}
	for i := range md.arcs {
		md.arcs[i].room = md.classes[md.arcs[i].class].count
	}
}

// many is how many ways there are.
func (p Problem) many() (many int) {
	for _, ways := range p.Ways {
		many += len(ways)
	}
	return many
}

// arcsOf are leaving and the ways kept of a subject, written into a slice that
// is used again.
func arcsOf(arcs []arc, ways []Way, kept []int, m measure) []arc {
	arcs = append(arcs[:0], arc{})
	for _, j := range kept {
		w := ways[j]
		if gain := m.gain(w.Worth - ways[0].Worth); gain > 0 {
			arcs = append(arcs, arc{gain: gain, minutes: m.minutes(w), supply: w.Takes, way: j})
		}
	}
	return arcs
}

func keyOf(key []byte, arcs []arc) []byte {
	key = append(key, "arcs of a class:"...)
	for _, a := range arcs {
		key = binary.LittleEndian.AppendUint64(key, math.Float64bits(a.gain))
		key = binary.LittleEndian.AppendUint64(key, math.Float64bits(a.minutes))
		key = binary.AppendVarint(key, int64(a.supply))
		key = binary.AppendVarint(key, int64(a.way))
	}
	return key
}

// join adds to each union's two subjects a half of it as a way of their own:
// what it takes is told with the first half, its worth is split.
func (md *model) join(p Problem, m measure, group []int) {
	halves := make([][]arc, len(md.classes))
	for i, u := range p.Unions {
		j := joint{gain: m.gain(u.Worth - p.leave(u)), minutes: m.minutes(u.Way)}
		md.unions = append(md.unions, j)
		if j.gain <= 0 {
			continue
		}
		first := math.Floor(j.gain / 2)
		halves[group[u.A]] = append(halves[group[u.A]], arc{gain: first, minutes: j.minutes, supply: u.Takes, room: 1, union: i + 1})
		halves[group[u.B]] = append(halves[group[u.B]], arc{gain: j.gain - first, room: 1, union: i + 1, second: true})
	}
	old := md.core
	md.classes, md.arcs = nil, make([]arc, 0, len(old.arcs)+2*len(p.Unions))
	for g, c := range old.classes {
		md.add(c, slices.Concat(old.arcs[c.first:c.last], halves[g]))
	}
}
