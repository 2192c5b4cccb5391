package view

import (
	"fmt"

	"lidmark/domain/bee"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// triage draws what to do once a virgin has walked, which scrolls, and below it
// the counts so far and the buttons, which stay.
func (d lateDraw) triage(a scene.Area, late bool) {
	d.rect(a, scene.Panel)
	x, w := a.X+state.Edge, a.W-2*state.Edge
	offset, most := d.triageScroll()
	body := d.triageBody()
	d.wholeLines(body, func() { d.triageSteps(body.Y - offset) })
	d.scrollBar(body, offset, body.H+most)
	y := body.Bottom()
	if late {
		d.countBoxes(x, y+26, w)
	}
	y += triageCounts
	d.rule(x, y, x+w, y, scene.Hair)
	records := d.triageRecords()
	if shut := d.refused(w, records...); shut != "" {
		d.fit(x, y+20, shut, ink2(13), x+w)
		y += state.RefusedLine
	}
	end := d.button(x, y+12, records[0].word, records[0].command, true)
	d.button(end+8, y+12, records[1].word, records[1].command, false)
	end = d.button(x, y+54, records[2].word, records[2].command, false)
	end = d.button(end+8, y+54, "Print", "print batch", false)
	d.button(end+8, y+54, "Back", "give back", false)
}

// triageRecords are the buttons that write something down.
func (p *sheet) triageRecords() []button {
	work := p.s.LateWork()
	return []button{{sentence(work.Word), work.Command, true}, {"A virgin walked", "virgin walked", false}, {"Cage cells", "cage cells", false}}
}

// triageCounts is how high the counts are, dp.
const triageCounts = 96.0

// triageBody is where the steps stand: above the counts and the buttons.
func (p *sheet) triageBody() scene.Area {
	a := p.l.Card
	a.X, a.W = a.X+1, a.W-1
	high := triageCounts + 98
	if p.refused(a.W, p.triageRecords()...) != "" {
		high += state.RefusedLine
	}
	a.H = max(0, a.H-high)
	return a
}

// triageScroll is how far the steps are scrolled, and can be.
func (p *sheet) triageScroll() (offset, most float64) {
	late, _ := p.s.FilledLate()
	alone, body := *p, p.triageBody()
	alone.marks = nil
	end := lateDraw{sheet: &alone, Late: late}.triageSteps(body.Y)
	most = max(0, end-body.Bottom())
	return min(p.s.Scroll[state.CardPlace], most), most
}

// triageIcons show which steps leave a virgin or a cell alive.
var triageIcons = [...]scene.Symbol{0: scene.VirginIcon, 2: scene.VirginIcon, 3: scene.CellIcon, 4: scene.CellIcon, 5: scene.NoIcon}

// triageSteps draws the steps from y on, none of them cut, and gives where they
// end.
func (d lateDraw) triageSteps(y float64) float64 {
	x, w := d.l.Card.X+state.Edge, d.l.Card.W-2*state.Edge
	title := "If the first virgin has walked"
	if d.Walking {
		title = "A virgin has walked"
	}
	d.text(x, y+32, title, ink(17).semi())
	y += 48
	if d.l.Card.H >= lateHigh {
		d.text(x, y+6, "then in this order, within the hour", ink2(14))
		y += 24
	}
	for i, step := range bee.Triage() {
		begins := y
		d.text(x, y+20, fmt.Sprint(i+1), ink(20))
		wide := w - 28
		if triageIcons[i] != scene.NoIcon {
			d.add(scene.Icon{At: at(x+w-10, y+24), Size: 20, Symbol: triageIcons[i], Role: scene.Ink})
			wide -= 28
		}
		top := d.wrap(x+28, y+14, sentence(step.Seen), ink(14).semi(), wide, 3)
		y = d.wrap(x+28, top, step.Means+": "+step.Do, ink2(13), wide, 5) - 4
		d.whole(scene.Area{X: x, Y: begins, W: w, H: y - begins})
		d.rule(x, y, x+w, y, scene.Hair)
		y += 4
	}
	return y
}

// countBoxes draws what became of the cells so far.
func (d lateDraw) countBoxes(x, y, w float64) {
	boxes := state.FateOf(d.s.Reading().View.Batch(d.Batch))
	all := 0
	for _, c := range boxes {
		all += c.N
	}
	d.text(x, y, fmt.Sprintf("Count as you go, of %d", all), ink(14).semi())
	step := w / float64(len(boxes))
	for i, c := range boxes {
		box := scene.Area{X: x + float64(i)*step + 1, Y: y + 10, W: step - 8, H: 34}
		d.add(scene.Rect{Area: box, Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1)})
		d.centre(box.Centre().X, box.Y+23, thousands(c.N), ink(16).semi())
		word := c.Word
		if d.width(word, ink2(13)) > step-6 && c.Word == state.CulledLost {
			word = "gone"
		}
		d.centre(box.Centre().X, box.Y+52, word, ink2(13))
	}
}
