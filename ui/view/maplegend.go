package view

import (
	"cmp"
	"fmt"
	"slices"

	"lidmark/domain/strength"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// mapSign is a line of the legend beside a map: a sign of lids, a step of a layer, or
// words alone.
type mapSign struct {
	entry *state.LegendEntry
	step  *scene.Lid
	words string // of a step, or alone
}

// used tells whether a line explains something that stands on the map.
func (s mapSign) used() bool { return s.entry == nil || !s.entry.Counts() || s.entry.N > 0 }

// legendBeside explains all that stands on the map in columns beside it: also the
// conditions that no nuc is in, so that each keeps its place, as long as all has room.
// The order is the same on every day.
func (g *ground) legendBeside(a scene.Area) {
	const pad = 14.0
	signs := g.mapSigns()
	columns := int(a.W/state.MapLegendColumn + 0.5)
	fit := max(2, int((a.H-pad)/state.MapLegendLeast))
	slices.SortStableFunc(signs, func(a, b mapSign) int { return cmp.Compare(a.rank(), b.rank()) })
	left := 0
	if most := columns * fit; len(signs) > most {
		signs = slices.DeleteFunc(signs, func(s mapSign) bool { return !s.used() })
		if len(signs) > most {
			left = len(signs) - most + 1
			signs = append(signs[:most-1:most-1], mapSign{words: fmt.Sprintf("%d more below the lids", left)})
		}
	}
	rows := min(fit, (len(signs)+columns-1)/columns)
	row := min((a.H-pad)/float64(max(rows, 1)), state.MapLegendRow)
	for i, s := range signs {
		o := at(a.X+pad/2+float64(i/rows)*state.MapLegendColumn, a.Y+pad/2+(float64(i%rows)+0.5)*row)
		g.mapSign(s, o, o.X+state.MapLegendColumn-pad)
		if left > 0 && i == len(signs)-1 {
			g.command(scene.Area{X: o.X, Y: o.Y - row/2, W: state.MapLegendColumn - pad, H: row}, "lids")
		}
	}
}

// rank puts words, what needs the keeper and troubles before the rest.
func (s mapSign) rank() int {
	switch e := s.entry; {
	case e == nil, e.Sign == state.NeedSign:
		return 0
	case e.Sign == state.ConditionSign && e.Condition.Trouble():
		return 1
	default:
		return 2
	}
}

// mapSign draws a line of the legend at o, no further than to.
func (g *ground) mapSign(s mapSign, o scene.Point, to float64) {
	switch {
	case s.entry != nil && s.entry.Sign == state.UnseenSign && g.hollow:
		g.add(scene.Lid{At: o.Add(at(8, 0)), Size: legendLid, Condition: scene.Virgin, Entrance: 180, NoRim: true, Blank: true})
		g.fit(o.X+legendText, o.Y+4.5, "hollow: "+s.entry.Words, ink2(13), to)
	case s.entry != nil:
		g.legendEntry(*s.entry, o, to)
	case s.step != nil:
		l := *s.step
		l.At, l.Size, l.Entrance, l.NoRim, l.Blank = o.Add(at(8, 0)), max(legendLid, l.Size), 180, true, true
		g.add(l)
		g.fit(o.X+legendText, o.Y+4.5, s.words, ink2(13), to)
	default:
		g.fit(o.X, o.Y+4.5, s.words, ink2(13), to)
	}
}

// mapSigns are the lines of the legend of the layer shown.
func (g *ground) mapSigns() (signs []mapSign) {
	words := func(all ...string) {
		for _, w := range all {
			signs = append(signs, mapSign{words: w})
		}
	}
	steps := func(s layerSteps) {
		words(s.lead)
		for i := range s.steps {
			signs = append(signs, mapSign{step: &s.steps[i].lid, words: s.steps[i].word})
		}
	}
	switch g.s.Layer {
	case state.ByDue:
		words(g.figureWord("days left,"))
		if g.figures {
			words("− past due")
		}
		words("rim: time used")
		return signs
	case state.ByRobbing:
		steps(g.robbingSteps())
		return signs
	case state.ByStrength:
		steps(strengthSteps())
		return signs
	case state.BySureness:
		steps(surenessSteps())
	case state.ByBatch:
		words(g.figureWord("batch"))
	}
	all, more := g.s.FullLegend(g.yard.YardDescribed.Yard)
	for _, e := range append(all, more...) {
		if e.Sign == state.StrokeSign && g.bare {
			continue
		}
		if g.s.Layer == state.ByCondition || e.Sign != state.NeedSign && e.Sign != state.StrokeSign {
			signs = append(signs, mapSign{entry: &e})
		}
	}
	return signs
}

// layerSteps are the steps of a layer, with words before them, and short ones where
// there is no room for the long.
type layerSteps struct {
	lead  string
	steps []shade
	short []string
}

// surenessSteps are the steps of the hatch of what nobody saw.
func surenessSteps() layerSteps {
	s := layerSteps{lead: "chance, of 100:", short: []string{"90", "60", "less of 100"}}
	for d, word := range []string{"from 90", "from 60", "under 60"} {
		s.steps = append(s.steps, shade{scene.Lid{Condition: scene.Virgin, Size: 20, Doubt: uint8(d) + 1}, word})
	}
	return s
}

// robbingSteps are the levels of robbers.
func (g *ground) robbingSteps() layerSteps {
	s := layerSteps{lead: "robbers:", short: []string{"quiet", "watch", "act"}}
	for level := range strength.Level(len(robbingShades)) {
		fill := robbingShades[level]
		if level == strength.ActNow {
			_, fill = g.alarm()
		}
		s.steps = append(s.steps, shade{scene.Lid{Condition: scene.Empty, Wash: fill, Robbing: level > strength.Quiet}, state.RobbingWord(level)})
	}
	return s
}

// strengthSteps are the steps of strength with their shades.
func strengthSteps() layerSteps {
	s := layerSteps{lead: "sides with bees:", short: []string{"not seen", "under ½", "from ½", "from ¾ of its sides"}}
	for _, step := range strengthShades {
		s.steps = append(s.steps, shade{scene.Lid{Condition: scene.Empty, Wash: step.fill}, step.word})
	}
	return s
}
